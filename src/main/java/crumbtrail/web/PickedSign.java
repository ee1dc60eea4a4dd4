package crumbtrail.web;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sign that was picked from its picture.
 *
 * @param key of the sign
 * @param seen whether it was seen; false if it was looked for in vain
 */
record PickedSign(String key, boolean seen) {
  static final String SAW = "saw";
  static final String NOT = "not";

  private static final Pattern NAME = Pattern.compile("sign-([a-z0-9]+(?:-[a-z0-9]+){0,12})");

  /** Reads a field of the form; empty if it is none of these, or nothing was picked. */
  static Optional<PickedSign> of(String name, String value) {
    Matcher field = NAME.matcher(name);
    return name.length() <= 80 && field.matches() && (value.equals(SAW) || value.equals(NOT))
        ? Optional.of(new PickedSign(field.group(1), value.equals(SAW)))
        : Optional.empty();
  }

  /** Name of the field for a sign. */
  static String fieldName(String key) {
    return "sign-" + key;
  }

  String fieldName() {
    return fieldName(key);
  }
}
