package crumbtrail.web;

import java.util.List;

/**
 * One field of the form and its place on the bake sheet. What it is called and what a baker might
 * write into it are texts of the pages: {@code field.NAME.label}, {@code .hint}, {@code .hint.us}.
 *
 * @param name the name in the form, also its id on the page
 * @param kind how it is typed and what it becomes on the sheet
 * @param path its place on the sheet, as keys and positions: {@code [process, bulk, 0, time]}
 */
record FormField(String name, Kind kind, List<String> path) {

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

  static FormField line(String name, String path) {
    return new FormField(name, Kind.LINE, keys(path));
  }

  static FormField number(String name, String path) {
    return new FormField(name, Kind.NUMBER, keys(path));
  }

  static FormField yesNo(String name, String path) {
    return new FormField(name, Kind.YES_NO, keys(path));
  }

  static FormField lines(String name, String path) {
    return new FormField(name, Kind.LINES, keys(path));
  }

  static FormField text(String name, String path) {
    return new FormField(name, Kind.TEXT, keys(path));
  }

  /** What it asks for. */
  String label(Texts t) {
    return t.of("field." + name + ".label");
  }

  /** An example or explanation in the baker's units, or empty. */
  String hint(Texts t, Units units) {
    String hint = "field." + name + ".hint";
    return units.us() ? t.orElse(hint + ".us", t.orElse(hint, "")) : t.orElse(hint, "");
  }

  private static List<String> keys(String path) {
    return List.of(path.split("/", -1));
  }
}
