package crumbtrail.web;

import java.util.Locale;

/** Probabilities and weights of evidence in plain words. */
final class ReportWords {

  private ReportWords() {}

  /**
   * A probability in words. The steps are those of the guidance note of the Intergovernmental Panel
   * on Climate Change on the treatment of uncertainties, 2010 (from memory); the words are ours.
   *
   * @param probability from 0 to 1
   */
  static String likelihood(double probability) {
    if (probability > 0.99) {
      return "almost certain";
    }
    if (probability > 0.90) {
      return "very likely";
    }
    if (probability > 0.66) {
      return "likely";
    }
    if (probability >= 0.33) {
      return "quite possible";
    }
    if (probability >= 0.10) {
      return "less likely";
    }
    return probability >= 0.01 ? "unlikely" : "very unlikely";
  }

  /** A probability as a percentage that never claims more than it knows at either end. */
  static String percent(double probability) {
    if (probability > 0.99) {
      return "over 99 %";
    }
    if (probability < 0.01) {
      return "under 1 %";
    }
    return Math.round(probability * 100) + " %";
  }

  /**
   * A weight of evidence in words, after the words of the rules: faintly 3 dB, plainly 6 dB, firmly
   * 10 dB, clear 20 dB. The steps lie half way between them.
   *
   * @param decibans the weight; its sign does not matter
   */
  static String weight(double decibans) {
    double size = Math.abs(decibans);
    if (size < 4.5) {
      return "faint";
    }
    if (size < 8) {
      return "plain";
    }
    return size < 15 ? "firm" : "decisive";
  }

  /** A number with as many decimals as a baker can use: three figures, none after a hundred. */
  static String number(double value) {
    double size = Math.abs(value);
    if (size >= 100 || value == Math.rint(value)) {
      return String.valueOf(Math.round(value));
    }
    String format = size >= 10 ? "%.1f" : size >= 0.1 ? "%.2f" : "%.3f";
    String text = String.format(Locale.ROOT, format, value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  /** A number with its unit, in the units that people read: hours for long times, °C for C. */
  static String quantity(double value, String unit) {
    if (unit.equals("min") && value >= 120) {
      long minutes = Math.round(value);
      return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
    }
    return unit.isEmpty() ? number(value) : number(value) + " " + sign(unit);
  }

  /** A range with its unit; a single quantity where both ends read the same. */
  static String range(double low, double high, String unit) {
    String from = quantity(low, unit);
    String to = quantity(high, unit);
    if (from.equals(to)) {
      return from;
    }
    if (unit.equals("min") && high >= 120) {
      return from + " to " + to;
    }
    // A minus sign beside an en dash cannot be read.
    return low < 0 || high < 0 ? number(low) + " to " + to : number(low) + "–" + to;
  }

  private static String sign(String unit) {
    return switch (unit) {
      case "C" -> "°C";
      case "cm3/g" -> "cm³/g";
      default -> unit;
    };
  }
}
