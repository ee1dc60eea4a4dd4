package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The balances of docs/science/oven.md on a slab of few equal layers, reckoned by hand: 1 kg with
 * 40 % of water, 30 mm thick, 300 kg/m³. Its crumb carries no heat by vapour, so that it conducts
 * alike when cold and when warm.
 */
class HeatFlowTest {
  private static final double AREA = 2 / 300.0 / 0.03;
  private static final double SKIN = 5e-4;
  private static final Loaf SLAB =
      new Loaf(new Body(1 / 300.0, AREA, 0.015, 0), 1000, Boundary.TRAY, 0.4, 0.5);
  private static final Crumb CRUMB = new Crumb(300, 100, 0);
  // 15 mm in layers of about 3.5 mm are four, of 0.25 kg each, and a half of one is 1.875 mm.
  private static final int LAYERS = 4;
  private static final double HALF = 0.015 / 8;
  private static final double DRY = 0.6 * 1675 / LAYERS;
  private static final double WATER = 0.4 / LAYERS;
  private static final double PER_DEGREE = DRY + WATER * 4180;

  private static HeatFlow flow(double celsius, double open, double vapour) {
    HeatFlow flow = new HeatFlow(SLAB, CRUMB, SKIN);
    flow.surround(new Surroundings(celsius, 10, 0, open, vapour));
    return flow;
  }

  @Test
  void at_the_start_every_layer_has_its_share_of_heat_and_water() {
    HeatFlow flow = flow(200, 0, 0);
    double[] state = flow.start(25);

    assertThat(state).hasSize(2 * LAYERS + 2);
    for (int layer = 0; layer < LAYERS; layer++) {
      assertThat(state[layer]).isCloseTo(PER_DEGREE * 25, within(1e-6));
      assertThat(state[LAYERS + layer]).isCloseTo(WATER, within(1e-9));
      assertThat(flow.temperature(state, layer)).isCloseTo(25, within(1e-9));
    }
    assertThat(flow.sum(state, 0)).isCloseTo(4 * PER_DEGREE * 25, within(1e-6));
    assertThat(flow.sum(state, 1)).isCloseTo(0.4, within(1e-9));
    assertThat(flow.passed(state, 0)).isZero();
    assertThat(flow.passed(state, 1)).isZero();
  }

  /** Newton's law through air and half a layer: (T_o - T) / (1/h + d/k). */
  @Test
  void heat_comes_through_the_air_and_half_of_the_outermost_layer() {
    HeatFlow flow = flow(200, 0, 0);
    double[] state = flow.start(20);
    double k = CRUMB.conduction(20);
    double flux = 180 / (0.1 + HALF / k);

    flow.advance(state, 2);

    assertThat(flow.passed(state, 0)).isCloseTo(2 * AREA * flux, within(1e-6));
    assertThat(flow.surface()).isCloseTo(200 - flux / 10, within(1e-9));
    assertThat(state[3]).isCloseTo(PER_DEGREE * 20 + 2 * AREA * flux, within(1e-6));
    assertThat(state[2]).isCloseTo(PER_DEGREE * 20, within(1e-6));
    assertThat(flow.passed(state, 1)).isZero();
    assertThat(flow.sum(state, 1)).isCloseTo(0.4, within(1e-12));
  }

  /** Black radiation of an oven at 200 °C on a skin at T: σ (473⁴ - T⁴); found by halving. */
  @Test
  void radiation_comes_beside_the_air() {
    HeatFlow flow = flow(200, 0, 0);
    flow.surround(new Surroundings(200, 5, 0.4, 0, 0));
    double[] state = flow.start(20);
    double k = CRUMB.conduction(20);
    double low = 20;
    double high = 200;
    while (high - low > 1e-9) {
      double skin = (low + high) / 2;
      double inward = (skin - 20) * k / HALF;
      if (inward < warming(skin)) {
        low = skin;
      } else {
        high = skin;
      }
    }

    flow.advance(state, 1);

    // Two rounds of making it linear are enough for half a percent.
    assertThat(flow.passed(state, 0))
        .isCloseTo(AREA * warming(low), Percentage.withPercentage(0.5));
    assertThat(flow.surface()).isCloseTo(low, within(0.2));
  }

  private static double warming(double skin) {
    return 5 * (200 - skin)
        + 0.4 * 5.670374e-8 * (Math.pow(473.15, 4) - Math.pow(skin + 273.15, 4));
  }

