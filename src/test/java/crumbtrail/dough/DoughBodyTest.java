package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.dough.DoughBody.Form;
import crumbtrail.dough.DoughBody.Holder;
import crumbtrail.dough.DoughBody.Pair;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoughBodyTest {

  /**
   * The exact solution for a ball in air (Fourier series; Carslaw and Jaeger), with our
   * conductivity and density. Two halves and a single exponential must stay close to it.
   */
  @ParameterizedTest(name = "{0} g, {1} W/m2K, {2} min")
  @CsvSource({
    "60, 8, 15",
    "60, 8, 60",
    "900, 8, 20",
    "900, 8, 60",
    "900, 8, 240",
    "900, 20, 60",
    "5000, 8, 60",
    "5000, 8, 400",
    "5000, 12, 900"
  })
  void both_views_follow_the_exact_solution_of_a_ball(
      double grams, double transfer, double minutes) {
    DoughBody ball = DoughBody.piece(grams);
    double radius = Math.cbrt(grams / 1000 / 800 * 3 / (4 * Math.PI));
    double biot = 3 * ball.biot(transfer);
    double fourier = 0.45 / (800 * 2800) * minutes * 60 / (radius * radius);
    Surroundings place = new Surroundings(minutes, 0, transfer);

    double exact = exactMean(biot, fourier, 1);
    double exactCore = exactMean(biot, fourier, Math.cbrt(0.5));
    Pair pair = ball.after(Pair.even(1), place);

    assertThat(pair.mean()).isCloseTo(exact, within(0.015));
    assertThat(pair.core()).isCloseTo(exactCore, within(0.04));
    assertThat(ball.meanAfter(1, place, minutes)).isCloseTo(exact, within(0.03));
  }

  // Mean over r < share of a ball that starts at 1 in surroundings of 0.
  private static double exactMean(double biot, double fourier, double share) {
    double sum = 0;
    for (int n = 0; n < 60; n++) {
      double low = n * Math.PI + 1e-9;
      double high = (n + 1) * Math.PI - 1e-9;
      double root =
          new BrentSolver(1e-12)
              .solve(500, x -> Math.sin(x) * (1 - biot) - x * Math.cos(x), low, high);
      double amplitude =
          4 * (Math.sin(root) - root * Math.cos(root)) / (2 * root - Math.sin(2 * root));
      double x = root * share;
      double mean = 3 * (Math.sin(x) - x * Math.cos(x)) / (x * x * x);
      sum += amplitude * Math.exp(-root * root * fourier) * mean;
    }
    return sum;
  }

  @Property(tries = 200)
  void a_stay_cut_in_two_gives_what_the_whole_gives(
      @ForAll @DoubleRange(min = 20, max = 20_000) double grams,
      @ForAll @DoubleRange(min = -2, max = 45) double place,
      @ForAll @DoubleRange(min = 0, max = 1000) double first,
      @ForAll @DoubleRange(min = 0, max = 1000) double second) {
    DoughBody body = DoughBody.inBowl(grams);
    Surroundings all = Surroundings.still(first + second, place);

    double whole = body.meanAfter(26, all, first + second);
    Pair pair = body.after(Pair.even(26), all);
    Pair cut = body.after(body.after(Pair.even(26), all.lasting(first)), all.lasting(second));

    assertThat(body.meanAfter(26, List.of(all.lasting(first), all.lasting(second))))
        .isCloseTo(whole, within(1e-9));
    assertThat(cut.core()).isCloseTo(pair.core(), within(1e-9));
    assertThat(cut.rim()).isCloseTo(pair.rim(), within(1e-9));
  }

  @Property(tries = 200)
  void core_lags_the_rim_and_neither_passes_the_place(
      @ForAll Form form,
      @ForAll Holder holder,
      @ForAll boolean covered,
      @ForAll @DoubleRange(min = 20, max = 20_000) double grams,
      @ForAll @DoubleRange(min = 0.1, max = 2000) double minutes) {
    DoughBody body = new DoughBody(grams, form, holder, covered);
    Surroundings fridge = new Surroundings(minutes, 4, Surroundings.FRIDGE);

    double core = body.coreAfter(26, fridge, minutes);
    double rim = body.rimAfter(26, fridge, minutes);

    assertThat(core).isBetween(4.0, 26.0);
    assertThat(rim).isBetween(4.0, core + 1e-9);
  }

  @Property(tries = 200)
  void heavier_dough_is_slower_and_moving_air_quicker(
      @ForAll Form form,
      @ForAll Holder holder,
      @ForAll @DoubleRange(min = 20, max = 20_000) double grams) {
    DoughBody body = new DoughBody(grams, form, holder, false);
    DoughBody heavier = new DoughBody(grams * 1.2, form, holder, false);

    assertThat(heavier.timeConstant(8)).isGreaterThan(body.timeConstant(8));
    assertThat(body.timeConstant(15)).isLessThan(body.timeConstant(8));
    assertThat(new DoughBody(grams, form, holder, true).timeConstant(8))
        .isGreaterThan(body.timeConstant(8));
  }

  @Property(tries = 100)
  void minutes_until_is_the_inverse_of_the_way_there(
      @ForAll @DoubleRange(min = 50, max = 10_000) double grams,
      @ForAll @DoubleRange(min = 6, max = 24) double wanted) {
    DoughBody body = DoughBody.piece(grams);
    Surroundings fridge = new Surroundings(600, 4, Surroundings.FRIDGE);

    double mean = body.minutesUntil(26, fridge, wanted).orElseThrow();
    double core = body.minutesUntilCore(26, fridge, wanted).orElseThrow();

    assertThat(body.meanAfter(26, fridge, mean)).isCloseTo(wanted, within(1e-6));
    assertThat(body.coreAfter(26, fridge, core)).isCloseTo(wanted, within(1e-4));
  }

  @Test
  void what_a_place_cannot_give_is_never_reached() {
    DoughBody body = DoughBody.piece(900);
    Surroundings fridge = new Surroundings(600, 4, Surroundings.FRIDGE);

    assertThat(body.minutesUntil(26, fridge, 3)).isEmpty();
    assertThat(body.minutesUntil(26, fridge, 30)).isEmpty();
    assertThat(body.minutesUntilCore(26, fridge, 4)).isEmpty();
    assertThat(body.minutesUntil(26, fridge, 26)).hasValue(0);
  }

  /** A roll is nearly one temperature in still air; a loaf of a kilogram is not. */
  @Test
  void the_biot_number_tells_rolls_from_loaves() {
    assertThat(DoughBody.inBowl(40).lumped()).isTrue();
    assertThat(DoughBody.piece(1000).lumped()).isFalse();
    assertThat(DoughBody.piece(1000).biot()).isBetween(0.1, 1.0);
  }

  @Test
  void masses_that_are_none_are_refused() {
    assertThatThrownBy(() -> DoughBody.piece(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Surroundings(-1, 20, 8))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(DoughBody.covers(900)).isTrue();
    assertThat(DoughBody.covers(5)).isFalse();
  }
}
