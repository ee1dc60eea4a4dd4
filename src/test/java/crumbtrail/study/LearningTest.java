package crumbtrail.study;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.rules.RuleBase;
import crumbtrail.trends.Foretold;
import crumbtrail.trends.KitchenOdds;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What learning is worth, on invented kitchens with fixed seeds: each of the common causes is the
 * frequent one in one kitchen; what was learnt from its judged bakes is tried on bakes that it has
 * not seen. The figures stand in docs/operations.md.
 */
class LearningTest {
  private static final int JUDGED = 60;
  private static final int HELD_OUT = 150;

  private static final InventedKitchen KITCHENS = new InventedKitchen(RuleBase.bundled(), 7);

  /** The same bakes foretold without what was learnt and with it. */
  private record Tried(Foretold without, Foretold with) {}

  private static Tried tried(double times) {
    List<Foretold.Bake> without = new ArrayList<>();
    List<Foretold.Bake> with = new ArrayList<>();
    int seed = 1000;
    for (String frequent : KITCHENS.common()) {
      Random random = new Random(seed++);
      List<InventedKitchen.Loaf> judged = KITCHENS.bakes(JUDGED, frequent, times, random);
      List<InventedKitchen.Loaf> unseen = KITCHENS.bakes(HELD_OUT, frequent, times, random);
      Map<String, Double> odds = new HashMap<>();
      KitchenOdds.of(KITCHENS.judged(judged, Map.of()))
          .forEach((cause, learnt) -> odds.put(cause, learnt.decibans()));
      without.addAll(KITCHENS.judged(unseen, Map.of()));
      with.addAll(KITCHENS.judged(unseen, odds));
    }
    return new Tried(Foretold.of(without), Foretold.of(with));
  }

  @Test
  void where_a_cause_is_three_times_as_frequent_unseen_bakes_are_foretold_better() {
    Tried tried = tried(3);

    assertThat(tried.with().brier()).isLessThan(tried.without().brier() - 0.001);
    assertThat(tried.with().first()).isGreaterThan(tried.without().first());
    assertThat(tried.with().three()).isGreaterThan(tried.without().three());
  }

  @Test
  void a_kitchen_like_all_others_is_not_made_worse() {
    Tried tried = tried(1);

    // The standard error of the difference is about 0.0006, and one bake in a hundred.
    assertThat(tried.with().brier()).isLessThan(tried.without().brier() + 0.0012);
    assertThat(tried.with().first())
        .isGreaterThan(tried.without().first() - tried.without().bakes() / 100);
  }
}
