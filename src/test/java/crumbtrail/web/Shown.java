package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Compares part of an answer, as an example shows it, with the whole. */
final class Shown {
  private Shown() {}

  /** What of the shown part is not so in the answer; a list shows its first entries. */
  static List<String> missing(JsonNode shown, JsonNode answer) {
    List<String> missing = new ArrayList<>();
    compare("", shown, answer, missing);
    return missing;
  }

  private static void compare(String where, JsonNode shown, JsonNode is, List<String> missing) {
    if (shown.isObject() && is.isObject()) {
      shown
          .properties()
          .forEach(
              one ->
                  compare(
                      where + "/" + one.getKey(), one.getValue(), is.path(one.getKey()), missing));
    } else if (shown.isArray() && is.isArray()) {
      for (int place = 0; place < shown.size(); place++) {
        compare(where + "/" + place, shown.get(place), is.path(place), missing);
      }
    } else if (!same(shown, is)) {
      missing.add(where + " is " + is + " and not " + shown);
    }
  }

  private static boolean same(JsonNode shown, JsonNode is) {
    if (shown.isNumber() && is.isNumber()) {
      return shown.doubleValue() == is.doubleValue();
    }
    return shown.equals(is);
  }
}
