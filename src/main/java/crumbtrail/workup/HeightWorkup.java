package crumbtrail.workup;

import crumbtrail.dough.DoughMix;
import crumbtrail.dough.DoughState;
import crumbtrail.dough.Fermentation;
import crumbtrail.dough.Fermentation.Stay;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.vessel.Tin;
import crumbtrail.workup.Reading.Known;
import java.util.List;
import java.util.Optional;

/**
 * How high the dough stands: at the end of its proof, and had it been left a third longer than it
 * takes to be ready, which is how far a proof is usually overrun (common practice).
 */
final class HeightWorkup {
  private static final double OVERRUN = 4.0 / 3;
  private static final double LONGEST = 24 * 60;
  private static final double MILLIMETRES_PER_CENTIMETRE = 10;

  private final BakeProcess process;
  private final ReadingList readings;
  private final Fermentation fermentation;

  HeightWorkup(BakeProcess process, ReadingList readings, Fermentation fermentation) {
    this.process = process;
    this.readings = readings;
    this.fermentation = fermentation;
  }

  /** Whether it is asked how high the dough would stand if its proof were overrun. */
  static boolean overRunWanted(Care care) {
    return care.wants("over-run rise", "over-run height");
  }

  /**
   * Puts the readings.
   *
   * @param relative relative spread of the gas made in the proof
   */
  void put(Rising proof, List<RisePlan.Step> steps, double relative, Known known) {
    height("proof height", proof.end(), relative, known);
    if (proof.readyAfter().isEmpty() || proof.readyAfter().getAsDouble() > LONGEST) {
      return;
    }
    Stay last = steps.get(steps.size() - 1).stay();
    double minutes = proof.readyAfter().getAsDouble() * OVERRUN;
    DoughState over =
        fermentation.after(proof.begin(), new Stay(minutes, last.celsius(), last.lag()));
    double rise = over.rise(fermentation.mix()) / proof.begin().rise(fermentation.mix());
    double spread = Math.abs(rise - 1) * relative;
    readings.put("over-run rise", rise, rise - spread, rise + spread, known);
    height("over-run height", over, relative, known);
  }

  // Above the rim counts up, below it down.
  private void height(String name, DoughState dough, double relative, Known known) {
    Optional<Tin> tin = VesselWorkup.tin(process.vessel());
    Optional<Reading> piece = readings.get("piece weight").filter(p -> p.value() >= 20);
    if (tin.isEmpty() || piece.isEmpty()) {
      return;
    }
    DoughMix mix = fermentation.mix();
    double flour = piece.get().value() / mix.total();
    double gas = dough.held() * (1 + relative) * flour;
    double least = dough.held() * Math.max(0, 1 - relative) * flour;
    double solid = mix.volume() * flour;
    readings.put(
        name,
        above(tin.get(), solid + dough.held() * flour),
        above(tin.get(), solid + least),
        above(tin.get(), solid + gas),
        known);
  }

  private static double above(Tin tin, double millilitres) {
    return (tin.heightOf(millilitres) - tin.height()) / MILLIMETRES_PER_CENTIMETRE;
  }
}
