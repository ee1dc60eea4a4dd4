package crumbtrail.dough;

import java.util.ArrayList;
import java.util.List;

/**
 * What a dough does between mixing and the oven: its temperature, its yeast, its sugar, the gas it
 * makes and the gas it holds. Equations and sources: docs/science/fermentation.md. Immutable; safe
 * for use by many threads.
 */
public final class Fermentation {
  // Flour brings 1.6 % of sugar that yeast can eat, and up to 4 % of broken starch that its enzymes
  // can split (common practice in direction and size).
  static final double FLOUR_SUGAR = 1.6;
  private static final double BROKEN_STARCH = 4;

  // After a week nothing is left to happen; a sheet may state months.
  private static final double LONGEST_STAY = 7 * 24 * 60;

  // Minutes. A dough that still warms or cools takes short steps; one as warm as its place, longer.
  // All limits of a step are our choice, by what they err against steps of a 4,000th (see Walk).
  private static final double SHORTEST_STEP = 1;
  private static final double LONGEST_WHILE_CHANGING = 15;
  private static final double LONGEST_STEP = 40;

  /** Share of the time in which a dough follows its place that a step may take. */
  private static final double FOLLOWING = 0.7;

  /** Degrees from the temperature of its place within which a dough is as good as there. */
  private static final double THERE = 1;

  /**
   * Steps of a stay that suffice to draw it and to find the minute in it at which the dough is
   * ready.
   */
  public static final int POINTS = 10;

  /** Share of the time gone by than which no step need be finer, however hungry the dough. */
  private static final double FINEST = 1.0 / 200;

  // Percent of flour: steps in which a dough eats more sugar than this would overshoot its last.
  private static final double SUGAR_A_STEP = 0.3;

  private final DoughMix mix;
  private final Gassing gassing;
  private final GasHold hold;

  /** The fermentation of one dough at the level of the sea. */
  public Fermentation(DoughMix mix) {
    this(mix, 1);
  }

  /**
   * The fermentation of one dough at a height.
   *
   * @param thinAir pressure of the air at sea level over that in the kitchen: gas takes so much
   *     more room
   */
  public Fermentation(DoughMix mix, double thinAir) {
    this.mix = mix;
    this.gassing = new Gassing(mix, thinAir);
    this.hold = new GasHold(mix);
  }

  /**
   * A stay in one place.
   *
   * @param minutes how long
   * @param celsius the place
   * @param lag minutes in which the dough covers 63 % of the way to the temperature of the place
   */
  public record Stay(double minutes, double celsius, double lag) {}

  /** Whether the numbers behind the model reach to this dough. */
  public static boolean covers(DoughMix mix) {
    Leaven leaven = mix.leaven();
    return leaven.yeast() <= 5
        && leaven.starter() <= 60
        && mix.sugar() <= 35
        && mix.salt() <= 4
        && mix.water() >= 40
        && mix.water() <= 110;
  }

  /** Whether the numbers behind the model reach to this place. */
  public static boolean covers(Stay stay) {
    return stay.celsius() >= 0 && stay.celsius() <= 42 && stay.minutes() <= 72 * 60;
  }

  /** Whether the starter does more of the work than added yeast, at the beginning. */
  public boolean mostlyStarter() {
    return gassing.rate(0, mix.leaven().starter(), 1, 1)
        > gassing.rate(mix.leaven().yeast(), 0, 1, 1);
  }

  /** The dough that ferments. */
  public DoughMix mix() {
    return mix;
  }

  /** The dough at the end of mixing. */
  public DoughState start(double celsius) {
    return new DoughState(
        0,
        celsius,
        mix.leaven().yeast(),
        mix.leaven().starter(),
        0,
        FLOUR_SUGAR + Math.max(0, mix.sugar()),
        BROKEN_STARCH,
        0,
        0,
        0);
  }

  /** Follows the dough through one stay, with enough points for its own sake. */
  public List<DoughState> through(DoughState begin, Stay stay) {
    return through(begin, stay, POINTS);
  }

  /**
   * Follows the dough through one stay, or through the first week of a longer one.
   *
   * @param points steps at least
   * @return the dough at moments of the stay, the first and the last included
   */
  public List<DoughState> through(DoughState begin, Stay stay, int points) {
    return until(begin, stay, Double.POSITIVE_INFINITY, points);
  }

  /**
   * Follows the dough through one stay, but not beyond the step in which it has made so much gas.
   *
   * @param gas cm³ for 100 g of flour, made since the first state
   * @return the dough at moments of the stay; the last is the first with so much gas, or that at
   *     the end of the stay
   */
  List<DoughState> until(DoughState begin, Stay stay, double gas) {
    return until(begin, stay, gas, 1);
  }

  private List<DoughState> until(DoughState begin, Stay stay, double gas, int points) {
    List<DoughState> states = new ArrayList<>();
    states.add(begin);
    Walk walk = new Walk(begin, stay, points);
    boolean ready = false;
    while (walk.goesOn() && !ready) {
      walk.step();
      DoughState now = walk.state();
      states.add(now);
      ready = now.made() - begin.made() >= gas;
    }
    return states;
  }

  /** The dough at the end of a stay. */
  public DoughState after(DoughState begin, Stay stay) {
    if (stay.minutes() <= 0) {
      return begin;
    }
    Walk walk = new Walk(begin, stay, 1);
    while (walk.goesOn()) {
      walk.step();
    }
    return walk.state();
  }

  /**
   * One stay under way. A random stay of 10,000 is off by 0.02 % on average and by 0.4 % at worst
   * (when little gas is made), in 20 steps on average.
   */
  private final class Walk {
    private final Flow flow;
    private final Stay stay;
    private final double away;
    private final double end;
    private final double even;
    private final double[] now;
    private double minute;

    Walk(DoughState begin, Stay stay, int fewest) {
      this.stay = stay;
      flow = new Flow(gassing, hold, mix, begin, stay);
      away = begin.celsius() - stay.celsius();
      end = Math.min(LONGEST_STAY, stay.minutes());
      even = stay.minutes() / fewest;
      now = flow.initial();
    }

    boolean goesOn() {
      return minute < end;
    }

    void step() {
      double next = Math.min(end, minute + length());
      flow.step(minute, next, now);
      minute = next;
    }

    DoughState state() {
      return flow.state(minute, now);
    }

    private double length() {
      double warmer = away * Math.exp(-minute / stay.lag());
      double followed =
          Math.abs(warmer) > THERE
              ? Math.min(LONGEST_WHILE_CHANGING, FOLLOWING * stay.lag())
              : LONGEST_STEP;
      double gas = flow.wellFed(now, stay.celsius() + Math.max(0, warmer));
      double hungry = 60 * SUGAR_A_STEP / Math.max(1e-3, gassing.sugarFor(gas));
      double longest = Math.min(followed, Math.max(hungry, FINEST * minute));
      return Math.max(SHORTEST_STEP, Math.min(longest, even));
    }
  }

  /** Volume after the oven of a dough that goes into it so, cm³ for 100 g of flour. */
  public double baked(DoughState ready) {
    return hold.baked(ready.held(), hold.most(ready.strain()));
  }
}
