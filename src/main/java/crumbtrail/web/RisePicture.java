package crumbtrail.web;

import crumbtrail.report.CourseWords;
import crumbtrail.report.Courses.Mark;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import crumbtrail.web.LabelRows.Spot;
import crumbtrail.web.Picture.Pen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/**
 * The rise and, below it on the same axis of time, the temperature of the dough; stages as bands,
 * "ready" as upright lines.
 */
final class RisePicture {
  // A mark further off than this many times the length of the day would squeeze the day itself.
  private static final double FAR = 1.5;

  private final Rise rise;
  private final Frame frame;
  private final Pen pen = new Pen();
  private final Axis x;
  private final double right;

  private RisePicture(Rise rise, Frame frame) {
    this.rise = rise;
    this.frame = frame;
    this.right = frame.width() - 14.0;
    this.x = Axis.time(lastMinute(rise), frame.left(), right, frame.ticks());
  }

  /** The picture; the rise must have a point. */
  static Picture of(Rise rise, Frame frame) {
    return new RisePicture(rise, frame).draw();
  }

  private Picture draw() {
    double top = frame.row();
    pen.label(0, frame.font(), "start", "name", "Rise: times its size after mixing");
    LabelRows names = new LabelRows(frame.left(), frame.width());
    List<Spot> stages =
        spans().stream().map(s -> names.place(x.at(s.from()), frame.widthOf(stage(s)))).toList();
    LabelRows flags = new LabelRows(frame.left(), frame.width());
    List<Spot> marks =
        marks().stream().map(m -> flags.place(x.at(m.minute()), frame.widthOf(words(m)))).toList();
    double flagsTop = top + names.rows() * frame.row();
    double paneTop = flagsTop + flags.rows() * frame.row() + 4;
    double paneFoot = paneTop + frame.tall();
    double lowTop = paneFoot + 2 * frame.row();
    double lowFoot = lowTop + frame.low();

    bands(paneTop, paneFoot, lowTop, lowFoot);
    // Stages first: the words of marks then lie over the leaders of the stages.
    for (int i = 0; i < stages.size(); i++) {
      frame.flag(pen, stages.get(i), top, paneTop, "stage", stage(spans().get(i)));
    }
    risePane(paneTop, paneFoot);
    warmthPane(paneFoot, lowTop, lowFoot);
    for (int i = 0; i < marks.size(); i++) {
      Mark mark = marks().get(i);
      String css = mark.beyond() ? "ready never" : "ready";
      frame.flag(pen, marks.get(i), flagsTop, lowFoot, css, words(mark));
    }
    frame.time(pen, x, lowFoot, "after mixing");
    return pen.picture(
        "rise-" + frame.name(),
        frame.width(),
        lowFoot + 8 + frame.font() + frame.row(),
        frame.font(),
        "The rise and the temperature of the dough",
        CourseWords.of(rise));
  }

  private void bands(double paneTop, double paneFoot, double lowTop, double lowFoot) {
    List<Span> spans = spans();
    for (int i = 0; i < spans.size(); i++) {
      String css = i % 2 == 0 ? "band" : "band other";
      double from = x.at(spans.get(i).from());
      double to = x.at(spans.get(i).to());
      pen.box(css, from, paneTop, to, paneFoot);
      pen.box(css, from, lowTop, to, lowFoot);
    }
  }

  private void risePane(double top, double foot) {
    // From nought risen to doubled at least, so that a dough which hardly rose looks flat.
    double least = Math.min(1, min(RisePoint::rise));
    double most = Math.max(2, max(RisePoint::rise));
    Axis y = Axis.round(least, most, foot, top, 5);
    frame.upright(pen, y, frame.left(), right);
    pen.curve("rise", curve(RisePoint::rise, y));
    double taken = Double.NEGATIVE_INFINITY;
    for (RisePoint point : stageEnds()) {
      double at = x.at(point.minute());
      pen.dot("rise-dot", at, y.at(point.rise()));
      String text = "×" + String.format(Locale.ROOT, "%.1f", point.rise());
      double width = frame.widthOf(text) + 8;
      if (at - width > Math.max(taken, frame.left())) {
        pen.label(at - 6, y.at(point.rise()) - 5, "end", "value", text);
        taken = at;
      }
    }
  }

