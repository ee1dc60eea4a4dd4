package crumbtrail.trends;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.trends.Foretold.Bake;
import crumbtrail.trends.KitchenOdds.Learnt;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/**
 * The mean of a beta distribution after so many successes: (a + s) / (a + b + n), any textbook on
 * conjugate priors.
 */
class KitchenOddsTest {
  @Test
  void a_cause_that_comes_up_as_often_as_foretold_is_not_moved() {
    Learnt learnt = KitchenOdds.of(3, 3, 30);

    assertThat(learnt.share()).isCloseTo(0.1, within(1e-12));
    assertThat(learnt.decibans()).isCloseTo(0, within(1e-9));
  }

  @Test
  void what_was_confirmed_counts_bake_for_bake_against_four_cases_as_foretold() {
    // Beta(4, 36) has the mean 0.1; then 8 of 20: 12 of 60.
    Learnt learnt = KitchenOdds.of(2, 8, 20);

    assertThat(learnt.before()).isCloseTo(0.1, within(1e-12));
    assertThat(learnt.share()).isCloseTo(0.2, within(1e-12));
    assertThat(learnt.decibans()).isCloseTo(10 * Math.log10(0.25 / (0.1 / 0.9)), within(1e-9));
  }

  @Property
  void another_confirmed_bake_never_lowers_the_odds_and_one_more_foretold_never_raises_them(
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.9) double share,
      @ForAll @IntRange(max = 199) int confirmed) {
    int judged = 200;
    double foretold = share * judged;
    Learnt now = KitchenOdds.of(foretold, confirmed, judged);

    assertThat(KitchenOdds.of(foretold, confirmed + 1, judged).decibans())
        .isGreaterThanOrEqualTo(now.decibans());
    assertThat(KitchenOdds.of(foretold + 1, confirmed, judged).decibans())
        .isLessThanOrEqualTo(now.decibans() + 1e-9);
    assertThat(Math.abs(now.decibans())).isLessThanOrEqualTo(KitchenOdds.MOST);
  }

  @Test
  void every_cause_is_learnt_of_that_was_named_or_confirmed() {
    Bake seldomRight =
        new Bake(
            List.of(new Named("over-proofed", 0.6), new Named("salt-omitted", 0.2)),
            Set.of("oven-too-cool"));
    Map<String, Learnt> learnt =
        KitchenOdds.of(
            List.of(
                seldomRight,
                seldomRight,
                new Bake(List.of(new Named("over-proofed", 0.9)), Set.of()),
                new Bake(List.of(), Set.of("over-proofed"))));

    assertThat(learnt).containsOnlyKeys("over-proofed", "salt-omitted", "oven-too-cool");
    assertThat(learnt.get("over-proofed").foretold()).isCloseTo(1.2, within(1e-12));
    assertThat(learnt.get("over-proofed").confirmed()).isZero();
    assertThat(learnt.get("over-proofed").decibans()).isNegative();
    assertThat(learnt.get("oven-too-cool").confirmed()).isEqualTo(2);
    assertThat(learnt.get("oven-too-cool").decibans()).isPositive();
  }

  @Test
  void more_confirmed_or_foretold_than_judged_is_refused() {
    assertThatThrownBy(() -> KitchenOdds.of(0.1, 3, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3 confirmed of 2");
    assertThatThrownBy(() -> KitchenOdds.of(2.5, 1, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
