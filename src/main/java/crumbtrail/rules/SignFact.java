package crumbtrail.rules;

import crumbtrail.sheet.BakeSheet.Degree;

/**
 * A sign that the baker saw, or looked for and did not see.
 *
 * @param name the catalogue key as rule sentences write it, with spaces
 * @param seen false if the baker rules it out
 * @param degree how marked
 * @param words what the baker said
 */
public record SignFact(String name, boolean seen, Degree degree, String words) {

  /** Whether the sign was seen, and markedly so. */
  public boolean marked() {
    return seen && degree == Degree.MARKED;
  }
}
