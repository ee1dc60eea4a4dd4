package crumbtrail.lessons;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as people write them. */
final class Numbers {
  private Numbers() {}

  /** Three digits or so, without noughts at the end: 0.05, 1.8, 24, 450. */
  static String plain(double value) {
    double size = Math.abs(value);
    int decimals = size >= 100 ? 0 : size >= 10 ? 1 : 2;
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A probability in whole percent. */
  static String percent(double probability) {
    if (probability > 0.99) {
      return ">99 %";
    }
    return probability < 0.01 ? "<1 %" : Math.round(probability * 100) + " %";
  }

  /** Bits of information, to a tenth. */
  static String bits(double bits) {
    return String.format(Locale.ROOT, "%.1f", bits);
  }
}
