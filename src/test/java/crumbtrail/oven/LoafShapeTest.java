package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of loaves, by the geometry of schoolbooks; the equations stand in docs/science/oven.md. */
class LoafShapeTest {
  private static final double PI = Math.PI;

  /** First zero of the Bessel function of order nought: tables. */
  private static final double J0 = 2.404826;

  // The parabola of docs/science/oven.md through slab, cylinder and ball, by Lagrange.
  private static double mode(double n) {
    return PI * PI / 4 * (n - 1) * (n - 2) / 2 - J0 * J0 * n * (n - 2) + PI * PI * n * (n - 1) / 2;
  }

  private static void matches(Body body, double volume, double surface, double slowest) {
    assertThat(body.volume()).isCloseTo(volume, Percentage.withPercentage(1e-6));
    assertThat(body.surface()).isCloseTo(surface, Percentage.withPercentage(1e-6));
    assertThat(body.surface() / body.volume())
        .isCloseTo((body.exponent() + 1) / body.radius(), Percentage.withPercentage(1e-6));
    assertThat(mode(body.exponent()) / (body.radius() * body.radius()))
        .isCloseTo(slowest, Percentage.withPercentage(1e-6));
  }

  @Test
  void a_brick_has_its_own_volume_surface_and_slowest_mode() {
    double slowest = PI * PI * (1 / 0.0036 + 1 / 0.0016 + 1 / 0.0009);
    matches(Body.brick(60, 40, 30), 7.2e-5, 1.08e-2, slowest);
  }

  @Test
  void a_cylinder_has_its_own_volume_surface_and_slowest_mode() {
    double slowest = J0 * J0 / 0.0009 + PI * PI / 0.01;
    matches(Body.cylinder(30, 100), PI * 9e-5, PI * (2 * 0.03 * 0.1 + 2 * 0.0009), slowest);
  }

  @Test
  void a_half_ball_has_its_own_volume_surface_and_slowest_mode() {
    matches(
        Body.dome(50, 50, 50), PI * 2 / 3 * 1.25e-4, PI * 3 * 0.0025, 4.493409 * 4.493409 / 0.0025);
  }

  @Test
  void a_half_ellipsoid_is_stretched_along_each_of_its_axes() {
    Body body = Body.dome(80, 60, 50);
    double slowest = 4.493409 * 4.493409 * (0.6 / 0.0025 + 0.2 / 0.0064 + 0.2 / 0.0036);

    assertThat(body.volume()).isCloseTo(PI * 2 / 3 * 2.4e-4, within(1e-9));
    assertThat(mode(body.exponent()) / (body.radius() * body.radius()))
        .isCloseTo(slowest, Percentage.withPercentage(1e-6));
    // Axes taken for one another change neither the outline nor the surface.
    assertThat(Body.dome(60, 80, 50).surface()).isCloseTo(body.surface(), within(1e-9));
  }

  /** The surface of a flattened ball is known in closed form; Thomsen's is within 1.2 % of any. */
  @Test
  void the_surface_of_a_flattened_half_ball_is_that_of_the_closed_form() {
    assertThat(Body.dome(80, 80, 60).surface())
        .isCloseTo(PI * 0.0064 * (2 + RIM), Percentage.withPercentage(0.6));
  }

  // (1 - e²)/e · artanh e for a height of three quarters: e² = 1 - 9/16.
  private static final double RIM =
      0.5625 / Math.sqrt(0.4375) * Math.log((1 + Math.sqrt(0.4375)) / (1 - Math.sqrt(0.4375))) / 2;

  @Test
  void a_slab_is_no_flatter_than_flat_and_a_rough_body_no_rougher_than_the_sixth_power() {
    assertThat(Body.of(0.02, 2, 24_675).exponent()).isZero();
    assertThat(Body.of(0.02, 2, 26_000).exponent()).isZero();
    Body rough = Body.of(1e-3, 0.1, 5000);
    assertThat(rough.exponent()).isEqualTo(6);
    assertThat(rough.radius()).isCloseTo(7 * 1e-3 / 0.1, within(1e-9));
  }

  @Test
  void a_sheet_is_warmed_from_both_faces_to_half_its_thickness() {
    assertThat(Body.sheet(20, 1e6)).isEqualTo(new Body(0.02, 2, 0.01, 0));
  }

  @Test
  void eight_times_the_volume_is_four_times_the_surface_and_twice_the_radius() {
    Body large = new Body(0.001, 0.06, 0.05, 2).swollen(8);

    assertThat(large.volume()).isCloseTo(0.008, within(1e-12));
    assertThat(large.surface()).isCloseTo(0.24, within(1e-12));
    assertThat(large.radius()).isCloseTo(0.1, within(1e-12));
    assertThat(large.exponent()).isEqualTo(2);
  }

  /** 0.54 g/cm³ risen, 0.40 for small and long pieces, swollen by 1.35 in the oven. */
  @Test
  void pieces_are_as_dense_as_the_page_says() {
    assertThat(Loaf.hearth(700).density()).isCloseTo(540 / 1.35, within(1e-6));
    assertThat(Loaf.roll(60).density()).isCloseTo(400 / 1.35, within(1e-6));
    assertThat(Loaf.baguette(250).density()).isCloseTo(400 / 1.35, within(1e-6));
    assertThat(Loaf.flat(300, 20).density()).isCloseTo(540 / 1.35, within(1e-6));
    assertThat(Loaf.tin(900, 220, 110, 90).density()).isCloseTo(540 / 1.35, within(1e-6));
  }

