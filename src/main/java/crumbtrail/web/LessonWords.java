package crumbtrail.web;

import crumbtrail.lessons.Variation.Dial;
import crumbtrail.quantity.Amounts;
import java.util.Locale;

/** Numbers and letters of the lesson pages. */
final class LessonWords {
  private LessonWords() {}

  static String letter(int place) {
    return String.valueOf((char) ('A' + place));
  }

  static String unit(Dial dial) {
    return dial.unit().equals("C") ? "°C" : dial.unit();
  }

  static String told(Dial dial, double value, Texts t) {
    return t.number(number(value) + " " + unit(dial));
  }

  static String number(double value) {
    double size = Math.abs(value);
    double scale = size >= 100 ? 1 : size >= 10 ? 10 : 100;
    return Amounts.number(Math.round(value * scale) / scale);
  }

  static String percent(Double probability) {
    if (probability == null) {
      return "–";
    }
    if (probability > 0.99) {
      return ">99 %";
    }
    return probability < 0.01 ? "<1 %" : Math.round(probability * 100) + " %";
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
