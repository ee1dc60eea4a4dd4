package crumbtrail.trends;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * How well the ranking agreed with what bakers confirmed afterwards.
 *
 * @param bakes of which a cause was confirmed and a ranking is known
 * @param first bakes of which the first cause of the ranking was confirmed
 * @param three bakes of which one of the first three was
 * @param brier mean square of the difference between the probability of each cause that was named
 *     and what turned out, 0 to 1; the score of Brier (1950)
 * @param bands by tens of percent of probability: how many causes were named with it, and how many
 *     of them were confirmed
 */
public record Foretold(int bakes, int first, int three, double brier, Map<Integer, Band> bands) {
  private static final int FEW = 3;
  private static final int TENS = 10;

  public Foretold {
    bands = Map.copyOf(bands);
  }

  /**
   * One bake.
   *
   * @param named causes of the ranking with their probability, likeliest first
   * @param confirmed keys of the causes that the baker confirmed, at least one
   */
  public record Bake(List<Named> named, Set<String> confirmed) {
    public Bake {
      named = List.copyOf(named);
      confirmed = Set.copyOf(confirmed);
    }
  }

  /**
   * Causes named with about the same probability.
   *
   * @param named how many
   * @param expected sum of their probabilities: so many should be confirmed
   * @param confirmed so many were
   */
  public record Band(int named, double expected, int confirmed) {
    private Band and(double probability, boolean right) {
      return new Band(named + 1, expected + probability, confirmed + (right ? 1 : 0));
    }
  }

  /** Counts some bakes; those without a ranking or without a confirmed cause are left out. */
  public static Foretold of(List<Bake> bakes) {
    int counted = 0;
    int first = 0;
    int three = 0;
    int named = 0;
    double squares = 0;
    Map<Integer, Band> bands = new TreeMap<>();
    for (Bake bake : bakes) {
      if (bake.named().isEmpty() || bake.confirmed().isEmpty()) {
        continue;
      }
      counted++;
      first += right(bake, 1);
      three += right(bake, FEW);
      for (Named one : bake.named()) {
        boolean right = bake.confirmed().contains(one.cause());
        double off = one.probability() - (right ? 1 : 0);
        squares += off * off;
        named++;
        int tenth = Math.min(TENS - 1, (int) (one.probability() * TENS));
        bands.merge(
            tenth,
            new Band(0, 0, 0).and(one.probability(), right),
            (band, more) -> band.and(one.probability(), right));
      }
    }
    return new Foretold(counted, first, three, named == 0 ? 0 : squares / named, bands);
  }

  private static int right(Bake bake, int most) {
    return bake.named().stream().limit(most).anyMatch(one -> bake.confirmed().contains(one.cause()))
        ? 1
        : 0;
  }
}
