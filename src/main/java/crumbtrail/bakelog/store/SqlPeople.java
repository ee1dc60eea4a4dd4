package crumbtrail.bakelog.store;

import crumbtrail.people.Account;
import crumbtrail.people.People;
import crumbtrail.people.Person;
import crumbtrail.people.Rate;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** People in a database: each kind of thing has a room of its own. */
final class SqlPeople implements People {
  private final SqlAccounts accounts;
  private final SqlSessions sessions;
  private final SqlClasses classes;
  private final SqlLimits limits;

  SqlPeople(Work work) {
    this.accounts = new SqlAccounts(work);
    this.sessions = new SqlSessions(work);
    this.classes = new SqlClasses(work);
    this.limits = new SqlLimits(work);
  }

  @Override
  public Optional<Person> add(String name, Role role, String secret) {
    return accounts.add(name, role, secret);
  }

  @Override
  public Optional<Account> account(String name) {
    return accounts.account(name);
  }

  @Override
  public Optional<Account> account(long person) {
    return accounts.account(person);
  }

  @Override
  public List<Person> everybody(int most, int after) {
    return accounts.everybody(most, after);
  }

  @Override
  public boolean secret(long person, String secret) {
    return accounts.secret(person, secret);
  }

  @Override
  public boolean role(long person, Role role) {
    return accounts.role(person, role);
  }

  @Override
  public boolean delete(long person) {
    return accounts.delete(person);
  }

  @Override
  public void begin(String tokenHash, long person, Instant now) {
    sessions.begin(tokenHash, person, now);
  }

  @Override
  public Optional<Person> loggedIn(String tokenHash, Instant now) {
    return sessions.loggedIn(tokenHash, now);
  }

  @Override
  public void end(String tokenHash) {
    sessions.end(tokenHash);
  }

  @Override
  public void endAll(long person, @Nullable String except) {
    sessions.endAll(person, except);
  }

  @Override
  public SchoolClass make(String name, long teacher, String code) {
    return classes.make(name, teacher, code);
  }

  @Override
  public List<SchoolClass> taughtBy(long teacher) {
    return classes.taughtBy(teacher);
  }

  @Override
  public List<SchoolClass> joinedBy(long baker) {
    return classes.joinedBy(baker);
  }

  @Override
  public Optional<SchoolClass> schoolClass(long id) {
    return classes.schoolClass(id);
  }

  @Override
  public Optional<SchoolClass> byCode(String code) {
    return classes.byCode(code);
  }

  @Override
  public boolean code(long schoolClass, @Nullable String code) {
    return classes.code(schoolClass, code);
  }

  @Override
  public void join(long schoolClass, long baker) {
    classes.join(schoolClass, baker);
  }

  @Override
  public void leave(long schoolClass, long baker) {
    classes.leave(schoolClass, baker);
  }

  @Override
  public List<Person> members(long schoolClass) {
    return classes.members(schoolClass);
  }

  @Override
  public boolean end(long schoolClass) {
    return classes.end(schoolClass);
  }

  @Override
  public Optional<Duration> take(String name, Rate rate, Instant now) {
    return limits.take(name, rate, now);
  }

  @Override
  public void forgive(String name) {
    limits.forgive(name);
  }
}
