package crumbtrail.bakelog;

/** Why the log cannot be used, in words for the person who keeps it. */
public final class LogFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What kind of trouble it is. */
  public enum Kind {
    /** Another program has it and does not share it. */
    IN_USE,
    /** The file is no log, or a broken one. */
    DAMAGED,
    /** There is no room left. */
    FULL,
    /** The file or its folder may not be read or written. */
    FORBIDDEN,
    /** The server does not answer, or no longer. */
    UNREACHABLE,
    /** The server does not let us in. */
    REFUSED,
    /** A later version of this program has written it. */
    NEWER,
    /** The place is not written as it must be. */
    MISNAMED,
    /** Something else. */
    OTHER
  }

  private final Kind kind;
  private final String remedy;

  /**
   * @param where which log
   * @param what what is wrong with it, the rest of a sentence that begins with it
   * @param remedy what would do, a sentence
   */
  public LogFault(Kind kind, String where, String what, String remedy, Throwable cause) {
    super("The bake log " + where + " " + what + ".", cause);
    this.kind = kind;
    this.remedy = remedy;
  }

  /** What kind of trouble it is. */
  public Kind kind() {
    return kind;
  }

  /** What would do. */
  public String remedy() {
    return remedy;
  }
}
