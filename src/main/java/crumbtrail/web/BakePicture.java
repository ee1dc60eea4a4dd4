package crumbtrail.web;

import crumbtrail.report.CourseWords;
import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.web.LabelRows.Spot;
import crumbtrail.web.Picture.Pen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Core, crust and oven through the bake, beside the core that is wanted and the boiling point. Each
 * line has its name at its right end.
 */
final class BakePicture {
  private final Bake bake;
  private final Frame frame;
  private final Pen pen = new Pen();
  private final List<Name> names = new ArrayList<>();

  private BakePicture(Bake bake, Frame frame) {
    this.bake = bake;
    this.frame = frame;
  }

  private record Name(double y, String css, String text) {}

  /** The picture; the bake must have a point. */
  static Picture of(Bake bake, Frame frame) {
    return new BakePicture(bake, frame).draw();
  }

  private Picture draw() {
    BakePoint last = bake.points().get(bake.points().size() - 1);
    double left = frame.left();
    double right = frame.width() - frame.names();
    Axis x = Axis.time(last.minute(), left, right, frame.ticks());
    pen.label(0, frame.font(), "start", "name", "Temperature, °C");
    double top = 2 * frame.row() + 4;
    double foot = top + frame.tall() + frame.low();
    Axis y = Axis.round(Math.min(0, least()), most(), foot, top, 6);
    frame.upright(pen, y, left, right);
    level(y, "boils", bake.boiling(), left, right, frame.narrow() ? "boils" : "water boils");
    level(y, "wanted", bake.wantedCore(), left, right, frame.narrow() ? "wanted" : "core wanted");
    pen.steps("oven", curve(BakePoint::oven, x, y));
    pen.curve("crust", curve(BakePoint::crust, x, y));
    pen.curve("core", curve(BakePoint::core, x, y));
    name(y, "oven", last.oven(), "oven");
    name(y, "crust", last.crust(), "crust");
    name(y, "core", last.core(), "core");
    if (bake.measuredCore() != null) {
      pen.dot("measured", x.at(last.minute()), y.at(bake.measuredCore()));
      name(y, "measured", bake.measuredCore(), frame.narrow() ? "measured" : "core measured");
    }
    if (bake.setAt() != null && bake.setAt() <= x.high()) {
      String words = CourseWords.set(bake.setAt());
      LabelRows rows = new LabelRows(left, frame.width());
      Spot spot = rows.place(x.at(bake.setAt()), frame.widthOf(words));
      frame.flag(pen, spot, frame.row(), foot, "ready", words);
    }
    writeNames(right, top, foot);
    frame.time(pen, x, foot, "in the oven");
    return pen.picture(
        "bake-" + frame.name(),
        frame.width(),
        foot + 8 + frame.font() + frame.row(),
        frame.font(),
        "Temperatures through the bake",
        CourseWords.of(bake));
  }

  private void level(Axis y, String css, double value, double left, double right, String text) {
    pen.line(css, left, y.at(value), right, y.at(value));
    name(y, css, value, text);
  }

  private void name(Axis y, String css, double value, String text) {
    names.add(new Name(y.at(value), css, text + " " + Math.round(value)));
  }

  // Names keep the order of their lines and a row's distance; a leader ties each to its line.
  private void writeNames(double right, double top, double foot) {
    List<Name> sorted = names.stream().sorted(Comparator.comparingDouble(Name::y)).toList();
    double[] places = new double[sorted.size()];
    double next = top;
    for (int i = 0; i < places.length; i++) {
      places[i] = Math.max(sorted.get(i).y(), next);
      next = places[i] + 1.15 * frame.font();
    }
    double lowest = foot;
    for (int i = places.length - 1; i >= 0; i--) {
      places[i] = Math.min(places[i], lowest);
      lowest = places[i] - 1.15 * frame.font();
    }
    for (int i = 0; i < places.length; i++) {
      Name name = sorted.get(i);
      pen.line("leader", right + 4, name.y(), right + 14, places[i]);
      pen.label(right + 18, places[i] + 0.35 * frame.font(), "start", name.css(), name.text());
    }
  }

  private List<double[]> curve(ToDoubleFunction<BakePoint> value, Axis x, Axis y) {
    return bake.points().stream()
        .map(p -> new double[] {x.at(p.minute()), y.at(value.applyAsDouble(p))})
        .toList();
  }

  private double least() {
    return bake.points().stream()
        .mapToDouble(p -> Math.min(p.core(), Math.min(p.crust(), p.oven())))
        .min()
        .orElse(0);
  }

  private double most() {
    double lines =
        bake.points().stream()
            .mapToDouble(p -> Math.max(p.core(), Math.max(p.crust(), p.oven())))
            .max()
            .orElse(0);
    double levels = Math.max(bake.wantedCore(), bake.boiling());
    return Math.max(lines, Math.max(levels, bake.measuredCore() == null ? 0 : bake.measuredCore()));
  }
}
