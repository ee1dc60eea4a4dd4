package crumbtrail.quantity;

import java.util.Map;
import java.util.regex.Pattern;

/**
 * Typed and pasted text brought to one plain form before it is read: one kind of dash, quote and
 * space, fractions written out ({@code 1½} becomes {@code 1 1/2}), no control characters. Letters
 * keep their case.
 */
public final class PlainText {
  private static final Pattern BLANKS = Pattern.compile(" {2,}");

  private static final Map<Character, String> SPELT =
      Map.ofEntries(
          Map.entry('½', " 1/2"),
          Map.entry('⅓', " 1/3"),
          Map.entry('⅔', " 2/3"),
          Map.entry('¼', " 1/4"),
          Map.entry('¾', " 3/4"),
          Map.entry('⅕', " 1/5"),
          Map.entry('⅖', " 2/5"),
          Map.entry('⅗', " 3/5"),
          Map.entry('⅘', " 4/5"),
          Map.entry('⅙', " 1/6"),
          Map.entry('⅚', " 5/6"),
          Map.entry('⅛', " 1/8"),
          Map.entry('⅜', " 3/8"),
          Map.entry('⅝', " 5/8"),
          Map.entry('⅞', " 7/8"),
          Map.entry('⁄', "/"),
          Map.entry('∕', "/"),
          Map.entry('\u2010', "-"),
          Map.entry('\u2011', "-"),
          Map.entry('\u2012', "-"),
          Map.entry('\u2013', "-"),
          Map.entry('\u2014', "-"),
          Map.entry('\u2212', "-"),
          Map.entry('º', "°"),
          Map.entry('˚', "°"),
          Map.entry('℃', "°C"),
          Map.entry('℉', "°F"),
          Map.entry('×', " x "),
          Map.entry('\u2018', "'"),
          Map.entry('\u2019', "'"),
          Map.entry('\u2032', "'"),
          Map.entry('\u201c', "\""),
          Map.entry('\u201d', "\""),
          Map.entry('\u2033', "\""),
          Map.entry('∼', "~"),
          Map.entry('≈', "~"),
          Map.entry('≥', ">"),
          Map.entry('≤', "<"),
          Map.entry('％', "%"));

  private PlainText() {}

  /** The plain form of a text, with single spaces and no space at either end. */
  public static String of(String text) {
    StringBuilder out = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      String spelt = SPELT.get(c);
      if (spelt != null) {
        out.append(spelt);
        // "½cup" must not run into the unit.
        if (spelt.charAt(0) == ' ') {
          out.append(' ');
        }
      } else if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        // Narrow and no-break spaces set off thousands: 1 600 m.
        boolean groups = c != ' ' && c != '\t' && c != '\n' && inGroup(text, i);
        out.append(groups ? "" : " ");
      } else if (!Character.isISOControl(c) && Character.getType(c) != Character.FORMAT) {
        out.append(c);
      }
    }
    return BLANKS.matcher(out.toString().strip()).replaceAll(" ");
  }

  private static boolean inGroup(String text, int i) {
    return i > 0
        && Character.isDigit(text.charAt(i - 1))
        && i + 3 < text.length()
        && Character.isDigit(text.charAt(i + 1))
        && Character.isDigit(text.charAt(i + 2))
        && Character.isDigit(text.charAt(i + 3))
        && (i + 4 == text.length() || !Character.isDigit(text.charAt(i + 4)));
  }
}
