package crumbtrail.oven;

/**
 * What dough, crumb and crust do with heat.
 *
 * <p>Specific heat is that of dry crust (1.675 kJ/(kg K), Rask 1989) and of the water in it, which
 * gives the 2.74 to 2.80 of bread (Rask) at its usual 44 to 45 % of water. Conduction of the moist
 * web is the published diffusivity of crumb by porosity (Zanoni, Peri and Gianotti 1995) times its
 * heat capacity; dry crust has 0.055 W/(m K) (Rask). On top of it, water evaporates on the warm
 * side of each gas cell and condenses on the cold side, which carries heat as the slope of the
 * saturation curve. Only a share of what free air would carry gets through; it is fitted.
 */
final class Crumb {
  static final double DRY_HEAT = 1675;
  static final double WATER_HEAT = 4180;
  static final double CRUST_CONDUCTION = 0.055;

  /** Heat of evaporation near boiling, J/kg: handbook value, from memory. */
  static final double EVAPORATION = 2.26e6;

  /** Density of dough without gas, kg/m³: common practice. */
  private static final double DENSE = 1250;

  private static final double BREAD_HEAT = 2800;
  private static final double GAS_CONSTANT = 461.5;
  private static final double KELVIN = 273.15;
  private static final int HOTTEST = 110;
  private static final double TOP = HOTTEST - 1.001;
  // The factor p/(p - p_vapour) grows without bound at boiling. Capped (our choice): beyond it the
  // crumb is of one temperature anyway, and the time step need not shrink further.
  private static final double MOST_DRIFT = 3;

  // By whole degrees: density of saturated vapour, kg/m³, and the heat that its slope carries
  // across
  // free air at sea level, W/(m K).
  private static final double[] VAPOUR = new double[HOTTEST];
  private static final double[] CARRIED = new double[HOTTEST];

  static {
    for (int t = 0; t < HOTTEST; t++) {
      VAPOUR[t] = density(t);
      double slope = density(t + 0.5) - density(t - 0.5);
      CARRIED[t] = 2.2e-5 * Math.pow((t + KELVIN) / KELVIN, 1.81) * EVAPORATION * slope;
    }
  }

  private final double[] conduction = new double[HOTTEST];

  /**
   * Crumb of one loaf in air of one pressure.
   *
   * @param density of the loaf, kg/m³, 60 to 1200
   * @param boiling boiling point, °C
   * @param transport share of free vapour transport
   */
  Crumb(double density, double boiling, double transport) {
    double web = web(density);
    double pressure = saturation(boiling);
    double porosity = Math.max(0, 1 - density / DENSE);
    double share = transport * porosity * 101_325 / pressure;
    for (int t = 0; t < HOTTEST; t++) {
      // Past boiling there is no moist crumb, and the drift is at its cap.
      double beside = pressure - VAPOUR[t] * GAS_CONSTANT * (t + KELVIN);
      double drift = pressure / Math.max(pressure / MOST_DRIFT, beside);
      conduction[t] = web + share * CARRIED[t] * drift;
    }
  }

  // Zanoni's lines of density and diffusivity against porosity in percent (J Food Eng 26, 497).
  private static double web(double density) {
    double percent = Math.max(0, Math.min(90, (979 - density) / 9.9));
    return Math.exp(0.01 * percent - 15.25) * density * BREAD_HEAT;
  }

  /** Conduction of moist crumb, W/(m K). */
  double conduction(double celsius) {
    return read(conduction, celsius);
  }

  /** Density of saturated vapour, kg/m³. */
  static double vapour(double celsius) {
    return read(VAPOUR, celsius);
  }

  private static double read(double[] table, double celsius) {
    // Written out, for this is the inmost loop and Math.min takes care of signs of zero.
    double t = celsius > 0 ? (celsius < TOP ? celsius : TOP) : 0;
    int below = (int) t;
    return table[below] + (t - below) * (table[below + 1] - table[below]);
  }

  /** Saturation pressure of water, Pa: Antoine's equation as in {@link Boiling}. */
  static double saturation(double celsius) {
    return 133.322 * Math.pow(10, 8.07131 - 1730.63 / (celsius + 233.426));
  }

  /** Density of saturated vapour, kg/m³. */
  static double density(double celsius) {
    return saturation(celsius) / (GAS_CONSTANT * (celsius + KELVIN));
  }
}