  /** Fourier's law between two half layers: k (T_1 - T_2) / 2d. */
  @Test
  void between_layers_heat_flows_from_warm_to_cold_and_none_is_lost() {
    HeatFlow flow = flow(40, 0, 0);
    double[] state = flow.start(40);
    state[1] += PER_DEGREE * 20;
    double before = flow.sum(state, 0);
    double passed = AREA * CRUMB.conduction(40) * 20 / (2 * HALF);

    flow.advance(state, 3);

    assertThat(flow.sum(state, 0)).isCloseTo(before, within(1e-6));
    assertThat(state[0]).isCloseTo(PER_DEGREE * 40 + 3 * passed, within(1e-6));
    assertThat(state[1]).isCloseTo(PER_DEGREE * 60 - 6 * passed, within(1e-6));
    assertThat(state[2]).isCloseTo(PER_DEGREE * 40 + 3 * passed, within(1e-6));
    assertThat(flow.passed(state, 0)).isCloseTo(0, within(1e-9));
  }

  @Test
  void between_a_moist_and_a_half_dry_layer_the_resistances_add() {
    HeatFlow flow = flow(30, 0, 0);
    double[] state = flow.start(30);
    state[4] = WATER / 2;
    state[0] = (DRY + WATER / 2 * 4180) * 50;
    double k = CRUMB.conduction(30);
    double halfDry = 0.055 + 0.5 * (k - 0.055);
    double passed = AREA * 20 / (HALF / k + HALF / halfDry);

    flow.advance(state, 1);

    assertThat(state[1]).isCloseTo(PER_DEGREE * 30 + passed, within(1e-6));
    assertThat(state[0]).isCloseTo((DRY + WATER / 2 * 4180) * 50 - passed, within(1e-6));
  }

  @Test
  void a_step_is_nine_tenths_of_what_the_most_hurried_layer_allows() {
    HeatFlow flow = flow(200, 0, 0);
    double[] state = flow.start(20);
    double between = AREA * CRUMB.conduction(20) / (2 * HALF);

    assertThat(flow.step(state)).isCloseTo(0.9 * PER_DEGREE / (2 * between), within(1e-6));

    // A hot gale hurries the outermost layer, and water that is gone makes it quicker still.
    flow.surround(new Surroundings(200, 1e6, 0, 0, 0));
    double k = CRUMB.conduction(20);
    double through = AREA / (HALF / k + 1e-6);
    assertThat(flow.step(state)).isCloseTo(0.9 * PER_DEGREE / (between + through), within(1e-6));
    state[2 * LAYERS - 1] = WATER / 2;
    state[LAYERS - 1] = (DRY + WATER / 2 * 4180) * 20;
    double halfDry = 0.055 + 0.5 * (k - 0.055);
    double inward = AREA / (HALF / k + HALF / halfDry);
    double outward = AREA / (HALF / halfDry + 1e-6);
    double next = AREA / (HALF / k + HALF / k) + inward;
    assertThat(flow.step(state))
        .isCloseTo(
            0.9 * Math.min((DRY + WATER / 2 * 4180) / (inward + outward), PER_DEGREE / next),
            within(1e-6));
  }

  @Test
  void vapour_leaves_through_the_skin_and_takes_its_heat_along() {
    HeatFlow flow = flow(60, 0.3, 0.01);
    double[] state = flow.start(60);
    double gone = AREA * 0.3 * SKIN * (Crumb.vapour(60) - 0.01);
    double heat = gone * (2.26e6 + 4180 * 60);

    flow.advance(state, 2);

    assertThat(state[7]).isCloseTo(WATER - 2 * gone, within(1e-9));
    assertThat(flow.sum(state, 1)).isCloseTo(0.4 - 2 * gone, within(1e-9));
    assertThat(flow.passed(state, 1)).isCloseTo(2 * heat, within(1e-6));
    assertThat(state[3]).isCloseTo(PER_DEGREE * 60 - 2 * heat, within(1e-6));
    assertThat(gone).isPositive();
  }

  @Test
  void none_leaves_into_air_that_holds_as_much_or_more() {
    for (double air : new double[] {Crumb.vapour(60), 0.5}) {
      HeatFlow flow = flow(60, 1, air);
      double[] state = flow.start(60);

      flow.advance(state, 2);

      assertThat(flow.sum(state, 1)).isCloseTo(0.4, within(1e-12));
      assertThat(flow.passed(state, 1)).isZero();
    }
  }

  /** A layer gives off as if wet until three quarters are gone; what it lacks comes from within. */
  @ParameterizedTest
  @CsvSource({"1, 1", "0.25, 1", "0.125, 0.5", "0, 0"})
  void behind_a_crust_the_next_layer_gives_what_the_outermost_cannot(double left, double share) {
    HeatFlow flow = flow(60, 1, 0);
    double[] state = flow.start(60);
    state[7] = WATER * left;
    state[3] = (DRY + WATER * left * 4180) * 60;
    double drive = Crumb.vapour(60);
    double outer = AREA * share * SKIN * drive;
    double inner = AREA * (1 - share) * drive / (1 / SKIN + 2 * HALF / 3e-6);
    double before = flow.sum(state, 1);

    flow.advance(state, 1);

    assertThat(state[7]).isCloseTo(WATER * left - outer, within(1e-9));
    assertThat(state[6]).isCloseTo(WATER - inner, within(1e-9));
    assertThat(state[5]).isCloseTo(WATER, within(1e-12));
    assertThat(before - flow.sum(state, 1)).isCloseTo(outer + inner, within(1e-9));
    assertThat(flow.passed(state, 1))
        .isCloseTo((outer + inner) * (2.26e6 + 4180 * 60), within(1e-6));
  }

