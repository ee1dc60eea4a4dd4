package crumbtrail.report;

import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Mark;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says in sentences what the pictures of rise and bake show, for those who cannot see them. */
public final class CourseWords {
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
    if (bake.measuredCore() != null) {
      words.add("Measured in the core: " + celsius(bake.measuredCore()) + ".");
    }
    return words;
  }

  /** When something was ready: "ready to shape at 1 h 50 min". */
  public static String mark(Mark mark) {
    return mark.beyond()
        ? "not " + mark.name() + " until " + time(mark.minute())
        : mark.name() + " at " + time(mark.minute());
  }

  /** When the crumb had set. */
  public static String set(double minute) {
    return "crumb set to the core at " + time(minute);
  }

  /** Whether the core came to what was wanted, in a sentence; the bake must have a point. */
  public static String done(Bake bake) {
    double reached = bake.points().get(bake.points().size() - 1).core();
    String wanted = celsius(bake.wantedCore());
    return bake.points().stream()
            .filter(point -> point.core() >= bake.wantedCore())
            .findFirst()
            .map(point -> "The core has the wanted " + wanted + " by " + time(point.minute()))
            .orElseGet(
                () ->
                    "The core stays "
                        + celsius(Math.max(1, bake.wantedCore() - reached))
                        + " short of the wanted "
                        + wanted)
        + "; water boils at "
        + celsius(bake.boiling())
        + " here.";
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
