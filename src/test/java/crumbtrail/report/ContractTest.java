package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The report on a sheet that uses every key a sheet may have, field by field. What later work adds
 * (corrections) is looked for there.
 */
class ContractTest {
  private static final Path SHEET = Path.of("src", "test", "resources", "contract-sheet.json");

  private static JsonNode report;

  @BeforeAll
  static void trace_the_sheet() throws IOException {
    report = traced(Files.readString(SHEET));
  }

  @Test
  void the_report_has_the_fields_by_their_names() {
    assertThat(report.fieldNames())
        .toIterable()
        .contains(
            "causes",
            "together",
            "unexplained",
            "notUnderstood",
            "firmness",
            "askNext",
            "formula",
            "workup",
            "cautions");
  }

  @Test
  void causes_are_ranked_and_name_key_probability_evidence_and_signs() {
    JsonNode causes = report.get("causes");
    assertThat(causes.isArray()).isTrue();
    assertThat(causes).isNotEmpty();
    double last = 1;
    for (JsonNode cause : causes) {
      assertThat(cause.get("key").asText()).matches("[a-z0-9]+(-[a-z0-9]+)*");
      assertThat(cause.get("name").asText()).isNotBlank();
      assertThat(cause.get("probability").isNumber()).isTrue();
      assertThat(cause.get("probability").asDouble()).isBetween(0.0, last);
      last = cause.get("probability").asDouble();
      assertThat(cause.get("explains").isArray()).isTrue();
      assertThat(cause.get("evidence")).isNotEmpty();
    }
  }

  @Test
  void each_piece_of_evidence_is_whole_and_the_strongest_comes_first() {
    for (JsonNode cause : report.get("causes")) {
      double last = Double.POSITIVE_INFINITY;
      for (JsonNode evidence : cause.get("evidence")) {
        for (String text : List.of("rule", "strand", "because", "source")) {
          assertThat(evidence.get(text).asText()).as(text).isNotBlank().doesNotContain("\"\"");
        }
        assertThat(evidence.get("strand").asText()).doesNotStartWith("\"");
        assertThat(evidence.get("readings").isArray()).isTrue();
        assertThat(evidence.get("decibans").asDouble()).isNotZero().isLessThanOrEqualTo(last);
        last = evidence.get("decibans").asDouble();
      }
    }
  }

  @Test
  void what_stands_together_is_ranked_and_explains_every_sign_that_can_be_explained() {
    List<String> together = texts(report.get("together"));
    List<String> explained = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (JsonNode cause : report.get("causes")) {
      keys.add(cause.get("key").asText());
      if (together.contains(cause.get("key").asText())) {
        explained.addAll(texts(cause.get("explains")));
      }
    }

    assertThat(keys).containsAll(together);
    assertThat(explained).contains("pale-crust");
    assertThat(texts(report.get("unexplained"))).doesNotContainAnyElementsOf(explained);
  }

  @Test
  void the_set_that_stands_together_has_a_likelihood_and_says_what_acts_together() {
    assertThat(report.get("togetherProbability").asDouble()).isBetween(0.0, 1.0);
    List<String> together = texts(report.get("together"));
    for (JsonNode joint : report.get("actingTogether")) {
      assertThat(together).containsAll(texts(joint.get("causes")));
      assertThat(joint.get("why").asText()).isNotBlank();
      assertThat(joint.get("source").asText()).isNotBlank();
    }
  }

  @Test
  void firmness_tells_runs_shares_and_what_matters() {
    JsonNode firmness = report.get("firmness");
    assertThat(firmness.get("runs").asInt()).isIn(1, 300);
    double sum = 0;
    for (JsonNode share : firmness.get("firstIn")) {
      sum += share.asDouble();
    }
    assertThat(sum).isBetween(0.99, 1.01);
    for (JsonNode matter : firmness.get("matters")) {
      for (String text : List.of("what", "from", "to", "advice")) {
        assertThat(matter.get(text).asText()).as(text).isNotBlank();
      }
      assertThat(matter.has("reading")).isTrue();
      assertThat(matter.has("moves")).isTrue();
    }
  }

  @Test
  void three_questions_come_next_with_how_to_answer_them_and_what_that_costs() {
    assertThat(report.get("askNext")).hasSize(3);
    for (JsonNode question : report.get("askNext")) {
      for (String text : List.of("about", "question", "how", "cost", "answer")) {
        assertThat(question.get(text).asText()).as(text).isNotBlank();
      }
      assertThat(question.get("bits").asDouble()).isBetween(0.0, 1.6);
    }
  }

  @Test
  void the_first_three_causes_are_told_as_a_story_with_the_rules_behind_it() {
    for (int place = 0; place < report.get("causes").size(); place++) {
      JsonNode cause = report.get("causes").get(place);
      if (place < 3) {
        assertThat(cause.get("story").asText()).endsWith(".").doesNotContain("null");
        for (JsonNode evidence : cause.get("evidence")) {
          assertThat(evidence.at("/says/when")).isNotEmpty();
          assertThat(evidence.at("/says/then/0").asText())
              .matches("(Suspect|Doubt|Clear) \"[a-z -]+\".*");
        }
      } else {
        assertThat(cause.has("story")).isFalse();
      }
    }
  }

