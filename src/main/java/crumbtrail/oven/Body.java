package crumbtrail.oven;

/**
 * The size of a loaf as heat sees it: a body in which heat moves along one radius only.
 *
 * <p>Any solid is put in place of a ball-like one with area growing as r<sup>n</sup>. Radius and
 * exponent are chosen such that two things are those of the solid: the heated surface for its
 * volume, <i>S/V = (n + 1)/R</i>, which rules how fast it warms as a whole, and the slowest mode of
 * conduction with a cold rim, <i>&lambda;<sub>1</sub>(n)/R²</i>, which rules how far the middle
 * lags. A slab (n = 0), a long cylinder (1) and a ball (2) come out as themselves; a brick gets an
 * exponent above two, since it has more surface for its middle than a ball has. This way of
 * matching is our choice; the modes are those of textbooks on conduction.
 *
 * @param volume m³
 * @param surface heated surface, m²
 * @param radius R, m
 * @param exponent n, 0 to 6
 */
public record Body(double volume, double surface, double radius, double exponent) {
  // λ1(n) is the square of the first zero of the Bessel function of order (n - 1)/2: π²/4, 5.783
  // and
  // π² for n = 0, 1, 2. This parabola through the three is 0.4 % off at n = 3 (14.68).
  private static final double AT_SLAB = Math.PI * Math.PI / 4;
  private static final double AT_CYLINDER = 2.404826 * 2.404826;
  private static final double AT_BALL = Math.PI * Math.PI;
  private static final double CURVE = (AT_BALL - 2 * AT_CYLINDER + AT_SLAB) / 2;
  private static final double SLOPE = AT_CYLINDER - AT_SLAB - CURVE;
  private static final double STEEPEST = 6;

  // Shares of the three directions in the slowest mode of a half ball with a cold rim, whose first
  // spherical Bessel zero is 4.4934: three fifths upright, a fifth each way along the floor.
  private static final double HALF_BALL = 4.493409 * 4.493409;

  /**
   * A body of given volume and surface.
   *
   * @param volume m³
   * @param surface m²
   * @param mode slowest mode of conduction with a cold rim: its rate over the diffusivity, 1/m²
   */
  static Body of(double volume, double surface, double mode) {
    double ratio = surface * surface / (volume * volume * mode);
    double a = 1 - ratio * CURVE;
    double b = 2 - ratio * SLOPE;
    double c = 1 - ratio * AT_SLAB;
    double exponent =
        c >= 0 ? 0 : Math.min(STEEPEST, (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a));
    return new Body(volume, surface, (exponent + 1) * volume / surface, exponent);
  }

  /** A brick: a loaf in a tin. Millimetres. */
  public static Body brick(double length, double width, double height) {
    double l = length / 1000;
    double w = width / 1000;
    double h = height / 1000;
    double modes = Math.PI * Math.PI * (1 / (l * l) + 1 / (w * w) + 1 / (h * h));
    return of(l * w * h, 2 * (l * w + w * h + h * l), modes);
  }

  /** An upright or lying cylinder with its two ends. Millimetres. */
  public static Body cylinder(double radius, double length) {
    double r = radius / 1000;
    double l = length / 1000;
    double modes = AT_CYLINDER / (r * r) + AT_BALL / (l * l);
    return of(Math.PI * r * r * l, 2 * Math.PI * r * (r + l), modes);
  }

  /**
   * The upper half of an ellipsoid on its flat base: a free-standing loaf. The slowest mode is that
   * of the half ball, stretched (an upper bound, close for loaves); the surface is Thomsen's
   * formula. Millimetres.
   *
   * @param along half the length
   * @param across half the width
   * @param height height
   */
  public static Body dome(double along, double across, double height) {
    double a = along / 1000;
    double b = across / 1000;
    double h = height / 1000;
    double modes = HALF_BALL * (0.6 / (h * h) + 0.2 / (a * a) + 0.2 / (b * b));
    double p = 1.6075;
    double mean =
        Math.pow((Math.pow(a * b, p) + Math.pow(a * h, p) + Math.pow(b * h, p)) / 3, 1 / p);
    double surface = 2 * Math.PI * mean + Math.PI * a * b;
    return of(2 * Math.PI / 3 * a * b * h, surface, modes);
  }

  /** A sheet that is wide for its thickness, both faces warmed: pizza, focaccia. Millimetres. */
  public static Body sheet(double thickness, double squareMillimetres) {
    double half = thickness / 2000;
    double area = squareMillimetres * 1e-6;
    return new Body(2 * half * area, 2 * area, half, 0);
  }

  /** The same shape with its volume multiplied. */
  public Body swollen(double times) {
    double length = Math.cbrt(times);
    return new Body(volume * times, surface * length * length, radius * length, exponent);
  }
}
