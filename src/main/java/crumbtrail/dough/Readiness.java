package crumbtrail.dough;

import java.util.List;
import java.util.OptionalDouble;

/**
 * When a dough is ready. A first rise or a proof is ready when the dough has made the gas that its
 * wanted rise takes; ripeness is the gas made over that gas, so that it goes on counting when the
 * dough has long stopped rising.
 */
public final class Readiness {
  /** A yeasted dough is ready to shape when it has doubled (TM 10-412; common practice). */
  public static final double DOUBLED = 2;

  /** A piece shaped tight is ready when it has doubled again (common practice). */
  public static final double PROOFED = 2;

  /**
   * A hearth loaf keeps half its gas when it is shaped and goes into the oven with spring left:
   * half as large again (common practice; the usual hours of hearth breads give it).
   */
  public static final double PROOFED_HEARTH = 1.5;

  /**
   * In a tin, whose walls bear it, a dough is proofed further (common practice; a miller's tin loaf
   * takes 60 min near 31 °C, Grain Craft).
   */
  public static final double PROOFED_TIN = 2.25;

  /**
   * A shaped sourdough keeps much of its gas, and its proof, two hours in the room or a night in
   * the refrigerator, adds a third (common practice).
   */
  public static final double PROOFED_SOURDOUGH = 1.3;

  // A dough that is knocked back rises on: the first rise is about 70 % of the fermentation
  // (Experimental Cookery, chestofbooks).
  private static final double FIRST_RISE_SHARE = 0.7;

  // Share of the gas that a dough well short of its limit keeps.
  private static final double KEPT = 0.92;

  private static final double BRAN = 0.35;

  private static final double LONGEST = 48 * 60;

  private Readiness() {}

  /**
   * The rise that a first rise by starter wants: by a quarter with 8 to 10 % protein, by half with
   * 10 to 12, to double with 12 to 15 (Sourdough Framework, table of dough size increase), straight
   * lines between the middles of these classes; of whole grain a third less, for it holds so much
   * less (common practice).
   */
  public static double sourdoughRise(DoughMix mix) {
    double white =
        mix.protein() <= 11
            ? Math.max(1.2, 1.25 + 0.125 * (mix.protein() - 9))
            : Math.min(2.2, 1.5 + 0.2 * (mix.protein() - 11));
    double bran = Math.min(100, Math.max(0, mix.wholeGrain())) / 100;
    return 1 + (white - 1) * (1 - BRAN * bran);
  }

  /**
   * Gas that a first rise must make, cm³ for 100 g of flour.
   *
   * @param rise wanted volume over the volume after mixing
   * @param knockedBack whether the dough is knocked back and rises again
   */
  public static double bulkGas(DoughMix mix, double rise, boolean knockedBack) {
    double gas = (rise - 1) * mix.volume() / KEPT;
    return knockedBack ? gas / FIRST_RISE_SHARE : gas;
  }

  /**
   * Gas that a proof must make, cm³ for 100 g of flour.
   *
   * @param shaped the dough as it was shaped
   * @param rise wanted volume over the volume as shaped
   */
  public static double proofGas(DoughMix mix, DoughState shaped, double rise) {
    return (rise - 1) * (mix.volume() + shaped.held()) / KEPT;
  }

  /**
   * Minutes after the first of these states at which the dough had made so much gas, by straight
   * lines between them; empty if it had not by the last.
   *
   * @param gas cm³ for 100 g of flour, made since the first state
   */
  public static OptionalDouble within(List<DoughState> states, double gas) {
    DoughState first = states.get(0);
    for (int i = 1; i < states.size(); i++) {
      DoughState before = states.get(i - 1);
      DoughState now = states.get(i);
      double made = now.made() - first.made();
      if (made >= gas) {
        double share = (gas - (before.made() - first.made())) / (now.made() - before.made());
        double minute = before.minute() + share * (now.minute() - before.minute());
        return OptionalDouble.of(minute - first.minute());
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * Minutes after the last state at which the dough would make so much more gas if it stayed where
   * it is; empty if that takes more than two days.
   *
   * @param gas cm³ for 100 g of flour, made after the last state
   */
  public static OptionalDouble later(
      Fermentation fermentation, DoughState last, double celsius, double lag, double gas) {
    return within(fermentation.until(last, new Fermentation.Stay(LONGEST, celsius, lag), gas), gas);
  }
}
