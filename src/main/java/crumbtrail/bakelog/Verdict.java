package crumbtrail.bakelog;

/** What the baker found out about a cause. */
public enum Verdict {
  /** It was at work. */
  CONFIRMED,
  /** It was not at work. */
  RULED_OUT
}
