package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Style;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The day of a bake: what follows what, how long, and what is done about it. */
class DayTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final SheetWorkup WORKUPS = new SheetWorkup(RULES.catalogue(), RULES.pantry());
  private static final Ranking RANKING =
      new Ranking(RULES.catalogue(), Weights.of(RULES.catalogue()));

  private static final BakeSheet LOAF =
      sheet(
          """
          {"style": "white tin loaf",
           "formula": ["400 g bread flour", "230 g water", "2 g instant yeast", "10 g salt"],
           "preferments": [{"name": "poolish", "formula": ["100 g bread flour", "100 g water", "0.1 g instant yeast"],
             "stages": [{"time": "11 h", "temperature": "20 C"}, {"time": "1 h", "temperature": "24 C"}]}],
           "process": {"room": "21 C", "temperatures": {"liquid": "30 C"},
             "mixing": {"method": "stand mixer", "time": "8 min", "rest": "20 min", "fat": "late",
               "doughTemperature": "25 C"},
             "bulk": [{"time": "60 min", "temperature": "24 C", "folds": 1, "covered": true},
               {"time": "12 h", "temperature": "4 C"}, {"time": "30 min", "temperature": "24 C", "folds": 3}],
             "shaping": {"benchRest": "15 min"},
             "vessel": {"kind": "tin"},
             "proof": [{"time": "50 min", "temperature": "28 C"}],
             "baking": {"stages": [{"time": "10 min", "oven": "230 C"}, {"time": "25 min", "oven": "200 C"}],
               "steam": "a cup of water", "scored": true, "coreTemperature": "96 C"},
             "cooling": {"time": "90 min"}}}
          """);

  @Test
  void every_step_begins_where_the_one_before_it_ends() {
    Timetable day = day(LOAF, "white-tin-loaf");
    assertThat(day.steps())
        .extracting(Timetable.Step::key)
        .containsExactly(
            "preferment",
            "rest",
            "mix",
            "bulk",
            "retard",
            "bulk",
            "shape",
            "bench",
            "proof",
            "preheat",
            "bake",
            "core",
            "cool")
        .hasSize(13);
    double now = 0;
    for (Timetable.Step step : day.steps()) {
      if (step.key().equals("preferment")) {
        assertThat(step.begins()).isEqualTo(-720);
        assertThat(step.minutes()).isEqualTo(720);
        assertThat(step.how()).isEqualTo("poolish, at 20 °C, then 24 °C");
      } else if (!step.key().equals("preheat")) {
        assertThat(step.begins()).as(step.key()).isCloseTo(now, within(1e-9));
        now += step.minutes();
      }
    }
    assertThat(day.end()).isCloseTo(now - 90, within(1e-9));
    assertThat(day.length()).isCloseTo(day.end() + 720, within(1e-9));
    assertThat(day.untold()).isEmpty();
  }

  /** The oven is hot when the dough goes in. */
  @Test
  void the_oven_is_lit_so_that_it_is_hot_in_time() {
    Timetable day = day(LOAF, "white-tin-loaf");
    Timetable.Step preheat = step(day, "preheat");
    assertThat(preheat.begins() + preheat.minutes()).isEqualTo(step(day, "bake").begins());
    assertThat(preheat.how()).isEqualTo("to 230 °C");
    assertThat(step(day(LOAF, "white-hearth-loaf"), "preheat").minutes())
        .as("a stone takes longer")
        .isGreaterThan(preheat.minutes());
  }

  @Test
  void what_the_sheet_says_of_a_step_stands_beside_it() {
    Timetable day = day(LOAF, "white-tin-loaf");
    assertThat(step(day, "mix").how())
        .isEqualTo("stand mixer, liquid at 30 °C, dough to come out at 25 °C, fat late");
    assertThat(step(day, "bulk").how()).isEqualTo("at 24 °C, fold once, covered");
    assertThat(day.steps().get(5).how()).isEqualTo("at 24 °C, fold 3 times");
    assertThat(step(day, "retard").how()).isEqualTo("at 4 °C");
    assertThat(step(day, "bake").how())
        .isEqualTo("10 min, at 230 °C; then 25 min, at 200 °C, steam: a cup of water, cut the top");
    assertThat(step(day, "bake").minutes()).isEqualTo(35);
    assertThat(step(day, "core").how()).isEqualTo("96 °C in the middle");
  }

  @Test
  void what_nobody_told_is_named_and_takes_its_usual_time() {
    BakeSheet silent =
        sheet(
            "{\"formula\": [\"500 g flour\"], \"preferments\": [{\"name\": \"biga\", \"formula\":"
                + " [\"100 g flour\"]}], \"process\": {\"bulk\": [{\"temperature\": \"24 C\"}]}}");
    Timetable day = day(silent, "white-tin-loaf");

    assertThat(day.untold()).containsExactly("biga", "first rise", "final proof", "bake");
    assertThat(step(day, "bulk").how()).isEqualTo("at 24 °C, assumed, as usual for this bread");
    assertThat(step(day, "bulk").minutes()).isEqualTo(usual("white-tin-loaf").bulk().minutes());
    assertThat(step(day, "proof").minutes()).isEqualTo(usual("white-tin-loaf").proof().minutes());
    assertThat(step(day, "bake").minutes()).isEqualTo(usual("white-tin-loaf").oven().minutes());
    assertThat(step(day, "bake").how()).contains("assumed");
  }

  /** Half of the time wants about twice the yeast, and the dough is just ripe by then. */
  @Test
  void less_time_takes_more_yeast_and_a_night_in_the_cold_less() {
    BakeSheet plain =
        sheet(
            """
            {"style": "white tin loaf",
             "formula": ["500 g bread flour", "310 g water", "5 g instant yeast", "10 g salt"],
             "process": {"room": "23 C", "mixing": {"doughTemperature": "25 C"},
               "bulk": [{"time": "90 min", "temperature": "25 C"}],
               "proof": [{"time": "60 min", "temperature": "28 C"}]}}
            """);
    double brief = yeast(fitted(plain, OptionalDouble.of(60), OptionalDouble.empty()));
    double usual = yeast(fitted(plain, OptionalDouble.of(120), OptionalDouble.empty()));
    BakeSheet night = fitted(plain, OptionalDouble.empty(), OptionalDouble.of(14));

    assertThat(brief / usual).isBetween(1.5, 3.0);
    assertThat(night.process().bulk()).hasSize(2);
    assertThat(night.process().bulk().get(0).time().orElseThrow().value()).isEqualTo(30);
    assertThat(night.process().bulk().get(1).time().orElseThrow().value()).isEqualTo(840);
    assertThat(night.process().bulk().get(1).temperature().orElseThrow().value()).isEqualTo(4);
    assertThat(yeast(night)).isPositive();
    assertThat(Knob.reading(WORKUPS.work(night), "bulk ripeness").orElseThrow())
        .isCloseTo(1, within(0.1));
  }

  @Test
  void nothing_wished_changes_nothing() {
    assertThat(fitted(LOAF, OptionalDouble.empty(), OptionalDouble.empty())).isEqualTo(LOAF);
  }

  private static BakeSheet fitted(BakeSheet sheet, OptionalDouble bulk, OptionalDouble overnight) {
    Wish wish =
        new Wish(
            Wish.PLAIN.start(),
            Wish.PLAIN.ready(),
            bulk,
            OptionalDouble.empty(),
            overnight,
            OptionalDouble.empty(),
            Wish.PLAIN.loaves(),
            Wish.PLAIN.tin(),
            List.of(),
            false);
    try (Reasoning reasoning = new Reasoning(WORKUPS, RULES, RANKING)) {
      Schedule schedule = new Schedule(reasoning, RULES.catalogue(), RULES.pantry());
      BakeSheet fitted = schedule.fitted(sheet, wish);
      assertThat(schedule.notes().isEmpty()).isEqualTo(fitted.equals(sheet));
      return fitted;
    }
  }

  private static double yeast(BakeSheet sheet) {
    return Knob.reading(WORKUPS.work(sheet), "yeast").orElseThrow();
  }

  private static Timetable day(BakeSheet sheet, String style) {
    return Timetable.of(sheet, RULES.catalogue(), style(style));
  }

  private static Style style(String key) {
    return RULES.catalogue().style(key).orElseThrow();
  }

  private static Style.Habits usual(String key) {
    return style(key).habits();
  }

  private static Timetable.Step step(Timetable day, String key) {
    return day.steps().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
  }

  private static BakeSheet sheet(String json) {
    return SheetReader.read(json).sheet().orElseThrow();
  }
}
