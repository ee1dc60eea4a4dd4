package crumbtrail.dough;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth curve over temperature, looked up between values a fiftieth of a degree apart: what is
 * between them is off by less than one part in ten thousand, but where the curve is next to nought,
 * and costs a small part of the powers and exponentials that it is made of. A rise asks for it some
 * thousand times.
 */
final class Tabulated {
  private static final double PER_DEGREE = 50;

  private final double least;
  private final double[] values;
  private final DoubleUnaryOperator curve;

  /**
   * @param least lowest temperature of the table, °C
   * @param most highest; beyond both the curve itself is asked
   */
  Tabulated(double least, double most, DoubleUnaryOperator curve) {
    this.least = least;
    this.curve = curve;
    values = new double[(int) Math.round((most - least) * PER_DEGREE) + 1];
    for (int one = 0; one < values.length; one++) {
      values[one] = curve.applyAsDouble(least + one / PER_DEGREE);
    }
  }

  double at(double celsius) {
    double place = (celsius - least) * PER_DEGREE;
    if (!(place >= 0 && place < values.length - 1)) {
      return curve.applyAsDouble(celsius);
    }
    int below = (int) place;
    return values[below] + (place - below) * (values[below + 1] - values[below]);
  }
}
