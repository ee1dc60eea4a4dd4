package crumbtrail.cli.interview;

/**
 * A question of the talk by which a bake sheet is written.
 *
 * @param stage heading under which it is asked; its first question shows it
 * @param key its place on the sheet, with points: "process.mixing.time"
 * @param ask the question
 * @param example an answer that would do
 * @param kind what is answered
 */
record Question(String stage, String key, String ask, String example, Kind kind) {

  /** What is answered. */
  enum Kind {
    /** One line of words or one amount. */
    LINE,
    /** Yes or no. */
    YES_NO,
    /** The kind of bread. */
    STYLE,
    /** A whole recipe, line by line. */
    RECIPE,
    /** Stages of time and temperature, one a line. */
    STAGES,
    /** What was seen or done, in plain words, one a line. */
    WORDS
  }

  /** Whether several lines are typed, up to an empty one. */
  boolean many() {
    return kind == Kind.RECIPE || kind == Kind.STAGES || kind == Kind.WORDS;
  }
}
