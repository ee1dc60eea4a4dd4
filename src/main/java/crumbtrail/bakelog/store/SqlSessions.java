package crumbtrail.bakelog.store;

import crumbtrail.people.People;
import crumbtrail.people.Person;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Log-ins in a database. */
final class SqlSessions {
  /** How old the time of the last use may become before it is written again. */
  private static final Duration COARSE = Duration.ofMinutes(5);

  private final Work work;

  SqlSessions(Work work) {
    this.work = work;
  }

  void begin(String tokenHash, long person, Instant now) {
    work.write(
        handle -> {
          handle.execute(
              "delete from log_in where used < ?", PeopleRows.time(now.minus(People.IDLE)));
          handle.execute(
              "delete from log_in where begun < ?", PeopleRows.time(now.minus(People.LONGEST)));
          handle.execute("delete from allowance where free_at < ?", now.toEpochMilli());
          return handle.execute(
              "insert into log_in (token_hash, baker_id, begun, used) values (?, ?, ?, ?)",
              tokenHash,
              person,
              PeopleRows.time(now),
              PeopleRows.time(now));
        });
  }

  Optional<Person> loggedIn(String tokenHash, Instant now) {
    record Found(Person person, Instant used) {}
    Optional<Found> found =
        work.read(
            handle ->
                handle
                    .select(
                        "select a.baker_id, b.name, a.role, a.secret, l.used from log_in l"
                            + " join account a on a.baker_id = l.baker_id"
                            + " join baker b on b.id = l.baker_id"
                            + " where l.token_hash = ? and l.used > ? and l.begun > ?",
                        tokenHash,
                        PeopleRows.time(now.minus(People.IDLE)),
                        PeopleRows.time(now.minus(People.LONGEST)))
                    .map(
                        (row, context) ->
                            new Found(
                                PeopleRows.account(row).person(),
                                row.getObject("used", java.time.OffsetDateTime.class).toInstant()))
                    .findOne());
    if (found.isPresent() && found.get().used().isBefore(now.minus(COARSE))) {
      changed("update log_in set used = ? where token_hash = ?", PeopleRows.time(now), tokenHash);
    }
    return found.map(Found::person);
  }

  void end(String tokenHash) {
    changed("delete from log_in where token_hash = ?", tokenHash);
  }

  void endAll(long person, @Nullable String except) {
    changed(
        "delete from log_in where baker_id = ? and token_hash <> ?",
        person,
        except == null ? "" : except);
  }

  private boolean changed(String sql, Object... values) {
    return work.write(handle -> handle.execute(sql, values) > 0);
  }
}
