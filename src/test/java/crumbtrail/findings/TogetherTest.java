package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.ActingTogether;
import crumbtrail.knowledge.Calibration;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.Prior;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TogetherTest {
  private static final ActingTogether PAIR =
      new ActingTogether("pair", List.of("long", "warm"), "They multiply.", "common practice");

  /** Even odds for the second, doubled beside its partner: 2/3. The first: 10/11. */
  @Test
  void causes_that_act_together_are_told_and_likelier_together() {
    Findings findings =
        new Findings(List.of(finding("warm", 10, "dense"), finding("long", 0, "pale")), List.of());

    Together together = Together.of(catalogue(List.of(PAIR)), findings);

    assertThat(together.keys()).containsExactly("warm", "long");
    assertThat(together.joint()).containsExactly(PAIR);
    assertThat(together.probability()).isCloseTo(10 / 11.0 * 2 / 3, within(1e-9));
  }

  @Test
  void causes_that_are_strangers_are_each_as_likely_as_alone() {
    Findings findings =
        new Findings(List.of(finding("warm", 10, "dense"), finding("long", 0, "pale")), List.of());

    Together together = Together.of(catalogue(List.of()), findings);

    assertThat(together.joint()).isEmpty();
    assertThat(together.probability()).isCloseTo(10 / 11.0 / 2, within(1e-9));
  }

  @Test
  void of_nothing_no_story_is_told() {
    Together together = Together.of(catalogue(List.of(PAIR)), new Findings(List.of(), List.of()));

    assertThat(together.keys()).isEmpty();
    assertThat(together.probability()).isZero();
  }

  private static Catalogue catalogue(List<ActingTogether> pairs) {
    return new Catalogue(
        new Knowledge(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Map.of(),
            List.of(),
            Calibration.NONE,
            List.of(),
            pairs));
  }

  private static Finding finding(String key, double decibans, String... explains) {
    Cause cause =
        new Cause(
            key, key, "proof", Prior.COMMON, List.of(), List.of(), "", "", "", "", List.of("x"));
    return new Finding(cause, decibans, List.of(), List.of(explains));
  }
}
