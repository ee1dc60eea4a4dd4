package crumbtrail.bakelog.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;

/** Brings the tables of a log to the shape that this program knows. */
final class Migrations {
  /** The latest migration in the folder. */
  static final int LATEST = 4;

  /** In which table it is kept what has been done. */
  static final String TABLE = "bake_log_schema";

  private static final String FOLDER = "classpath:crumbtrail/bakelog/migrations";

  private Migrations() {}

  /**
   * Does what is still to be done.
   *
   * @return the version that the log has now, later than {@link #LATEST} where a later program
   *     wrote it
   */
  static int run(DataSource source) throws SQLException {
    int version = version(source);
    if (version >= LATEST) {
      // The library takes half a second to find that out.
      return version;
    }
    Flyway flyway = Flyway.configure().dataSource(source).locations(FOLDER).table(TABLE).load();
    flyway.migrate();
    MigrationInfo current = flyway.info().current();
    return current == null ? 0 : Integer.parseInt(current.getVersion().getVersion());
  }

  /** The version of a log, 0 where there is none yet. */
  static int version(DataSource source) throws SQLException {
    try (Connection connection = source.getConnection()) {
      try (ResultSet tables =
          connection
              .getMetaData()
              .getTables(null, null, TABLE, new String[] {"TABLE", "BASE TABLE"})) {
        if (!tables.next()) {
          return 0;
        }
      }
      try (Statement statement = connection.createStatement();
          ResultSet done =
              statement.executeQuery(
                  "select \"version\" from \""
                      + TABLE
                      + "\" where \"success\" and \"version\" is not null"
                      + " order by \"installed_rank\" desc")) {
        return done.next() ? Integer.parseInt(done.getString(1)) : 0;
      }
    }
  }
}
