package crumbtrail.web;

import crumbtrail.quantity.Amounts;
import crumbtrail.web.Picture.Pen;

/**
 * Measures of a picture. A phone gets a picture of its own, since one drawn for a desk would shrink
 * until nobody could read it.
 *
 * @param name part of the picture's id and its class
 * @param width of the view box
 * @param font size of texts
 * @param left room for the numbers of the upright axis
 * @param names room for names at the right end of lines
 * @param tall height of a main pane
 * @param low height of a second pane
 * @param ticks how many ticks an axis of time may have at most
 */
record Frame(String name, int width, int font, int left, int names, int tall, int low, int ticks) {
  static final Frame WIDE = new Frame("wide", 720, 14, 40, 160, 210, 80, 9);
  static final Frame NARROW = new Frame("narrow", 340, 12, 32, 106, 180, 72, 5);

  // Width of a letter on the font size, in the widest of the sans-serif faces that the stylesheet
  // names, so that texts keep apart in all of them.
  private static final double LETTER = 0.64;
  // How much wider bold letters are.
  private static final double BOLD = 1.12;

  /** Height of a row of text. */
  double row() {
    return 1.4 * font;
  }

  /** Width that a text will take, near enough to keep texts apart. */
  double widthOf(String text) {
    return font * text.chars().mapToDouble(Frame::letter).sum();
  }

  /** Width that a bold text will take. */
  double boldWidthOf(String text) {
    return BOLD * widthOf(text);
  }

  private static double letter(int letter) {
    if ("ijl .,:'|".indexOf(letter) >= 0) {
      return 0.33;
    }
    if ("frt-()°".indexOf(letter) >= 0) {
      return 0.5;
    }
    return "mwMW→".indexOf(letter) >= 0 ? 1 : LETTER;
  }

  boolean narrow() {
    return width < WIDE.width;
  }

  /** Grid lines and numbers of an upright axis. */
  void upright(Pen pen, Axis y, double left, double right, Texts t) {
    for (double tick : y.ticks()) {
      pen.line("grid", left, y.at(tick), right, y.at(tick));
      pen.label(left - 6, y.at(tick) + 0.35 * font, "end", "tick", t.number(Amounts.number(tick)));
    }
  }

  /**
   * Ticks, numbers and name of the axis of time below a chart; hours where minutes would be large.
   */
  void time(Pen pen, Axis x, double bottom, String after, Texts t) {
    boolean hours = x.high() > 180;
    pen.line("axis", x.start(), bottom, x.end(), bottom);
    for (double tick : x.ticks()) {
      pen.line("axis", x.at(tick), bottom, x.at(tick), bottom + 4);
      String number = t.number(Amounts.number(hours ? tick / 60 : tick));
      pen.label(x.at(tick), bottom + 4 + font, "middle", "tick", number);
    }
    pen.label(
        (x.start() + x.end()) / 2,
        bottom + 6 + font + row(),
        "middle",
        "title",
        t.of(after + (hours ? ".hours" : ".minutes")));
  }

  /** Room that the axis of time takes below a chart, its name and the tails of its letters too. */
  double belowTime() {
    return 8 + 1.3 * font + row();
  }

  /** Where the title of a pane stands above its top. */
  double titleAbove(double top) {
    return top - 0.75 * font;
  }

  /** A label with its leader; rows hang from {@code top}, the leader ends at {@code foot}. */
  void flag(Pen pen, LabelRows.Spot spot, double top, double foot, String css, String text) {
    double base = top + (spot.row() + 1) * row() - 0.3 * font;
    boolean aside = spot.leader() < spot.start() || spot.leader() > spot.end();
    pen.line(css, spot.leader(), aside ? base - 0.8 * font : base + 4, spot.leader(), foot);
    boolean turned = spot.turned();
    pen.label(turned ? spot.end() : spot.start(), base, turned ? "end" : "start", css, text);
  }
}
