package crumbtrail.dough;

/**
 * How much gas the yeast of a dough makes.
 *
 * <p>One gram of awake instant dry yeast in a plain dough (62 % water, 2 % salt) at 26 °C makes 200
 * cm³ an hour. That figure is set so that such a dough with 1 % doubles in an hour (common
 * practice); the pup loaf of the handbooks, made at 30 °C with more yeast and sugar, was not used
 * for it and is checked against.
 */
final class Gassing {
  /** cm³ of gas an hour from a gram of awake instant yeast at 26 °C in a plain dough. */
  private static final double YEAST_RATE = 200;

  /**
   * cm³ an hour from a percent of ripe starter at 26 °C: a dough with 20 % at 25 °C is ready in 5
   * h, one with 10 % in 8 h (Sourdough Framework), which for the flour of 12 to 12.5 % protein that
   * most bread is made of means risen by three quarters (the same).
   */
  private static final double STARTER_RATE = 0.90;

  // Dissolved matter in the water of the dough, mol of particles in a kilogram of water. Molar
  // masses: salt 58.4 g in two ions, sugar as the simple sugars into which yeast splits it 180 g.
  // Two percent stands for the flour's own sugars and salts (common practice).
  private static final double SALT_PARTICLES = 2 / 58.44;
  private static final double SUGAR_PARTICLES = 1 / 180.2;
  private static final double FLOUR_SUGAR = 2;

  // At this concentration half the rate is left. Our choice, so that 10 % sugar slows a little, 15
  // % markedly, 20 % by half (directions published); ordinary yeast and yeast for sweet dough.
  private static final double HALF_ORDINARY = 3.3;
  private static final double HALF_TOLERANT = 5.5;

  // Salt hinders yeast beyond its share in the concentration; together about a tenth for each
  // percent (from memory, unverified; direction Marek and Bushuk 1967).
  private static final double SALT_TOXICITY = 0.06;

  // Fat slows a dough (common practice): a tenth for each 10 %, our choice.
  private static final double FAT_SLOWS = 0.01;

  // Ready sugar stirs the yeast up to about 5 % (Marek and Bushuk 1967; size is our choice).
  private static final double SUGAR_SPUR = 0.2;
  private static final double SUGAR_SPUR_SCALE = 2;

  /** cm³ of gas from a gram of simple sugar at 25 °C and sea level (worked out: 0.489 g CO2). */
  private static final double GAS_OF_SUGAR = 270;

  // Sugar at which hunger halves the rate, percent of flour (our choice).
  private static final double HUNGER = 0.15;

  private final double yeastFactor;
  private final double starterFactor;
  private final double thinAir;

  /**
   * Factors that do not change while the dough ferments.
   *
   * @param thinAir pressure at sea level over that in the kitchen
   */
  Gassing(DoughMix mix, double thinAir) {
    this.thinAir = thinAir;
    double spur = 1 + SUGAR_SPUR * (1 - Math.exp(-mix.sugar() / SUGAR_SPUR_SCALE));
    double rich = saltFactor(mix.salt()) * Math.exp(-FAT_SLOWS * Math.max(0, mix.fat()));
    double ordinary = osmotic(mix, HALF_ORDINARY) * rich;
    double tolerant = osmotic(mix, HALF_TOLERANT) * rich;
    double vigour = Math.max(0, mix.leaven().vigour());
    yeastFactor = YEAST_RATE * vigour * spur * (mix.leaven().sugarTolerant() ? tolerant : ordinary);
    // Bran and germ feed yeast and bacteria; by how much is common practice.
    double bran = 1 + 0.3 * Math.min(100, mix.wholeGrain()) / 100;
    starterFactor = STARTER_RATE * ordinary * bran;
  }

  /**
   * cm³ of gas an hour for 100 g of flour.
   *
   * @param yeast grams of instant yeast, awake ones
   * @param starter grams of ripe starter or their equal
   * @param sugar sugar left, percent of flour
   * @param activity of yeast at the dough's temperature, 1 at 26 °C
   */
  double rate(double yeast, double starter, double sugar, double activity) {
    return (yeastFactor * yeast + starterFactor * starter) * activity * fed(sugar) * thinAir;
  }

  /** Share of its full rate at which yeast works with so much sugar left, percent of flour. */
  static double fed(double sugar) {
    return Math.max(0, sugar) / (Math.max(0, sugar) + HUNGER);
  }

  /** Sugar that so much gas takes, percent of flour. */
  double sugarFor(double gas) {
    return gas / (GAS_OF_SUGAR * thinAir);
  }

  /** Particles dissolved in the water of the dough, mol/kg. */
  static double concentration(DoughMix mix) {
    double particles = mix.salt() * SALT_PARTICLES + (mix.sugar() + FLOUR_SUGAR) * SUGAR_PARTICLES;
    return 1000 * particles / Math.max(mix.water(), 20);
  }

  /** Osmotic pressure of the water of the dough at 25 °C by van 't Hoff's law, atmospheres. */
  static double osmoticPressure(DoughMix mix) {
    return concentration(mix) * 0.082057 * 298.15;
  }

  private static double osmotic(DoughMix mix, double half) {
    double plain = concentration(DoughMix.plain(mix.leaven()));
    return hindered(concentration(mix), half) / hindered(plain, half);
  }

  private static double hindered(double concentration, double half) {
    double share = concentration / half;
    return 1 / (1 + share * share * share);
  }

  private static double saltFactor(double salt) {
    return Math.exp(-SALT_TOXICITY * (salt - 2));
  }
}
