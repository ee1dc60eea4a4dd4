package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.report.Report.KitchenShift;
import crumbtrail.report.Report.RankedCause;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A bake traced by the odds of one kitchen. */
class KitchenShiftsTest {
  private static final BakeSheet DENSE =
      SheetReader.read("{\"seen\": [\"dense crumb\", \"pale crust\"]}").sheet().orElseThrow();
  private static final Report ELSEWHERE = Scored.PIPELINE.trace(DENSE);

  private static Report in(Map<String, Double> kitchen) {
    return new PostMortem(Scored.PIPELINE.rules(), kitchen).trace(DENSE);
  }

  @Test
  void a_report_tells_what_the_odds_of_the_kitchen_moved_and_by_how_much() {
    RankedCause second = ELSEWHERE.causes().get(1);
    Report here = in(Map.of(second.key(), 6.0));

    assertThat(here.causes().get(0).key()).isEqualTo(second.key());
    KitchenShift shift = here.kitchen().get(0);
    assertThat(shift.cause()).isEqualTo(second.key());
    assertThat(shift.decibans()).isEqualTo(6);
    assertThat(shift.placeBefore()).isEqualTo(2);
    assertThat(shift.place()).isEqualTo(1);
    assertThat(shift.before()).isCloseTo(second.probability(), within(1e-9));
    assertThat(shift.now()).isEqualTo(here.causes().get(0).probability());
    // The cause that stood first is told too: its odds are as elsewhere, its place is not.
    assertThat(here.kitchen())
        .filteredOn(one -> one.cause().equals(ELSEWHERE.causes().get(0).key()))
        .singleElement()
        .satisfies(one -> assertThat(one.decibans()).isZero())
        .satisfies(one -> assertThat(one.place()).isEqualTo(2));
    assertThat(TextReport.of(here).replaceAll("\\s+", " "))
        .contains("By the odds of this kitchen")
        .contains("place 1, was 2; its odds are 4.0 times those elsewhere");
  }

  @Test
  void where_nothing_moves_that_is_said() {
    Report here = in(Map.of("butter-too-warm", -0.2));

    assertThat(here.kitchen()).isEmpty();
    assertThat(here.causes()).isEqualTo(ELSEWHERE.causes());
    assertThat(TextReport.of(here)).contains("What your log has taught moves nothing here.");
  }

  @Test
  void a_report_by_the_odds_of_all_kitchens_says_nothing_of_one() {
    assertThat(ELSEWHERE.kitchen()).isNull();
    assertThat(JsonReport.pretty(ELSEWHERE)).doesNotContain("\"kitchen\"");
    assertThat(TextReport.of(ELSEWHERE)).doesNotContain("kitchen\n");
    assertThat(List.of(JsonReport.pretty(in(Map.of("over-proofed", 3.0)))))
        .first()
        .asString()
        .contains("\"kitchen\" : [");
  }
}
