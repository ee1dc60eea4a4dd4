package crumbtrail.web;

import java.util.ArrayList;
import java.util.List;

/**
 * A linear scale with round ticks.
 *
 * @param low value at {@code start}
 * @param high value at {@code end}, above {@code low}
 * @param start place in the picture; may be larger than {@code end}, as heights run downwards
 * @param end place in the picture
 * @param ticks round values from {@code low} to {@code high}
 */
record Axis(double low, double high, double start, double end, List<Double> ticks) {
  private static final double[] MINUTES = {
    1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 7200, 14400
  };
  private static final double TINY = 1e-9;

  /** An axis that ends on round values around a range of finite numbers. */
  static Axis round(double low, double high, double start, double end, int most) {
    double from = Math.min(low, high);
    double to = Math.max(low, high);
    if (to - from < TINY * Math.max(1, Math.abs(to))) {
      to = from + Math.max(1, Math.abs(from) / 10);
    }
    double step = step((to - from) / Math.max(1, most));
    from = Math.floor(from / step + TINY) * step;
    to = Math.ceil(to / step - TINY) * step;
    return new Axis(from, to, start, end, ticks(from, to, step));
  }

  /** An axis of minutes from nought to the end of the data, with ticks that clocks have. */
  static Axis time(double high, double start, double end, int most) {
    double to = Math.max(1, high);
    double step = MINUTES[MINUTES.length - 1];
    for (double candidate : MINUTES) {
      if (to / candidate <= most) {
        step = candidate;
        break;
      }
    }
    return new Axis(0, to, start, end, ticks(0, to, step));
  }

  /** The place of a value; values beyond the axis land on its end. */
  double at(double value) {
    double share = (Math.max(low, Math.min(high, value)) - low) / (high - low);
    return start + share * (end - start);
  }

  /** The place of a value as text for SVG: at most one decimal. */
  String text(double value) {
    return text1(at(value));
  }

  /** A number as text for SVG: at most one decimal. */
  static String text1(double place) {
    // Written out: a page has some thousand of these, and a formatter took a twentieth of its time.
    long tenths = Math.round(place * 10);
    long whole = Math.abs(tenths) / 10;
    long rest = Math.abs(tenths) % 10;
    return (tenths < 0 ? "-" : "") + whole + (rest == 0 ? "" : "." + rest);
  }

  // The smallest of 1, 2, 5, 10, 20 … that is not below the raw step.
  private static double step(double raw) {
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= raw * (1 - TINY)) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  private static List<Double> ticks(double from, double to, double step) {
    List<Double> ticks = new ArrayList<>();
    long count = Math.round(Math.floor((to - from) / step + 1e-6));
    for (long i = 0; i <= count; i++) {
      ticks.add(from + i * step);
    }
    return List.copyOf(ticks);
  }
}