  private void warmthPane(double above, double top, double foot) {
    double base = above + 2 * frame.row() - 6;
    double font = frame.font();
    String[] key = {"Temperature, °C:", "dough", "place"};
    double at = 0;
    pen.label(at, base, "start", "name", key[0]);
    at += frame.widthOf(key[0]) + 8;
    pen.line("warmth", at, base - 0.35 * font, at + 24, base - 0.35 * font);
    pen.label(at + 29, base, "start", "value", key[1]);
    if (!spans().isEmpty()) {
      at += 29 + frame.widthOf(key[1]) + 14;
      pen.line("place", at, base - 0.35 * font, at + 24, base - 0.35 * font);
      pen.label(at + 29, base, "start", "value", key[2]);
    }
    DoubleStream places = spans().stream().mapToDouble(Span::place);
    double[] all =
        DoubleStream.concat(places, rise.points().stream().mapToDouble(RisePoint::celsius))
            .toArray();
    double least = DoubleStream.of(all).min().orElse(0);
    double most = DoubleStream.of(all).max().orElse(0);
    double middle = (least + most) / 2;
    // Ten degrees at least, so that a steady dough does not look like a stormy one.
    Axis y = Axis.round(Math.min(least, middle - 5), Math.max(most, middle + 5), foot, top, 3);
    frame.upright(pen, y, frame.left(), right);
    for (Span span : spans()) {
      double height = y.at(span.place());
      pen.line("place", x.at(span.from()), height, x.at(span.to()), height);
    }
    pen.curve("warmth", curve(RisePoint::celsius, y));
  }

  private List<double[]> curve(ToDoubleFunction<RisePoint> value, Axis y) {
    return rise.points().stream()
        .map(p -> new double[] {x.at(p.minute()), y.at(value.applyAsDouble(p))})
        .toList();
  }

  // Where each stage ends on the curve, and where the curve ends.
  private List<RisePoint> stageEnds() {
    List<RisePoint> ends = new ArrayList<>();
    for (Span span : spans()) {
      CourseWords.pointAt(rise, span.to()).ifPresent(ends::add);
    }
    ends.add(rise.points().get(rise.points().size() - 1));
    return ends.stream().distinct().toList();
  }

  private List<Span> spans() {
    return rise.spans().stream().sorted(Comparator.comparingDouble(Span::from)).toList();
  }

  private List<Mark> marks() {
    return rise.marks().stream().sorted(Comparator.comparingDouble(Mark::minute)).toList();
  }

  private String words(Mark mark) {
    // Off the picture: the words stand at its end and point on.
    return CourseWords.mark(mark) + (mark.minute() > x.high() ? " →" : "");
  }

  private static String stage(Span span) {
    return span.name() + " " + CourseWords.celsius(span.place());
  }

  private double min(ToDoubleFunction<RisePoint> value) {
    return rise.points().stream().mapToDouble(value).min().orElse(0);
  }

  private double max(ToDoubleFunction<RisePoint> value) {
    return rise.points().stream().mapToDouble(value).max().orElse(0);
  }

  private static double lastMinute(Rise rise) {
    double last = rise.points().get(rise.points().size() - 1).minute();
    double ends = rise.spans().stream().mapToDouble(Span::to).max().orElse(last);
    double day = Math.max(last, ends);
    double marks =
        rise.marks().stream()
            .mapToDouble(Mark::minute)
            .filter(minute -> minute <= FAR * day)
            .max()
            .orElse(day);
    return Math.max(day, marks);
  }
}
