package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds of every bake. */
class BakePropertyTest {
  private static final int TRIES = 150;

  @Provide
  Arbitrary<Loaf> loaves() {
    return Arbitraries.of("hearth", "roll", "baguette", "tin", "flat")
        .flatMap(shape -> Arbitraries.doubles().between(60, 1500).map(g -> loaf(shape, g)));
  }

  private static Loaf loaf(String shape, double grams) {
    double side = Math.cbrt(grams * 2500);
    return switch (shape) {
      case "hearth" -> Loaf.hearth(grams).in(Boundary.HEARTH);
      case "roll" -> Loaf.roll(grams);
      case "baguette" -> Loaf.baguette(grams);
      case "tin" -> Loaf.tin(grams, 1.6 * side, 0.8 * side, 0.8 * side);
      default -> Loaf.flat(grams, 20);
    };
  }

  private static BakeCourse bake(Loaf loaf, double oven, double minutes, double metres) {
    return Bake.of(loaf, 25, List.of(OvenStage.still(minutes, oven)), metres);
  }

  @Property(tries = TRIES)
  void heat_taken_up_is_stored_or_gone_with_vapour(
      @ForAll("loaves") Loaf loaf, @ForAll @DoubleRange(min = 140, max = 280) double oven) {
    BakeCourse.Balance balance = bake(loaf, oven, 35, 0).balance();

    assertThat(balance.stored() + balance.vapour())
        .isCloseTo(balance.taken(), within(1e-6 * balance.taken()));
  }

  @Property(tries = TRIES)
  void the_middle_never_passes_boiling_while_it_is_moist(
      @ForAll("loaves") Loaf loaf,
      @ForAll @DoubleRange(min = 140, max = 280) double oven,
      @ForAll @DoubleRange(min = 0, max = 3000) double metres) {
    BakeCourse course = bake(loaf, oven, 25, metres);

    if (course.lossPercent() < 20) {
      assertThat(course.points())
          .allSatisfy(p -> assertThat(p.core()).isLessThanOrEqualTo(Boiling.at(metres) + 1e-6));
    }
  }

  @Property(tries = TRIES)
  void weight_is_only_lost(
      @ForAll("loaves") Loaf loaf, @ForAll @DoubleRange(min = 140, max = 280) double oven) {
    double before = 0;
    for (BakeCourse.Point point : bake(loaf, oven, 30, 0).points()) {
      assertThat(point.lossPercent()).isBetween(before, 100.0 * loaf.waterShare() + 1e-9);
      before = point.lossPercent();
    }
  }

  @Property(tries = TRIES)
  void a_hotter_oven_never_sets_later(
      @ForAll("loaves") Loaf loaf,
      @ForAll @DoubleRange(min = 150, max = 260) double oven,
      @ForAll @DoubleRange(min = 1, max = 40) double more) {
    double cool = bake(loaf, oven, 90, 0).setAtMinute().orElse(90);
    double hot = bake(loaf, oven + more, 90, 0).setAtMinute().orElse(90);

    // A twentieth of a minute is one step of the sums.
    assertThat(hot).isLessThanOrEqualTo(cool + 0.05);
  }

  @Property(tries = TRIES)
  void a_heavier_loaf_never_sets_sooner(
      @ForAll("shapes") String shape,
      @ForAll @DoubleRange(min = 60, max = 1200) double grams,
      @ForAll @DoubleRange(min = 1.1, max = 2) double times) {
    double light = bake(loaf(shape, grams), 220, 90, 0).setAtMinute().orElse(90);
    double heavy = bake(loaf(shape, grams * times), 220, 90, 0).setAtMinute().orElse(90);

    assertThat(heavy).isGreaterThanOrEqualTo(light - 0.05);
  }

  @Provide
  Arbitrary<String> shapes() {
    return Arbitraries.of("hearth", "roll", "baguette", "tin");
  }

  @Property(tries = TRIES)
  void a_bake_cut_in_two_is_the_whole_bake(
      @ForAll("loaves") Loaf loaf, @ForAll @DoubleRange(min = 1, max = 29) double cut) {
    BakeCourse whole = bake(loaf, 220, 30, 0);
    BakeCourse parts =
        Bake.of(loaf, 25, List.of(OvenStage.still(cut, 220), OvenStage.still(30 - cut, 220)), 0);
    BakeCourse halves =
        Bake.of(loaf, 25, List.of(OvenStage.still(15, 220), OvenStage.still(15, 220)), 0);

    assertThat(halves.core()).isEqualTo(whole.core());
    assertThat(halves.lossPercent()).isEqualTo(whole.lossPercent());
    // Off the half minutes the steps differ a little in length.
    assertThat(parts.core()).isCloseTo(whole.core(), within(0.3));
    assertThat(parts.lossPercent()).isCloseTo(whole.lossPercent(), within(0.1));
  }

  @Property(tries = TRIES)
  void a_little_more_oven_changes_little(
      @ForAll("loaves") Loaf loaf, @ForAll @DoubleRange(min = 140, max = 270) double oven) {
    BakeCourse one = bake(loaf, oven, 25, 0);
    BakeCourse other = bake(loaf, oven + 0.5, 25, 0);

    assertThat(other.core()).isCloseTo(one.core(), within(2.0));
    assertThat(other.lossPercent()).isCloseTo(one.lossPercent(), within(0.5));
  }
}
