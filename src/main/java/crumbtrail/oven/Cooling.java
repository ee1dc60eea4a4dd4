package crumbtrail.oven;

import crumbtrail.memory.Recent;
import java.util.OptionalDouble;

/**
 * A loaf cooling in the still air of a room: the same layers and balances as in {@link Bake}, with
 * vapour still leaving through the crust.
 *
 * <p>In the open it gives off heat to the air (5 W/(m² K), handbook size for still air) and by
 * radiation (0.9 of black, handbook value; both from memory). In its tin, or wrapped, the factors
 * are our choice. Made for rooms of 5 to 40 °C and loaves that {@link Bake#covers} admits; nothing
 * was found that was measured over time.
 */
public final class Cooling {
  /** How the loaf lies. */
  public enum Lying {
    /** On a rack, air all round. */
    RACK(1, 1),
    /** Left in its tin: a fifth less heat gets out, vapour only at the top. */
    TIN(0.8, 0.3),
    /** In a cloth or bag: half the heat gets out, and a tenth of the vapour. */
    WRAPPED(0.5, 0.1);

    private final double heat;
    private final double open;

    Lying(double heat, double open) {
      this.heat = heat;
      this.open = open;
    }
  }

  private static final double RADIATION = 0.9;
  private static final double MOIST_AIR = 0.5;
  private static final double LONGEST = 24 * 60;

  /** A core that is so near to the room, °C, is as cold as it gets, and no longer followed. */
  private static final double COLD = 0.2;

  // A loaf from a bake that is remembered is the same loaf, and most what-ifs leave its cooling
  // alone.
  private static final Recent<Asked, Double> LATELY = new Recent<>(256);

  private record Asked(HotLoaf hot, double minutes, double room, Lying lying) {}

  private Cooling() {}

  /**
   * Core temperature after so many minutes out of the oven, °C.
   *
   * @param hot the loaf at the end of its bake
   * @param minutes not negative, at most a day
   * @param room temperature of the air, °C
   */
  public static double coreAfter(HotLoaf hot, double minutes, double room, Lying lying) {
    check(minutes);
    return LATELY.of(new Asked(hot, minutes, room, lying), Cooling::core);
  }

  private static double core(Asked asked) {
    CoolingRun run = new CoolingRun(asked.hot(), surroundings(asked.room(), asked.lying()));
    while (run.minute() < asked.minutes() && Math.abs(run.core() - asked.room()) > COLD) {
      run.advance(Math.min(CoolingRun.TICK, asked.minutes() - run.minute()));
    }
    return run.core();
  }

  /** Weight lost while cooling, percent of the dough. */
  public static double lossAfter(HotLoaf hot, double minutes, double room, Lying lying) {
    return after(hot, minutes, room, lying).loss();
  }

  private static CoolingRun after(HotLoaf hot, double minutes, double room, Lying lying) {
    check(minutes);
    CoolingRun run = new CoolingRun(hot, surroundings(room, lying));
    while (run.minute() < minutes) {
      run.advance(Math.min(CoolingRun.TICK, minutes - run.minute()));
    }
    return run;
  }

  private static void check(double minutes) {
    if (!(minutes >= 0 && minutes <= LONGEST)) {
      throw new IllegalArgumentException("minutes of cooling are 0 to 1440, not " + minutes);
    }
  }

  /**
   * Minutes until the core is no warmer than that; empty if it is not within a day, as in a room
   * that is no cooler.
   */
  public static OptionalDouble minutesUntil(HotLoaf hot, double celsius, double room, Lying lying) {
    CoolingRun run = new CoolingRun(hot, surroundings(room, lying));
    double before = run.core();
    while (run.core() > celsius) {
      before = run.core();
      if (run.minute() >= LONGEST || celsius <= room) {
        return OptionalDouble.empty();
      }
      run.advance(CoolingRun.TICK);
    }
    double fall = before - run.core();
    double part = fall > 0 ? (run.core() - celsius) / fall : 0;
    return OptionalDouble.of(Math.max(0, run.minute() + part * CoolingRun.TICK));
  }

  private static Surroundings surroundings(double room, Lying lying) {
    if (!(room >= -30 && room <= 60)) {
      throw new IllegalArgumentException("a room has -30 to 60 °C, not " + room);
    }
    return new Surroundings(
        room,
        lying.heat * Constants.USUAL.stillAir(),
        lying.heat * RADIATION,
        lying.open,
        MOIST_AIR * Crumb.density(room));
  }
}
