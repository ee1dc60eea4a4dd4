package crumbtrail.trends;

import java.util.ArrayList;
import java.util.List;

/**
 * A chart of single values with their moving range (Shewhart's): what is usual for this kitchen,
 * and which bakes were out of it. Formulas: NIST/SEMATECH e-Handbook of Statistical Methods,
 * 6.3.2.2.
 *
 * @param values in the order of the bakes
 * @param centre their mean
 * @param lower below this a value is out of the usual; equal to the centre where fewer than two
 *     values are known
 * @param upper above this a value is out of the usual
 * @param signals what stands out, in the order of the bakes
 */
public record ControlChart(
    List<Double> values, double centre, double lower, double upper, List<Signal> signals) {

  /** Mean range of two values over their standard deviation: tables of control charts. */
  private static final double RANGE_OF_TWO = 1.128;

  /** Limits lie so many standard deviations from the centre. */
  private static final double SIGMAS = 3;

  /** So many values in a row on one side are no chance (Western Electric's rule). */
  private static final int RUN = 8;

  public ControlChart {
    values = List.copyOf(values);
    signals = List.copyOf(signals);
  }

  /** What makes a value stand out. */
  public enum Kind {
    ABOVE,
    BELOW,
    /** The last of eight in a row above the centre. */
    LONG_HIGH,
    /** The last of eight in a row below the centre. */
    LONG_LOW
  }

  /**
   * A value that stands out.
   *
   * @param place of the value, from 0
   */
  public record Signal(int place, Kind kind) {}

  /**
   * The chart of some values.
   *
   * @param values in the order of the bakes, finite
   * @throws IllegalArgumentException if a value is not finite
   */
  public static ControlChart of(List<Double> values) {
    if (values.stream().anyMatch(value -> !Double.isFinite(value))) {
      throw new IllegalArgumentException("values of a chart are finite: " + values);
    }
    double centre = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double ranges = 0;
    for (int place = 1; place < values.size(); place++) {
      ranges += Math.abs(values.get(place) - values.get(place - 1));
    }
    double mean = values.size() > 1 ? ranges / (values.size() - 1) : 0;
    double reach = SIGMAS * mean / RANGE_OF_TWO;
    return new ControlChart(
        values,
        centre,
        centre - reach,
        centre + reach,
        values.size() > 1 ? signals(values, centre, reach) : List.of());
  }

  private static List<Signal> signals(List<Double> values, double centre, double reach) {
    List<Signal> signals = new ArrayList<>();
    int high = 0;
    int low = 0;
    for (int place = 0; place < values.size(); place++) {
      double off = values.get(place) - centre;
      if (Math.abs(off) > reach) {
        signals.add(new Signal(place, off > 0 ? Kind.ABOVE : Kind.BELOW));
      }
      high = off > 0 ? high + 1 : 0;
      low = off < 0 ? low + 1 : 0;
      // A run that goes on is told once for every eight.
      if (high > 0 && high % RUN == 0) {
        signals.add(new Signal(place, Kind.LONG_HIGH));
      }
      if (low > 0 && low % RUN == 0) {
        signals.add(new Signal(place, Kind.LONG_LOW));
      }
    }
    return signals;
  }
}