  @Test
  void what_is_heated_past_boiling_boils_off_and_what_is_not_stays() {
    HeatFlow flow = flow(200, 0, 0);
    double[] state = flow.start(100);
    double excess = PER_DEGREE * 3;
    state[3] += excess;

    flow.boil(state, 100);

    double gone = excess / 2.26e6;
    double heat = gone * (2.26e6 + 4180 * 100);
    assertThat(state[7]).isCloseTo(WATER - gone, within(1e-12));
    assertThat(flow.temperature(state, 3)).isCloseTo(100, within(1e-9));
    assertThat(flow.passed(state, 1)).isCloseTo(heat, within(1e-6));
    assertThat(state[6]).isCloseTo(WATER, within(1e-12));
    assertThat(state[2]).isCloseTo(PER_DEGREE * 100, within(1e-9));

    state[0] += excess;
    flow.boil(state, 100);
    assertThat(state[4]).isCloseTo(WATER - gone, within(1e-12));
    assertThat(flow.passed(state, 1)).isCloseTo(2 * heat, within(1e-6));
  }

  @Test
  void no_more_water_boils_off_than_there_is_and_the_crust_warms_on() {
    HeatFlow flow = flow(200, 0, 0);
    double[] state = flow.start(100);
    double excess = WATER * 2.26e6 + DRY * 30;
    state[3] += excess;

    flow.boil(state, 100);

    assertThat(state[7]).isZero();
    assertThat(flow.temperature(state, 3)).isCloseTo(130, within(1e-9));
    double gone = flow.passed(state, 1);
    flow.boil(state, 100);
    assertThat(state[7]).isZero();
    assertThat(flow.passed(state, 1)).isEqualTo(gone);
  }

  /** Layers of about 3.5 mm, three to twelve; six and more grow thinner towards the surface. */
  @ParameterizedTest
  @CsvSource({"0.004, 3", "0.0105, 3", "0.0175, 5", "0.021, 6", "0.035, 10", "0.09, 12"})
  void thicker_loaves_have_more_layers(double radius, int layers) {
    Loaf loaf = new Loaf(new Body(0.001, 0.001 / radius, radius, 0), 400, Boundary.TRAY, 0.4, 0.5);

    assertThat(new HeatFlow(loaf, CRUMB, SKIN).start(20)).hasSize(2 * layers + 2);
  }

  /** From one and a half times the mean thickness in the middle to half of it at the surface. */
  @Test
  void layers_are_thinner_towards_the_surface_and_a_ball_has_most_of_itself_outside() {
    double[] slab = water(0);
    double[] ball = water(2);

    for (int layer = 0; layer < 10; layer++) {
      double inner = depth(layer / 10.0);
      double outer = depth((layer + 1) / 10.0);
      assertThat(slab[layer]).isCloseTo(0.16 * (outer - inner), within(1e-12));
      assertThat(ball[layer])
          .isCloseTo(0.16 * (Math.pow(outer, 3) - Math.pow(inner, 3)), within(1e-12));
    }
    assertThat(slab[0]).isCloseTo(0.16 * 0.145, within(1e-12));
    assertThat(slab[9]).isCloseTo(0.16 * 0.055, within(1e-12));
  }

  private static double depth(double part) {
    return 1.5 * part - 0.5 * part * part;
  }

  private static double[] water(double exponent) {
    double surface = (exponent + 1) * 0.001 / 0.035;
    Loaf loaf = new Loaf(new Body(0.001, surface, 0.035, exponent), 400, Boundary.TRAY, 0.4, 0.5);
    double[] state = new HeatFlow(loaf, CRUMB, SKIN).start(20);
    return java.util.Arrays.copyOfRange(state, 10, 20);
  }

  /** In a ball the shells' areas grow as the square of the radius. */
  @Test
  void in_a_ball_heat_crosses_the_area_of_each_shell() {
    double surface = 3 * 0.001 / 0.0175;
    Loaf loaf = new Loaf(new Body(0.001, surface, 0.0175, 2), 300, Boundary.TRAY, 0.4, 0.5);
    HeatFlow flow = new HeatFlow(loaf, CRUMB, SKIN);
    flow.surround(new Surroundings(20, 10, 0, 0, 0));
    double[] state = flow.start(20);
    double inmost = state[0];
    state[0] = 2 * inmost;
    double passed = surface * 0.04 * CRUMB.conduction(20) * 20 / 0.0035;

    flow.advance(state, 0.1);

    assertThat(2 * inmost - state[0]).isCloseTo(0.1 * passed, within(1e-6));
  }
}
