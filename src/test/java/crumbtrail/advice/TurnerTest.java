package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.Remedy.Aim;
import crumbtrail.knowledge.Remedy.Step;
import crumbtrail.knowledge.Style;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How far a knob is turned, and what it is then said to be. */
class TurnerTest extends AdviceKitchen {
  private static final String LOAF =
      """
      {"style": "white tin loaf",
       "formula": ["500 g bread flour", "310 g water", "5 g instant yeast", "%s g salt"],
       "process": {"mixing": {"doughTemperature": "25 C"},
         "bulk": [{"time": "%s min", "temperature": "25 C"}],
         "baking": {"stages": [{"time": "38 min", "oven": "%s C"}]}}}
      """;

  @Test
  void a_knob_that_is_a_reading_itself_is_set_to_its_aim() {
    Style.Range usual = Knob.usual(salted(25).workup(), "salt").orElseThrow();
    double quarter = (usual.high() - usual.low()) / 4;

    assertThat(salt(25, "usual")).isCloseTo(usual.high() - quarter, within(0.051));
    assertThat(salt(1, "usual")).isCloseTo(usual.low() + quarter, within(0.051));
    assertThat(salt(25, "low")).isCloseTo(usual.low() + quarter, within(0.051));
    assertThat(salt(25, "high")).isCloseTo(usual.high() - quarter, within(0.051));
    assertThat(salt(25, "middle")).isCloseTo((usual.low() + usual.high()) / 2, within(0.051));
    assertThat(salt(25, "1.8")).isCloseTo(1.8, within(1e-9));
  }

  @Test
  void where_it_stands_as_it_should_it_goes_one_step_or_none() {
    assertThat(value(salted(9), "salt", new Aim(null, "1.8", null))).isEmpty();
    assertThat(value(salted(9), "salt", new Aim(null, "1.8", new Step(-20, true))).getAsDouble())
        .isCloseTo(1.4, within(1e-9));
    assertThat(value(salted(9), "salt", new Aim(null, null, new Step(0.3, false))).getAsDouble())
        .isCloseTo(2.1, within(1e-9));
    // Less than half of what a baker can set is no step.
    assertThat(value(salted(9), "salt", new Aim(null, null, new Step(0.04, false)))).isEmpty();
  }

  @Test
  void an_aim_that_lies_the_wrong_way_gives_way_to_the_step() {
    Aim upwards = new Aim(null, "1.8", new Step(0.5, false));
    assertThat(value(salted(15), "salt", upwards).getAsDouble()).isCloseTo(3.5, within(1e-9));
    Aim downwards = new Aim(null, "1.8", new Step(-0.5, false));
    assertThat(value(salted(15), "salt", downwards).getAsDouble()).isCloseTo(1.8, within(1e-9));
  }

  @Test
  void a_knob_is_turned_until_another_reading_is_met() {
    Trial hasty = trial(LOAF.formatted(10, 20, 210));
    double minutes = value(hasty, "bulk-time", new Aim("bulk ripeness", "1", null)).getAsDouble();
    BakeSheet turned = knob("bulk-time").turned(hasty.sheet(), hasty.workup(), minutes);
    assertThat(Knob.reading(REASONING.work(turned), "bulk ripeness").orElseThrow())
        .isCloseTo(1, within(0.06));
    assertThat(minutes % 5).isZero();
  }

  @Test
  void what_the_oven_makes_of_a_loaf_is_met_too() {
    Trial pale = trial(LOAF.formatted(10, 60, 210).replace("38 min", "12 min"));
    double minutes = value(pale, "bake-time", new Aim("core reached", "94", null)).getAsDouble();
    BakeSheet turned = knob("bake-time").turned(pale.sheet(), pale.workup(), minutes);
    assertThat(Knob.reading(REASONING.work(turned), "core reached").orElseThrow())
        .isCloseTo(94, within(2.0));
    assertThat(minutes).isBetween(20.0, 60.0);
  }

  @Test
  void an_aim_out_of_reach_is_neared_if_that_helps_much_and_let_be_if_not() {
    Trial loaf = trial(LOAF.formatted(10, 60, 210));
    // Its sugar lets it make nearly ten times the gas that it wants, and no more in a day.
    assertThat(value(loaf, "bulk-time", new Aim("bulk ripeness", "10", null))).hasValue(24 * 60);
    assertThat(value(loaf, "bulk-time", new Aim("bulk ripeness", "1000", null))).isEmpty();
  }

  @Test
  void a_reading_that_the_sheet_does_not_have_is_no_aim() {
    Trial loaf = trial(LOAF.formatted(10, 60, 210));
    assertThat(value(loaf, "bulk-time", new Aim("proof ripeness", "1", null))).isEmpty();
    assertThat(value(loaf, "salt", new Aim("tin room", "usual", null))).isEmpty();
  }

  @Test
  void a_change_is_told_with_its_grams_and_its_share() {
    Trial salty = salted(15);
    BakeSheet turned = knob("salt").turned(salty.sheet(), salty.workup(), 2);
    KnobWords words = new KnobWords(knob("salt"), salty, turned, REASONING.work(turned));
    assertThat(words.change(null)).isEqualTo("Take less salt, by 5 g");
    assertThat(words.from()).isEqualTo("15 g table salt (3 % of the flour)");
    assertThat(words.to(2)).isEqualTo("10 g table salt (2 % of the flour)");
  }

  @Test
  void a_change_of_time_or_heat_is_told_in_minutes_and_degrees() {
    Trial loaf = trial(LOAF.formatted(10, 60, 210));
    BakeSheet longer = knob("bulk-time").turned(loaf.sheet(), loaf.workup(), 75);
    KnobWords time = new KnobWords(knob("bulk-time"), loaf, longer, REASONING.work(longer));
    assertThat(time.change(null)).isEqualTo("Give the first rise more time, by 15 min");
    assertThat(time.from()).isEqualTo("60 min");
    assertThat(time.to(75)).isEqualTo("75 min");

    BakeSheet cooler = knob("oven").turned(loaf.sheet(), loaf.workup(), 190);
    KnobWords heat = new KnobWords(knob("oven"), loaf, cooler, REASONING.work(cooler));
    assertThat(heat.change(null)).isEqualTo("Bake cooler, by 20 °C");
    assertThat(heat.to(190)).isEqualTo("190 °C");
  }

  @Test
  void a_step_from_where_nobody_told_is_told_as_a_step() {
    assertThat(KnobWords.lead(knob("oven"), new Step(-15, false))).isEqualTo("Bake cooler");
    assertThat(KnobWords.lead(knob("oven"), new Step(15, false))).isEqualTo("Bake hotter");
    assertThat(KnobWords.step(knob("oven"), new Step(-15, false))).isEqualTo("15 °C less than now");
    assertThat(KnobWords.step(knob("yeast"), new Step(25, true))).isEqualTo("25 % more than now");
  }

  private static double salt(double grams, String to) {
    return value(salted(grams), "salt", new Aim(null, to, null)).getAsDouble();
  }

  private static Trial salted(double grams) {
    return trial(LOAF.formatted(grams, 60, 210));
  }

  private static Trial trial(String json) {
    return Trial.of(REASONING, SheetReader.read(json).sheet().orElseThrow());
  }

  private static OptionalDouble value(Trial trial, String knob, Aim aim) {
    return new Turner(REASONING, trial, aim, knob(knob)).value();
  }
}
