package crumbtrail.words;

import java.util.List;
import java.util.Set;

/**
 * Parts "overproofed" into "over" and "proofed", and joins "non-stick", so that every way of
 * writing it is one.
 */
final class Compounds {
  /** What "non" makes a word of its own of: a non-stick tin is a kind of tin, no tin let go. */
  static final Set<String> NON = Set.of("stick", "sticking", "existent");

  private static final List<String> PREFIXES = List.of("over", "under");
  private static final int SHORTEST_REST = 4;
  private static final Set<String> WHOLE =
      Set.of(
          "overall",
          "overnight",
          "overslept",
          "overcame",
          "overcome",
          "overlap",
          "overlapping",
          "overlapped",
          "overtime",
          "overhead",
          "underneath",
          "understand",
          "understood",
          "undercarriage",
          "underside",
          "undersides",
          "undersized",
          "oversized",
          "oversize",
          "overdone",
          "underdone",
          "overflow",
          "overflowed",
          "overflowing",
          "overflows",
          "overpowering",
          "overhang",
          "overhanging",
          "overhung",
          "overblown",
          "underway",
          "undertaken",
          "undertake",
          "overdo");

  private Compounds() {}

  /** Where the second half begins, or 0 if the word stays whole. */
  static int cut(String word) {
    if (!WHOLE.contains(word)) {
      for (String prefix : PREFIXES) {
        if (word.startsWith(prefix) && word.length() >= prefix.length() + SHORTEST_REST) {
          return prefix.length();
        }
      }
    }
    return 0;
  }
}
