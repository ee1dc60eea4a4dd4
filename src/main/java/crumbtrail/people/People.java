package crumbtrail.people;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The accounts, log-ins and classes of a log that several people share. Safe for many threads, and
 * for many programs on one store. What changes something returns when the change is on disk.
 */
public interface People {
  /** How long a log-in holds while nothing is asked for. */
  Duration IDLE = Duration.ofHours(12);

  /** How long it holds at most. */
  Duration LONGEST = Duration.ofDays(30);

  /**
   * Makes an account. The first one of a log takes over the bakes that were kept before there were
   * any.
   *
   * @param name as {@link Names#kept} has it
   * @param secret hash of the password
   * @return empty if there is somebody of this name
   */
  Optional<Person> add(String name, Role role, String secret);

  /** The account of this name, however its letters are written. */
  Optional<Account> account(String name);

  /** The account of this number. */
  Optional<Account> account(long person);

  /** Everybody, in the order of their names; a part of them. */
  List<Person> everybody(int most, int after);

  /** Gives somebody another password. */
  boolean secret(long person, String secret);

  /** Gives somebody another role. Not if that would leave the log without a keeper. */
  boolean role(long person, Role role);

  /**
   * Deletes somebody for good: account, log-ins, bakes and photos. Bakes that others gave to their
   * classes stay with those others. Not if that would leave the log without a keeper while there
   * are others.
   *
   * @return whether it was done
   */
  boolean delete(long person);

  /** Logs somebody in. */
  void begin(String tokenHash, long person, Instant now);

  /** Whoever is logged in with this token. */
  Optional<Person> loggedIn(String tokenHash, Instant now);

  /** Logs somebody out. */
  void end(String tokenHash);

  /**
   * Logs somebody out everywhere.
   *
   * @param except the hash of the token with which they stay logged in, null for none
   */
  void endAll(long person, @Nullable String except);

  /** Makes a class that bakers can join with this code. */
  SchoolClass make(String name, long teacher, String code);

  /** The classes of a teacher. */
  List<SchoolClass> taughtBy(long teacher);

  /** The classes to which a baker belongs. */
  List<SchoolClass> joinedBy(long baker);

  /** The class of this number. */
  Optional<SchoolClass> schoolClass(long id);

  /** The class that is joined with this code. */
  Optional<SchoolClass> byCode(String code);

  /** Gives a class another code, or closes it where there is none. */
  boolean code(long schoolClass, @Nullable String code);

  /** Takes a baker into a class. */
  void join(long schoolClass, long baker);

  /** Takes a baker out of a class; the bakes that they gave to it are theirs alone again. */
  void leave(long schoolClass, long baker);

  /** The bakers of a class, in the order of their names. */
  List<Person> members(long schoolClass);

  /** Ends a class; bakes that were given to it are their bakers' alone again. */
  boolean end(long schoolClass);

  /**
   * Counts one more of something that may be done so often.
   *
   * @param name what, and by whom
   * @return how long to wait until it is allowed; empty if it is
   */
  Optional<Duration> take(String name, Rate rate, Instant now);

  /** Forgets what was counted. */
  void forgive(String name);
}
