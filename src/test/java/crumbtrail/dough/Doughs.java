package crumbtrail.dough;

import crumbtrail.dough.Fermentation.Stay;
import java.util.List;

/** Doughs of handbooks and of common practice, for tests. */
final class Doughs {
  /** A place whose temperature the dough already has: lag does not matter. */
  private static final double LAG = 60;

  /** Western Wheat Quality Laboratory, straight dough pup loaf; water as usual for it. */
  static final DoughMix PUP = new DoughMix(Leaven.ofYeast(1.8), 62, 1.5, 6, 3, 12, 0, 0, 1, 178.6);

  /** Grain Craft, straight dough sheet. */
  static final DoughMix MILLER =
      new DoughMix(Leaven.ofYeast(0.94), 63.7, 1.875, 3.75, 3.1, 12, 0, 0, 1, 175);

  private Doughs() {}

  static DoughMix plain(double yeast) {
    return DoughMix.plain(Leaven.ofYeast(yeast));
  }

  static DoughState after(DoughMix mix, double celsius, double minutes) {
    Fermentation fermentation = new Fermentation(mix);
    return fermentation.after(fermentation.start(celsius), new Stay(minutes, celsius, LAG));
  }

  /** Gas made in some minutes at one temperature, cm³ for 100 g of flour. */
  static double gas(DoughMix mix, double celsius, double minutes) {
    return after(mix, celsius, minutes).made();
  }

  /** Minutes at one temperature until the dough has so many times its volume. */
  static double minutesTo(DoughMix mix, double celsius, double rise) {
    Fermentation fermentation = new Fermentation(mix);
    List<DoughState> states =
        fermentation.through(fermentation.start(celsius), new Stay(48 * 60, celsius, LAG));
    for (int i = 1; i < states.size(); i++) {
      double now = states.get(i).rise(mix);
      if (now >= rise) {
        double before = states.get(i - 1).rise(mix);
        double from = states.get(i - 1).minute();
        return from + (rise - before) / (now - before) * (states.get(i).minute() - from);
      }
    }
    throw new AssertionError("does not rise to " + rise + " in two days");
  }

  /** The pup loaf at the end of its proof: 90 min with three punches and 32 min, all at 30 °C. */
  static DoughState proofedPup() {
    Fermentation fermentation = new Fermentation(PUP);
    DoughState state = fermentation.start(30);
    state = fermentation.after(state, new Stay(52, 30, LAG)).handled(0.3);
    state = fermentation.after(state, new Stay(25, 30, LAG)).handled(0.3);
    state = fermentation.after(state, new Stay(13, 30, LAG)).handled(0.2);
    return fermentation.after(state, new Stay(32, 30, LAG));
  }
}
