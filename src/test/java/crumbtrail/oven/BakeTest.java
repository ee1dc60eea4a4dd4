package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class BakeTest {
  private static BakeCourse bake(Loaf loaf, OvenStage... stages) {
    return Bake.of(loaf, 25, List.of(stages), 0);
  }

  @Test
  void slab_cylinder_and_ball_come_out_as_themselves() {
    // A brick that is wide and long for its height is a slab, a long one of square section not yet
    // a
    // cylinder, and a cylinder of great length a cylinder.
    assertThat(Body.brick(10_000, 10_000, 20).exponent()).isCloseTo(0, within(0.02));
    assertThat(Body.brick(10_000, 10_000, 20).radius()).isCloseTo(0.010, within(0.0002));
    assertThat(Body.cylinder(30, 10_000).exponent()).isCloseTo(1, within(0.02));
    assertThat(Body.cylinder(30, 10_000).radius()).isCloseTo(0.030, within(0.0003));
    Body ball = Body.of(Math.PI / 6e3, Math.PI / 100, Math.PI * Math.PI / 0.0025);
    assertThat(ball.exponent()).isCloseTo(2, within(1e-9));
    assertThat(ball.radius()).isCloseTo(0.05, within(1e-9));
  }

  @Test
  void dough_that_no_oven_warms_stays_as_it_is() {
    BakeCourse course = Bake.of(Loaf.hearth(500), 25, List.of(), 0);

    assertThat(course.core()).isEqualTo(25);
    assertThat(course.lossPercent()).isZero();
    assertThat(course.setAtMinute()).isEmpty();
    assertThat(course.points()).hasSize(1);
  }

  @Test
  void an_oven_cut_short_leaves_the_middle_unset() {
    BakeCourse course = bake(Loaf.hearth(900), OvenStage.still(15, 220));

    assertThat(course.core()).isLessThan(65);
    assertThat(course.setAtMinute()).isEmpty();
  }

  @Test
  void starch_sets_in_the_eighties_at_the_latest() {
    BakeCourse course = bake(Loaf.hearth(900), OvenStage.still(45, 220));

    assertThat(course.coreAt(course.setAtMinute().orElseThrow())).isBetween(70.0, 95.0);
  }

  @Test
  void a_stone_bakes_faster_than_a_tray_and_a_dark_tin_faster_than_a_bright_one() {
    Loaf free = Loaf.hearth(700);
    Loaf tin = Loaf.tin(700, 210, 110, 80);
    OvenStage oven = OvenStage.still(40, 220);

    assertThat(bake(free.in(Boundary.HEARTH), oven).setAtMinute().orElseThrow())
        .isLessThan(bake(free, oven).setAtMinute().orElseThrow());
    assertThat(bake(tin.in(Boundary.DARK_TIN), oven).setAtMinute().orElseThrow())
        .isLessThan(bake(tin, oven).setAtMinute().orElseThrow());
    assertThat(bake(tin.in(Boundary.GLASS), oven).crustColour())
        .isGreaterThan(bake(tin, oven).crustColour());
  }

  /** Common practice: a fan oven is set 20 °C lower. A tenth of the time is the baker's feeling. */
  @Test
  void a_fan_is_worth_twenty_degrees() {
    double fan = BakeTime.minutes(Loaf.hearth(900), new OvenStage(0, 200, true, false), 0);
    double still = BakeTime.minutes(Loaf.hearth(900), OvenStage.still(0, 220), 0);

    assertThat(fan).isCloseTo(still, within(still / 10));
  }

  @Test
  void under_a_lid_less_water_leaves() {
    Loaf loaf = Loaf.hearth(900).in(Boundary.POT);
    OvenStage lid = new OvenStage(20, 240, false, true);

    assertThat(bake(loaf, lid).lossPercent())
        .isLessThan(bake(loaf, OvenStage.still(20, 240)).lossPercent());
  }

  @Test
  void up_a_mountain_the_core_stops_lower() {
    BakeCourse high = Bake.of(Loaf.hearth(700), 25, List.of(OvenStage.still(45, 220)), 1600);

    assertThat(high.core()).isLessThanOrEqualTo(Boiling.at(1600)).isGreaterThan(90);
    assertThat(high.extrapolated()).isFalse();
  }

  @Test
  void the_course_is_read_between_its_points() {
    BakeCourse course = bake(Loaf.hearth(700), OvenStage.still(40, 220));
    double minute = course.coreReaches(80).orElseThrow();

    assertThat(course.coreAt(minute)).isCloseTo(80, within(0.01));
    assertThat(course.coreAt(0)).isEqualTo(25);
    assertThat(course.coreAt(100)).isEqualTo(course.core());
    assertThat(course.coreReaches(101)).isEmpty();
  }

  @Test
  void beyond_its_range_it_says_so_and_out_of_all_reason_it_refuses() {
    assertThat(bake(Loaf.hearth(900), OvenStage.still(3, 450)).extrapolated()).isTrue();
    assertThat(bake(Loaf.flat(250, 4), OvenStage.still(8, 250)).extrapolated()).isTrue();
    assertThat(bake(Loaf.hearth(900), OvenStage.still(40, 230)).extrapolated()).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> bake(Loaf.hearth(900), OvenStage.still(-1, 230)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> bake(Loaf.hearth(900), OvenStage.still(10, Double.NaN)));
  }
}
