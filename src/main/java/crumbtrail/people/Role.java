package crumbtrail.people;

/** What somebody may do beyond keeping bakes of their own. */
public enum Role {
  /** Nothing beyond. */
  BAKER,
  /** Makes classes, and sees the bakes that were given to them. */
  TEACHER,
  /** Sees all bakes and looks after the accounts. */
  KEEPER
}
