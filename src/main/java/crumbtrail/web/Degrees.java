package crumbtrail.web;

import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The scale of temperature on which a figure is drawn and told of: that of the baker's units.
 *
 * @param units which the baker chose
 */
record Degrees(Units units) {
  // How far two temperatures lie apart is turned without where the scale begins.
  private static final Pattern CELSIUS =
      Pattern.compile("(-?\\d+) °C( short of| below what| above what)?");

  /** The sign of the scale. */
  String unit() {
    return units.us() ? "°F" : "°C";
  }

  /** A temperature on the scale. */
  double on(double celsius) {
    return units.us() ? celsius * 9 / 5 + 32 : celsius;
  }

  /** A temperature to the degree. */
  String text(double celsius) {
    return Math.round(on(celsius)) + " " + unit();
  }

  /** A sentence of the program with its temperatures on the scale. */
  String said(String sentence) {
    if (!units.us()) {
      return sentence;
    }
    return CELSIUS.matcher(sentence).replaceAll(this::turned);
  }

  private String turned(java.util.regex.MatchResult found) {
    double celsius = Double.parseDouble(found.group(1));
    return found.group(2) == null
        ? text(celsius)
        : Matcher.quoteReplacement(Math.round(celsius * 9 / 5) + " °F" + found.group(2));
  }

  /** A rise to be drawn: its temperatures are on the scale. */
  Rise on(Rise rise) {
    return new Rise(
        rise.points().stream()
            .map(one -> new RisePoint(one.minute(), one.rise(), on(one.celsius())))
            .toList(),
        rise.spans().stream()
            .map(one -> new Span(one.name(), one.from(), one.to(), on(one.place())))
            .toList(),
        rise.marks(),
        rise.assumed());
  }

  /** A bake to be drawn: its temperatures are on the scale. */
  Bake on(Bake bake) {
    return new Bake(
        bake.points().stream()
            .map(
                one -> new BakePoint(one.minute(), on(one.core()), on(one.crust()), on(one.oven())))
            .toList(),
        on(bake.wantedCore()),
        on(bake.boiling()),
        bake.setAt(),
        bake.measuredCore() == null ? null : Double.valueOf(on(bake.measuredCore())),
        bake.assumed());
  }
}
