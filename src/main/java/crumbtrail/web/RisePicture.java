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
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The rise and, below it on the same axis of time, the temperature of the dough; stages as bands,
 * "ready" as upright lines.
 */
final class RisePicture {
  // A mark further off than this many times the length of the day would squeeze the day itself.
  private static final double FAR = 1.5;

  private final Rise rise;
  private final List<String> words;
  private final Degrees degrees;
  private final Frame frame;
  private final Texts t;
  private final Pen pen = new Pen();
  private final Axis x;
  private final double right;

  private RisePicture(Rise rise, Frame frame, Degrees degrees, Texts t) {
    this.rise = degrees.on(rise);
    this.words = CourseWords.of(rise).stream().map(degrees::said).toList();
    this.degrees = degrees;
    this.t = t;
    this.frame = frame;
    this.right = frame.width() - 14.0;
    this.x = Axis.time(lastMinute(rise), frame.left(), right, frame.ticks());
  }

  /** The picture; the rise must have a point. */
  static Picture of(Rise rise, Frame frame, Degrees degrees, Texts t) {
    return new RisePicture(rise, frame, degrees, t).draw();
  }

  // A stage or a mark, with a leader down into the picture.
  private record Flag(double minute, String css, String text, double width) {}

  private Picture draw() {
    double top = frame.row();
    pen.label(0, frame.font(), "start", "title", t.of("rise.axis"));
    // Stages and marks share the rows, so that no leader runs through any words.
    LabelRows rows = new LabelRows(frame.left(), frame.width());
    List<Flag> flags = flags(rows);
    List<Spot> spots =
        flags.stream().map(flag -> rows.place(x.at(flag.minute()), flag.width())).toList();
    double paneTop = top + rows.rows() * frame.row() + 4;
    double paneFoot = paneTop + frame.tall();
    double lowTop = paneFoot + 2.2 * frame.row();
    double lowFoot = lowTop + frame.low();

    bands(paneTop, paneFoot, lowTop, lowFoot);
    risePane(paneTop, paneFoot);
    warmthPane(lowTop, lowFoot);
    for (int i = 0; i < flags.size(); i++) {
      Flag flag = flags.get(i);
      boolean stage = flag.css().equals("stage");
      frame.flag(pen, spots.get(i), top, stage ? paneTop : paneFoot, flag.css(), flag.text());
      if (!stage) {
        pen.line(flag.css(), x.at(flag.minute()), lowTop, x.at(flag.minute()), lowFoot);
      }
    }
    frame.time(pen, x, lowFoot, "time.mixing", t);
    return pen.picture(
        "rise-" + frame.name(),
        frame.width(),
        lowFoot + frame.belowTime(),
        frame.font(),
        t.of("rise.picture"),
        words);
  }

  private List<Flag> flags(LabelRows rows) {
    List<Flag> flags = new ArrayList<>();
    for (Span span : spans()) {
      String text =
          t.name(span.name()) + " " + t.number(Math.round(span.place()) + " " + degrees.unit());
      flags.add(new Flag(span.from(), "stage", text, frame.widthOf(text)));
    }
    for (Mark mark : rise.marks()) {
      // Off the picture: the words stand at its end and point on.
      String text = words(mark) + (mark.minute() > x.high() ? " →" : "");
      String css = mark.beyond() ? "ready never" : "ready";
      flags.add(new Flag(mark.minute(), css, text, frame.boldWidthOf(text)));
    }
    Comparator<Flag> leftmost = Comparator.comparingDouble(Flag::minute);
    Map<Boolean, List<Flag>> turning =
        flags.stream()
            .collect(Collectors.partitioningBy(f -> rows.turns(x.at(f.minute()), f.width())));
    return Stream.concat(
            turning.get(true).stream().sorted(leftmost.reversed()),
            turning.get(false).stream().sorted(leftmost))
        .toList();
  }

  private String words(Mark mark) {
    return t.of(
        mark.beyond() ? "rise.mark.never" : "rise.mark",
        t.name(mark.name()),
        t.number(CourseWords.at(mark)));
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
    frame.upright(pen, y, frame.left(), right, t);
    pen.curve("rise", curve(RisePoint::rise, y));
    List<double[]> taken = new ArrayList<>();
    for (RisePoint point : stageEnds()) {
      double at = x.at(point.minute());
      pen.dot("rise-dot", at, y.at(point.rise()));
      String text = "×" + t.number(String.format(Locale.ROOT, "%.1f", point.rise()));
      double start = at - frame.boldWidthOf(text) - 8;
      double end = at - 6;
      // Not across the line by which the dough drops where its stage begins.
      double room = Math.max(frame.left(), x.at(stageStart(point)) + 2);
      if (start > room && taken.stream().noneMatch(t -> start < t[1] && t[0] < end)) {
        pen.label(end, y.at(point.rise()) - 5, "end", "value", text);
        taken.add(new double[] {start, end});
      }
    }
  }

  private void warmthPane(double top, double foot) {
    double base = frame.titleAbove(top);
    double font = frame.font();
    String[] key = {
      t.of("rise.temperature", degrees.unit()), t.of("rise.line.dough"), t.of("rise.line.place")
    };
    double at = 0;
    pen.label(at, base, "start", "title", key[0]);
    at += frame.boldWidthOf(key[0]) + 6;
    pen.line("warmth", at, base - 0.35 * font, at + 24, base - 0.35 * font);
    pen.label(at + 29, base, "start", "value", key[1]);
    if (!spans().isEmpty()) {
      at += 29 + frame.boldWidthOf(key[1]) + 10;
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
    frame.upright(pen, y, frame.left(), right, t);
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

  // Where the curve ends, then where each stage ends on it, the highest first.
  private List<RisePoint> stageEnds() {
    Stream<RisePoint> last = Stream.of(rise.points().get(rise.points().size() - 1));
    Stream<RisePoint> ends =
        spans().stream()
            .flatMap(span -> CourseWords.pointAt(rise, span.to()).stream())
            .sorted(Comparator.comparingDouble(RisePoint::rise).reversed());
    return Stream.concat(last, ends).distinct().toList();
  }

  // Where the stage that ends at a point begins.
  private double stageStart(RisePoint point) {
    return spans().stream()
        .filter(span -> Math.abs(span.to() - point.minute()) < 0.1)
        .mapToDouble(Span::from)
        .min()
        .orElse(0);
  }

  private List<Span> spans() {
    return rise.spans().stream().sorted(Comparator.comparingDouble(Span::from)).toList();
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