  /** 500 g and 100 g of flour; 310 g and 100 g of water; 6 g of salt. */
  @Test
  void the_formula_counts_the_preferment_in() {
    JsonNode formula = report.get("formula");

    assertThat(formula.get("flourGrams").asDouble()).isCloseTo(600, within(0.5));
    assertThat(formula.at("/hydration/liquid").asDouble()).isCloseTo(410 / 6.0, within(0.1));
    assertThat(formula.at("/hydration/allWater").asDouble()).isCloseTo(410 / 6.0, within(0.5));
    assertThat(formula.at("/percent/water").asDouble()).isCloseTo(410 / 6.0, within(0.1));
    assertThat(formula.at("/percent/salt").asDouble()).isCloseTo(1, within(0.01));
    // 1 1/2 tsp of instant yeast weighs some 4.5 to 5 g.
    assertThat(formula.get("doughGrams").asDouble()).isCloseTo(1021, within(2.0));
  }

  @Test
  void a_reading_has_value_unit_spread_how_it_is_known_and_what_is_usual() {
    JsonNode salt = report.at("/workup/salt");

    assertThat(salt.get("value").asDouble()).isCloseTo(1, within(0.01));
    assertThat(salt.get("unit").asText()).isEqualTo("%");
    assertThat(salt.get("low").asDouble()).isLessThanOrEqualTo(salt.get("value").asDouble());
    assertThat(salt.get("high").asDouble()).isGreaterThanOrEqualTo(salt.get("value").asDouble());
    assertThat(salt.get("known").asText()).isEqualTo("worked out");
    assertThat(salt.get("usualLow").asDouble()).isLessThan(salt.get("usualHigh").asDouble());
    assertThat(salt.get("usualSource").asText()).isNotBlank();
  }

  @Test
  void what_the_sheet_measured_comes_back_as_measured() {
    assertMeasured("dough temperature", 29);
    assertMeasured("proof time", 75);
    assertMeasured("proof temperature", 30);
    assertMeasured("proof humidity", 80);
    assertMeasured("bulk time", 15 * 60);
    assertMeasured("fridge time", 14);
    assertMeasured("fridge temperature", 4);
    assertMeasured("oven temperature", 230);
    assertMeasured("bake time", 35);
    assertMeasured("core temperature", 92);
    assertMeasured("cooling time", 20);
    assertMeasured("storage time", 2);
    assertMeasured("altitude", 1600);
    assertMeasured("piece weight", 900);
  }

  @Test
  void all_of_what_the_baker_wrote_is_understood() {
    assertThat(texts(report.get("notUnderstood"))).isEmpty();
  }

  @Test
  void what_is_not_understood_comes_back_word_for_word() throws IOException {
    String sheet =
        """
        {"formula": ["500 g bread flour", "300 g water", "50 g ground moon rock"],
         "style": "gravel cake of the outer isles",
         "seen": ["it hummed a Tuesday tune"],
         "notSeen": ["Blue Sparks!"],
         "process": {"remarks": ["My aunt's parrot disapproved"]}}
        """;

    JsonNode answer = traced(sheet);

    assertThat(texts(answer.get("notUnderstood")))
        .containsExactlyInAnyOrder(
            "50 g ground moon rock",
            "gravel cake of the outer isles",
            "it hummed a Tuesday tune",
            "Blue Sparks!",
            "My aunt's parrot disapproved");
    // It stays in the dough by its weight, and the report says what that leaves open.
    assertThat(answer.at("/formula/doughGrams").asDouble()).isCloseTo(850, within(0.5));
    assertThat(texts(answer.get("assumptions")))
        .anyMatch(said -> said.contains("50 g ground moon rock") && said.contains("open"));
  }

  @Test
  void known_causes_of_a_case_do_not_change_the_report() throws IOException {
    String other =
        Files.readString(SHEET)
            .replace("\"knownCauses\": [\"over-proofed\"]", "\"knownCauses\": [\"salt-too-low\"]");

    assertThat(traced(other)).isEqualTo(report);
  }

  @Test
  void the_same_sheet_gives_the_same_report() throws IOException {
    assertThat(traced(Files.readString(SHEET)).toString()).isEqualTo(report.toString());
  }

  @Test
  void signs_alone_and_a_formula_alone_both_give_a_report() throws IOException {
    JsonNode signs = traced("{\"seen\": [\"dense crumb\"]}");
    JsonNode formula = traced("{\"formula\": [\"500 g flour\", \"300 g water\"]}");

    assertThat(signs.has("formula")).isFalse();
    assertThat(signs.get("causes")).isNotEmpty();
    assertThat(formula.at("/formula/flourGrams").asDouble()).isCloseTo(500, within(0.5));
  }

  private static void assertMeasured(String reading, double value) {
    JsonNode worked = report.get("workup").path(reading);
    assertThat(worked.path("value").asDouble()).as(reading).isCloseTo(value, within(0.01));
    assertThat(worked.path("known").asText()).as(reading).isEqualTo("measured");
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(one -> texts.add(one.asText()));
    return texts;
  }

  private static JsonNode traced(String sheet) throws IOException {
    Report report = Scored.PIPELINE.trace(SheetReader.read(sheet).sheet().orElseThrow());
    return new ObjectMapper().readTree(JsonReport.line(report));
  }
}