  @Test
  void a_long_loaf_is_nine_times_as_long_as_thick() {
    // 18 r long, so S/V = 2 (r + l)/(r l) = 19/(9 r), with π r² · 18 r the volume.
    Body body = Loaf.baguette(250).body();
    double r = Math.cbrt(body.volume() / (18 * PI));

    assertThat(body.surface() / body.volume()).isCloseTo(19 / (9 * r), within(1e-6));
  }

  @Test
  void a_flat_piece_swells_upward_only() {
    // 300 g at 0.54 g/cm³ and 20 mm are 278 cm², 27 mm thick at last.
    Body body = Loaf.flat(300, 20).body();

    assertThat(body.surface()).isCloseTo(2 * 300 / 0.54 / 2 * 1e-4, within(1e-9));
    assertThat(body.radius()).isCloseTo(0.0135, within(1e-9));
  }

  @Test
  void a_free_loaf_stands_on_the_share_of_its_surface_that_its_shape_gives() {
    assertThat(Loaf.hearth(700).baseShare()).isCloseTo(1 / (2 + RIM), within(0.003));
    assertThat(Loaf.roll(60).baseShare()).isCloseTo(1 / (2 + RIM), within(0.003));
    // Height 3/4 of half the width: the rest of the shape follows from volume and surface.
    double half = Math.cbrt(Loaf.hearth(700).body().volume() / (PI / 2));
    assertThat(Loaf.hearth(700).body().surface())
        .isCloseTo(PI * half * half * (2 + RIM), Percentage.withPercentage(0.6));
  }

  @ParameterizedTest
  @CsvSource({"900, 102.27", "100, 50", "5000, 125"})
  void a_tin_loaf_stands_as_high_as_its_volume_asks_within_limits(double grams, double height) {
    // 900 g are 2.25 L on 220 cm²: 102.27 mm; the tin is 100 mm high.
    Loaf loaf = Loaf.tin(grams, 220, 100, 100);
    double surface = 2 * (0.022 + (0.22 + 0.1) * height / 1000);

    assertThat(loaf.body().volume()).isCloseTo(0.022 * height / 1000, within(1e-6));
    assertThat(loaf.body().surface()).isCloseTo(surface, within(1e-5));
    assertThat(loaf.baseShare()).isCloseTo(0.022 / surface, within(1e-4));
    assertThat(loaf.boundary()).isEqualTo(Boundary.STEEL_TIN);
  }

  @ParameterizedTest
  @CsvSource({"70, 0.488372", "0, 0.2", "30, 0.333333", "300, 0.6"})
  void water_in_the_dough_is_that_of_flour_and_recipe(double percent, double share) {
    Loaf loaf = Loaf.hearth(500).withWater(percent);

    // (70 + 14) of 172 parts, 2 of them salt.
    assertThat(loaf.waterShare()).isCloseTo(share, within(1e-6));
    assertThat(loaf.in(Boundary.POT))
        .isEqualTo(new Loaf(loaf.body(), 500, Boundary.POT, loaf.waterShare(), loaf.baseShare()));
  }

  @ParameterizedTest
  @CsvSource({
    "20, 0.02, 400, true", "19.9, 0.02, 400, false", "3000, 0.02, 400, true",
    "3000.1, 0.02, 400, false", "500, 0.006, 400, true", "500, 0.0059, 400, false",
    "64, 0.02, 80, true", "500, 0.02, 79.9, false", "900, 0.02, 900, true",
    "500, 0.02, 900.1, false"
  })
  void the_model_covers_the_pieces_that_its_page_names(
      double grams, double radius, double density, boolean covered) {
    Body body = new Body(grams / 1000 / density, 0.1, radius, 2);

    assertThat(Loaf.covers(new Loaf(body, grams, Boundary.TRAY, 0.45, 0.3))).isEqualTo(covered);
  }

  @Test
  void a_fan_a_stone_a_dark_tin_and_a_lid_change_what_the_loaf_feels() {
    Loaf loaf = new Loaf(new Body(0.001, 0.05, 0.05, 2), 400, Boundary.TRAY, 0.45, 0.4);
    Constants constants = new Constants(5, 0.4, 0.5, 5e-4);
    OvenStage still = OvenStage.still(10, 200);

    assertThat(Surroundings.oven(loaf, still, constants))
        .isEqualTo(new Surroundings(200, 5, 0.4, 1, 0));
    assertThat(Surroundings.oven(loaf, new OvenStage(10, 200, true, true), constants))
        .isEqualTo(new Surroundings(200, 7, 0.4, 0, 0));
    assertThat(Surroundings.oven(loaf.in(Boundary.HEARTH), still, constants).air())
        .isCloseTo(5 + 15 * 0.4, within(1e-9));
    Surroundings glass = Surroundings.oven(loaf.in(Boundary.GLASS), still, constants);
    assertThat(glass.air()).isCloseTo(5.6, within(1e-9));
    assertThat(glass.radiation()).isCloseTo(0.448, within(1e-9));
    assertThat(glass.open()).isEqualTo(0.3);
  }

  /** The derivative of black radiation is 4 σ T³: 24.0 W/(m² K) at 200 °C, 13.8 at 120 °C. */
  @ParameterizedTest
  @CsvSource({"200, 24.0", "120, 13.77", "20, 13.77"})
  void no_more_heat_passes_than_all_of_black_radiation_adds_to_the_air(
      double celsius, double black) {
    assertThat(new Surroundings(celsius, 5, 1, 1, 0).most()).isCloseTo(5 + black, within(0.03));
    assertThat(new Surroundings(celsius, 5, 0.5, 1, 0).most())
        .isCloseTo(5 + black / 2, within(0.03));
  }
}
