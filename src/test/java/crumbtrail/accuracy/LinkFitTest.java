package crumbtrail.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.accuracy.LinkFit.Observation;
import crumbtrail.findings.Link.Standing;
import crumbtrail.knowledge.Calibration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LinkFitTest {
  /** Claims drawn from a known link give that link back, within what chance allows. */
  @Test
  void a_known_link_is_found_again() {
    Calibration known = Calibration.NONE.withLink(-10, -0.5, 0.8, 1.5, 0.7);
    Random random = new Random(7);
    List<List<Observation>> bakes = new ArrayList<>();
    for (int bake = 0; bake < 2000; bake++) {
      List<Observation> lines = new ArrayList<>();
      for (int line = 0; line < 5; line++) {
        Standing standing =
            new Standing(random.nextDouble(-2, 2), random.nextDouble(-2, 1), line == 0);
        lines.add(new Observation(standing, random.nextDouble() < standing.probability(known)));
      }
      bakes.add(lines);
    }

    Calibration found = LinkFit.fit(Calibration.NONE, bakes);

    assertThat(found.base()).isCloseTo(-0.5, within(0.1));
    assertThat(found.sum()).isCloseTo(0.8, within(0.1));
    assertThat(found.lead()).isCloseTo(1.5, within(0.1));
    assertThat(found.first()).isCloseTo(0.7, within(0.15));
  }

  @Test
  void a_higher_sum_never_means_a_smaller_probability() {
    List<Observation> upsideDown = new ArrayList<>();
    for (int nth = 0; nth < 50; nth++) {
      upsideDown.add(new Observation(new Standing(1, 1, true), false));
      upsideDown.add(new Observation(new Standing(-1, -1, false), true));
    }
    Calibration found = LinkFit.fit(Calibration.NONE, List.of(upsideDown));

    assertThat(found.sum()).isZero();
    assertThat(found.lead()).isZero();
  }

  @Test
  void no_bakes_give_a_link_all_the_same() {
    Calibration found = LinkFit.fit(Calibration.NONE, List.of());

    assertThat(found.base()).isFinite();
    assertThat(found.lead()).isFinite();
  }
}
