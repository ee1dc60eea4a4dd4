package crumbtrail.report;

import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Mark;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import crumbtrail.report.Report.WorkedReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Says in sentences what the pictures of rise and bake show, for those who cannot see them. */
public final class CourseWords {
  private static final String ASSUMED =
      "Much of this was assumed, since the sheet does not tell it.";
  private static final String BEYOND =
      "Part of it lies beyond what the model was made for: take it as a sketch.";
  // Worse than the model on either of two measured loaves, °C.
  private static final double FAR_OFF = 8;

  private CourseWords() {}

  /** The rise, stage by stage, and when the dough was ready. Empty without points. */
  public static List<String> of(Rise rise) {
    List<String> words = new ArrayList<>();
    if (rise.points().isEmpty()) {
      return words;
    }
    RisePoint first = rise.points().get(0);
    words.add("The dough leaves the mixer at " + celsius(first.celsius()) + ".");
    for (Span span : rise.spans()) {
      pointAt(rise, span.to())
          .ifPresent(
              point ->
                  words.add(
                      capital(span.name())
                          + " at "
                          + celsius(span.place())
                          + " until "
                          + time(span.to())
                          + ": "
                          + times(point.rise())
                          + " its size after mixing, dough at "
                          + celsius(point.celsius())
                          + "."));
    }
    if (rise.spans().isEmpty()) {
      RisePoint last = rise.points().get(rise.points().size() - 1);
      words.add(
          "After " + time(last.minute()) + ": " + times(last.rise()) + " its size after mixing.");
    }
    rise.marks().forEach(mark -> words.add(capital(mark(mark)) + "."));
    return words;
  }

  /** The bake: how far the core came, against what was wanted. Empty without points. */
  public static List<String> of(Bake bake) {
    List<String> words = new ArrayList<>();
    if (bake.points().isEmpty()) {
      return words;
    }
    BakePoint last = bake.points().get(bake.points().size() - 1);
    words.add(
        "In "
            + time(last.minute())
            + " of baking the core goes from "
            + celsius(bake.points().get(0).core())
            + " to "
            + celsius(last.core())
            + " and the crust to "
            + celsius(last.crust())
            + ".");
    words.add(done(bake));
    if (bake.setAt() != null) {
      words.add(capital(set(bake.setAt())) + ".");
    }
    return words;
  }

  /** What keeps the rise from being trusted, in sentences. */
  public static List<String> warnings(Rise rise, Map<String, WorkedReading> workup) {
    List<String> words = new ArrayList<>();
    if (rise.assumed()) {
      words.add(ASSUMED);
    }
    if (beyond(workup, "bulk ripeness") || beyond(workup, "proof ripeness")) {
      words.add(BEYOND);
    }
    return words;
  }

  /** What keeps the bake from being trusted, in sentences; the bake must have a point. */
  public static List<String> warnings(Bake bake, Map<String, WorkedReading> workup) {
    List<String> words = new ArrayList<>();
    if (bake.assumed()) {
      words.add(ASSUMED);
    }
    if (beyond(workup, "core reached")) {
      words.add(BEYOND);
    }
    if (bake.measuredCore() != null) {
      double off = end(bake) - bake.measuredCore();
      if (Math.abs(off) >= FAR_OFF) {
        words.add(
            "The curve ends "
                + celsius(Math.abs(off))
                + (off < 0 ? " below" : " above")
                + " what was measured: trust the thermometer, if it was in the middle.");
      }
    }
    return words;
  }

  private static boolean beyond(Map<String, WorkedReading> workup, String name) {
    return workup.containsKey(name) && workup.get(name).known().startsWith("beyond");
  }

  /**
   * When something was ready: "ready to shape at 1 h 50 min". Past an hour to five minutes, past
   * six hours to a quarter of an hour; the model is no surer than that.
   */
  public static String mark(Mark mark) {
    String time = at(mark);
    return mark.beyond() ? "not " + mark.name() + " until " + time : mark.name() + " at " + time;
  }

  /** When something is ready, no closer than can be foreseen. */
  public static String at(Mark mark) {
    double step = mark.minute() < 60 ? 1 : mark.minute() < 360 ? 5 : 15;
    return time(Math.round(mark.minute() / step) * step);
  }

  /** When the crumb had set. */
  public static String set(double minute) {
    return "crumb set to the core at " + time(minute);
  }

  /**
   * Whether the core came to what was wanted, in a sentence: by the thermometer where there was
   * one. The bake must have a point.
   */
  public static String done(Bake bake) {
    String wanted = "the wanted " + celsius(bake.wantedCore());
    String boils = "; water boils at " + celsius(bake.boiling()) + " here.";
    if (bake.measuredCore() != null) {
      double over = bake.measuredCore() - bake.wantedCore();
      String against =
          over < 0
              ? celsius(Math.max(1, -over)) + " short of " + wanted
              : "and " + celsius(bake.wantedCore()) + " was wanted";
      return "The core was measured at "
          + celsius(bake.measuredCore())
          + ", "
          + against
          + "; worked out it comes to "
          + celsius(end(bake))
          + boils;
    }
    return bake.points().stream()
            .filter(point -> point.core() >= bake.wantedCore())
            .findFirst()
            .map(point -> "The core has " + wanted + " by " + time(point.minute()))
            .orElseGet(
                () ->
                    "The core stays "
                        + celsius(Math.max(1, bake.wantedCore() - end(bake)))
                        + " short of "
                        + wanted)
        + boils;
  }

  private static double end(Bake bake) {
    return bake.points().get(bake.points().size() - 1).core();
  }

  /** The dough at the first point that is not before a minute, else at the last. */
  public static Optional<RisePoint> pointAt(Rise rise, double minute) {
    return rise.points().stream()
        .filter(p -> p.minute() >= minute)
        .findFirst()
        .or(() -> rise.points().stream().reduce((one, next) -> next));
  }

  /** A length of time: "45 min", "1 h", "14 h 20 min". */
  public static String time(double minutes) {
    long whole = Math.round(minutes);
    if (whole < 60) {
      return whole + " min";
    }
    return whole % 60 == 0 ? whole / 60 + " h" : whole / 60 + " h " + whole % 60 + " min";
  }

  /** A temperature to the degree. */
  public static String celsius(double celsius) {
    return Math.round(celsius) + " °C";
  }

  /** A rise: "1.9 times". */
  public static String times(double rise) {
    return String.format(Locale.ROOT, "%.1f times", rise);
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
