package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.oven.Bake;
import crumbtrail.oven.Loaf;
import crumbtrail.oven.OvenStage;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** The steps in which pieces are told apart, against what they do to a bake. */
class BakeGridTest {
  private static final double WATER = 62;
  private static final double START = 26;

  @Test
  void half_a_step_of_weight_water_and_warmth_moves_the_middle_by_less_than_a_degree() {
    all_move_little(Care.FULL, 1);
  }

  @Test
  void half_a_step_of_the_wider_grid_of_draws_moves_it_by_less_than_the_model_errs() {
    all_move_little(Care.ofDraw(Set.of()), 3);
  }

  private static void all_move_little(Care care, double most) {
    moves_little(care, most, Loaf::roll, 60, 200);
    moves_little(care, most, Loaf::baguette, 350, 240);
    moves_little(care, most, Loaf::hearth, 900, 220);
    moves_little(care, most, grams -> Loaf.tin(grams, 250, 120, 75), 900, 200);
    moves_little(care, most, grams -> Loaf.flat(grams, 12), 250, 230);
  }

  private static void moves_little(
      Care care, double most, DoubleFunction<Loaf> shape, double grams, double oven) {
    double half = care.grid() / 2;
    for (int minutes = 4; minutes <= 60; minutes += 4) {
      double exact = core(shape.apply(grams).withWater(WATER), START, minutes, oven);
      // Heavier, wetter and colder all make it slower.
      double off =
          core(
              shape
                  .apply(grams * (1 + half * BakeWorkup.WEIGHT_STEP))
                  .withWater(WATER + half * BakeWorkup.WATER_STEP),
              START - half * BakeWorkup.WARMTH_STEP,
              minutes,
              oven);
      assertThat(off).as("%s g after %s min", grams, minutes).isCloseTo(exact, within(most));
    }
  }

  private static double core(Loaf loaf, double start, double minutes, double oven) {
    return Bake.of(loaf, start, List.of(OvenStage.still(minutes, oven)), 0).core();
  }
}
