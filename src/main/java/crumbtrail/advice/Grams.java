package crumbtrail.advice;

import crumbtrail.sheet.LineText;

/** Weights as a baker reads them. */
final class Grams {
  private Grams() {}

  /** "10 g ", with the blank behind it; empty for none. */
  static String of(double grams) {
    return grams > 0 ? Text.of(LineText.onScale(grams), 2) + " g " : "";
  }
}
