package crumbtrail.study;

import crumbtrail.quantity.Amounts;
import crumbtrail.report.PlotGrid;
import crumbtrail.study.ReadingChart.Point;
import crumbtrail.study.ReadingChart.Signal;
import crumbtrail.study.Trends.Count;
import crumbtrail.study.Trends.ToLearn;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** Writes trends for a terminal or a plain file. */
public final class TrendsText {
  /** Of fewer bakes than these limits would be a wild guess. Our choice. */
  private static final int FEW = 8;

  private static final int CAUSES = 10;

  private final TextPage page;
  private final int longest;

  private TrendsText(int width) {
    this.page = new TextPage(width);
    this.longest = width < 80 ? 10 : 20;
  }

  /**
   * The trends as lines.
   *
   * @param width characters of a line at most; 60 or more
   */
  public static String of(Trends trends, int width) {
    TrendsText text = new TrendsText(width);
    text.write(trends);
    return text.page.toString();
  }

  private void write(Trends trends) {
    page.paragraph("", head(trends));
    trends.charts().forEach(this::chart);
    if (trends.charts().isEmpty()) {
      page.paragraph(
          "", "No number of theirs is known of two bakes or more; see: crumbtrail log retrace");
    }
    counts("Confirmed causes", trends.confirmed());
    if (trends.confirmed().isEmpty()) {
      page.section("Confirmed causes");
      page.paragraph("", "None yet. Note what you found out: crumbtrail log confirm ID CAUSE");
    }
    counts("Named first by the traces", trends.namedFirst());
    if (!trends.learn().isEmpty()) {
      page.section("Most worth learning next");
      trends.learn().stream().limit(CAUSES).forEach(one -> learn(one, trends.judged()));
    }
  }

  private static String head(Trends trends) {
    String what = trends.recipe() == null ? "All recipes together" : trends.recipe();
    return "%s: %d %s, %s to %s, a cause confirmed of %d"
        .formatted(
            what,
            trends.bakes(),
            trends.bakes() == 1 ? "bake" : "bakes",
            day(trends.from()),
            day(trends.to()),
            trends.judged());
  }

  private void chart(ReadingChart chart) {
    page.section(capital(chart.reading()) + ", " + unit(chart.unit()));
    if (extreme(chart.points(), true) == extreme(chart.points(), false)) {
      page.paragraph("", "The same in every bake: " + shown(chart, chart.centre()) + ".");
      return;
    }
    plot(chart).forEach(page::line);
    if (few(chart)) {
      page.paragraph(
          "",
          "In the middle %s; what is usual here is told from %d bakes on."
              .formatted(shown(chart, chart.centre()), FEW));
      return;
    }
    page.paragraph(
        "",
        "Usual here: "
            + Amounts.range(
                rounded(chart, chart.lower()), rounded(chart, chart.upper()), chart.unit())
            + ", in the middle "
            + shown(chart, chart.centre())
            + ".");
    chart.signals().forEach(signal -> page.paragraph("- ", words(chart, signal)));
  }

  private static boolean few(ReadingChart chart) {
    return chart.points().size() < FEW;
  }

  // '*' a bake, 'O' one that is out of the usual, '-' the middle, '.' the limits.
  private List<String> plot(ReadingChart chart) {
    List<Point> points = chart.points();
    boolean limits = !few(chart);
    double least = Math.min(limits ? chart.lower() : chart.centre(), extreme(points, false));
    double most = Math.max(limits ? chart.upper() : chart.centre(), extreme(points, true));
    PlotGrid grid = new PlotGrid(page.width(), points.size() - 1, least, most);
    if (limits) {
      grid.level(chart.lower(), '.');
      grid.level(chart.upper(), '.');
    }
    grid.level(chart.centre());
    Set<Long> out = chart.signals().stream().map(Signal::bake).collect(Collectors.toSet());
    for (int place = 0; place < points.size(); place++) {
      grid.point(place, points.get(place).value(), '*');
    }
    // Last, so that of bakes that fall on one spot the odd one is seen.
    for (int place = 0; place < points.size(); place++) {
      if (limits && out.contains(points.get(place).bake())) {
        grid.point(place, points.get(place).value(), 'O');
      }
    }
    return grid.lines(
        "%." + chart.decimals() + "f",
        List.of(
            "bake " + points.get(0).bake(),
            points.size() > 2 ? "" + points.get(points.size() / 2).bake() : "",
            "" + points.get(points.size() - 1).bake()));
  }

  private static double extreme(List<Point> points, boolean highest) {
    DoubleStream values = points.stream().mapToDouble(Point::value);
    return (highest ? values.max() : values.min()).orElse(0);
  }

  private static String words(ReadingChart chart, Signal signal) {
    String bake = "bake " + signal.bake() + " of " + day(signal.baked());
    return switch (signal.kind()) {
      case ABOVE ->
          "out of the usual: " + bake + ", " + shown(chart, signal.value()) + ", too high for here";
      case BELOW ->
          "out of the usual: " + bake + ", " + shown(chart, signal.value()) + ", too low for here";
      case LONG_HIGH -> "eight in a row above the middle, the last of them " + bake;
      case LONG_LOW -> "eight in a row below the middle, the last of them " + bake;
    };
  }

  private void counts(String title, List<Count> counts) {
    if (counts.isEmpty()) {
      return;
    }
    page.section(title);
    List<Count> shown = counts.stream().limit(CAUSES).toList();
    int name = shown.stream().mapToInt(count -> count.name().length()).max().orElse(0);
    int room = Math.min(name, page.width() - longest - 26);
    int most = shown.get(0).bakes();
    for (Count count : shown) {
      int bar = (int) Math.max(1, Math.round((double) longest * count.bakes() / most));
      page.line(
          "%s  %s%s %4d, last in bake %d"
              .formatted(
                  TextPage.padded(count.name(), room),
                  "#".repeat(bar),
                  " ".repeat(longest - bar),
                  count.bakes(),
                  count.last()));
    }
    if (counts.size() > CAUSES) {
      page.line("and " + (counts.size() - CAUSES) + " more");
    }
  }

  private void learn(ToLearn one, int judged) {
    String causes = one.causes().stream().map(Count::name).collect(Collectors.joining(" and "));
    page.paragraph(
        "- ",
        (one.lesson() == null
            ? capital(one.title())
                + ", for which there is no lesson: crumbtrail card "
                + one.causes().get(0).cause()
            : "Lesson %d, %s: crumbtrail lesson %d"
                .formatted(one.lesson(), one.title(), one.lesson())));
    page.paragraph(
        "  ",
        "%s: confirmed in %d of %d judged bakes, last in bake %d%s"
            .formatted(
                causes, one.bakes(), judged, one.last(), one.lately() ? "" : "; not lately"));
  }

  private static String shown(ReadingChart chart, double value) {
    return Amounts.quantity(rounded(chart, value), chart.unit());
  }

  private static double rounded(ReadingChart chart, double value) {
    return Amounts.rounded(value, chart.decimals());
  }

  private static String unit(String unit) {
    return unit.equals("C") ? "°C" : unit;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String day(@Nullable String time) {
    return time == null ? "" : time.substring(0, 10);
  }
}
