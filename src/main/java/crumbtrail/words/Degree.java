package crumbtrail.words;

/** How strongly something was said. */
public enum Degree {
  /** "slightly", "a bit", "not very". */
  SLIGHT,
  /** No word of degree. */
  PLAIN,
  /** "very", "extremely", "not at all". */
  MARKED
}
