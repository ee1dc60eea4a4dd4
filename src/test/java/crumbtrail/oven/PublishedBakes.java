package crumbtrail.oven;

import java.util.ArrayList;
import java.util.List;

/**
 * The two bakes that were measured and published with their curves (files of the group that wrote
 * breadBakingFoam, commit a9afe31; only numbers were taken).
 */
final class PublishedBakes {
  private PublishedBakes() {}

  /** Zhang and Datta (2006), middle: minute, °C. */
  static final double[][] SMALL_CORE = {
    {1.01, 24.6},
    {2, 28.3},
    {3, 35.9},
    {4.01, 45.8},
    {5, 57.9},
    {6.01, 68.8},
    {7.01, 79.8},
    {8.01, 88.0},
    {9.01, 93.1},
    {10.02, 95.4},
    {11.02, 96.4},
    {12.01, 97.0},
    {13.26, 97.5}
  };

  /** The same, surface. */
  static final double[][] SMALL_SURFACE = {
    {1.03, 63.4},
    {2, 71.5},
    {3, 79.1},
    {4.01, 86.2},
    {5.01, 90.8},
    {6, 93.8},
    {7.02, 96.1},
    {8.02, 99.0},
    {9.01, 102.1},
    {10.01, 105.5},
    {11.02, 108.8},
    {12, 111.5},
    {13.27, 114.6}
  };

  /** The same, water as grams for each gram of solids; it began at 0.5373. */
  static final double[][] SMALL_WATER = {
    {1.99, 0.5270}, {5.09, 0.5093}, {7.07, 0.4978}, {9.08, 0.4815}, {11.1, 0.4607}, {13.27, 0.4269}
  };

  /** Prague free loaf, slowest sensor: minute, °C. */
  static final double[][] FREE_SLOWEST = {
    {2, 28.95}, {4, 28.95}, {6, 29.1}, {8, 32.6}, {10, 36.3}, {12, 43.8}, {14, 55.6}, {16, 70.1}
  };

  /** The same, next sensor. */
  static final double[][] FREE_NEXT = {
    {8, 35.0}, {10, 49.8}, {12, 64.7}, {14, 76.5}, {16, 84.3}, {20, 94.0}, {24, 98.1}
  };

  /** The same, weight: minute, g; it began at 599.0. */
  static final double[][] FREE_WEIGHT = {{14, 588.2}, {22, 575.4}, {30, 561.2}, {43, 541.1}};

  // Oven at Prague as its two sensors read, minute and °C; until 1.4 min the door was open.
  private static final double[][] FREE_OVEN = {
    {1.4, 100},
    {2, 195},
    {3, 212},
    {4, 221},
    {5, 227},
    {6, 233},
    {7, 238},
    {8, 243.5},
    {9, 249},
    {10, 252.5},
    {11, 255},
    {12, 256.5},
    {13, 258},
    {20, 260},
    {28, 256},
    {37, 252},
    {45, 248}
  };

  // Sizes, solids and water of the loaves are those that the same group gave its own model: 142 cm³
  // of 301 kg/m³, and half an ellipsoid of 95, 80 and 70 mm.
  static BakeCourse small() {
    Body body = Body.cylinder(36, 35).swollen(Constants.SPRING);
    Loaf loaf = new Loaf(body, 42.9, Boundary.TRAY, 0.5373 / 1.5373, 0);
    return Bake.of(loaf, 23.7, List.of(OvenStage.still(15, 190)), 0, Constants.LABORATORY);
  }

  static BakeCourse free() {
    Body body = Body.dome(95, 80, 70).swollen(Constants.SPRING);
    Loaf loaf = new Loaf(body, 599, Boundary.TRAY, 0.55 / 1.55, 0);
    List<OvenStage> stages = new ArrayList<>();
    stages.add(OvenStage.still(1.5, 100));
    double from = 1.5;
    for (double to = 2; to <= 43; to++) {
      stages.add(OvenStage.still(to - from, oven((from + to) / 2)));
      from = to;
    }
    return Bake.of(loaf, 29, stages, 200, Constants.LABORATORY);
  }

  private static double oven(double minute) {
    double[] before = FREE_OVEN[0];
    for (double[] reading : FREE_OVEN) {
      if (reading[0] >= minute) {
        double span = Math.max(1e-9, reading[0] - before[0]);
        return before[1] + (reading[1] - before[1]) * (minute - before[0]) / span;
      }
      before = reading;
    }
    return before[1];
  }

  /** Root of the mean square distance of the core from readings, °C. */
  static double coreError(BakeCourse course, double[][] readings) {
    double sum = 0;
    for (double[] reading : readings) {
      sum += Math.pow(course.coreAt(reading[0]) - reading[1], 2);
    }
    return Math.sqrt(sum / readings.length);
  }

  /** The same for the surface. */
  static double surfaceError(BakeCourse course, double[][] readings) {
    double sum = 0;
    for (double[] reading : readings) {
      sum += Math.pow(surfaceAt(course, reading[0]) - reading[1], 2);
    }
    return Math.sqrt(sum / readings.length);
  }

  private static double surfaceAt(BakeCourse course, double minute) {
    BakeCourse.Point before = course.points().get(0);
    for (BakeCourse.Point point : course.points()) {
      if (point.minute() >= minute) {
        double part = (minute - before.minute()) / (point.minute() - before.minute());
        return before.surface() + part * (point.surface() - before.surface());
      }
      before = point;
    }
    return before.surface();
  }
}
