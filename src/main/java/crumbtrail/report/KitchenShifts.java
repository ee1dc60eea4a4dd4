package crumbtrail.report;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.report.Report.KitchenShift;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Finds out what the odds of one kitchen moved in a ranking, and says it. */
final class KitchenShifts {
  /** Causes further down both rankings are not told. */
  private static final int RANKED = 8;

  /** Probabilities that move by less are not told. Our choice. */
  private static final double TELLING = 0.01;

  private KitchenShifts() {}

  /**
   * The causes that moved, the most moved first.
   *
   * @param plain by the odds of all kitchens
   * @param own by those of this one
   * @param kitchen decibans by key
   */
  static List<KitchenShift> of(Findings plain, Findings own, Map<String, Double> kitchen) {
    List<KitchenShift> shifts = new ArrayList<>();
    for (int place = 0; place < Math.min(RANKED, own.ranked().size()); place++) {
      Finding now = own.ranked().get(place);
      String key = now.cause().key();
      int placeBefore = place(plain, key);
      double before = plain.probability(key);
      if (placeBefore != place + 1 || Math.abs(now.probability() - before) >= TELLING) {
        shifts.add(
            new KitchenShift(
                key,
                now.cause().name(),
                ReportWriter.rounded(kitchen.getOrDefault(key, 0.0), 1),
                placeBefore,
                place + 1,
                ReportWriter.rounded(before, 4),
                ReportWriter.rounded(now.probability(), 4)));
      }
    }
    shifts.sort(
        Comparator.comparingDouble((KitchenShift one) -> -Math.abs(one.now() - one.before()))
            .thenComparing(KitchenShift::place));
    return shifts;
  }

  private static int place(Findings findings, String cause) {
    for (int place = 0; place < findings.ranked().size(); place++) {
      if (findings.ranked().get(place).cause().key().equals(cause)) {
        return place + 1;
      }
    }
    return 0;
  }

  /** One of them as a sentence. */
  static String words(KitchenShift shift) {
    String odds =
        shift.decibans() == 0
            ? "its own odds are as elsewhere"
            : String.format(
                Locale.ROOT, "its odds are %.2g times those elsewhere", factor(shift.decibans()));
    String place =
        shift.place() == shift.placeBefore()
            ? "place " + shift.place() + " as before"
            : "place " + shift.place() + ", was " + shift.placeBefore();
    return String.format(
        Locale.ROOT,
        "%s: %.0f %%, would be %.0f %% elsewhere; %s; %s",
        shift.name(),
        100 * shift.now(),
        100 * shift.before(),
        place,
        odds);
  }

  private static double factor(double decibans) {
    return Math.pow(10, decibans / 10);
  }
}
