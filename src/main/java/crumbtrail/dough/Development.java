package crumbtrail.dough;

/**
 * How far a dough is developed, and how near its flour is to breaking down.
 *
 * <p>Kneading is counted in minutes of a stand mixer at its kneading speed. A maker gives 95 turns
 * a minute for that speed, 60 and 135 for those below and above it; a thousand turns in second
 * speed make a developed dough (Suas, as told at thefreshloaf 10489), which is ten and a half such
 * minutes. The rest is common practice turned into smooth curves, each told at its method.
 *
 * <p>Valid for wheat doughs of up to an hour of kneading. What the figure is good for: telling a
 * dough stirred for two minutes from one kneaded for ten. Call it a fifth off either way.
 */
public final class Development {
  /** Turns a minute of the kneading speed. */
  static final double TURNS = 95;

  private static final double MOST = 400;
  private static final double FOLD = 12;

  private Development() {}

  /** What kneads; the number is development in a minute against the stand mixer's. */
  public enum Tool {
    /** Middle of the 8 to 10 min of today's recipes and the 20 min of 1910 for ten by machine. */
    HAND(0.7, 0.3),
    /** Stirring with a spoon. */
    SPOON(0.4, 0),
    MIXER(1, 1),
    /** Blades: about a minute does it (common practice). */
    PROCESSOR(12, 1);

    private final double rate;
    private final double harm;

    Tool(double rate, double harm) {
      this.rate = rate;
      this.harm = harm;
    }
  }

  /** When salt or fat went in. */
  public enum Moment {
    START,
    LATE,
    UNKNOWN
  }

  /**
   * @param minutes of kneading, not negative
   * @param speed turns against the kneading speed, 1 where not told
   * @param rest minutes that flour and water stood before kneading
   * @param folds times that the dough was folded
   * @param bulkHours first rise
   * @param fat percent of flour
   * @param slack points of water above what this bread usually has; below nought is stiff
   * @param wanted minutes of a stand mixer that this bread wants, above 0
   */
  public record Kneading(
      Tool tool,
      double minutes,
      double speed,
      double rest,
      int folds,
      double bulkHours,
      Moment fatWent,
      Moment saltWent,
      double fat,
      double slack,
      double wanted) {
    public Kneading {
      if (!(minutes >= 0 && speed > 0 && rest >= 0 && bulkHours >= 0 && wanted > 0)) {
        throw new IllegalArgumentException(
            "kneading of " + minutes + " min at " + speed + " where " + wanted + " min are wanted");
      }
    }
  }

  /** Whether the figures were made for this much kneading. */
  public static boolean covers(Kneading done) {
    return work(done) <= 60;
  }

  /** Kneading in minutes of a stand mixer at its kneading speed. */
  public static double work(Kneading done) {
    return done.minutes() * done.tool().rate * (done.tool() == Tool.MIXER ? done.speed() : 1);
  }

  /**
   * Development on what the bread wants, percent, at most 400: from kneading, rest, folds and time.
   * More of any never lowers it.
   */
  public static double percent(Kneading done) {
    double kneaded =
        100 * work(done) / done.wanted() * fatLag(done) * saltGain(done) * waterLag(done.slack());
    return Math.min(
        MOST,
        kneaded + afterRest(done.rest()) + FOLD * done.folds() + afterHours(done.bulkHours()));
  }

  /** A rest of 15 to 30 min (Calvel, McGee, Gisslen) does a fifth to a quarter of the work. */
  static double afterRest(double minutes) {
    return 28 * (1 - Math.exp(-minutes / 12));
  }

  /** A night of standing does well over half of it, the first hour a tenth. Common practice. */
  static double afterHours(double hours) {
    return 70 * (1 - Math.exp(-hours / 6));
  }

  /**
   * Fat above 10 % of the flour coats it if it is there from the start (hold-back rule of class
   * notes); 30 % nearly halves the pace. The slope is our choice.
   */
  private static double fatLag(Kneading done) {
    boolean early = done.fatWent() == Moment.START;
    return early ? 1 / (1 + 0.04 * Math.max(0, done.fat() - 10)) : 1;
  }

  /** Salt held back lets gluten form a tenth quicker (our choice; direction: Calvel). */
  private static double saltGain(Kneading done) {
    return done.saltWent() == Moment.LATE ? 1.1 : 1;
  }

  /**
   * Too little water lengthens mixing (FSTR 22:841, 2016), too much lets the dough slide: ten
   * points off take a third. The size is our choice.
   */
  private static double waterLag(double slack) {
    double off = slack / 15;
    return 1 / (1 + off * off);
  }

  /**
   * A flour, as far as it matters for how much kneading it stands.
   *
   * @param protein percent
   * @param wholeGrain share, 0 to 1
   * @param rye share, 0 to 1
   */
  public record Flour(double protein, double wholeGrain, double rye) {
    /**
     * Minutes of a stand mixer until dough of it breaks down: 25 at 12 % protein, a fifth more with
     * each point; bran takes 30 %, rye half. Strong flours stand more than weak ones (Kilborn and
     * Tipples 1972); the minutes are our choice.
     */
    public double stands() {
      return 25 * Math.exp(0.2 * (protein - 12)) * (1 - 0.3 * wholeGrain) * (1 - 0.5 * rye);
    }
  }

  /**
   * Kneading on what the flour stands, percent; above 100 the dough breaks down: shiny, sticky,
   * torn. Hands cannot do it and count 0.3. Breads that want long kneading, rich ones, stand more;
   * a dough above 28 °C stands less, a twentieth a degree (our choice; over-mixed doughs are hot,
   * common practice).
   *
   * @param celsius temperature of the dough
   */
  public static double overwork(Kneading done, Flour flour, double celsius) {
    double stands = flour.stands() * Math.max(1, done.wanted() / 12);
    double heat = 1 + 0.05 * Math.max(0, celsius - 28);
    return 100 * work(done) * done.tool().harm * heat / stands;
  }
}
