package crumbtrail.trends;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.trends.Foretold.Bake;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Sums by hand. */
class ForetoldTest {
  private static final Bake RIGHT =
      new Bake(List.of(new Named("a", 0.8), new Named("b", 0.3)), Set.of("a"));
  private static final Bake SECOND =
      new Bake(List.of(new Named("a", 0.7), new Named("b", 0.2)), Set.of("b"));

  @Test
  void the_ranking_is_held_against_what_was_confirmed() {
    Foretold foretold = Foretold.of(List.of(RIGHT, SECOND));

    assertThat(foretold.bakes()).isEqualTo(2);
    assertThat(foretold.first()).isEqualTo(1);
    assertThat(foretold.three()).isEqualTo(2);
    // 0.2 squared, 0.3 squared, 0.7 squared, 0.8 squared, over four.
    assertThat(foretold.brier()).isCloseTo((0.04 + 0.09 + 0.49 + 0.64) / 4, within(1e-12));
  }

  @Test
  void causes_named_alike_are_counted_together() {
    Foretold foretold = Foretold.of(List.of(RIGHT, SECOND, RIGHT));

    assertThat(foretold.bands().get(8)).isEqualTo(new Foretold.Band(2, 1.6, 2));
    assertThat(foretold.bands().get(7)).isEqualTo(new Foretold.Band(1, 0.7, 0));
    assertThat(foretold.bands()).doesNotContainKey(5);
  }

  @Test
  void bakes_that_nobody_judged_say_nothing() {
    Foretold foretold =
        Foretold.of(
            List.of(
                new Bake(List.of(new Named("a", 1)), Set.of()), new Bake(List.of(), Set.of("a"))));

    assertThat(foretold.bakes()).isZero();
    assertThat(foretold.brier()).isZero();
    assertThat(foretold.bands()).isEmpty();
  }
}
