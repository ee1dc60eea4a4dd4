package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.findings.Findings;
import crumbtrail.sheet.BakeSheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A loaf that burnt in a short, fierce bake: cooler alone would leave it raw. */
class PlannerTest extends AdviceKitchen {
  private final Corrections corrections =
      new Corrections(REASONING, RULES.catalogue(), RULES.pantry());

  @Test
  void a_cooler_oven_is_followed_by_a_longer_bake() {
    Trial start = corrections.trial(burnt("Tuesday loaf"));
    Planner planner = new Planner(corrections, start);

    List<Correction> alone = planner.mend("oven-too-hot");

    assertThat(planner.taken())
        .extracting(Correction::knob)
        .startsWith("oven")
        .contains("bake-time");
    assertThat(planner.conflicts()).isEmpty();
    assertThat(planner.now().risk("oven-too-hot")).isLessThan(start.risk("oven-too-hot"));
    assertThat(planner.now().raised(start, "oven-too-hot")).isEmpty();
    Correction last = planner.taken().get(planner.taken().size() - 1);
    assertThat(planner.now().sheet()).isEqualTo(corrections.trial(last.altered()).sheet());
    assertThat(alone).extracting(Correction::altered).doesNotContain(last.altered());
  }

  @Test
  void nothing_is_turned_twice() {
    Planner planner = new Planner(corrections, corrections.trial(burnt("Tuesday loaf")));
    planner.mend("oven-too-hot");
    List<Correction> once = List.copyOf(planner.taken());

    planner.mend("oven-too-hot");
    planner.mend("under-baked");

    assertThat(planner.taken()).startsWith(once.toArray(new Correction[0]));
    assertThat(planner.taken().stream().map(Correction::knob).filter(knob -> !knob.isEmpty()))
        .doesNotHaveDuplicates();
  }

  @Test
  void the_next_bake_has_every_change_that_of_most_use_first() {
    BakeSheet sheet = burnt("Tuesday loaf");
    Plan plan = plan(sheet);

    NextBake next = next(plan, Wish.PLAIN, sheet);

    assertThat(next.changes())
        .containsExactlyInAnyOrderElementsOf(plan.recommended())
        .hasSizeGreaterThan(1)
        .isSortedAccordingTo((one, other) -> Double.compare(gain(one), gain(other)));
    assertThat(next.sheet().title()).isEqualTo("Tuesday loaf, next time");
    assertThat(next.sheet().seen()).isEmpty();
    assertThat(next(plan, Wish.PLAIN, burnt("")).sheet().title()).isEqualTo("Next bake");
  }

  @Test
  void one_change_at_a_time_is_the_one_of_most_use_as_it_was_tried_alone() {
    BakeSheet sheet = burnt("Tuesday loaf");
    Plan plan = plan(sheet);
    Correction most = next(plan, Wish.PLAIN, sheet).changes().get(0);

    NextBake next = next(plan, ONE_CHANGE, sheet);

    assertThat(next.changes()).hasSize(1);
    assertThat(next.changes().get(0).remedy()).isEqualTo(most.remedy());
    assertThat(plan.tried()).contains(next.changes().get(0));
    assertThat(next.sheet().process().baking().stages().get(0).oven())
        .isEqualTo(next.changes().get(0).altered().process().baking().stages().get(0).oven());
  }

  @Test
  void more_to_be_said_comes_first() {
    BakeSheet sheet = burnt("Tuesday loaf");
    NextBake next = next(plan(sheet), Wish.PLAIN, sheet);

    assertThat(next.noting(List.of("One.")).noting(List.of("Two.", "Three.")).notes())
        .startsWith("Two.", "Three.", "One.")
        .hasSize(3 + next.notes().size());
  }

  private Plan plan(BakeSheet sheet) {
    Findings findings = REASONING.judge(REASONING.work(sheet));
    return Plan.of(corrections, sheet, findings);
  }

  private NextBake next(Plan plan, Wish wish, BakeSheet before) {
    return NextBake.of(corrections, RULES.catalogue(), RULES.pantry(), plan, wish, before);
  }

  private static double gain(Correction one) {
    return one.riskAfter() - one.riskBefore();
  }

  private static BakeSheet burnt(String title) {
    return sheet(
        """
        {"title": "%s", "style": "white tin loaf",
         "formula": ["500 g bread flour", "310 g water", "5 g instant yeast", "10 g salt"],
         "process": {"room": "21 C", "mixing": {"time": "9 min", "doughTemperature": "25 C"},
           "bulk": [{"time": "1 h", "temperature": "26 C"}],
           "shaping": {"pieces": 1},
           "vessel": {"kind": "tin", "size": "22 x 11 x 12 cm"},
           "proof": [{"time": "50 min", "temperature": "28 C"}],
           "baking": {"stages": [{"time": "24 min", "oven": "260 C"}]}},
         "seen": ["burnt crust"]}
        """
            .formatted(title));
  }
}
