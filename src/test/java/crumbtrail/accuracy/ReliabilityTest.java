package crumbtrail.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.accuracy.Reliability.Claim;
import crumbtrail.accuracy.Reliability.Row;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand. The Brier score is as G. W. Brier gave it (1950), for two outcomes, halved. */
class ReliabilityTest {
  private static final List<Claim> CLAIMS =
      List.of(
          new Claim(0.9, true), new Claim(0.9, true), new Claim(0.9, false), new Claim(0.2, false));

  @Test
  void the_brier_score_is_the_mean_square_of_what_was_off() {
    // (0.01 + 0.01 + 0.81 + 0.04) / 4
    assertThat(Reliability.brier(CLAIMS)).isCloseTo(0.2175, within(1e-12));
  }

  @Test
  void claims_are_held_against_what_came_true_tenth_by_tenth() {
    assertThat(Reliability.byTenths(CLAIMS)).hasSize(2);
    Row high = Reliability.byTenths(CLAIMS).get(1);
    assertThat(high.claims()).isEqualTo(3);
    assertThat(high.stated()).isCloseTo(0.9, within(1e-12));
    assertThat(high.right()).isCloseTo(2 / 3.0, within(1e-12));
    // 3/4 of (0.9 - 2/3) and 1/4 of 0.2
    assertThat(Reliability.error(Reliability.byTenths(CLAIMS)))
        .isCloseTo(0.75 * (0.9 - 2 / 3.0) + 0.05, within(1e-12));
  }

  @Test
  void groups_hold_as_many_claims_each() {
    assertThat(Reliability.inGroups(CLAIMS, 2)).extracting(Row::claims).containsExactly(2, 2);
    assertThat(Reliability.byTenths(List.of(new Claim(1, true)))).hasSize(1);
  }
}
