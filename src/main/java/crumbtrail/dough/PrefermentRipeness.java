package crumbtrail.dough;

import java.util.List;

/**
 * How ripe a starter, levain, poolish, biga or sponge is after a schedule: the gas that its yeasts
 * have made on the gas of one that is just ripe. 1 is just ripe (domed, about to fall), 2 well
 * past.
 *
 * <p>Yeasts multiply as {@link SourdoughGrowth} and {@link CardinalGrowth} say, slower in dough
 * than in the laboratory by a factor, and make gas as {@link YeastActivity} says. Equations,
 * sources and the numbers that set the constants stand in docs/science/sourdough.md. The answer is
 * good to about a third either way: cultures and flours differ.
 */
public final class PrefermentRipeness {
  // The Sourdough Framework: 20 % of starter at 25 °C is ready in about 5 h, 10 % in about 8 h. The
  // two give the growth of the yeast in dough on that in the laboratory, and the gas of a ready
  // dough.
  private static final double GROWTH_IN_DOUGH = 0.268;
  private static final double DOUGH_WANTS = 0.581;

  // A starter fed one part to five of flour and five of water is ripe in about 8 h at 25 °C (common
  // practice: 8 to 12 h at 24 to 25 °C).
  private static final double STARTER_WANTS = 1.080;
  private static final double REFERENCE = 25;

  // Baker's yeast in dough at 27 °C: 0.5 % of fresh yeast grows by 88 % in six hours, 1.67 % by
  // some
  // 37 %, 2 % by 29 % (a baking text in the manner of Pyler). In percent of instant yeast.
  private static final double YEAST_GROWTH = 0.17;
  private static final double YEAST_ROOM = 0.25;

  // A poolish of 0.08 % instant yeast is ripe after 14 h at 20 °C (common practice: 12 to 16 h). A
  // stiff sponge is slower and holds its gas longer before it falls; the power is set between that
  // poolish and a published sponge.
  private static final double POOLISH_WANTS = 1.2;
  private static final double STIFFNESS = 2;
  private static final double LEAST_HYDRATION = 45;
  private static final double MOST_HYDRATION = 130;

  private PrefermentRipeness() {}

  /**
   * A starter or levain fed with flour.
   *
   * @param seed flour of the old starter on all the flour, 0 to 1: one part of a starter of equal
   *     flour and water to five parts of flour is 0.5 / 5.5
   * @param schedule from feeding to use, at the temperature of the starter itself
   * @return times ripe
   */
  public static double starter(double seed, List<Stretch> schedule) {
    return sour(seed, schedule) / STARTER_WANTS;
  }

  /**
   * A dough raised by starter, against one that is ready to be divided.
   *
   * @param dose ripe starter of equal flour and water, percent of the flour without that of the
   *     starter
   * @param schedule the bulk, at the temperature of the dough itself
   * @return times ready
   */
  public static double dough(double dose, List<Stretch> schedule) {
    return sour(dose / 2 / (100 + dose / 2), schedule) / DOUGH_WANTS;
  }

  /**
   * A poolish, biga or sponge raised by baker's yeast.
   *
   * @param instant instant dry yeast or its equivalent, percent of the preferment's flour
   * @param hydration water on flour, percent; taken between 45 and 130
   * @param salt percent of the preferment's flour
   * @param schedule from mixing to use, at the temperature of the preferment itself
   * @return times ripe
   */
  public static double yeasted(
      double instant, double hydration, double salt, List<Stretch> schedule) {
    double dose = Math.max(0, instant);
    Culture culture = Culture.sown(dose, dose, YEAST_ROOM);
    for (Stretch stretch : schedule) {
      double celsius = stretch.celsius();
      culture =
          culture.after(
              stretch.hours(),
              YEAST_GROWTH * CardinalGrowth.at(celsius),
              YeastActivity.at(celsius));
    }
    double firm = Math.min(MOST_HYDRATION, Math.max(LEAST_HYDRATION, hydration)) / 100;
    // A tenth less for each percent of salt, as in Leaven; from memory.
    double salted = Math.max(0.3, 1 - 0.1 * Math.max(0, salt));
    return culture.work() * salted * Math.pow(firm, STIFFNESS) / POOLISH_WANTS;
  }

  /**
   * Whether the preferment lies in the range in which the model was held against numbers.
   *
   * @param schedule every stretch counts that is longer than half an hour
   */
  public static boolean covers(List<Stretch> schedule) {
    return schedule.stream()
        .filter(stretch -> stretch.minutes() > 30)
        .allMatch(stretch -> stretch.celsius() >= 16 && stretch.celsius() <= 31);
  }

  // Seed and size count in shares of a ripe culture: the whole flour can carry one, no more.
  private static double sour(double seed, List<Stretch> schedule) {
    double share = Math.min(1, Math.max(0, seed));
    Culture culture = Culture.sown(share, 0, 1);
    for (Stretch stretch : schedule) {
      double celsius = stretch.celsius();
      culture =
          culture.after(
              stretch.hours(),
              GROWTH_IN_DOUGH * SourdoughGrowth.yeast(celsius),
              YeastActivity.at(celsius) / YeastActivity.at(REFERENCE));
    }
    return culture.work();
  }
}
