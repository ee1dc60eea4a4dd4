package crumbtrail.bakelog.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.jdbi.v3.core.Handle;

/**
 * What is left for the moment at which nobody uses the log: a deleted bake stands in the file until
 * the room is used again, and whoever deletes wants it gone.
 */
final class Chores {
  private static final String WIPE = "wipe";

  private Chores() {}

  /** Notes that there is something to wipe. */
  static void wipe(Handle handle) {
    handle.execute(
        "insert into chore (name) select '"
            + WIPE
            + "' from (select count(*) as due from chore where name = '"
            + WIPE
            + "') c where c.due = 0");
  }

  /** Writes an embedded log anew if something was deleted and nobody else has it open. */
  static void done(Connection last) throws SQLException {
    try (Statement statement = last.createStatement()) {
      if (number(statement, "select count(*) from information_schema.sessions") > 1
          || statement.executeUpdate("delete from chore where name = '" + WIPE + "'") == 0) {
        return;
      }
      statement.execute("shutdown defrag");
    }
  }

  private static int number(Statement statement, String sql) throws SQLException {
    try (ResultSet row = statement.executeQuery(sql)) {
      row.next();
      return row.getInt(1);
    }
  }
}
