package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.quantity.Quantity;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.RiseCourse;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Times and temperatures are changed in proportion, in the place that is meant and nowhere else.
 */
class StaysAndHeatTest {
  private static final BakeSheet SHEET =
      sheet(
          """
          {"formula": ["500 g flour"],
           "preferments": [{"name": "poolish", "formula": ["100 g flour", "100 g water"],
             "stages": [{"time": "2 h", "temperature": "24 C"}, {"time": "10 h", "temperature": "8 C"}]}],
           "process": {"bulk": [{"time": "60 min", "temperature": "24 C", "folds": 2},
               {"time": "30 min", "temperature": "27 C"}, {"time": "14 h", "temperature": "4 C"}],
             "proof": [{"time": "75 min", "temperature": "30 C", "humidity": "80 %"},
               {"time": "10 h", "temperature": "5 C"}],
             "baking": {"stages": [{"time": "15 min", "oven": "230 C"}, {"time": "20 min", "oven": "200 C"}],
               "coreTemperature": "96 C"}}}
          """);
  private static final BakeSheet SILENT = sheet("{\"formula\": [\"500 g flour\"]}");

  @Test
  void stays_in_the_warm_and_in_the_cold_are_told_apart() {
    assertThat(Stays.of(SHEET, "bulk").warmMinutes()).contains(90.0);
    assertThat(Stays.of(SHEET, "proof").warmMinutes()).contains(75.0);
    assertThat(Stays.coldMinutes(SHEET)).contains(24 * 60.0);
    assertThat(Stays.coldCelsius(SHEET)).contains(5.0);
    assertThat(Stays.aheadMinutes(SHEET)).contains(12 * 60.0);
    assertThat(Stays.aheadCelsius(SHEET)).contains(24.0);
    assertThat(Stays.of(SHEET, "bulk").none()).isFalse();
  }

  @Test
  void a_silent_sheet_has_none() {
    assertThat(Stays.of(SILENT, "bulk").none()).isTrue();
    assertThat(Stays.of(SILENT, "bulk").warmMinutes()).isEmpty();
    assertThat(Stays.coldMinutes(SILENT)).isEmpty();
    assertThat(Stays.coldCelsius(SILENT)).isEmpty();
    assertThat(Stays.aheadMinutes(SILENT)).isEmpty();
    assertThat(Stays.coldLasting(SILENT, 60)).isEqualTo(SILENT);
    assertThat(Stays.aheadLasting(SILENT, 60)).isEqualTo(SILENT);
  }

  @Test
  void a_place_that_is_not_told_is_the_one_that_the_course_was_reckoned_with() {
    BakeSheet hot =
        sheet(
            """
            {"formula": ["500 g flour", "310 g water", "5 g instant yeast", "9 g salt"],
             "process": {"bulk": [{"time": "2 h"}], "proof": [{"time": "1 h"}],
               "remarks": ["the kitchen was very warm"]}}
            """);
    RuleBase rules = RuleBase.bundled();
    Workup workup = new SheetWorkup(rules.catalogue(), rules.pantry()).work(hot);
    for (RiseCourse.Span span : workup.rise().orElseThrow().spans()) {
      assertThat(Stays.of(hot, span.name()).warmCelsius(workup)).contains(span.place());
      assertThat(span.place()).isGreaterThan(26);
    }
  }

  @Test
  void warm_stays_last_in_proportion_and_the_cold_one_stays() {
    List<Stage> bulk = Stays.of(SHEET, "bulk").lasting(45).process().bulk();
    assertThat(minutes(bulk)).containsExactly(30.0, 15.0, 840.0);
    assertThat(bulk.get(0).folds()).contains(2);
    assertThat(Stays.of(SHEET, "bulk").lasting(45).process().proof())
        .isEqualTo(SHEET.process().proof());

    List<Stage> proof = Stays.of(SHEET, "proof").lasting(150).process().proof();
    assertThat(minutes(proof)).containsExactly(150.0, 600.0);
    assertThat(proof.get(0).humidity()).isEqualTo(SHEET.process().proof().get(0).humidity());
  }

  @Test
  void one_is_put_in_where_there_is_none_and_untold_ones_share() {
    assertThat(minutes(Stays.of(SILENT, "proof").lasting(50).process().proof()))
        .containsExactly(50.0);
    BakeSheet untold =
        sheet("{\"formula\": [\"500 g flour\"], \"process\": {\"bulk\": [{\"folds\": 1}, {}]}}");
    assertThat(minutes(Stays.of(untold, "bulk").lasting(80).process().bulk()))
        .containsOnly(80.0 / untold.process().bulk().size());
  }

