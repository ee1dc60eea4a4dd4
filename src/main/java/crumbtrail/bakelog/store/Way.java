package crumbtrail.bakelog.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import crumbtrail.bakelog.LogFault;
import crumbtrail.bakelog.LogPlace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Objects;
import java.util.Properties;

/** The way to a database: connections, some of them kept open. Safe for many threads. */
final class Way implements AutoCloseable {
  /** Longest wait for a connection before it is said that there is none. */
  private static final int WAIT_MILLISECONDS = 6_000;

  private static final int CONNECTIONS = 8;

  private final Dialect dialect;
  private final String url;
  private final Properties properties;
  private volatile HikariDataSource pool;

  private Way(Dialect dialect, String url, Properties properties) {
    this.dialect = dialect;
    this.url = url;
    this.properties = properties;
    this.pool = pool(url, properties);
  }

  static Dialect dialect(LogPlace place) {
    return place.file() == null ? Dialect.POSTGRES : Dialect.H2;
  }

  /** Opens the way to a log. */
  static Way open(LogPlace place) {
    Dialect dialect = dialect(place);
    String url = dialect == Dialect.H2 ? file(place) : place.url();
    Properties properties = properties(dialect);
    try (Connection once = DriverManager.getConnection(url, properties)) {
      // Tried before a pool is made: the pool would wait, and tell less of what is wrong.
      once.isValid(WAIT_MILLISECONDS / 1000);
      // Opened while the first is, so that an embedded log is not closed and opened again.
      return new Way(dialect, url, properties);
    } catch (SQLException | RuntimeException fault) {
      throw SqlFaults.of(dialect, place.shown(), fault);
    }
  }

  /** Which kind of database it leads to. */
  Dialect dialect() {
    return dialect;
  }

  /** The connections. */
  HikariDataSource pool() {
    return pool;
  }

  /**
   * Lets go of all connections after one was found broken; the others would be met one after the
   * other. An embedded database that could not write stays broken until the last of them is closed,
   * and there it is waited for.
   */
  void renew() {
    HikariDataSource broken = pool;
    if (dialect == Dialect.POSTGRES) {
      broken.getHikariPoolMXBean().softEvictConnections();
      return;
    }
    synchronized (this) {
      // Whoever comes second finds it done.
      if (pool == broken) {
        broken.close();
        pool = pool(url, properties);
      }
    }
  }

  /** A connection besides those of the pool. */
  Connection another() throws SQLException {
    return DriverManager.getConnection(url, properties);
  }

  @Override
  public void close() {
    pool.close();
  }

  private static HikariDataSource pool(String url, Properties properties) {
    HikariConfig config = new HikariConfig();
    config.setPoolName("bake log");
    config.setJdbcUrl(url);
    config.setDataSourceProperties(properties);
    config.setMaximumPoolSize(CONNECTIONS);
    config.setMinimumIdle(1);
    // Whether there is a way has been tried, or will be when it is gone next.
    config.setInitializationFailTimeout(-1);
    config.setConnectionTimeout(WAIT_MILLISECONDS);
    config.setValidationTimeout(WAIT_MILLISECONDS / 2);
    return new HikariDataSource(config);
  }

  private static Properties properties(Dialect dialect) {
    Properties properties = new Properties();
    if (dialect == Dialect.H2) {
      properties.setProperty("user", "sa");
      properties.setProperty("password", "");
    } else {
      properties.setProperty("connectTimeout", "5");
      properties.setProperty("tcpKeepAlive", "true");
      properties.setProperty("ApplicationName", "crumbtrail");
      // What is in the address wins over these.
      properties.setProperty("socketTimeout", "120");
    }
    return properties;
  }

  /**
   * The address of an embedded log. The first program that opens the file lets others in by a port
   * of this machine alone, so that the pages can run while a command is typed. The others learn
   * port and key from a file beside the log, which stands in a folder of the user's own.
   */
  private static String file(LogPlace place) {
    // Read once, when the library is loaded: without it, the port would be open to the network.
    System.setProperty("h2.bindAddress", "127.0.0.1");
    Path file = Objects.requireNonNull(place.file());
    try {
      makeFolder(file.getParent());
    } catch (IOException fault) {
      throw new LogFault(
          LogFault.Kind.FORBIDDEN,
          place.shown(),
          "cannot be made, its folder neither",
          "Name a place that may be written with --log FILE.",
          fault);
    }
    return "jdbc:h2:file:" + file + ";AUTO_SERVER=TRUE;LOCK_TIMEOUT=10000;TRACE_LEVEL_FILE=0";
  }

  private static void makeFolder(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      // What a baker writes down is nobody else's business.
      Files.createDirectories(
          folder,
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    } else {
      Files.createDirectories(folder);
    }
  }
}
