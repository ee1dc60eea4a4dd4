package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Mark;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextPlotsTest {

  @Test
  void a_rise_with_its_stages_and_when_it_was_ready() {
    List<RisePoint> points = new ArrayList<>();
    for (int minute = 0; minute <= 60; minute++) {
      points.add(new RisePoint(minute, 1 + minute / 60.0, 25));
    }
    points.add(new RisePoint(60, 1.3, 25));
    points.add(new RisePoint(90, 2.4, 26));
    Rise rise =
        new Rise(
            points,
            List.of(new Span("bulk", 0, 60, 24), new Span("proof", 60, 90, 28)),
            List.of(new Mark("ready to shape", 30, false), new Mark("ready to bake", 200, true)),
            false);

    assertThat(String.join("\n", TextPlots.rise(rise, 80)) + "\n")
        .isEqualTo(
            """
               x2.4 |                      :                                         **
                    |                      :                                    ***** \s
                    |                      :                *****           ****      \s
                    |                      :       *********            ****          \s
               x1.6 |                      *********                ****              \s
                    |             *********:                    ****                  \s
                    |    *********         :                                          \s
               x1.0 |*****                 :                                          \s
                    +------------------------------------------------------------------
                     0                             45 min                    1 h 30 min
                     |bulk                                      |proof
                     : ready to shape
            """);
  }

  @Test
  void a_core_that_stays_below_what_is_wanted() {
    List<BakePoint> points = new ArrayList<>();
    for (int minute = 0; minute <= 30; minute++) {
      points.add(new BakePoint(minute, 25 + 2.2 * minute, 150, 220));
    }

    assertThat(
            String.join("\n", TextPlots.bake(new Bake(points, 95, 100, 25.0, null, false), 80))
                + "\n")
        .isEqualTo(
            """
              95 °C |------------------------------------------------------:----------*
                    |                                                      ***********\s
                    |                                             *********:          \s
                    |                                   **********         :          \s
              55 °C |                         **********                   :          \s
                    |               **********                             :          \s
                    |     **********                                       :          \s
              25 °C |*****                                                 :          \s
                    +------------------------------------------------------------------
                     0                             15 min                        30 min
                     - core wanted   : crumb set to the core
            """);
  }

  @Test
  void what_was_ready_too_late_is_not_called_ready() {
    Rise rise =
        new Rise(
            List.of(new RisePoint(0, 1, 24), new RisePoint(90, 2, 24)),
            List.of(new Span("bulk", 0, 45, 24), new Span("proof", 45, 90, 24)),
            List.of(new Mark("ready to shape", 76, true)),
            false);

    assertThat(TextPlots.rise(rise, 80))
        .last()
        .asString()
        .endsWith(": not ready to shape until here");
  }

  @Test
  void a_plot_stays_small_whatever_the_numbers() {
    Rise flat = new Rise(List.of(new RisePoint(0, 1, 4)), List.of(), List.of(), true);
    Rise strange =
        new Rise(
            List.of(new RisePoint(0, 0.2, 4), new RisePoint(99_999, 40, 4)),
            List.of(
                new Span(
                    "a very long name for a stage, longer than the plot is wide ".repeat(2),
                    0,
                    9,
                    4)),
            List.of(new Mark("ready", -5, false)),
            true);
    Bake one = new Bake(List.of(new BakePoint(0, 95, 95, 95)), 95, 95, 0.0, 95.0, true);

    for (List<String> plot :
        List.of(TextPlots.rise(flat, 80), TextPlots.rise(strange, 80), TextPlots.bake(one, 80))) {
      assertThat(plot).hasSizeBetween(10, 12);
      assertThat(plot).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }
  }

  @Test
  void without_points_there_is_no_plot() {
    assertThat(TextPlots.rise(new Rise(List.of(), List.of(), List.of(), false), 80)).isEmpty();
    assertThat(TextPlots.bake(new Bake(List.of(), 95, 100, null, null, false), 80)).isEmpty();
  }
}