  @Test
  void heat_of_a_stay_is_set_where_it_is_meant() {
    assertThat(celsius(Stays.of(SHEET, "bulk").at(21).process().bulk()))
        .containsExactly(21.0, 21.0, 4.0);
    assertThat(celsius(Stays.coldAt(SHEET, 3).process().bulk())).containsExactly(24.0, 27.0, 3.0);
    assertThat(celsius(Stays.coldAt(SHEET, 3).process().proof())).containsExactly(30.0, 3.0);
    assertThat(minutes(Stays.coldLasting(SHEET, 720).process().bulk()))
        .containsExactly(60.0, 30.0, 420.0);
    assertThat(minutes(Stays.coldLasting(SHEET, 720).process().proof()))
        .containsExactly(75.0, 300.0);
    assertThat(minutes(Stays.aheadLasting(SHEET, 360).preferments().get(0).stages()))
        .containsExactly(60.0, 300.0);
    assertThat(celsius(Stays.aheadAt(SHEET, 18).preferments().get(0).stages())).containsOnly(18.0);
  }

  @Test
  void a_dough_is_covered_at_every_stay_or_at_none() {
    assertThat(Stays.of(SHEET, "bulk").covered(true).process().bulk())
        .allSatisfy(stage -> assertThat(stage.covered()).contains(true));
    assertThat(Stays.of(SHEET, "proof").covered(false).process().proof())
        .allSatisfy(stage -> assertThat(stage.covered()).contains(false));
  }

  @Test
  void the_oven_is_shifted_at_every_stage_and_the_bake_lasts_in_proportion() {
    BakeProcess hotter = Heat.shifted(SHEET.process(), 10);
    assertThat(ovens(hotter)).containsExactly(240.0, 210.0);
    assertThat(bakes(hotter)).containsExactly(15.0, 20.0);
    assertThat(bakes(Heat.lasting(SHEET.process(), 70))).containsExactly(30.0, 40.0);
    assertThat(ovens(Heat.at(SHEET.process(), 190))).containsExactly(190.0, 190.0);
    // The middle of the last loaf says nothing of one that bakes otherwise.
    assertThat(hotter.baking().coreTemperature()).isEmpty();
    assertThat(Heat.told(SHEET.process())).isTrue();
  }

  @Test
  void a_bake_of_which_nothing_is_told_gets_one_stage() {
    assertThat(Heat.told(SILENT.process())).isFalse();
    assertThat(ovens(Heat.at(SILENT.process(), 220))).containsExactly(220.0);
    assertThat(bakes(Heat.lasting(SILENT.process(), 35))).containsExactly(35.0);
    assertThat(Heat.shifted(SILENT.process(), 5).baking().stages()).isEmpty();
  }

  @Test
  void numbers_are_written_as_sheets_hold_them() {
    assertThat(Text.of(1.25, 1)).isEqualTo("1.3");
    assertThat(Text.of(100, 2)).isEqualTo("100");
    assertThat(Text.of(0.001, 2)).isEqualTo("0");
    assertThat(Text.of(-0.04, 1)).isEqualTo("0");
    assertThat(Heat.celsius(20.6).written()).isEqualTo("21 C");
    assertThat(Heat.minutes(-3).orElseThrow().value()).isZero();
    assertThat(Grams.of(0)).isEmpty();
    assertThat(Grams.of(10)).isEqualTo("10 g ");
  }

  /** Melting takes as much heat as 80 degrees of water: so much less is needed of ice. */
  @Test
  void ice_acts_as_water_that_no_refrigerator_makes() {
    var pantry = crumbtrail.rules.RuleBase.bundled().pantry();
    BakeSheet plain = sheet("{\"formula\": [\"500 g flour\", \"300 g water\", \"10 g salt\"]}");
    BakeSheet iced = ColdWater.iced(plain, pantry, -10);

    assertThat(iced.formula()).extracting(line -> line.ingredient()).contains("ice");
    assertThat(ColdWater.asLiquid(iced, pantry, ColdWater.FRIDGE)).isCloseTo(-10, within(0.5));
    BakeSheet thawed = ColdWater.thawed(iced, pantry);
    assertThat(thawed.formula()).hasSize(3);
    assertThat(thawed.formula().get(1).amount().orElseThrow().value()).isCloseTo(300, within(0.5));
    assertThat(ColdWater.thawed(plain, pantry)).isEqualTo(plain);
    assertThat(ColdWater.asLiquid(plain, pantry, 12)).isEqualTo(12);
    // No more than seven tenths of the water: a dough needs some of it wet.
    double most =
        ColdWater.iced(plain, pantry, -200).formula().stream()
            .filter(line -> line.ingredient().equals("ice"))
            .mapToDouble(line -> line.amount().orElseThrow().value())
            .sum();
    assertThat(most).isCloseTo(210, within(1e-6));
  }

  private static BakeSheet sheet(String json) {
    return SheetReader.read(json).sheet().orElseThrow();
  }

  private static List<Double> minutes(List<Stage> stages) {
    return stages.stream().map(stage -> value(stage.time())).toList();
  }

  private static List<Double> celsius(List<Stage> stages) {
    return stages.stream().map(stage -> value(stage.temperature())).toList();
  }

  private static List<Double> ovens(BakeProcess process) {
    return process.baking().stages().stream().map(stage -> value(stage.oven())).toList();
  }

  private static List<Double> bakes(BakeProcess process) {
    return process.baking().stages().stream().map(stage -> value(stage.time())).toList();
  }

  private static double value(Optional<Quantity> quantity) {
    return quantity.map(Quantity::value).orElse(Double.NaN);
  }
}
