package crumbtrail.findings;

import crumbtrail.knowledge.ActingTogether;
import crumbtrail.knowledge.Catalogue;
import java.util.List;

/**
 * The smallest story that accounts for everything seen.
 *
 * @param causes the causes that it takes, likeliest first; the first in the ranking alone where no
 *     sign was seen, none where nothing is suspected
 * @param probability how likely it is that all of them were at work, 0 to 1
 * @param joint which of them are known to act together
 */
public record Together(List<Finding> causes, double probability, List<ActingTogether> joint) {
  /** How much likelier a cause is beside one with which it is known to act: odds of two (ours). */
  private static final double LIFT = 2;

  public Together {
    causes = List.copyOf(causes);
    joint = List.copyOf(joint);
  }

  /** The story of these findings. */
  public static Together of(Catalogue catalogue, Findings findings) {
    List<ActingTogether> pairs = catalogue.knowledge().actingTogether();
    List<Finding> causes = Cover.of(findings.ranked(), findings.explained(), pairs);
    List<String> keys = causes.stream().map(one -> one.cause().key()).toList();
    List<ActingTogether> joint =
        pairs.stream().filter(pair -> keys.containsAll(pair.causes())).toList();
    return new Together(causes, probability(causes, joint), joint);
  }

  /** Keys of the causes. */
  public List<String> keys() {
    return causes.stream().map(one -> one.cause().key()).toList();
  }

  // Each by itself, but that a cause which stands further down than its partner gains by it.
  private static double probability(List<Finding> causes, List<ActingTogether> joint) {
    double all = causes.isEmpty() ? 0 : 1;
    for (int place = 0; place < causes.size(); place++) {
      String key = causes.get(place).cause().key();
      List<String> before =
          causes.subList(0, place).stream().map(one -> one.cause().key()).toList();
      boolean lifted =
          joint.stream()
              .anyMatch(
                  pair ->
                      pair.causes().contains(key)
                          && pair.causes().stream().anyMatch(before::contains));
      double one = causes.get(place).probability();
      all *= lifted ? LIFT * one / (1 - one + LIFT * one) : one;
    }
    return all;
  }
}
