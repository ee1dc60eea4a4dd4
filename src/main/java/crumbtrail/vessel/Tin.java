package crumbtrail.vessel;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A tin as a frustum: rim and base of one outline, joined by straight sides. Lengths are inside
 * measures in mm, volumes in ml (cm³).
 *
 * <p>The volume is that of the prismatoid, {@code height / 6 x (rim + 4 middle + base)}, exact for
 * straight and sloping sides. Rounded corners and folds are not in it; they take one to three parts
 * in a hundred (our estimate). Valid for vessels of 1 cm to 3 m.
 *
 * @param rimLength along the rim
 * @param rimWidth across the rim
 * @param baseLength along the base
 * @param baseWidth across the base
 * @param height from base to rim, upright and not along the side
 */
public record Tin(
    Outline outline,
    double rimLength,
    double rimWidth,
    double baseLength,
    double baseWidth,
    double height) {
  /**
   * Volume of a sloped loaf tin against the straight box over its rim. Set on one measured tin: rim
   * 8.5 × 4.5 in, 1440 cm³, 2.5 in deep by its name, 2.6 in by its measure (wordloaf, Size
   * matters). Held against eight other published tins in docs/science/checks.md.
   */
  public static final double FLARE = 0.92;

  // Rim and base shrunk by s in both directions hold (1 + s + s²) / 3 of the box.
  private static final double BASE_ON_RIM = (Math.sqrt(12 * FLARE - 3) - 1) / 2;

  /**
   * A dome over the rim holds this share of the block over it: a parabola both ways (4/9 to 2/3).
   */
  private static final double DOME = 0.55;

  /** Rim and base. */
  public enum Outline {
    RECTANGLE(1),
    ELLIPSE(Math.PI / 4);

    private final double share;

    Outline(double share) {
      this.share = share;
    }
  }

  public Tin {
    for (double length : new double[] {rimLength, rimWidth, baseLength, baseWidth, height}) {
      if (!(length > 0 && length <= 3000)) {
        throw new IllegalArgumentException("a tin has lengths from 0 to 3000 mm, not " + length);
      }
    }
  }

  /** A tin with upright sides: lidded and pullman tins, square trays. */
  public static Tin straight(double length, double width, double height) {
    return new Tin(Outline.RECTANGLE, length, width, length, width, height);
  }

  /** A tin with sloping sides, measured at rim and base. */
  public static Tin tapered(
      double rimLength, double rimWidth, double baseLength, double baseWidth, double height) {
    return new Tin(Outline.RECTANGLE, rimLength, rimWidth, baseLength, baseWidth, height);
  }

  /** A loaf tin of which only the rim was measured: taken to slope as usual, see {@link #FLARE}. */
  public static Tin flared(double rimLength, double rimWidth, double height) {
    return tapered(rimLength, rimWidth, rimLength * BASE_ON_RIM, rimWidth * BASE_ON_RIM, height);
  }

  /** A round tin with upright sides. */
  public static Tin round(double diameter, double height) {
    return oval(diameter, diameter, height);
  }

  /** A round tin, wider at the rim. */
  public static Tin cone(double rimDiameter, double baseDiameter, double height) {
    return new Tin(Outline.ELLIPSE, rimDiameter, rimDiameter, baseDiameter, baseDiameter, height);
  }

  /** An oval tin with upright sides. */
  public static Tin oval(double length, double width, double height) {
    return new Tin(Outline.ELLIPSE, length, width, length, width, height);
  }

  /** Volume of a tube or savarin ring with upright sides, ml. */
  public static double ringVolume(double outerDiameter, double innerDiameter, double height) {
    if (!(innerDiameter > 0 && innerDiameter < outerDiameter && height > 0)) {
      throw new IllegalArgumentException(
          "a ring of " + outerDiameter + " and " + innerDiameter + " mm, " + height + " mm high");
    }
    double square = outerDiameter * outerDiameter - innerDiameter * innerDiameter;
    return Math.PI / 4 * square * height / 1000;
  }

  /** Volume to the rim, ml. */
  public double volume() {
    return volumeTo(height);
  }

  /** Volume below a height over the base, ml. */
  public double volumeTo(double level) {
    double share = Math.max(0, Math.min(1, level / height));
    double top = areaAt(share);
    return level <= 0 ? 0 : share * height / 6 * (areaAt(0) + 4 * areaAt(share / 2) + top) / 1000;
  }

  /** Area of the rim, cm²: for trays, the area that the dough covers. */
  public double rimArea() {
    return areaAt(1) / 100;
  }

  /**
   * Height at the middle of a loaf of this volume, mm over the base: filled level below the rim,
   * domed above it.
   *
   * @param millilitres volume of dough or loaf, not negative
   */
  public double heightOf(double millilitres) {
    if (!(millilitres >= 0)) {
      throw new IllegalArgumentException("a loaf of " + millilitres + " ml");
    }
    double full = volume();
    if (millilitres >= full) {
      return height + (millilitres - full) * 1000 / (DOME * areaAt(1));
    }
    return millilitres == 0
        ? 0
        : new BrentSolver(1e-9).solve(100, z -> volumeTo(z) - millilitres, 0, height);
  }

  /**
   * Whether a dome of this loaf can stand: one higher than half the tin's width spreads over the
   * rim instead (our choice).
   */
  public boolean holdsUpright(double millilitres) {
    return heightOf(millilitres) - height <= Math.min(rimLength, rimWidth) / 2;
  }

  // mm² at a share of the height.
  private double areaAt(double share) {
    double length = baseLength + (rimLength - baseLength) * share;
    double width = baseWidth + (rimWidth - baseWidth) * share;
    return outline.share * length * width;
  }
}
