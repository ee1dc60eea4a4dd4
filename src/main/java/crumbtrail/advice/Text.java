package crumbtrail.advice;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as sheets hold them. */
final class Text {
  private Text() {}

  /** Rounded, without noughts at the end. */
  static String of(double number, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
