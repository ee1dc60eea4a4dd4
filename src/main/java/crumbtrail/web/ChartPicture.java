package crumbtrail.web;

import crumbtrail.quantity.Amounts;
import crumbtrail.study.ReadingChart;
import crumbtrail.study.ReadingChart.Point;
import crumbtrail.web.Picture.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * One reading bake by bake: a line with a dot to each bake, a ring around those out of the usual,
 * levels at the middle and at the limits.
 */
final class ChartPicture {
  /** Of fewer bakes than these no limits are told. Our choice. */
  static final int FEW = 8;

  private ChartPicture() {}

  /** Whether a bake is out of the usual. */
  static boolean out(ReadingChart chart, Point point) {
    return chart.signals().stream().anyMatch(signal -> signal.bake() == point.bake());
  }

  static Picture of(ReadingChart chart, String heading, String caption, Frame frame, Texts t) {
    Pen pen = new Pen();
    boolean limits = chart.points().size() >= FEW;
    double top = 1.6 * frame.row();
    double foot = top + frame.low() + 60;
    double right = frame.width() - 14.0;
    double left = frame.left() + 14.0;
    double least = chart.points().stream().mapToDouble(Point::value).min().orElse(0);
    double most = chart.points().stream().mapToDouble(Point::value).max().orElse(1);
    if (limits) {
      least = Math.min(least, chart.lower());
      most = Math.max(most, chart.upper());
    }
    // Where nothing changes, the line lies in the middle of a pane with numbers that differ.
    double room = most > least ? (most - least) / 20 : Math.max(1, Math.abs(most) / 10);
    Axis y = Axis.round(least - room, most + room, foot, top, 4);
    String unit = chart.unit().equals("C") ? "°C" : t.name(chart.unit());
    pen.label(0, frame.font(), "start", "title", heading + ", " + unit);
    frame.upright(pen, y, left, right, t);
    pen.line("wanted", left, y.at(chart.centre()), right, y.at(chart.centre()));
    if (limits) {
      pen.line("boils", left, y.at(chart.lower()), right, y.at(chart.lower()));
      pen.line("boils", left, y.at(chart.upper()), right, y.at(chart.upper()));
    }
    int last = chart.points().size() - 1;
    List<double[]> points = new ArrayList<>();
    for (int place = 0; place <= last; place++) {
      double x = left + 8 + (right - left - 16) * place / last;
      points.add(new double[] {x, y.at(chart.points().get(place).value())});
    }
    pen.curve("rise", points);
    for (int place = 0; place <= last; place++) {
      double[] at = points.get(place);
      pen.dot("rise-dot", at[0], at[1]);
      if (limits && out(chart, chart.points().get(place))) {
        pen.label(
            at[0],
            at[1] - 7,
            "middle",
            "value",
            t.number(Amounts.number(chart.points().get(place).value())));
      }
    }
    pen.line("axis", left, foot, right, foot);
    ends(pen, chart, points, foot, frame, t);
    return pen.picture(
        "chart-" + chart.reading().replace(' ', '-') + "-" + frame.name(),
        frame.width(),
        foot + 2.2 * frame.row(),
        frame.font(),
        heading,
        List.of(caption));
  }

  private static void ends(
      Pen pen, ReadingChart chart, List<double[]> points, double foot, Frame frame, Texts t) {
    int last = points.size() - 1;
    double line = foot + 4 + frame.font();
    pen.label(
        points.get(0)[0],
        line,
        "start",
        "tick",
        t.of("study.bake") + " " + chart.points().get(0).bake());
    pen.label(
        points.get(last)[0],
        line,
        "end",
        "tick",
        t.of("study.bake") + " " + chart.points().get(last).bake());
  }
}
