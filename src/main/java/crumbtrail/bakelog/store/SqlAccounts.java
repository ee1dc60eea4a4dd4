package crumbtrail.bakelog.store;

import crumbtrail.bakelog.LogFault;
import crumbtrail.people.Account;
import crumbtrail.people.Names;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Accounts in a database. */
final class SqlAccounts {
  private final Work work;

  SqlAccounts(Work work) {
    this.work = work;
  }

  Optional<Person> add(String name, Role role, String secret) {
    try {
      return work.write(handle -> added(handle, name, role, secret));
    } catch (LogFault fault) {
      // Somebody else may have taken the name in the same moment.
      if (account(name).isPresent()) {
        return Optional.empty();
      }
      throw fault;
    }
  }

  private static Optional<Person> added(Handle handle, String name, Role role, String secret) {
    if (PeopleRows.number(
            handle, "select count(*) from account where name_key = ?", Names.key(name))
        > 0) {
      return Optional.empty();
    }
    boolean first = PeopleRows.number(handle, "select count(*) from account") == 0;
    long id =
        first && PeopleRows.number(handle, "select count(*) from baker where id = 1") == 1
            ? 1
            : handle
                .createUpdate("insert into baker (name) values (:name)")
                .bind("name", name)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    handle.execute("update baker set name = ? where id = ?", name, id);
    handle.execute(
        "insert into account (baker_id, name_key, role, secret, made) values (?, ?, ?, ?, ?)",
        id,
        Names.key(name),
        role.name(),
        secret,
        PeopleRows.time(Instant.now()));
    return Optional.of(new Person(id, name, role));
  }

  Optional<Account> account(String name) {
    return work.read(
        handle ->
            handle
                .select(PeopleRows.PERSON + " where a.name_key = ?", Names.key(name))
                .map((row, context) -> PeopleRows.account(row))
                .findOne());
  }

  Optional<Account> account(long person) {
    return work.read(
        handle ->
            handle
                .select(PeopleRows.PERSON + " where a.baker_id = ?", person)
                .map((row, context) -> PeopleRows.account(row))
                .findOne());
  }

  List<Person> everybody(int most, int after) {
    return work.read(
        handle ->
            handle
                .select(PeopleRows.PERSON + " order by a.name_key limit ? offset ?", most, after)
                .map((row, context) -> PeopleRows.account(row).person())
                .list());
  }

  boolean secret(long person, String secret) {
    return changed("update account set secret = ? where baker_id = ?", secret, person);
  }

  boolean role(long person, Role role) {
    return work.write(
        handle ->
            !(role != Role.KEEPER && lastKeeper(handle, person))
                && handle.execute(
                        "update account set role = ? where baker_id = ?", role.name(), person)
                    > 0);
  }

  // All keepers are locked, so that two of them cannot leave at the same moment.
  private static boolean lastKeeper(Handle handle, long person) {
    List<Long> keepers =
        handle
            .select("select baker_id from account where role = ? for update", Role.KEEPER.name())
            .mapTo(Long.class)
            .list();
    return keepers.equals(List.of(person));
  }

  boolean delete(long person) {
    return work.write(
        handle -> {
          boolean alone = PeopleRows.number(handle, "select count(*) from account") == 1;
          if (!alone && lastKeeper(handle, person)) {
            return false;
          }
          if (handle.execute("delete from account where baker_id = ?", person) == 0) {
            return false;
          }
          handle
              .select("select id from school_class where teacher_id = ?", person)
              .mapTo(Long.class)
              .list()
              .forEach(one -> SqlClasses.ended(handle, one));
          handle.execute("delete from bake where owner_id = ?", person);
          handle.execute("delete from baker where id = ?", person);
          // The commands of a log of one person want their baker.
          if (person == 1) {
            handle.execute("insert into baker (id, name) values (1, '')");
          }
          Chores.wipe(handle);
          return true;
        });
  }

  private boolean changed(String sql, Object... values) {
    return work.write(handle -> handle.execute(sql, values) > 0);
  }
}
