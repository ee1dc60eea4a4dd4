package crumbtrail.dough;

/**
 * How much gas a dough can hold.
 *
 * <p>A loaf of 100 g of flour reaches 65 x protein % + 140 cm³ (Western Wheat Quality Laboratory);
 * in the published pup loaf the oven made 1.7 of the proofed dough. So the proofed dough of such a
 * loaf is the one over the other, and as a proof is stopped well before the dough gives way, a
 * quarter more is taken for what it can hold at most (our choice).
 */
final class GasHold {
  private static final double SPRING_WITH_FAT = 0.70;
  private static final double SPRING_WITHOUT = 0.43;
  private static final double FAT_SCALE = 1;
  private static final double RESERVE = 1.25;

  // Common practice: a loaf of whole wheat is a third smaller, one of rye half.
  private static final double BRAN = 0.35;
  private static final double RYE = 0.5;

  // More mixing holds more gas (Marek and Bushuk 1967): a dough only stirred together loses three
  // tenths of its loaf (our choice).
  private static final double UNKNEADED = 0.3;

  // Stretched films tire: after gas of so many volumes of the dough they hold half (our choice, so
  // that a dough left alone sinks after about three hours at 28 °C, as fermentation recorders
  // show).
  private static final double TIRED_HALF = 7;
  private static final double LEAST_LOSS = 0.08;

  private final DoughMix mix;
  private final double fresh;

  GasHold(DoughMix mix) {
    this.mix = mix;
    this.fresh =
        Math.max(
            0.3 * mix.volume(), bestLoaf(mix) / (1 + SPRING_WITH_FAT) * RESERVE - mix.volume());
  }

  /** Volume that a well made loaf of 100 g of flour reaches, cm³. */
  static double bestLoaf(DoughMix mix) {
    double white = 65 * mix.protein() + 140;
    return white
        * (1 - BRAN * share(mix.wholeGrain()))
        * (1 - RYE * share(mix.rye()))
        * (1 - UNKNEADED * (1 - Math.min(1, Math.max(0, mix.development()))))
        * mix.volume()
        / (178 / 1.2);
  }

  /**
   * Most gas that the dough can hold, cm³ for 100 g of flour.
   *
   * @param strain gas made since the films were last renewed, in volumes of the dough
   */
  double most(double strain) {
    double tired = strain / TIRED_HALF;
    return fresh / (1 + tired * tired * tired * tired);
  }

  /** Share of the gas being made that stays in the dough. */
  double kept(double held, double most) {
    double full = Math.min(1, Math.max(0, held / most));
    return (1 - LEAST_LOSS) * (1 - full * full * full * full * full);
  }

  /** Volume after the oven, cm³ for 100 g of flour, of a dough that holds so much gas. */
  double baked(double held, double most) {
    double full = Math.min(1.2, Math.max(0, held / most));
    double fat = 1 - Math.exp(-mix.fat() / FAT_SCALE);
    double spring = SPRING_WITHOUT + (SPRING_WITH_FAT - SPRING_WITHOUT) * fat;
    return (mix.volume() + held) * (1 + spring / (1 + Math.pow(full, 8)));
  }

  private static double share(double percent) {
    return Math.min(100, Math.max(0, percent)) / 100;
  }
}
