package crumbtrail.knowledge;

import java.util.Collection;
import java.util.Comparator;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** What was probably meant. */
public final class Nearest {
  private static final JaroWinklerSimilarity LIKENESS = new JaroWinklerSimilarity();

  private Nearest() {}

  /**
   * The known word most like the one that was written; of two equally like, the first by name.
   *
   * @return "none" if nothing is known
   */
  public static String of(String said, Collection<String> known) {
    return known.stream()
        .sorted()
        .max(Comparator.comparingDouble((String name) -> LIKENESS.apply(said, name)))
        .orElse("none");
  }
}
