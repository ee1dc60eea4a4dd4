package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.oven.BakeCourse.Balance;
import crumbtrail.oven.BakeCourse.Point;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A course is read by straight lines: all figures are reckoned by hand. */
class CourseReadingTest {
  private static final BakeCourse COURSE =
      new BakeCourse(
          List.of(
              new Point(0, 20, 20, 220, 0),
              new Point(10, 60, 110, 220, 2),
              new Point(20, 60, 120, 220, 2),
              new Point(30, 90, 140, 220, 8)),
          90,
          8,
          OptionalDouble.of(25),
          0.5,
          140,
          new Balance(3, 2, 1),
          false,
          new HotLoaf(Loaf.hearth(500), 0, new double[8]));

  @ParameterizedTest
  @CsvSource({
    "-1, 20, 0",
    "0, 20, 0",
    "5, 40, 1",
    "10, 60, 2",
    "12, 60, 2",
    "20, 60, 2",
    "25, 75, 5",
    "30, 90, 8",
    "31, 90, 8"
  })
  void core_and_loss_lie_on_the_line_between_two_points(double minute, double core, double loss) {
    assertThat(COURSE.coreAt(minute)).isCloseTo(core, within(1e-9));
    assertThat(COURSE.lossAt(minute)).isCloseTo(loss, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"10, 0", "20, 0", "40, 5", "60, 10", "75, 25", "90, 30"})
  void the_first_minute_counts_at_which_the_core_was_so_warm(double core, double minute) {
    assertThat(COURSE.coreReaches(core).orElseThrow()).isCloseTo(minute, within(1e-9));
    assertThat(COURSE.coreReaches(90.001)).isEmpty();
  }

  @Test
  void a_tenth_less_loaf_is_a_loss_of_ten_percent() {
    assertThat(BakeCourse.lossPercent(1000, 900)).isCloseTo(10, within(1e-9));
    assertThat(BakeCourse.lossPercent(500, 440)).isCloseTo(12, within(1e-9));
  }

  @Test
  void a_point_stands_at_each_half_minute_and_at_the_end_of_each_stage() {
    BakeCourse course =
        bake(Loaf.roll(60), 25, 0, OvenStage.still(1.2, 200), OvenStage.still(0.9, 180));

    assertThat(course.points())
        .extracting(Point::minute)
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(0.0, 0.5, 1.0, 1.2, 1.5, 2.0, 2.1);
    assertThat(course.points())
        .extracting(Point::oven)
        .containsExactly(25.0, 200.0, 200.0, 200.0, 180.0, 180.0, 180.0);
    Point last = course.points().get(6);
    assertThat(course.core()).isEqualTo(last.core());
    assertThat(course.lossPercent()).isEqualTo(last.lossPercent()).isPositive();
    assertThat(course.crustTemperature()).isEqualTo(last.surface()).isGreaterThan(last.core());
    assertThat(course.setAtMinute()).isEmpty();
  }

  /** The middle has set when 97 % of its starch has swollen: the rate, summed over the course. */
  @Test
  void it_has_set_when_the_starch_has_swollen_and_browned_as_the_surface_was_hot() {
    BakeCourse course = bake(Loaf.roll(200), 25, 0, OvenStage.still(30, 200));
    double set = course.setAtMinute().orElseThrow();
    double swollen = 0;
    double browned = 0;
    for (int i = 1; i < course.points().size(); i++) {
      Point point = course.points().get(i);
      Point before = course.points().get(i - 1);
      for (double part = 0.05; part < 1; part += 0.1) {
        if (before.minute() + part * 0.5 < set) {
          swollen += 3 * Kinetics.starch(between(before.core(), point.core(), part));
        }
        browned += 3 * Kinetics.browning(between(before.surface(), point.surface(), part));
      }
    }

    assertThat(1 - Math.exp(-swollen)).isCloseTo(0.97, within(0.01));
    assertThat(course.crustColour()).isCloseTo(1 - Math.exp(-browned), within(0.01));
    assertThat(course.crustColour()).isBetween(0.05, 0.95);
  }

