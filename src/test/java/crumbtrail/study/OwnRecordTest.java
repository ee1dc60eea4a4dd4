package crumbtrail.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.study.OwnRecord.Band;
import crumbtrail.study.OwnRecord.Share;
import crumbtrail.trends.Foretold;
import crumbtrail.trends.Foretold.Bake;
import crumbtrail.trends.Named;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Sums by hand; Wilson's interval by its formula, z = 1.96. */
class OwnRecordTest {
  private static final Bake RIGHT =
      new Bake(List.of(new Named("a", 0.8), new Named("b", 0.3)), Set.of("a"));
  private static final Bake WRONG =
      new Bake(List.of(new Named("a", 0.7), new Named("b", 0.2)), Set.of("c"));

  @Test
  void a_share_has_the_interval_of_wilson() {
    // Half of ten: 0.5 +- 1.96 / (1 + 0.38416) * sqrt(0.025 + 0.009604).
    assertThat(Share.of(5, 10).low()).isCloseTo(0.2366, within(1e-4));
    assertThat(Share.of(5, 10).high()).isCloseTo(0.7634, within(1e-4));
    // None of ten: z squared over n plus z squared.
    assertThat(Share.of(0, 10).low()).isZero();
    assertThat(Share.of(0, 10).high()).isCloseTo(3.8416 / 13.8416, within(1e-6));
    assertThat(Share.of(0, 0)).isEqualTo(new Share(0, 0, 1));
  }

  @Test
  void the_record_counts_and_compares_with_one_opinion_for_all() {
    OwnRecord record = OwnRecord.of(Foretold.of(List.of(RIGHT, WRONG)));

    assertThat(record.bakes()).isEqualTo(2);
    assertThat(record.first()).isEqualTo(1);
    assertThat(record.brier()).isCloseTo((0.04 + 0.09 + 0.49 + 0.04) / 4, within(1e-12));
    // One of four named causes came true.
    assertThat(record.brierOfNoOpinion()).isCloseTo(0.1875, within(1e-12));
    assertThat(record.bands())
        .contains(new Band(70, 1, 0.7, 0), new Band(80, 1, 0.8, 1))
        .isSortedAccordingTo((one, other) -> one.from() - other.from());
  }

  @Test
  void few_bakes_are_said_to_be_few() {
    assertThat(OwnRecordText.of(OwnRecord.of(Foretold.of(List.of(RIGHT))), 80))
        .contains("first cause was right    1 of 1, 100 % (21 to 100 %)")
        .contains("This is too few to judge by");
    OwnRecord enough = OwnRecord.of(Foretold.of(Collections.nCopies(OwnRecord.FEW, RIGHT)));
    assertThat(OwnRecordText.of(enough, 80))
        .contains(" 80 to  90 %       20      16.0         20")
        .doesNotContain("too few");
    assertThat(OwnRecordText.of(OwnRecord.of(Foretold.of(List.of())), 80))
        .contains("nothing to count yet");
  }
}
