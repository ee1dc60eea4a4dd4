package crumbtrail.vessel;

/**
 * Room that a tin gives to each gram of dough, cm³/g, by what the loaf is to be.
 *
 * <p>Two truths stand beside each other. The published bakery figures are for loaves that fill
 * their tin or stand little above it; a home loaf domed well over the rim has only 2.0 to 2.5 (a
 * kilogram of dough in a two-pound tin; common practice), and a style's range of {@code tin room}
 * reaches that far down.
 */
public enum TinRoom {
  /** White, open tin, top at a peak (ebsrecipe). */
  PEAKED(3.5, 3.6),
  /** Light loaf in an open tin (kashizairyo; hii-tan). */
  LIGHT(4.0, 4.0),
  /** White in an open tin, at least 7.6 in³ to the ounce (bakery formulary). */
  AIRY_WHITE(4.39, 4.39),
  /** White under a lid (santa-baking; ebsrecipe). */
  LIDDED(3.8, 4.0),
  /** Whole grain, an illustrated example (wholegrain100). */
  WHOLE_GRAIN(3.06, 3.06),
  /** Home loaf domed over the rim (common practice). */
  DOMED(2.0, 2.5);

  private final double low;
  private final double high;

  TinRoom(double low, double high) {
    this.low = low;
    this.high = high;
  }

  /** Least room, cm³/g. */
  public double low() {
    return low;
  }

  /** Most room, cm³/g. */
  public double high() {
    return high;
  }

  /** Middle of the two, cm³/g. */
  public double middle() {
    return (low + high) / 2;
  }

  /** Grams of dough for a tin of this many ml. */
  public double doughFor(double millilitres) {
    return millilitres / middle();
  }

  /** Millilitres of tin for this much dough. */
  public double tinFor(double grams) {
    return grams * middle();
  }

  /** Room in a tin of this many ml with this much dough in it, cm³/g. */
  public static double of(double millilitres, double grams) {
    if (!(grams > 0 && millilitres > 0)) {
      throw new IllegalArgumentException(grams + " g in " + millilitres + " ml");
    }
    return millilitres / grams;
  }

  /**
   * Whether a room can be: raw dough alone takes some 0.85 cm³/g (density 1.15 to 1.2), and a tin
   * of fifteen times that is hardly the one that was meant.
   */
  public static boolean covers(double room) {
    return room >= 0.85 && room <= 15;
  }
}
