package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.advice.Foresight.Level;
import crumbtrail.knowledge.GapKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Usual for a white tin loaf are 59 to 66 % of water; its outer eighths are 0.875 points wide. */
class ForesightTest extends AdviceKitchen {
  private static final String TOLD =
      """
      "process": {"room": "21 C", "mixing": {"time": "9 min", "doughTemperature": "25 C"},
        "bulk": [{"time": "1 h", "temperature": "26 C"}],
        "shaping": {"pieces": 1}, "vessel": {"kind": "tin", "size": "22 x 11 x 12 cm"},
        "proof": [{"time": "50 min", "temperature": "28 C"}],
        "baking": {"stages": [{"time": "35 min", "oven": "210 C"}]}}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          290    | false | 58 %: low for this bread; 59–66 % is usual
          220    | false | 44 %: far too low for this bread; 59–66 % is usual
          297.5  | true  | 59.5 %: acceptable; 62.5 % is safer for a first try
          300    | true  | 60 %: as is usual for this bread
          325    | true  | 65 %: as is usual for this bread
          327.5  | true  | 65.5 %: acceptable; 62.5 % is safer for a first try
          335    | false | 67 %: high for this bread; 59–66 % is usual
          420    | false | 84 %: far too high for this bread; 59–66 % is usual
          """)
  void each_level_is_held_against_what_is_usual(double water, boolean within, String words) {
    Level hydration = level(foresight(formula(water, "10 g salt"), TOLD), "hydration");

    assertThat(hydration.words()).isEqualTo("hydration " + words);
    assertThat(hydration.outside()).isEqualTo(!within);
  }

  @Test
  void levels_are_those_of_the_formula_and_the_tin_alone() {
    Foresight ahead = foresight(formula(310, "10 g salt"), TOLD);

    assertThat(ahead.levels())
        .extracting(Level::reading)
        .contains("hydration", "salt", "yeast", "tin room")
        .doesNotContain("dough temperature", "bulk time", "oven temperature");
  }

  @Test
  void nothing_is_missing_where_all_is_told() {
    assertThat(gaps(foresight(formula(310, "10 g salt"), TOLD))).isEmpty();
  }

  @Test
  void what_is_not_told_and_matters_is_missing() {
    assertThat(gaps(foresight(formula(310, "10 g salt"), "")))
        .contains("no-temperature", "no-bulk", "no-proof", "no-tin", "no-oven")
        .contains("no-bake-time", "no-mixing")
        .doesNotContain("no-formula", "no-salt", "no-leavening", "no-weights");
  }

  @Test
  void flour_that_was_measured_by_the_cup_has_no_weight() {
    String cup = TOLD.strip().replaceFirst("}$", ", \"remarks\": [\"flour-measured-by-cup\"]}");

    assertThat(gaps(foresight(formula(310, "10 g salt"), cup))).containsExactly("no-weights");
  }

  @Test
  void a_gap_of_other_breads_is_none() {
    assertThat(gaps(foresight(formula(310, "10 g salt"), "", "baguette"))).doesNotContain("no-tin");
  }

  @Test
  void what_was_seen_of_an_earlier_loaf_is_left_out_of_account() {
    Foresight ahead =
        Foresight.of(
            REASONING,
            RULES.catalogue(),
            sheet(
                "{\"style\": \"white tin loaf\", \"formula\": "
                    + formula(310, "10 g salt")
                    + ", \"seen\": [\"dense crumb\"], "
                    + TOLD
                    + "}"));

    assertThat(ahead.sheet().seen()).isEmpty();
    assertThat(ahead.workup().heard().signs()).isEmpty();
    assertThat(ahead.risks().ranked()).isNotEmpty();
  }

  private static String formula(double water, String more) {
    return "[\"500 g bread flour\", \"%s g water\", \"5 g instant yeast\", \"%s\"]"
        .formatted(water, more);
  }

  private static Foresight foresight(String formula, String process) {
    return foresight(formula, process, "white tin loaf");
  }

  private static Foresight foresight(String formula, String process, String style) {
    String more = process.isEmpty() ? "" : ", " + process;
    return Foresight.of(
        REASONING,
        RULES.catalogue(),
        sheet("{\"style\": \"" + style + "\", \"formula\": " + formula + more + "}"));
  }

  private static Level level(Foresight ahead, String reading) {
    return ahead.levels().stream()
        .filter(level -> level.reading().equals(reading))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> gaps(Foresight ahead) {
    return ahead.missing().stream().map(GapKind::key).toList();
  }
}
