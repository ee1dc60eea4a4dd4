package crumbtrail.sheet;

import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Scan;
import java.util.EnumSet;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Time and temperature found in words: "60 min at 24 C", "leave overnight in the fridge".
 *
 * @param time the first time named
 * @param temperature the first temperature named
 */
record StageText(Optional<Quantity> time, Optional<Quantity> temperature) {

  private static final int LONGEST = 400;

  // How warm it was in a place whose temperature is told counts once, by the temperature.
  private static final Pattern PLACE =
      Pattern.compile(
          "(?i)\\b(?:in|on|a|the|my|our|very|rather|warm|hot|cool|cold|kitchen|room|place|spot|corner"
              + "|temperature)\\b");

  static StageText of(String words) {
    if (words.length() > LONGEST) {
      return new StageText(Optional.empty(), Optional.empty());
    }
    String plain = PlainText.of(words);
    return new StageText(first(plain, Dimension.TIME), first(plain, Dimension.TEMPERATURE));
  }

  /** Whether words are a time, and at most a temperature beside it. */
  static boolean isAll(String words) {
    StageText found = of(words);
    return found.time().isPresent() && !found.saysMore(PLACE.matcher(words).replaceAll(""));
  }

  boolean isEmpty() {
    return time.isEmpty() && temperature.isEmpty();
  }

  /** Whether the words hold more than the time and the temperature. */
  boolean saysMore(String words) {
    String rest = PlainText.of(words);
    if (time.isPresent()) {
      rest = rest.replace(time.get().written(), "");
    }
    if (temperature.isPresent()) {
      rest = rest.replace(temperature.get().written(), "");
    }
    String more =
        time.isPresent() && temperature.isPresent() ? PLACE.matcher(rest).replaceAll("") : rest;
    return more.replaceAll("\\b(?:at|for|and)\\b", "").chars().anyMatch(Character::isLetter);
  }

  Stage stage() {
    return new Stage(time, temperature, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static Optional<Quantity> first(String plain, Dimension wanted) {
    for (int i = 0; i < plain.length(); i++) {
      boolean wordStart = i == 0 || !Character.isLetterOrDigit(plain.charAt(i - 1));
      boolean inNumber = i > 0 && ".,/".indexOf(plain.charAt(i - 1)) >= 0;
      if (wordStart && !inNumber && plain.charAt(i) != ' ') {
        Optional<Scan> scan = Quantities.scan(plain, i, EnumSet.of(wanted));
        if (scan.isPresent()) {
          return scan.map(Scan::quantity);
        }
      }
    }
    return Optional.empty();
  }
}
