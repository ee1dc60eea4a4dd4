package crumbtrail.dough;

import java.util.List;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * How sour a dough becomes: lactobacilli of the starter multiply and make acid, the flour buffers
 * it.
 *
 * <p>Growth is that of {@link SourdoughGrowth}; it ends at pH 3.8, acid is made to pH 3.6 (Gänzle,
 * rec.food.sourdough FAQ 39). Equations, sources and the numbers that set the constants stand in
 * docs/science/sourdough.md. Good to about 0.2 of pH where the starter is lively; the starter
 * itself is the great unknown.
 */
public final class Acidity {
  /** The pH of a flour and water dough before any acid is made. */
  public static final double UNSOURED = 6.2;

  /** No acid is made below this pH. */
  public static final double LEAST = 3.6;

  /** How much higher the pH of the baked crumb lies: 3.80 to 3.90 in the Sourdough Framework. */
  public static final double BAKED = 0.10;

  // Buffer of white flour, mmol of acid neutralised per kg of flour and pH; set on three wheat
  // sourdoughs with their acids published (Nutrients 11:2954, 2019, table 2).
  private static final double BUFFER = 17.8;

  // High-ash flours buffer more (Gänzle, FAQ 39; Katina and others 2006); how much is our choice.
  private static final double WHOLE_GRAIN_BUFFER = 1.0;
  private static final double RYE_BUFFER = 0.3;

  // The acids of those doughs were four fifths lactic, the rest acetic. pKa of the two: handbooks.
  private static final double LACTIC = 0.815;
  private static final double LACTIC_PKA = 3.86;
  private static final double ACETIC_PKA = 4.76;

  // Set on the pH trail of the Sourdough Framework: see the document.
  private static final double GROWTH_IN_DOUGH = 1.1;
  private static final double ACID_RATE = 35;
  private static final double REFERENCE = 25;
  private static final double SLOWING = 0.25;

  private static final PolynomialSplineFunction PH_OF_LOAD = inverse();
  private static final double MOST_LOAD = load(2.5);

  private Acidity() {}

  /**
   * The flour of a dough.
   *
   * @param wholeGrain whole-grain flour, percent of flour
   * @param rye rye flour, percent of flour
   * @param salt percent of flour
   */
  public record Flour(double wholeGrain, double rye, double salt) {
    double buffer() {
      return BUFFER * (1 + WHOLE_GRAIN_BUFFER * share(wholeGrain) + RYE_BUFFER * share(rye));
    }

    private static double share(double percent) {
      return Math.min(1, Math.max(0, percent / 100));
    }
  }

  /**
   * How sour a dough is.
   *
   * @param bacteria lactobacilli, 1 being as many per flour as in a ripe starter
   * @param acid lactic and acetic acid, mmol per kg of flour
   */
  public record Sourness(double bacteria, double acid) {}

  /**
   * A dough just mixed with starter.
   *
   * @param prefermented flour of the starter, percent of all flour, 0 to 100
   * @param starterAcidity pH of the starter when it was used; a ripe one has about 4.2
   * @param flour that of the dough; the starter's is taken to be the same
   */
  public static Sourness mixed(double prefermented, double starterAcidity, Flour flour) {
    double share = Math.min(1, Math.max(0, prefermented / 100));
    return new Sourness(share, share * acid(starterAcidity, flour));
  }

  /**
   * Growth of the lactobacilli.
   *
   * @return per hour
   */
  public static double growth(double celsius, double pH, Flour flour) {
    return GROWTH_IN_DOUGH
        * SourdoughGrowth.bacteria(celsius)
        * SourdoughGrowth.bacteriaInSalt(flour.salt())
        * SourdoughGrowth.bacteriaAtAcidity(pH);
  }

  /**
   * Acid made.
   *
   * @param bacteria as in {@link Sourness}
   * @return mmol per kg of flour and hour; 0 from pH 3.6 down
   */
  public static double acidRate(double bacteria, double celsius, double pH, Flour flour) {
    double above = Math.max(0, pH - LEAST);
    double warmth = SourdoughGrowth.bacteria(celsius) / SourdoughGrowth.bacteria(REFERENCE);
    // Cells stopped from growing by salt still make some acid: the root is our choice.
    double salted = Math.sqrt(SourdoughGrowth.bacteriaInSalt(flour.salt()));
    return ACID_RATE * bacteria * warmth * salted * above / (above + SLOWING);
  }

  /** The pH of a dough with so much acid, mmol per kg of flour. */
  public static double pH(double acid, Flour flour) {
    double load = Math.max(0, acid) / flour.buffer();
    return PH_OF_LOAD.value(Math.min(MOST_LOAD, load));
  }

  /**
   * The acid that brings a dough to a pH.
   *
   * @param pH taken between 2.5 and {@link #UNSOURED}
   * @return mmol per kg of flour
   */
  public static double acid(double pH, Flour flour) {
    return flour.buffer() * load(Math.min(UNSOURED, Math.max(2.5, pH)));
  }

  /**
   * A dough after a schedule.
   *
   * @param schedule at the temperature of the dough itself
   */
  public static Sourness after(Sourness start, Flour flour, List<Stretch> schedule) {
    double[] state = {start.bacteria(), start.acid()};
    for (Stretch stretch : schedule) {
      if (stretch.minutes() > 0) {
        state =
            new DormandPrince853Integrator(1e-6, 6, 1e-8, 1e-8)
                .integrate(
                    new Souring(stretch.celsius(), flour), new ODEState(0, state), stretch.hours())
                .getPrimaryState();
      }
    }
    return new Sourness(state[0], state[1]);
  }

  /**
   * The pH of a yeast dough, which falls but little: from 6.2 towards 5.3 (common practice: 5.2 to
   * 5.5 when it goes into the oven).
   *
   * @param wholeRise bulk and proof together in times ready
   */
  public static double yeastDough(double wholeRise) {
    return 5.3 + (UNSOURED - 5.3) * Math.exp(-3 * Math.max(0, wholeRise));
  }

  /** Whether a dough lies in the range in which the model was held against numbers. */
  public static boolean covers(double celsius, double prefermented) {
    return celsius >= 4 && celsius <= 32 && prefermented >= 1 && prefermented <= 30;
  }

  // Acid on buffer that gives a pH: what the acids give off, the flour takes up in proportion to
  // the fall of the pH.
  private static double load(double pH) {
    double lactic = LACTIC / (1 + Math.pow(10, LACTIC_PKA - pH));
    double acetic = (1 - LACTIC) / (1 + Math.pow(10, ACETIC_PKA - pH));
    return (UNSOURED - pH) / (lactic + acetic);
  }

  private static PolynomialSplineFunction inverse() {
    int steps = 185;
    double[] loads = new double[steps + 1];
    double[] acidities = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      acidities[i] = UNSOURED - (UNSOURED - 2.5) * i / steps;
      loads[i] = load(acidities[i]);
    }
    return new AkimaSplineInterpolator().interpolate(loads, acidities);
  }

  private record Souring(double celsius, Flour flour) implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public double[] computeDerivatives(double hour, double[] state) {
      double pH = pH(state[1], flour);
      return new double[] {
        state[0] * growth(celsius, pH, flour), acidRate(state[0], celsius, pH, flour)
      };
    }
  }
}
