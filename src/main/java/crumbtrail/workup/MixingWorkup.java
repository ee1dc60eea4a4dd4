package crumbtrail.workup;

import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading.Known;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Kneading, rest and folds, and how far they develop the dough.
 *
 * <p>Development is counted in minutes of a stand mixer at medium speed against the minutes that
 * the style wants. The exchange rates are common practice: a minute by hand is worth 0.6, low speed
 * 0.7, high speed 1.4; a rest of 20 min or more a quarter of the work; each set of folds an eighth;
 * twelve hours of rising 60 %. A bread machine kneads enough.
 */
final class MixingWorkup {
  private static final double WANTED_MINUTES = 8;
  private static final double REST_SHARE = 25;
  private static final double FOLD_SHARE = 12;
  private static final double SHARE_PER_HOUR = 5;
  private static final double MOST = 250;
  private static final double SPREAD = 0.2;

  private MixingWorkup() {}

  static void work(BakeProcess process, ReadingList readings) {
    BakeProcess.Mixing mixing = process.mixing();
    readings.measured("mixing time", mixing.time());
    readings.measured("rest", mixing.rest());
    Optional<Integer> folds =
        process.bulk().stream().map(Stage::folds).flatMap(Optional::stream).reduce(Integer::sum);
    folds.ifPresent(count -> readings.put("folds", count, 0, Known.MEASURED));
    development(process, readings, folds.orElse(0));
  }

  private static void development(BakeProcess process, ReadingList readings, int folds) {
    BakeProcess.Mixing mixing = process.mixing();
    String method = words(mixing.method());
    boolean unkneaded = method.contains("no-knead") || method.contains("no knead");
    if (method.contains("machine")) {
      readings.put("development", 100, SPREAD, Known.ASSUMED);
      return;
    }
    if (mixing.time().isEmpty() && !unkneaded) {
      return;
    }
    double wanted =
        readings.style().habits().value("mixing time").filter(m -> m > 0).orElse(WANTED_MINUTES);
    double worth = mixing.time().map(Quantity::value).orElse(0.0) * rate(method, mixing.speed());
    double share = 100 * worth / wanted + FOLD_SHARE * folds + SHARE_PER_HOUR * hours(process);
    if (mixing.rest().map(Quantity::value).orElse(0.0) >= 20) {
      share += REST_SHARE;
    }
    readings.put("development", Math.min(MOST, share), SPREAD, Known.WORKED_OUT);
  }

  private static double rate(String method, Optional<String> speed) {
    if (method.contains("hand") || method.contains("spoon")) {
      return 0.6;
    }
    String told = words(speed);
    if (told.contains("low") || told.contains("slow") || told.equals("1")) {
      return 0.7;
    }
    return told.contains("high") || told.contains("fast") ? 1.4 : 1;
  }

  private static double hours(BakeProcess process) {
    List<Stage> stages = process.bulk();
    double minutes =
        stages.stream().flatMap(s -> s.time().stream()).mapToDouble(Quantity::value).sum();
    return Math.min(12, minutes / 60);
  }

  private static String words(Optional<String> told) {
    return told.orElse("").toLowerCase(Locale.ROOT);
  }
}
