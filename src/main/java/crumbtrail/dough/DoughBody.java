package crumbtrail.dough;

import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A dough of some mass in some vessel, and how it follows the temperature of its surroundings.
 *
 * <p>Two views of one body. {@link #meanAfter} gives one temperature for the whole, a single
 * exponential whose time constant holds the resistances of air film, vessel wall and dough in
 * series; a stay cut in two gives what the whole gives. {@link #after(Pair, Surroundings)} follows
 * two halves, core and rim, by a linear system of two equations solved in closed form. The inner
 * resistances are those of a body whose parts all change at one rate (parabolic profile), which is
 * exact after the first minutes. {@link #biot} says which view is needed.
 *
 * <p>Constants: dough conductivity 0.45 W/(m K), middle of the 0.41 to 0.50 of Rask's review (from
 * memory; Budžaki and Šeruga 2015 measured down to 0.29 for a dough at 124 °C); density 800 kg/m³,
 * half risen (common practice); specific heat 2.8 kJ/(kg K). The warmth that yeast makes, near 1 °C
 * an hour in a lively dough, and cooling by evaporation are left out.
 *
 * @param grams mass of the dough
 * @param form its shape
 * @param holder what it lies in
 * @param covered whether cloth, film or lid leaves a layer of air over it
 */
public record DoughBody(double grams, Form form, Holder holder, boolean covered) {
  private static final double DENSITY = 800; // kg/m3
  private static final double CONDUCTIVITY = 0.45; // W/(m K)
  private static final double HEAT = DoughTemperature.DOUGH_HEAT * 1000; // J/(kg K)

  /** A layer of a few centimetres of air under a cover, m² K/W (building tables, from memory). */
  private static final double AIR_LAYER = 0.15;

  /** Below this Biot number one temperature is enough: textbooks' 5 % inside the body. */
  private static final double LUMPED = 0.1;

  public DoughBody {
    if (!(grams > 0 && Double.isFinite(grams))) {
      throw new IllegalArgumentException("a dough has a mass above 0 g, not " + grams);
    }
  }

  /** A shape: how much surface it has and in how many directions heat leaves it. */
  public enum Form {
    /** A round piece. */
    BALL(3, 4.836),
    /** Filling a bowl: half a ball with its flat top. */
    BOWL(3, 5.757),
    /** A loaf 2.5 times as long as thick. */
    LOAF(2, 6.010),
    /** A stick 10 times as long as thick. */
    BATON(2, 8.350),
    /** A sheet six times as wide as thick: pizza, focaccia, flattened for the refrigerator. */
    SHEET(1, 8.806);

    private final int directions;
    private final double areaFactor;

    Form(int directions, double areaFactor) {
      this.directions = directions;
      this.areaFactor = areaFactor;
    }

    /** Surface in m² of a volume in m³. */
    double area(double volume) {
      return areaFactor * Math.pow(volume, 2.0 / 3);
    }
  }

  /**
   * What the dough lies in. Walls of kitchen thickness hardly hinder heat; what counts is how much
   * heat the vessel itself holds and that bright metal radiates little. Weights are of kitchen ware
   * for a kilogram of dough, conductivities from handbooks, both from memory.
   */
  public enum Holder {
    /** On a board or cloth, which keeps the heat on a quarter of the surface. */
    BOARD(0, 0.75, 1, 0.7, 0),
    STEEL_BOWL(0.0001, 1, 0.7, 0.33, 0.3),
    PLASTIC_TUB(0.0125, 1, 1, 0.33, 0.7),
    GLASS_BOWL(0.005, 1, 1, 0.33, 1.2),
    CERAMIC_BOWL(0.006, 1, 1, 0.33, 1.6),
    BASKET(0.08, 1, 1, 0.33, 0.3),
    /** A baking tin, its bottom in the air. */
    TIN(0.0001, 1, 0.9, 0.25, 0.25),
    /** A metal tray, its lower side in the air. */
    TRAY(0.0001, 1, 0.9, 0.5, 0.3);

    private final double wall; // m2 K/W
    private final double open; // share of the surface through which heat goes
    private final double film; // against a dull surface
    private final double top; // share of the surface that a cover lies over
    private final double heldPerKilogram; // kJ/K

    Holder(double wall, double open, double film, double top, double heldPerKilogram) {
      this.wall = wall;
      this.open = open;
      this.film = film;
      this.top = top;
      this.heldPerKilogram = heldPerKilogram;
    }
  }

  /** Temperatures of the inner and the outer half of a dough, °C. */
  public record Pair(double core, double rim) {
    /** A dough at one temperature. */
    public static Pair even(double celsius) {
      return new Pair(celsius, celsius);
    }

    /** Of both halves. */
    public double mean() {
      return (core + rim) / 2;
    }
  }

  /** Whether the model was made for such a mass: from a small roll to a trough of 50 kg. */
  public static boolean covers(double grams) {
    return grams >= 20 && grams <= 50_000;
  }

  /** A round piece on a board. */
  public static DoughBody piece(double grams) {
    return new DoughBody(grams, Form.BALL, Holder.BOARD, false);
  }

  /** A dough rising in a covered plastic bowl or tub, the likeliest where nothing is told. */
  public static DoughBody inBowl(double grams) {
    return new DoughBody(grams, Form.BOWL, Holder.PLASTIC_TUB, true);
  }

  /**
   * Minutes in which the whole covers 63 % of the way to its surroundings.
   *
   * @param transfer W/(m² K) at the outside, see {@link Surroundings}
   */
  public double timeConstant(double transfer) {
    double conductance = 1 / (1 / outer(transfer) + meanToSurface());
    return (mass() * HEAT + held()) / conductance / 60;
  }

  /** Temperature of the whole, °C, that many minutes after it came into the place at one. */
  public double meanAfter(double start, Surroundings place, double minutes) {
    double tau = timeConstant(place.transfer());
    return place.celsius() + (start - place.celsius()) * Math.exp(-minutes / tau);
  }

  /** Temperature of the whole after its stays in these places, °C. */
  public double meanAfter(double start, List<Surroundings> places) {
    double celsius = start;
    for (Surroundings place : places) {
      celsius = meanAfter(celsius, place, place.minutes());
    }
    return celsius;
  }

  /**
   * Minutes until the whole reaches a temperature; empty if it never does in this place.
   *
   * @param start °C
   * @param wanted °C
   */
  public OptionalDouble minutesUntil(double start, Surroundings place, double wanted) {
    if (start == wanted) {
      return OptionalDouble.of(0);
    }
    double left = (wanted - place.celsius()) / (start - place.celsius());
    if (!(left > 0 && left < 1)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(-timeConstant(place.transfer()) * Math.log(left));
  }

  /** As {@link #minutesUntil}, for the core. */
  public OptionalDouble minutesUntilCore(double start, Surroundings place, double wanted) {
    OptionalDouble mean = minutesUntil(start, place, wanted);
    if (mean.isEmpty() || start == wanted) {
      return mean;
    }
    double late = 2 * mean.getAsDouble() + 10 * timeConstant(place.transfer());
    double sign = Math.signum(start - wanted);
    if (sign * (coreAfter(start, place, late) - wanted) > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        new BrentSolver(1e-6).solve(200, t -> coreAfter(start, place, t) - wanted, 0, late));
  }

  /** Temperature of the inner half, °C, of a dough that came in at one temperature. */
  public double coreAfter(double start, Surroundings place, double minutes) {
    return after(Pair.even(start), place.lasting(minutes)).core();
  }

  /** Temperature of the outer half, °C, of a dough that came in at one temperature. */
  public double rimAfter(double start, Surroundings place, double minutes) {
    return after(Pair.even(start), place.lasting(minutes)).rim();
  }

  /** Both halves after a stay. Stays after one another give what one long stay gives. */
  public Pair after(Pair start, Surroundings place) {
    Halves halves = halves(place.transfer());
    double core = start.core() - place.celsius();
    double rim = start.rim() - place.celsius();
    double[] left = halves.after(core, rim, place.minutes() * 60);
    return new Pair(place.celsius() + left[0], place.celsius() + left[1]);
  }

  /**
   * Biot number with volume over surface as length: resistance inside the dough against that
   * outside it.
   */
  public double biot(double transfer) {
    double volume = volume();
    double outside = outer(transfer) / form.area(volume);
    return outside * volume / form.area(volume) / CONDUCTIVITY;
  }

  /** Whether one temperature describes the dough in such a place. */
  public boolean lumped(double transfer) {
    return biot(transfer) < LUMPED;
  }

  /** Biot number in still air. */
  public double biot() {
    return biot(Surroundings.STILL_AIR);
  }

  /** Whether one temperature describes the dough in still air. */
  public boolean lumped() {
    return lumped(Surroundings.STILL_AIR);
  }

  private double mass() {
    return grams / 1000;
  }

  private double volume() {
    return mass() / DENSITY;
  }

  // Heat that the vessel holds, J/K. Vessels for more dough grow with its surface.
  private double held() {
    return holder.heldPerKilogram * 1000 * Math.pow(mass(), 2.0 / 3);
  }

  // W/K from the surface of the dough to the air.
  private double outer(double transfer) {
    double area = form.area(volume()) * holder.open;
    double film = 1 / (transfer * holder.film);
    double side = 1 / (film + holder.wall);
    double top = 1 / (1 / transfer + (covered ? AIR_LAYER : 0));
    return area * (holder.top * top + (1 - holder.top) * side);
  }

  // Half the thickness, radius of the stick or radius of the ball, m.
  private double radius() {
    return form.directions * volume() / form.area(volume());
  }

  // K/W from the mean of the dough to its surface. T = Ts + q (R2 - r2) / (2 n k) over a body of n
  // directions, whose mean of r2 is n / (n + 2) R2.
  private double meanToSurface() {
    return unit() * (1 - meanSquare(1));
  }

  private double unit() {
    double radius = radius();
    return radius * radius / (2 * form.directions * CONDUCTIVITY * volume());
  }

  // Mean of (r / R)2 over the inner share of the volume.
  private double meanSquare(double share) {
    double n = form.directions;
    return n / (n + 2) * Math.pow(share, 2 / n);
  }

  private Halves halves(double transfer) {
    double inner = meanSquare(0.5);
    double rim = 2 * meanSquare(1) - inner;
    // The inner half gives off half of the heat, the surface passes all of it.
    double between = 0.5 / (unit() * (rim - inner));
    double outside = 1 / (1 / outer(transfer) + unit() * (1 - rim));
    double half = mass() * HEAT / 2;
    return new Halves(between / half, between / (half + held()), outside / (half + held()));
  }
}
