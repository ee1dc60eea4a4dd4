package crumbtrail.people;

/**
 * Somebody who keeps bakes.
 *
 * @param id the number under which their bakes are kept
 * @param name as they gave it; empty where only one person keeps the log
 * @param role what they may do
 */
public record Person(long id, String name, Role role) {

  /** Who keeps a log that nobody else shares. */
  public static final Person ALONE = new Person(1, "", Role.BAKER);

  /** Whether they may do what somebody of this role may. */
  public boolean may(Role wanted) {
    return role.compareTo(wanted) >= 0;
  }
}
