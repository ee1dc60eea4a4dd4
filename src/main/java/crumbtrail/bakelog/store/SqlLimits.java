package crumbtrail.bakelog.store;

import crumbtrail.bakelog.LogFault;
import crumbtrail.people.Rate;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What was done so often, in a database. */
final class SqlLimits {
  private final Work work;

  SqlLimits(Work work) {
    this.work = work;
  }

  Optional<Duration> take(String name, Rate rate, Instant now) {
    try {
      return work.write(handle -> taken(handle, name, rate, now));
    } catch (LogFault fault) {
      // Somebody else may have counted the first one in the same moment; the second finds it.
      return work.write(handle -> taken(handle, name, rate, now));
    }
  }

  private static Optional<Duration> taken(Handle handle, String name, Rate rate, Instant now) {
    long at = now.toEpochMilli();
    Optional<Long> known =
        handle
            .select("select free_at from allowance where name = ? for update", name)
            .mapTo(Long.class)
            .findOne();
    long freeAt = Math.max(at, known.orElse(at)) + rate.interval();
    long wait = freeAt - at - rate.within().toMillis();
    if (wait > 0) {
      return Optional.of(Duration.ofMillis(wait));
    }
    if (known.isPresent()) {
      handle.execute("update allowance set free_at = ? where name = ?", freeAt, name);
    } else {
      handle.execute("insert into allowance (name, free_at) values (?, ?)", name, freeAt);
    }
    return Optional.empty();
  }

  void forgive(String name) {
    changed("delete from allowance where name = ?", name);
  }

  private boolean changed(String sql, Object... values) {
    return work.write(handle -> handle.execute(sql, values) > 0);
  }
}
