package crumbtrail.bakelog.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;

/**
 * A PostgreSQL server whose log lies on a small disk. Arguments: a folder for the server's own
 * files, one on the small disk for those of the log (the same folder for all on one disk), and a
 * file on the small disk to delete when it is full.
 */
final class FullServer {
  private FullServer() {}

  public static void main(String[] arguments) throws Exception {
    Path data = Path.of(arguments[0]);
    Path small = Path.of(arguments[1]);
    try (EmbeddedPostgres server =
        Postgres.builder()
            .setDataDirectory(data)
            .setCleanDataDirectory(false)
            .setServerConfig("min_wal_size", "32MB")
            .setServerConfig("max_wal_size", "32MB")
            .setServerConfig("fsync", "on")
            .start()) {
      String database = "postgres";
      if (!data.equals(small)) {
        database = "small";
        Files.createDirectories(small);
        try (Connection connection = server.getPostgresDatabase().getConnection();
            Statement statement = connection.createStatement()) {
          statement.execute("create tablespace small location '" + small + "'");
          statement.execute("create database small tablespace small");
        }
      }
      Scribe.main(new String[] {server.getJdbcUrl("postgres", database), "full", arguments[2]});
    }
  }
}
