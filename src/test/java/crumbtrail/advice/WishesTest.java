package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.formula.FormulaEdit;
import crumbtrail.pantry.Kind;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The next bake in the size and from the things that a baker has. */
class WishesTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final SheetWorkup WORKUPS = new SheetWorkup(RULES.catalogue(), RULES.pantry());
  private static final Ranking RANKING =
      new Ranking(RULES.catalogue(), Weights.of(RULES.catalogue()));

  private static final String LOAF =
      """
      {"style": "white tin loaf",
       "formula": ["500 g bread flour", "310 g water", "5 g instant yeast", "10 g salt",
                   "15 g butter"],
       "process": {"room": "%s",
         "mixing": {"method": "stand mixer", "time": "10 min"},
         "temperatures": {"liquid": "%s"},
         "bulk": [{"time": "60 min", "temperature": "25 C"}],
         "vessel": {"kind": "tin", "size": "2.7 l"},
         "proof": [{"time": "50 min", "temperature": "28 C"}],
         "baking": {"stages": [{"time": "38 min", "oven": "210 C"}]}}}
      """;

  private static final BakeSheet TIN = sheet(LOAF.formatted("21 C", "24 C"));

  @Test
  void two_loaves_are_twice_the_dough() {
    NextBake two = next(TIN, wish(OptionalInt.of(2), Optional.empty(), OptionalDouble.empty()));
    assertThat(reading(two, "dough weight")).isCloseTo(1680, within(3.0));
    assertThat(reading(two, "piece weight")).isCloseTo(840, within(2.0));
    assertThat(two.sheet().process().shaping().pieces()).contains(2);
  }

  @Test
  void a_tin_gets_the_dough_for_the_room_that_was_right_before() {
    NextBake small =
        next(TIN, wish(OptionalInt.empty(), Optional.of("1.35 l"), OptionalDouble.empty()));
    assertThat(reading(small, "piece weight")).isCloseTo(420, within(2.0));
    assertThat(reading(small, "tin room"))
        .isCloseTo(reading(next(TIN, Wish.PLAIN), "tin room"), within(0.05));
  }

  @Test
  void a_smaller_piece_bakes_for_a_shorter_time_and_a_larger_for_a_longer() {
    double now = reading(next(TIN, Wish.PLAIN), "bake time");
    NextBake small =
        next(TIN, wish(OptionalInt.empty(), Optional.of("1 l"), OptionalDouble.empty()));
    NextBake large =
        next(TIN, wish(OptionalInt.empty(), Optional.of("4 l"), OptionalDouble.empty()));
    assertThat(reading(small, "bake time")).isLessThan(now);
    assertThat(reading(large, "bake time")).isGreaterThan(now);
    assertThat(large.notes()).anySatisfy(said -> assertThat(said).contains("bakes"));
  }

  @Test
  void a_weight_is_shared_among_the_loaves() {
    NextBake four = next(TIN, wish(OptionalInt.of(4), Optional.empty(), OptionalDouble.of(1000)));
    assertThat(reading(four, "piece weight")).isCloseTo(250, within(1.0));
  }

  /** Counting back from six o'clock goes wrong by the hour that nobody told. */
  @Test
  void the_clock_has_no_hole_where_the_sheet_is_silent() {
    BakeSheet silent = sheet(LOAF.formatted("21 C", "24 C").replaceAll("\"bulk\": .*\n", ""));
    Timetable day = next(silent, Wish.PLAIN).timetable();
    Timetable told = next(TIN, Wish.PLAIN).timetable();

    assertThat(day.untold()).containsExactly("first rise");
    assertThat(day.steps())
        .filteredOn(step -> step.key().equals("bulk"))
        .singleElement()
        .satisfies(
            step -> {
              assertThat(step.minutes()).isBetween(45.0, 120.0);
              assertThat(step.how()).contains("assumed");
            });
    assertThat(day.end()).isCloseTo(told.end(), within(60.0));
  }

  @Test
  void a_formula_without_weights_cannot_be_sized_and_that_is_said() {
    BakeSheet percents =
        sheet("{\"formula\": [\"100 % flour\", \"62 % water\", \"1 % yeast\", \"2 % salt\"]}");
    NextBake two =
        next(percents, wish(OptionalInt.of(2), Optional.empty(), OptionalDouble.empty()));
    assertThat(two.notes()).anySatisfy(said -> assertThat(said).contains("gives no weights"));
  }

  @Test
  void what_is_lacked_is_replaced_before_anything_is_judged() {
    Replaced made = Replaced.of(TIN, RULES.pantry(), List.of(new Instead("yeast", "fresh yeast")));
    assertThat(made.notes().get(0)).contains("15.2 g fresh yeast in place of 5 g instant yeast");
    assertThat(Knob.reading(WORKUPS.work(made.sheet()), "yeast").orElseThrow())
        .isCloseTo(Knob.reading(WORKUPS.work(TIN), "yeast").orElseThrow(), within(0.02));
  }

  @Test
  void what_is_not_on_the_sheet_or_in_the_pantry_is_said_with_what_is() {
    List<Instead> wished =
        List.of(new Instead("quark", "water"), new Instead("water", "moonshine drops"));
    Replaced made = Replaced.of(TIN, RULES.pantry(), wished);
    assertThat(made.sheet()).isEqualTo(TIN);
    assertThat(made.notes().get(0)).contains("\"quark\"").contains("There are: bread flour");
    assertThat(made.notes().get(1)).contains("not in the pantry");
  }

  @Test
  void instead_is_read_as_it_is_written() {
    assertThat(Instead.read("milk = water; bread flour -> plain flour"))
        .contains(List.of(new Instead("milk", "water"), new Instead("bread flour", "plain flour")));
    assertThat(Instead.read(" ")).contains(List.of());
    assertThat(Instead.read("milk")).isEmpty();
    assertThat(Instead.read("= water")).isEmpty();
  }

  /** A dough that no tap could cool is cooled with ice, and the sheet says so by weight. */
  @Test
  void a_hot_kitchen_takes_ice() {
    BakeSheet hot =
        sheet(LOAF.formatted("44 C", "44 C").replace("310 g", "240 g").replace("10 min", "25 min"));
    try (Reasoning reasoning = new Reasoning(WORKUPS, RULES, RANKING)) {
      Corrections corrections = new Corrections(reasoning, RULES.catalogue(), RULES.pantry());
      Correction cool =
          corrections.of(hot, "dough-too-warm").stream()
              .filter(one -> one.knob().equals("liquid-temperature"))
              .findFirst()
              .orElseThrow();
      assertThat(cool.to()).contains("of it as ice");
      assertThat(cool.altered().formula())
          .anySatisfy(line -> assertThat(line.ingredient()).isEqualTo("ice"));
      assertThat(Knob.reading(reasoning.work(cool.altered()), "dough temperature").orElseThrow())
          .isLessThan(28);
      assertThat(Knob.reading(reasoning.work(cool.altered()), "hydration").orElseThrow())
          .isCloseTo(48, within(0.3));
    }
  }

  @Test
  void water_below_that_of_the_tap_says_how_to_come_by_it() {
    BakeSheet cold = sheet(LOAF.formatted("30 C", "8 C"));
    String note = ColdWater.note(cold, RULES.pantry()).orElseThrow();
    assertThat(note).contains("8 °C").contains("crushed ice");
    assertThat(ColdWater.note(TIN, RULES.pantry())).isEmpty();
    assertThat(
            FormulaEdit.of(ColdWater.iced(cold, RULES.pantry(), -5), RULES.pantry())
                .grams(one -> one.kind() == Kind.WATER))
        .isCloseTo(310, within(0.5));
  }

  private static Wish wish(OptionalInt loaves, Optional<String> tin, OptionalDouble grams) {
    return new Wish(
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        grams,
        loaves,
        tin,
        List.of(),
        false);
  }

  private static BakeSheet sheet(String json) {
    return SheetReader.read(json).sheet().orElseThrow();
  }

  private static double reading(NextBake bake, String name) {
    return Knob.reading(bake.workup(), name).orElseThrow();
  }

  private static NextBake next(BakeSheet sheet, Wish wish) {
    try (Reasoning reasoning = new Reasoning(WORKUPS, RULES, RANKING)) {
      Corrections corrections = new Corrections(reasoning, RULES.catalogue(), RULES.pantry());
      // Only the size is looked at here, so nothing is mended.
      Plan plan = new Plan(List.of(), List.of(), List.of(), Map.of(), Map.of(), sheet);
      return NextBake.of(corrections, RULES.catalogue(), RULES.pantry(), plan, wish, sheet);
    }
  }
}
