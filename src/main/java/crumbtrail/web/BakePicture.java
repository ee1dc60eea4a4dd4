package crumbtrail.web;

import crumbtrail.report.CourseWords;
import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.web.LabelRows.Spot;
import crumbtrail.web.Picture.Pen;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The core through the bake beside the core that is wanted and the boiling point, and below it, on
 * the same axis of time but a scale of their own, crust and oven: a few degrees decide in the core,
 * and would not show beside the oven. Each line has its name at its right end.
 */
final class BakePicture {
  private final Bake bake;
  private final List<String> words;
  private final Degrees degrees;
  private final Frame frame;
  private final Texts t;
  private final Pen pen = new Pen();
  private final Axis x;
  private final BakePoint last;
  private final double right;

  private BakePicture(Bake told, Frame frame, Degrees degrees, Texts t) {
    this.bake = degrees.on(told);
    this.words = CourseWords.of(told).stream().map(degrees::said).toList();
    this.degrees = degrees;
    this.t = t;
    this.frame = frame;
    this.last = bake.points().get(bake.points().size() - 1);
    this.right = frame.width() - frame.names();
    this.x = Axis.time(last.minute(), frame.left(), right, frame.ticks());
  }

  private record Name(double y, String css, String text) {}

  /** The picture; the bake must have a point. */
  static Picture of(Bake bake, Frame frame, Degrees degrees, Texts t) {
    return new BakePicture(bake, frame, degrees, t).draw();
  }

  private Picture draw() {
    pen.label(0, frame.font(), "start", "title", t.of("baking.axis.core", degrees.unit()));
    double coreTop = 2 * frame.row() + 4;
    double coreFoot = coreTop + frame.tall();
    double ovenTop = coreFoot + 2.2 * frame.row();
    double ovenFoot = ovenTop + 1.3 * frame.low();
    core(coreTop, coreFoot);
    pen.label(
        0, frame.titleAbove(ovenTop), "start", "title", t.of("baking.axis.oven", degrees.unit()));
    oven(ovenTop, ovenFoot);
    frame.time(pen, x, ovenFoot, "time.oven", t);
    return pen.picture(
        "bake-" + frame.name(),
        frame.width(),
        ovenFoot + frame.belowTime(),
        frame.font(),
        t.of("baking.picture"),
        words);
  }

  private void core(double top, double foot) {
    List<Double> values = new ArrayList<>(List.of(bake.wantedCore(), bake.boiling()));
    bake.points().forEach(point -> values.add(point.core()));
    Optional<Double> measured = Optional.ofNullable(bake.measuredCore());
    measured.ifPresent(values::add);
    Axis y = Axis.round(Collections.min(values), Collections.max(values), foot, top, 6);
    frame.upright(pen, y, frame.left(), right, t);
    level(y, "boils", bake.boiling());
    level(y, "wanted", bake.wantedCore());
    pen.curve("core", curve(BakePoint::core, y));
    List<Name> names = new ArrayList<>();
    names.add(
        name(
            y,
            "boils",
            bake.boiling(),
            t.of(frame.narrow() ? "baking.boils.short" : "baking.boils")));
    names.add(
        name(
            y,
            "wanted",
            bake.wantedCore(),
            t.of(frame.narrow() ? "baking.wanted.short" : "baking.wanted")));
    names.add(name(y, "core", last.core(), t.of("baking.line.core")));
    if (measured.isPresent()) {
      double height = y.at(measured.get());
      pen.dot("measured", x.at(last.minute()), height);
      names.add(
          name(
              y,
              "plain",
              measured.get(),
              t.of(frame.narrow() ? "baking.measured.short" : "baking.measured")));
    }
    if (bake.setAt() != null && bake.setAt() <= x.high()) {
      String set = t.of("baking.set", t.number(CourseWords.time(bake.setAt())));
      LabelRows rows = new LabelRows(frame.left(), frame.width());
      Spot spot = rows.place(x.at(bake.setAt()), frame.boldWidthOf(set));
      frame.flag(pen, spot, frame.row(), foot, "ready", set);
    }
    writeNames(names, top, foot);
  }

  private void oven(double top, double foot) {
    List<Double> values = new ArrayList<>();
    bake.points().forEach(point -> values.addAll(List.of(point.crust(), point.oven())));
    Axis y = Axis.round(Collections.min(values), Collections.max(values), foot, top, 4);
    frame.upright(pen, y, frame.left(), right, t);
    pen.steps("oven", curve(BakePoint::oven, y));
    pen.curve("crust", curve(BakePoint::crust, y));
    writeNames(
        List.of(
            name(y, "plain", last.oven(), t.of("baking.line.oven")),
            name(y, "crust", last.crust(), t.of("baking.line.crust"))),
        top,
        foot);
  }

  private void level(Axis y, String css, double value) {
    pen.line(css, frame.left(), y.at(value), right, y.at(value));
  }

  private static Name name(Axis y, String css, double value, String text) {
    return new Name(y.at(value), css, text + " " + Math.round(value));
  }

  // Names keep the order of their lines and a row's distance; a leader ties each to its line.
  private void writeNames(List<Name> names, double top, double foot) {
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

  private List<double[]> curve(ToDoubleFunction<BakePoint> value, Axis y) {
    return bake.points().stream()
        .map(p -> new double[] {x.at(p.minute()), y.at(value.applyAsDouble(p))})
        .toList();
  }
}