  private static double between(double from, double to, double part) {
    return from + part * (to - from);
  }

  /** Heat by hand: what the dough holds per degree, and what evaporating the lost water takes. */
  @Test
  void the_balance_is_that_of_the_dough_and_of_the_water_that_left() {
    BakeCourse course = bake(Loaf.hearth(1000), 30, 0, OvenStage.still(40, 220));
    BakeCourse.Balance balance = course.balance();
    double lost = course.lossPercent() / 100;

    assertThat(balance.taken()).isCloseTo(balance.stored() + balance.vapour(), within(1e-6));
    // 2260 kJ/kg and the warmth of water of 30 to 100 °C.
    assertThat(balance.vapour()).isBetween(lost * (2260 + 4.18 * 30), lost * (2260 + 4.18 * 100));
    // 550 g dry and what is left of 450 g of water, at 85 to 110 °C on the mean, less dough of 30
    // °C.
    double loaf = 0.55 * 1.675 + (0.45 - lost) * 4.18;
    double dough = 0.55 * 1.675 + 0.45 * 4.18;
    assertThat(balance.stored()).isBetween(loaf * 85 - dough * 30, loaf * 110 - dough * 30);
  }

  @Test
  void minutes_until_the_middle_is_warm_are_those_of_the_bake() {
    Loaf loaf = Loaf.hearth(400);
    OvenStage fan = new OvenStage(0, 210, true, false);
    OvenStage lid = new OvenStage(0, 210, false, true);
    for (OvenStage oven : List.of(OvenStage.still(0, 210), fan, lid)) {
      OvenStage long40 = new OvenStage(40, 210, oven.fan(), oven.lid());
      assertThat(Bake.minutesUntil(70, loaf, 25, oven, 0, 240))
          .isEqualTo(bake(loaf, 25, 0, long40).coreReaches(70));
    }
    double still = Bake.minutesUntil(70, loaf, 25, OvenStage.still(0, 210), 0, 240).orElseThrow();
    assertThat(Bake.minutesUntil(70, loaf, 25, fan, 0, 240).orElseThrow()).isLessThan(still);
    assertThat(Bake.minutesUntil(70, loaf, 25, OvenStage.still(0, 210), 0, still - 2)).isEmpty();
    assertThat(Bake.minutesUntil(25, loaf, 25, OvenStage.still(0, 210), 0, 240)).hasValue(0);
    assertThat(Bake.minutesUntil(70, loaf, 25, OvenStage.still(0, 60), 0, 240)).isEmpty();
  }

  /** The model's minutes: until 94 °C, or two below boiling where that is less, and nine. */
  @Test
  void nine_minutes_after_ninety_four_degrees_the_crust_is_done_too() {
    Loaf roll = Loaf.roll(60);
    OvenStage oven = OvenStage.still(0, 200);

    assertThat(BakeTime.minutes(roll, oven, 0))
        .isCloseTo(until(94, roll, oven, 0) + 9, within(1e-9));
    assertThat(BakeTime.minutes(roll, oven, 2000))
        .isCloseTo(until(Boiling.at(2000) - 2, roll, oven, 2000) + 9, within(1e-9));
    assertThat(BakeTime.minutes(roll, OvenStage.still(0, 60), 0)).isEqualTo(240 + 9);
  }

  private static double until(double core, Loaf loaf, OvenStage oven, double metres) {
    return Bake.minutesUntil(core, loaf, 25, oven, metres, 240).orElseThrow();
  }

