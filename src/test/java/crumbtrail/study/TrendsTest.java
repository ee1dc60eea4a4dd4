package crumbtrail.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.Digest;
import crumbtrail.bakelog.Digested;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.rules.RuleBook;
import crumbtrail.study.Trends.Count;
import crumbtrail.trends.ControlChart.Kind;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Bakes of an invented class at the tide mill. */
class TrendsTest {
  private static final Catalogue CATALOGUE = RuleBook.bundled().catalogue();

  /** The ten flow rates of the worked example of NIST 6.3.2.2, as warmth of ten doughs. */
  private static final double[] WARMTH = {
    49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1
  };

  private final List<Digested> bakes = new ArrayList<>();

  private void bake(Map<String, Double> readings, String first, String... confirmed) {
    int id = bakes.size() + 1;
    LocalDateTime baked = LocalDateTime.of(2026, 3, 1, 9, 0).plusDays(id);
    bakes.add(
        new Digested(
            new BakeLine(
                id, 1, baked, "Loaf " + id, "Tin loaf", null, first, List.of(confirmed), 0),
            new Digest(readings, List.of())));
  }

  private Trends trends() {
    List<Digested> latest = new ArrayList<>(bakes);
    Collections.reverse(latest);
    return Trends.of(latest, true, CATALOGUE);
  }

  @Test
  void the_chart_of_a_reading_has_the_limits_of_the_worked_example() {
    for (double warmth : WARMTH) {
      bake(Map.of("dough temperature", warmth), "over-proofed");
    }

    ReadingChart chart = trends().charts().get(0);

    assertThat(chart.centre()).isCloseTo(50.81, within(1e-9));
    assertThat(chart.upper()).isCloseTo(55.8041, within(1e-3));
    assertThat(chart.lower()).isCloseTo(45.8159, within(1e-3));
    assertThat(chart.points().get(0).bake()).isEqualTo(1);
    assertThat(chart.unit()).isEqualTo("C");
    assertThat(chart.signals()).isEmpty();
  }

  @Test
  void a_bake_out_of_the_usual_is_named() {
    for (int day = 0; day < 16; day++) {
      bake(Map.of("dough temperature", day == 12 ? 31 : 25 + day % 2 * 0.5), "over-proofed");
    }
    Trends trends = trends();

    assertThat(trends.charts().get(0).signals())
        .contains(new ReadingChart.Signal(13, "2026-03-14T09:00", 31, Kind.ABOVE));
    assertThat(TrendsText.of(trends, 80))
        .contains("- out of the usual: bake 13 of 2026-03-14, 31 °C, too high for here\n");
  }

  @Test
  void what_differs_behind_the_last_digit_shown_is_no_change() {
    for (int day = 0; day < 12; day++) {
      bake(Map.of("bake loss", day == 7 ? 8.04 : 8.0), "over-proofed");
    }
    Trends trends = trends();

    assertThat(trends.charts().get(0).signals()).isEmpty();
    assertThat(TrendsText.of(trends, 80)).contains("The same in every bake: 8 %.");
  }

  @Test
  void a_reading_of_one_bake_alone_is_no_chart() {
    bake(Map.of("bake loss", 8.0), "over-proofed");
    bake(Map.of(), "over-proofed");

    assertThat(trends().charts()).isEmpty();
  }

  @Test
  void causes_are_counted_and_lessons_ranked_by_what_was_confirmed() {
    bake(Map.of(), "over-proofed", "salt-omitted");
    bake(Map.of(), "over-proofed", "salt-omitted", "dough-too-warm");
    bake(Map.of(), "salt-too-low", "salt-too-low");
    bake(Map.of(), "salt-too-low");
    Trends trends = trends();

    assertThat(trends.judged()).isEqualTo(3);
    assertThat(trends.confirmed())
        .extracting(Count::cause, Count::bakes, Count::last)
        .containsExactly(
            tuple("salt-omitted", 2, 2L),
            tuple("dough-too-warm", 1, 2L),
            tuple("salt-too-low", 1, 3L));
    assertThat(trends.namedFirst()).extracting(Count::bakes).containsExactly(2, 2);
    // Salt left out is a kind of too little salt: one lesson for both, in all three judged bakes.
    Trends.ToLearn salt = trends.learn().get(0);
    assertThat(salt.lesson()).isEqualTo(1);
    assertThat(salt.bakes()).isEqualTo(3);
    assertThat(salt.last()).isEqualTo(3);
    assertThat(trends.learn().get(1).lesson()).isEqualTo(5);
  }

  @Test
  void what_has_not_come_up_for_ten_judged_bakes_stands_last() {
    for (int day = 0; day < 5; day++) {
      bake(Map.of(), "salt-too-low", "salt-too-low");
    }
    for (int day = 0; day < 10; day++) {
      bake(Map.of(), "over-proofed", day % 4 == 0 ? "dough-too-warm" : "cut-while-warm");
    }
    Trends trends = trends();

    assertThat(trends.learn()).extracting(Trends.ToLearn::lesson).startsWith(13, 5).endsWith(1);
    assertThat(TrendsText.of(trends, 80)).contains("5 of 15 judged bakes, last in bake 5; not");
  }

  @Test
  void a_cause_without_a_lesson_has_its_card() {
    bake(Map.of(), "over-proofed", "dough-skinned-crusting");

    assertThat(trends().learn().get(0).lesson()).isNull();
    assertThat(TrendsText.of(trends(), 80)).contains("crumbtrail card");
  }

  @Test
  void the_text_fits_its_width_and_a_chart_of_letters_is_drawn() {
    for (double warmth : new double[] {24, 25, 24.5, 25, 24, 31, 24.5, 25, 24.5}) {
      bake(Map.of("dough temperature", warmth), "over-proofed", "over-proofed");
    }
    for (int width : new int[] {60, 80, 120}) {
      assertThat(TrendsText.of(trends(), width).lines()).allMatch(line -> line.length() <= width);
    }
    assertThat(TrendsText.of(trends(), 60))
        .contains(
            """
            Dough temperature, °C
            ---------------------
               31.1 |............................*.................
                    |
                    |
                    |----------------------------------------------
               24.4 |*     *    *     *     *          *    *     *
                    |
                    |
               19.5 |..............................................
                    +----------------------------------------------
                     bake 1                 5                     9
            Usual here: 19.5–31.1 °C, in the middle 25.3 °C.

            Confirmed causes
            ----------------
            final proof too long  ##########    9, last in bake 9
            """);
  }
}
