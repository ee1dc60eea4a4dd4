package crumbtrail.web;

import crumbtrail.lessons.Variation;
import crumbtrail.lessons.Variation.Point;
import crumbtrail.quantity.Amounts;
import crumbtrail.web.Picture.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * How likely each cause is along the range of a knob: a line to each cause with its letter, an
 * upright where the sheet stands, a level where a risk begins.
 */
final class VaryPicture {
  private final Variation variation;
  private final Frame frame;
  private final Texts t;
  private final Pen pen = new Pen();

  private VaryPicture(Variation variation, Frame frame, Texts t) {
    this.t = t;
    this.variation = variation;
    this.frame = frame;
  }

  /** The picture; the variation must have a cause. */
  static Picture of(Variation variation, Frame frame, List<String> words, Texts t) {
    return new VaryPicture(variation, frame, t).draw(words);
  }

  private Picture draw(List<String> words) {
    double top = 2.4 * frame.row();
    double foot = top + frame.tall();
    double right = frame.width() - 14.0;
    Variation.Dial dial = variation.dial();
    Axis rounded = Axis.round(dial.low(), dial.high(), frame.left(), right, frame.ticks());
    Axis x =
        new Axis(
            dial.low(),
            dial.high(),
            frame.left(),
            right,
            rounded.ticks().stream()
                .filter(tick -> tick >= dial.low() - 1e-9 && tick <= dial.high() + 1e-9)
                .toList());
    Axis y = Axis.round(0, 100, foot, top, 5);
    pen.label(0, frame.font(), "start", "title", t.of("vary.axis"));
    frame.upright(pen, y, frame.left(), right, t);
    double risk = y.at(100 * Variation.RISK);
    pen.line("boils", frame.left(), risk, right, risk);
    if (dial.own() != null && dial.own() >= dial.low() && dial.own() <= dial.high()) {
      double here = x.at(dial.own());
      pen.line("ready", here, top - 4, here, foot);
      boolean turned = here > (frame.left() + right) / 2;
      pen.label(
          turned ? here - 4 : here + 4,
          top - 6,
          turned ? "end" : "start",
          "ready",
          t.of("vary.here"));
    }
    for (int place = 0; place < variation.causes().size(); place++) {
      line(place, x, y);
    }
    pen.line("axis", frame.left(), foot, right, foot);
    for (double tick : x.ticks()) {
      pen.line("axis", x.at(tick), foot, x.at(tick), foot + 4);
      pen.label(
          x.at(tick),
          foot + 4 + frame.font(),
          "middle",
          "tick",
          t.number(Amounts.number(Math.round(tick * 1000) / 1000.0)));
    }
    pen.label(
        (frame.left() + right) / 2,
        foot + 6 + frame.font() + frame.row(),
        "middle",
        "title",
        t.name(dial.name()) + ", " + LessonWords.unit(dial));
    return pen.picture(
        "vary-" + frame.name(),
        frame.width(),
        foot + frame.belowTime(),
        frame.font(),
        t.of("vary.picture", t.name(dial.name())),
        words);
  }

  // The letter stands where the line is highest.
  private void line(int place, Axis x, Axis y) {
    String key = variation.causes().get(place).key();
    List<double[]> points = new ArrayList<>();
    double[] highest = null;
    for (Point point : variation.points()) {
      double[] at = {x.at(point.at()), y.at(100 * point.causes().get(key))};
      points.add(at);
      if (highest == null || at[1] < highest[1]) {
        highest = at;
      }
    }
    pen.curve("cause-line line-" + place, points);
    if (highest != null) {
      double inside = Math.max(frame.left() + 8, Math.min(frame.width() - 24, highest[0]));
      pen.label(inside, highest[1] - 5, "middle", "value", LessonWords.letter(place));
    }
  }
}
