package crumbtrail.bakelog.store;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogFault;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.Scope;
import crumbtrail.people.People;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** A bake log in a database. */
public final class SqlLogStore implements LogStore {
  private final Dialect dialect;
  private final String where;
  private final Way way;
  private final Jdbi jdbi;

  private SqlLogStore(String where, Way way) {
    this.dialect = way.dialect();
    this.where = where;
    this.way = way;
    this.jdbi = Jdbi.create(() -> way.pool().getConnection());
  }

  /**
   * Opens a log, makes it where there is none, and brings one of an earlier version up to date.
   *
   * @throws LogFault if that cannot be
   */
  public static SqlLogStore open(LogPlace place) {
    Way way = Way.open(place);
    try {
      int version = Migrations.run(way.pool());
      if (version > Migrations.LATEST) {
        throw new LogFault(
            LogFault.Kind.NEWER,
            place.shown(),
            "was written by a later version of this program",
            "Use that version, or a later one.",
            new IllegalStateException("version " + version + " of the tables"));
      }
      return new SqlLogStore(place.shown(), way);
    } catch (SQLException | RuntimeException fault) {
      way.close();
      throw SqlFaults.of(way.dialect(), place.shown(), fault);
    }
  }

  @Override
  public String where() {
    return where;
  }

  @Override
  public BakeLog of(Scope scope) {
    return new SqlBakeLog(new Pooled(), scope);
  }

  @Override
  public People people() {
    return new SqlPeople(new Pooled());
  }

  @Override
  public <T> T atOneMoment(Scope scope, Function<BakeLog, T> look) {
    return guarded(
        () -> {
          // A handle of its own: within another one, the same thread would be given that again.
          try (Handle handle = jdbi.open()) {
            dialect.beginOneMoment(handle);
            try {
              return look.apply(new SqlBakeLog(new Held(handle), scope));
            } finally {
              handle.rollback();
              dialect.endOneMoment(handle);
            }
          }
        });
  }

  @Override
  public void fill(Consumer<Filling> filling) {
    guarded(
        () ->
            jdbi.withHandle(
                handle -> {
                  handle.useTransaction(
                      same -> {
                        boolean empty =
                            same.select("select count(*) from (select 1 from bake limit 1) few")
                                    .mapTo(Long.class)
                                    .one()
                                == 0;
                        filling.accept((bake, photos) -> put(same, bake, photos, empty));
                      });
                  goOnAfterHighest(handle);
                  dialect.settle(handle);
                  return true;
                }));
  }

  private static boolean put(Handle handle, Bake bake, Iterable<Photo> photos, boolean keepId) {
    if (has(handle, "select count(*) from bake where uid = ?", bake.uid())) {
      return false;
    }
    known(handle, "baker", bake.owner());
    if (bake.schoolClass() != null) {
      known(handle, "school_class", bake.schoolClass());
    }
    long id = Writing.insert(handle, bake, keepId && bake.id() > 0);
    photos.forEach(photo -> Writing.photo(handle, id, photo));
    return true;
  }

  private static boolean has(Handle handle, String sql, Object value) {
    return handle.select(sql).bind(0, Rows.exactly(value)).mapTo(Long.class).one() > 0;
  }

  private static void known(Handle handle, String table, long id) {
    if (!has(handle, "select count(*) from " + table + " where id = ?", id)) {
      handle.execute("insert into " + table + " (id, name) values (?, '')", id);
    }
  }

  // The next number that the database gives itself must be free.
  private static void goOnAfterHighest(Handle handle) {
    for (String table : new String[] {"bake", "baker", "school_class"}) {
      long next =
          handle.select("select coalesce(max(id), 0) + 1 from " + table).mapTo(Long.class).one();
      handle.execute("alter table " + table + " alter column id restart with " + next);
    }
  }

  @Override
  public void close() {
    if (dialect == Dialect.POSTGRES) {
      way.close();
      return;
    }
    try (Connection last = way.another()) {
      way.close();
      Chores.done(last);
    } catch (SQLException unfinished) {
      // All that was acknowledged is on disk; what is left to do waits for the next time.
      way.close();
    }
  }

  private <T> T guarded(Supplier<T> work) {
    try {
      return work.get();
    } catch (JdbiException fault) {
      LogFault told = SqlFaults.of(dialect, where, fault);
      if (told.kind() == LogFault.Kind.UNREACHABLE || told.kind() == LogFault.Kind.FULL) {
        way.renew();
      }
      throw told;
    }
  }

  /** Each piece of work on a connection of its own. */
  private final class Pooled implements Work {
    @Override
    public <T> T read(Function<Handle, T> reading) {
      try {
        return guarded(() -> jdbi.withHandle(reading::apply));
      } catch (LogFault fault) {
        if (fault.kind() != LogFault.Kind.UNREACHABLE) {
          throw fault;
        }
        // A line that broke while nobody looked is no news; a second one is.
        return guarded(() -> jdbi.withHandle(reading::apply));
      }
    }

    @Override
    public <T> T write(Function<Handle, T> writing) {
      return guarded(
          () ->
              jdbi.withHandle(
                  handle -> {
                    T answer = handle.inTransaction(writing::apply);
                    dialect.settle(handle);
                    return answer;
                  }));
    }
  }

  /** All work in one transaction that only reads. */
  private static final class Held implements Work {
    private final Handle handle;

    Held(Handle handle) {
      this.handle = handle;
    }

    @Override
    public <T> T read(Function<Handle, T> reading) {
      return reading.apply(handle);
    }

    @Override
    public <T> T write(Function<Handle, T> writing) {
      throw new IllegalStateException("a log as it was at one moment cannot be changed");
    }
  }
}
