package crumbtrail.people;

/**
 * An account, with what its password is checked against.
 *
 * @param person whose it is
 * @param secret hash of the password, as {@link Passwords} writes it
 */
public record Account(Person person, String secret) {

  // A hash in a log of the server would be one to try passwords on.
  @Override
  public String toString() {
    return "account of " + person;
  }
}
