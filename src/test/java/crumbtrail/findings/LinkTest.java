package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.Calibration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LinkTest {
  private static final Calibration FITTED = new Calibration(1, 0, 1, -10, 0.4, 0.1, 2, 1);

  @Test
  void the_lead_is_the_height_above_all_others_together() {
    // Odds 10, 1 and 1: the first stands 10 to 2 above the field, 6.99 decibans.
    Link.Standing[] standings = Link.standings(-300, new double[] {10, 0, 0});

    assertThat(standings[0].sum()).isEqualTo(1);
    assertThat(standings[0].lead()).isCloseTo(Math.log10(5), within(1e-3));
    assertThat(standings[1].lead()).isCloseTo(-Math.log10(11), within(1e-3));
  }

  @Test
  void without_calibration_a_sum_is_a_log_odds() {
    assertThat(Link.standings(-30, new double[] {0, 0})[0].probability(Calibration.NONE))
        .isCloseTo(0.5, within(1e-9));
    assertThat(Link.standings(-30, new double[] {10, 0})[0].probability(Calibration.NONE))
        .isCloseTo(10 / 11.0, within(1e-9));
  }

  @Test
  void a_lone_faint_suspicion_is_held_against_what_no_rule_speaks_of() {
    // -10 decibans against -4: odds 0.1 to 0.398.
    assertThat(Link.standings(-4, new double[] {-10})[0].lead()).isCloseTo(-0.6, within(1e-9));
  }

  @Property
  void a_likelier_cause_never_gets_the_smaller_probability(
      @ForAll @Size(min = 2, max = 8) double @DoubleRange(min = -60, max = 60) [] sums) {
    Link.Standing[] standings = Link.standings(FITTED.unnamed(), sums);
    for (int one = 0; one < sums.length; one++) {
      for (int other = 0; other < sums.length; other++) {
        if (sums[one] >= sums[other]) {
          assertThat(standings[one].probability(FITTED))
              .isGreaterThanOrEqualTo(standings[other].probability(FITTED) - 1e-12)
              .isBetween(0.0, 1.0);
        }
      }
    }
  }
}
