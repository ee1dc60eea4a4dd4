package crumbtrail.oven;

/**
 * A piece of dough as it goes into the oven.
 *
 * @param body its size on the mean of the bake: the risen dough and its oven spring
 * @param grams weight of the dough
 * @param boundary what it stands in or on
 * @param waterShare water in the dough by weight, 0.2 to 0.6
 * @param baseShare share of the surface that it stands on, 0 to 0.5
 */
public record Loaf(
    Body body, double grams, Boundary boundary, double waterShare, double baseShare) {
  // Risen dough, g/cm³: the free loaf measured at Prague was 599 g in 1.11 L (0.54); long and small
  // pieces are proofed lighter (common practice).
  private static final double RISEN = 0.54;
  private static final double RISEN_LIGHT = 0.4;
  private static final double USUAL_WATER = 0.45;

  /** A round free-standing loaf on a tray, three quarters as high as half its width. */
  public static Loaf hearth(double grams) {
    return dome(grams, RISEN);
  }

  /** A roll or bun on a tray. */
  public static Loaf roll(double grams) {
    return dome(grams, RISEN_LIGHT);
  }

  private static Loaf dome(double grams, double density) {
    // V = 2π/3 · a² · 0.75 a
    double half = Math.cbrt(grams / density * 1000 / (Math.PI / 2));
    Body risen = Body.dome(half, half, 0.75 * half);
    double base = Math.PI * half * half * 1e-6 / risen.surface();
    return new Loaf(risen.swollen(Constants.SPRING), grams, Boundary.TRAY, USUAL_WATER, base);
  }

  /** A long loaf on a tray, nine times as long as thick. */
  public static Loaf baguette(double grams) {
    double radius = Math.cbrt(grams / RISEN_LIGHT * 1000 / (18 * Math.PI));
    Body risen = Body.cylinder(radius, 18 * radius);
    return new Loaf(risen.swollen(Constants.SPRING), grams, Boundary.TRAY, USUAL_WATER, 0.2);
  }

  /**
   * A loaf in a tin of three inner lengths, mm. It fills the base and stands as high as its volume
   * asks, between half and one and a quarter of the tin's height.
   */
  public static Loaf tin(double grams, double length, double width, double height) {
    double volume = grams / RISEN * Constants.SPRING * 1000;
    double stands = Math.max(0.5, Math.min(1.25, volume / (length * width * height))) * height;
    Body body = Body.brick(length, width, stands);
    double base = length * width * 1e-6 / body.surface();
    return new Loaf(body, grams, Boundary.STEEL_TIN, USUAL_WATER, base);
  }

  /** Pizza, focaccia, flatbread on a tray: dough of a thickness, mm, that swells upward only. */
  public static Loaf flat(double grams, double thickness) {
    double area = grams / RISEN * 1000 / thickness;
    Body body = Body.sheet(thickness * Constants.SPRING, area);
    return new Loaf(body, grams, Boundary.TRAY, USUAL_WATER, 0.5);
  }

  /** The same in or on something else. */
  public Loaf in(Boundary other) {
    return new Loaf(body, grams, other, waterShare, baseShare);
  }

  /**
   * The same dough with another amount of water.
   *
   * @param percent water in percent of flour; the flour's own 14 % and 2 % salt are added
   */
  public Loaf withWater(double percent) {
    double share = (percent + 14) / (percent + 102);
    return new Loaf(body, grams, boundary, Math.max(0.2, Math.min(0.6, share)), baseShare);
  }

  double density() {
    return grams / 1000 / body.volume();
  }

  /** Whether the model was made for such a piece: 20 g to 3 kg, at least 9 mm thick. */
  public static boolean covers(Loaf loaf) {
    double density = loaf.density();
    return loaf.grams >= 20
        && loaf.grams <= 3000
        && loaf.body.radius() >= 0.006
        && density >= 80
        && density <= 900;
  }
}
