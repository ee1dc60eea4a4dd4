package crumbtrail.workup;

import crumbtrail.dough.Development;
import crumbtrail.dough.Development.Flour;
import crumbtrail.dough.Development.Kneading;
import crumbtrail.dough.Development.Moment;
import crumbtrail.dough.Development.Tool;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading.Known;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Kneading, rest and folds, how far they develop the dough and how much of it the flour stands. */
final class MixingWorkup {
  private static final double WANTED_MINUTES = 8;
  private static final double SPREAD = 0.2;

  // What a flour stands is known to about a third either way (our judgement).
  private static final double STANDS_SPREAD = 0.35;
  private static final double USUAL_PROTEIN = 12;
  private static final double USUAL_DOUGH = 25;

  // Turns a minute on those of the kneading speed: 60, 95, 135 by a maker's list.
  private static final double LOW = 0.63;
  private static final double HIGH = 1.42;

  private static final List<String> LATE = List.of("after", "late", "end", "last", "developed");
  private static final List<String> EARLY =
      List.of("start", "beginning", "first", "with the flour", "all at once", "together");

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
    Kneading done =
        new Kneading(
            tool(method),
            mixing.time().map(Quantity::value).orElse(0.0),
            speed(mixing),
            mixing.rest().map(Quantity::value).orElse(0.0),
            folds,
            hours(process),
            fatWent(words(mixing.fat())),
            Moment.UNKNOWN,
            value(readings, "fat", 0),
            slack(readings),
            wanted);
    boolean covered = Development.covers(done);
    Known known = covered ? Known.WORKED_OUT : Known.EXTRAPOLATED;
    readings.put("development", Development.percent(done), SPREAD, known);
    if (done.minutes() > 0) {
      overwork(done, readings, covered);
    }
  }

  private static void overwork(Kneading done, ReadingList readings, boolean covered) {
    Flour flour =
        new Flour(
            value(readings, "flour protein", USUAL_PROTEIN),
            share(readings, "whole grain"),
            share(readings, "rye"));
    double dough = value(readings, "dough temperature", USUAL_DOUGH);
    boolean told = readings.get("flour protein").isPresent();
    readings.put(
        "overwork",
        Development.overwork(done, flour, dough),
        STANDS_SPREAD,
        !covered ? Known.EXTRAPOLATED : told ? Known.WORKED_OUT : Known.ASSUMED);
  }

  // Points of liquid above or below the range that is usual for the bread.
  private static double slack(ReadingList readings) {
    Optional<Reading> wet = readings.get("hydration");
    Optional<Style.Range> usual = readings.style().range("hydration");
    if (wet.isEmpty() || usual.isEmpty()) {
      return 0;
    }
    double value = wet.get().value();
    return value - Math.max(usual.get().low(), Math.min(usual.get().high(), value));
  }

  private static double share(ReadingList readings, String name) {
    return Math.min(1, Math.max(0, value(readings, name, 0) / 100));
  }

  private static double value(ReadingList readings, String name, double otherwise) {
    return readings.get(name).map(Reading::value).orElse(otherwise);
  }

  static Tool tool(String method) {
    if (method.contains("processor")) {
      return Tool.PROCESSOR;
    }
    if (method.contains("spoon")) {
      return Tool.SPOON;
    }
    return method.contains("hand") && !method.contains("mixer") ? Tool.HAND : Tool.MIXER;
  }

  /** Turns against the kneading speed; of two speeds the mean. */
  static double speed(BakeProcess.Mixing mixing) {
    String told = words(mixing.speed());
    boolean low =
        told.contains("low")
            || told.contains("slow")
            || told.contains("gentle")
            || told.equals("1");
    boolean high = told.contains("high") || told.contains("fast");
    boolean medium = told.contains("med");
    if (low && high) {
      return (LOW + HIGH) / 2;
    }
    if (low) {
      return medium ? (LOW + 1) / 2 : LOW;
    }
    return high ? (medium ? (HIGH + 1) / 2 : HIGH) : 1;
  }

  private static Moment fatWent(String told) {
    if (LATE.stream().anyMatch(told::contains)) {
      return Moment.LATE;
    }
    boolean early = EARLY.stream().anyMatch(told::contains);
    return early ? Moment.START : Moment.UNKNOWN;
  }

  private static double hours(BakeProcess process) {
    List<Stage> stages = process.bulk();
    double minutes =
        stages.stream().flatMap(s -> s.time().stream()).mapToDouble(Quantity::value).sum();
    return minutes / 60;
  }

  static String words(Optional<String> told) {
    return told.orElse("").toLowerCase(Locale.ROOT);
  }
}
