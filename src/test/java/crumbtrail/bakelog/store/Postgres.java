package crumbtrail.bakelog.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * A PostgreSQL server for the tests: started once, on a free port, gone with the virtual machine.
 */
public final class Postgres {
  private static final AtomicInteger COUNT = new AtomicInteger();
  private static @Nullable EmbeddedPostgres server;

  /** A cold disk or a busy machine needs more than the ten seconds that it would be given. */
  private static final Duration STARTING = Duration.ofMinutes(3);

  private Postgres() {}

  /** Of a server that starts wherever the tests run, in whatever language they do. */
  static EmbeddedPostgres.Builder builder() {
    return EmbeddedPostgres.builder().setPGStartupWait(STARTING).setLocaleConfig("locale", "C");
  }

  private static synchronized EmbeddedPostgres server() {
    if (server == null) {
      try {
        server = builder().start();
      } catch (IOException fault) {
        throw new UncheckedIOException(fault);
      }
    }
    return server;
  }

  /** Address of an empty database. */
  public static String emptyDatabase() {
    String name = "log" + COUNT.incrementAndGet();
    try (Connection connection = server().getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("create database " + name);
    } catch (SQLException fault) {
      throw new IllegalStateException(fault);
    }
    return server().getJdbcUrl("postgres", name);
  }

  /** A server that a test may stop, with its data in this folder. */
  static Own own(Path data) throws IOException {
    return new Own(data);
  }

  /** A server that can be stopped and started. */
  static final class Own implements AutoCloseable {
    private final Path data;
    private EmbeddedPostgres running;

    private Own(Path data) throws IOException {
      this.data = data;
      this.running = builder().start();
    }

    private EmbeddedPostgres.Builder builder() {
      return Postgres.builder().setDataDirectory(data).setCleanDataDirectory(false);
    }

    String url() {
      return running.getJdbcUrl("postgres", "postgres");
    }

    void stop() throws IOException {
      running.close();
    }

    void start() throws IOException {
      running = builder().setPort(running.getPort()).start();
    }

    @Override
    public void close() throws IOException {
      running.close();
    }
  }
}
