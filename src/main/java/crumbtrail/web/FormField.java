package crumbtrail.web;

import java.util.List;

/**
 * One field of the form and its place on the bake sheet.
 *
 * @param name the name in the form, also its id on the page
 * @param label what it asks for
 * @param hint an example or explanation, or empty
 * @param usHint the same for a baker with cups, ounces and degrees Fahrenheit
 * @param kind how it is typed and what it becomes on the sheet
 * @param path its place on the sheet, as keys and positions: {@code [process, bulk, 0, time]}
 */
record FormField(
    String name, String label, String hint, String usHint, Kind kind, List<String> path) {

  FormField {
    path = List.copyOf(path);
  }

  /** How a field is typed and what it becomes. */
  enum Kind {
    /** One line of text. */
    LINE,
    /** A whole number, passed on as typed if it is none. */
    NUMBER,
    /** Yes, no, or not said. */
    YES_NO,
    /** Several lines; each becomes an entry of a list. */
    LINES,
    /** Several lines that stay one text. */
    TEXT
  }

  static FormField line(String name, String path, String label, String hint) {
    return new FormField(name, label, hint, hint, Kind.LINE, keys(path));
  }

  static FormField number(String name, String path, String label, String hint) {
    return new FormField(name, label, hint, hint, Kind.NUMBER, keys(path));
  }

  static FormField yesNo(String name, String path, String label) {
    return new FormField(name, label, "", "", Kind.YES_NO, keys(path));
  }

  static FormField lines(String name, String path, String label, String hint) {
    return new FormField(name, label, hint, hint, Kind.LINES, keys(path));
  }

  static FormField text(String name, String path, String label, String hint) {
    return new FormField(name, label, hint, hint, Kind.TEXT, keys(path));
  }

  /** The same field with another example where US units are chosen. */
  FormField us(String example) {
    return new FormField(name, label, hint, example, kind, path);
  }

  /** The example or explanation in these units. */
  String hint(Units units) {
    return units.us() ? usHint : hint;
  }

  private static List<String> keys(String path) {
    return List.of(path.split("/", -1));
  }
}
