package crumbtrail.bakelog.store;

import crumbtrail.people.Account;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.argument.Argument;

/** What the tables of people have in common. */
final class PeopleRows {
  static final String PERSON =
      "select a.baker_id, b.name, a.role, a.secret from account a join baker b on b.id = a.baker_id";

  private PeopleRows() {}

  static long number(Handle handle, String sql, Object... values) {
    return handle.select(sql, values).mapTo(Long.class).one();
  }

  static Account account(ResultSet row) throws SQLException {
    return new Account(
        new Person(
            row.getLong("baker_id"), row.getString("name"), Role.valueOf(row.getString("role"))),
        row.getString("secret"));
  }

  static Argument time(Instant instant) {
    return Rows.exactly(instant.atOffset(ZoneOffset.UTC));
  }
}
