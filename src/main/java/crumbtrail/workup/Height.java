package crumbtrail.workup;

import crumbtrail.sheet.BakeProcess;

/** How high above the sea a kitchen lies. */
final class Height {
  /** The air's models reach so far, m. */
  private static final double HIGHEST = 5000;

  private static final double MILLIMETRES = 1000;

  private Height() {}

  /** Metres, from 0 to 5000; the sea where nothing is told. */
  static double metres(BakeProcess process) {
    double told = process.altitude().map(height -> height.value() / MILLIMETRES).orElse(0.0);
    return Math.max(0, Math.min(HIGHEST, told));
  }
}
