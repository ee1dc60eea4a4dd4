package crumbtrail.dough;

/**
 * How fast the yeast of a dough multiplies.
 *
 * <p>Baker's yeast: after two hours in which it does not, by 20 % an hour at 27 °C, the less the
 * fuller the dough is of it. Set on three published counts (Pyler-type text at foodelphi.com: 0.5 %
 * fresh yeast grew by 88 % in 6 h, 1.67 % by 37 %, 2 % by 29 %). Sourdough: a third of the
 * laboratory rate, which gives the published 5 h for 20 % of starter and 8 h for 10 %.
 */
final class YeastGrowth {
  private static final double PER_HOUR = 0.20;
  private static final double WARM = CardinalGrowth.at(27);

  /** Where growth ends: 3.2 % fresh yeast, as instant. */
  private static final double FULL = 3.2 / 3;

  private static final double LAG_HOURS = 2;

  private static final double IN_DOUGH = 1.0 / 3;

  private YeastGrowth() {}

  /**
   * How fast baker's yeast grows at a temperature, 1 at the 27 °C of the published counts.
   *
   * @param celsius dough temperature
   */
  static double warmth(double celsius) {
    return CardinalGrowth.at(celsius) / WARM;
  }

  /**
   * Growth of baker's yeast in dough.
   *
   * @param yeast percent of flour, as instant
   * @param age hours at 26 °C, or their equal
   * @param warmth of the dough, see {@link #warmth}
   * @return percent of flour an hour
   */
  static double inDough(double yeast, double age, double warmth) {
    double hours = age / LAG_HOURS;
    double late = hours * hours * hours * hours * hours * hours;
    double begun = late / (1 + late);
    double room = Math.max(0, 1 - yeast / FULL);
    return PER_HOUR * warmth * begun * room * yeast;
  }

  /**
   * Growth of sourdough yeast in dough.
   *
   * @param celsius dough temperature
   * @return per hour, of the starter that is there
   */
  static double ofSourdough(double celsius) {
    return IN_DOUGH * SourdoughGrowth.yeast(celsius);
  }
}