  @Test
  void the_styles_own_bake_is_wanted_of_its_own_piece_and_else_in_the_ratio_of_the_model() {
    assertThat(BakeTime.wanted(33, 210, 60, 210, 60)).isCloseTo(33, within(1e-9));
    assertThat(BakeTime.wanted(33, 210, 60, 210, 60, Loaf::roll)).isCloseTo(33, within(1e-9));
    double small = BakeTime.minutes(Loaf.roll(60), OvenStage.still(0, 210), 0);
    double large = BakeTime.minutes(Loaf.roll(120), OvenStage.still(0, 190), 0);
    assertThat(BakeTime.wanted(20, 210, 60, 190, 120, Loaf::roll))
        .isCloseTo(20 * large / small, within(1e-9));
    assertThat(BakeTime.wanted(20, 210, 60, 190, 120))
        .isCloseTo(20 * HearthBakes.minutes(190, 120) / HearthBakes.minutes(210, 60), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "25, 230, 10, 0, true", "0, 230, 10, 0, true", "-0.1, 230, 10, 0, false",
    "40, 230, 10, 0, true", "40.1, 230, 10, 0, false", "25, 120, 10, 0, true",
    "25, 119.9, 10, 0, false", "25, 300, 10, 0, true", "25, 300.1, 10, 0, false",
    "25, 230, 10, 3500, true", "25, 230, 10, 3500.1, false", "25, 230, 110, 0, true",
    "25, 230, 110.1, 0, false"
  })
  void the_model_covers_what_its_page_says(
      double dough, double oven, double minutes, double metres, boolean covered) {
    Loaf loaf = Loaf.hearth(900);
    List<OvenStage> stages = List.of(OvenStage.still(10, 200), OvenStage.still(minutes, oven));

    assertThat(Bake.covers(loaf, dough, stages, metres)).isEqualTo(covered);
    assertThat(Bake.covers(Loaf.hearth(19), dough, stages, metres)).isFalse();
    if (minutes <= 10) {
      assertThat(Bake.of(loaf, dough, stages, metres, Constants.USUAL).extrapolated())
          .isEqualTo(!covered);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-5, 200, 1, 0",
    "60, 200, 1, 0",
    "25, -30, 1, 0",
    "25, 600, 1, 0",
    "25, 200, 0, 0",
    "25, 200, 1000, 0",
    "25, 200, 1, -500",
    "25, 200, 1, 9000"
  })
  void what_lies_at_the_end_of_reason_is_still_baked(
      double dough, double oven, double minutes, double metres) {
    BakeCourse course = bake(Loaf.flat(60, 12), dough, metres, OvenStage.still(minutes, oven));

    assertThat(course.core()).isBetween(-5.0, 600.0);
    assertThat(course.points().get(course.points().size() - 1).minute()).isEqualTo(minutes);
  }

  @ParameterizedTest
  @CsvSource({
    "-5.1, 200, 1, 0",
    "60.1, 200, 1, 0",
    "25, -30.1, 1, 0",
    "25, 600.1, 1, 0",
    "25, 200, -0.1, 0",
    "25, 200, 1000.1, 0",
    "25, 200, 1, -500.1",
    "25, 200, 1, 9000.1"
  })
  void what_lies_beyond_is_refused(double dough, double oven, double minutes, double metres) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> bake(Loaf.flat(60, 12), dough, metres, OvenStage.still(minutes, oven)))
        .withMessageContaining("out of reach");
  }

  @ParameterizedTest
  @CsvSource({"120, 0, 20", "160, 10, 20", "296, 20, 20"})
  void at_the_bakes_that_are_kept_the_minutes_are_those_of_the_bake(
      double celsius, int steps, double lightest) {
    double grams = lightest * Math.pow(1.125, steps);
    Loaf loaf = Loaf.hearth(grams);

    assertThat(HearthBakes.minutes(celsius, grams))
        .isCloseTo(BakeTime.minutes(loaf, OvenStage.still(0, celsius), 0), within(1e-6));
  }

  // Not from memory, in which an earlier answer to the same question may stand.
  private static BakeCourse bake(Loaf loaf, double dough, double metres, OvenStage... stages) {
    return Bake.of(loaf, dough, List.of(stages), metres, Constants.USUAL);
  }
}
