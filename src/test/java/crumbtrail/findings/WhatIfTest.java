package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.QuestionKind;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import crumbtrail.workup.Heard;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Uncertain;
import crumbtrail.workup.Uncertainties;
import crumbtrail.workup.Workup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What-ifs on real sheets: how firm a ranking is, and what to ask next. */
class WhatIfTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final Catalogue CATALOGUE = RULES.catalogue();
  private static final SheetWorkup WORKUPS = new SheetWorkup(CATALOGUE, RULES.pantry());
  private static final Ranking RANKING = new Ranking(CATALOGUE, Weights.of(CATALOGUE));

  private static final String CUPS =
      """
      {"style": "white tin loaf",
       "formula": ["4 cups bread flour", "320 g water", "6 g instant yeast", "10 g salt"],
       "process": {"mixing": {"doughTemperature": "25 C"},
                   "bulk": [{"time": "60 min", "temperature": "25 C"}],
                   "proof": [{"time": "60 min", "temperature": "28 C"}]},
       "seen": ["dense crumb"]}
      """;

  @Test
  void a_sheet_that_leaves_nothing_open_is_run_once_and_its_first_cause_stays_first() {
    String weighed = CUPS.replace("4 cups bread flour", "500 g bread flour, 12.5 % protein");
    BakeSheet sheet = sheet(weighed);
    try (Reasoning reasoning = reasoning()) {
      Workup workup = reasoning.work(sheet);
      Findings findings = reasoning.judge(workup);

      Firmness firmness = Firmness.of(reasoning, sheet, workup, findings);

      assertThat(Uncertainties.of(sheet, workup, RULES.pantry())).isEmpty();
      assertThat(firmness.runs()).isEqualTo(1);
      assertThat(firmness.firstIn()).containsExactlyEntriesOf(Map.of(first(findings), 1.0));
      assertThat(firmness.matters()).isEmpty();
    }
  }

  @Test
  void the_cup_that_moves_the_water_is_named_and_the_same_sheet_gets_the_same_answer() {
    Firmness firmness = firmness(sheet(CUPS));

    assertThat(firmness.runs()).isEqualTo(300);
    assertThat(firmness.firstIn().values().stream().mapToDouble(share -> share).sum())
        .isCloseTo(1, within(1e-9));
    assertThat(firmness.matters()).isNotEmpty();
    Firmness.Matter matter = firmness.matters().get(0);
    assertThat(matter.uncertain().remedy()).isEqualTo("Weigh the bread flour");
    assertThat(matter.uncertain().culprit()).isEqualTo("your cup");
    assertThat(Math.abs(matter.from() - matter.to())).isGreaterThan(0);
    assertThat(firmness(sheet(CUPS)).firstIn()).isEqualTo(firmness.firstIn());
  }

  @Test
  void a_draw_never_leaves_the_plausible_values_and_its_middle_is_where_half_lie_below() {
    Uncertain open = new Uncertain("", "", "", "g", 10, 12, 20, (sheet, value) -> sheet);
    for (double share = 0; share <= 1; share += 0.05) {
      assertThat(Firmness.triangle(open, share)).isBetween(10.0, 20.0);
    }
    // The triangle from 10 over 12 to 20 holds 2/10 below its peak.
    assertThat(Firmness.triangle(open, 0.2)).isCloseTo(12, within(1e-9));
    assertThat(Firmness.triangle(open, 0)).isEqualTo(10);
    assertThat(Firmness.triangle(open, 1)).isEqualTo(20);
  }

  @Test
  void what_was_settled_is_open_no_more() {
    for (BakeSheet sheet : sheets()) {
      Workup workup = WORKUPS.work(sheet);
      BakeSheet settled = sheet;
      List<Uncertain> open = Uncertainties.of(sheet, workup, RULES.pantry());
      for (Uncertain one : open) {
        assertThat(one.low()).isLessThanOrEqualTo(one.value());
        assertThat(one.value()).isLessThanOrEqualTo(one.high());
        settled = one.settle(settled, one.value());
      }
      assertThat(Uncertainties.of(settled, WORKUPS.work(settled), RULES.pantry())).isEmpty();
      assertThat(SheetWriter.write(settled)).isNotEmpty();
    }
  }

  /** Only the sign is put in, and nothing is worked out anew: the answer must be the same. */
  @Test
  void a_sign_put_into_a_workup_is_judged_as_one_that_the_sheet_tells() {
    for (BakeSheet sheet : sheets().subList(0, 12)) {
      try (Reasoning reasoning = reasoning()) {
        Workup workup = reasoning.work(sheet);
        if (workup.heard().signs().stream().noneMatch(one -> one.key().equals("sticky-dough"))) {
          BakeSheet told =
              Answers.with(sheet, CATALOGUE, "sticky-dough", true, Optional.of(Degree.PLAIN));
          Workup whole = reasoning.work(told);
          assertThat(whole.readings()).isEqualTo(workup.readings());
          assertThat(whole.heard().circumstances()).isEqualTo(workup.heard().circumstances());
          assertThat(whole.heard().signs()).extracting(Heard.Sign::key).contains("sticky-dough");
        }
      }
    }
  }

  @Test
  @Tag("long")
  void nothing_is_asked_that_the_sheet_has_answered_or_that_the_bread_cannot_have() {
    for (BakeSheet sheet : sheets()) {
      try (Reasoning reasoning = reasoning()) {
        Workup workup = reasoning.work(sheet);
        Set<String> heard = heard(workup);
        List<Question> questions =
            NextQuestions.of(reasoning, sheet, workup, reasoning.judge(workup), Set.of(), 30);

        assertThat(questions)
            .isSortedAccordingTo((one, other) -> Double.compare(other.worth(), one.worth()));
        for (Question question : questions) {
          assertThat(heard).doesNotContain(question.about());
          assertThat(question.bits()).isPositive();
          assertThat(question.question()).endsWith("?");
          assertThat(question.how()).isNotBlank();
          Optional<QuestionKind> kind = CATALOGUE.question(question.about());
          kind.ifPresent(
              one -> {
                assertThat(one.fits(workup.style().tags())).isTrue();
                assertThat(one.unless()).noneMatch(seen(workup)::contains);
              });
        }
      }
    }
  }

  @Test
  void a_look_is_asked_for_before_a_memory_that_teaches_as_much() {
    Question look = new Question("a", "?", "", 0.3, QuestionKind.Cost.LOOK, false);
    Question memory = new Question("b", "?", "", 0.3, QuestionKind.Cost.REMEMBER, false);
    Question bake = new Question("c", "?", "", 0.3, QuestionKind.Cost.BAKE_AGAIN, false);

    assertThat(look.worth()).isGreaterThan(memory.worth());
    assertThat(memory.worth()).isGreaterThan(bake.worth());
  }

  @Test
  void a_question_that_was_passed_over_does_not_come_back() {
    BakeSheet sheet = sheet(CUPS);
    try (Reasoning reasoning = reasoning()) {
      Workup workup = reasoning.work(sheet);
      Findings findings = reasoning.judge(workup);
      String first =
          NextQuestions.of(reasoning, sheet, workup, findings, Set.of(), 1).get(0).about();

      assertThat(NextQuestions.of(reasoning, sheet, workup, findings, Set.of(first), 50))
          .extracting(Question::about)
          .doesNotContain(first);
    }
  }

  @Test
  void the_poorest_sheet_is_asked_about_too() {
    BakeSheet sheet = sheet("{\"seen\": [\"it hummed a tune\"]}");
    try (Reasoning reasoning = reasoning()) {
      Workup workup = reasoning.work(sheet);
      assertThat(NextQuestions.of(reasoning, sheet, workup, reasoning.judge(workup), Set.of(), 3))
          .hasSize(3);
    }
  }

  @Test
  void every_field_that_a_question_fills_is_a_field_of_the_sheet() {
    BakeSheet sheet = sheet("{\"seen\": [\"dense crumb\"]}");
    for (QuestionKind kind : CATALOGUE.knowledge().questions()) {
      if (kind.field() != null) {
        String unit = CATALOGUE.reading(kind.about()).orElseThrow().unit();
        assertThat(Answers.with(sheet, CATALOGUE, kind.about(), "20 " + unit).problems())
            .as(kind.about())
            .isEmpty();
      }
    }
  }

  @Test
  void an_answer_stands_in_the_sheet_as_if_the_baker_had_written_it() {
    BakeSheet sheet = sheet("{\"seen\": [\"dense crumb\"]}");
    BakeSheet yes = Answers.with(sheet, CATALOGUE, "gummy-crumb", true, Optional.of(Degree.MARKED));
    BakeSheet no = Answers.with(yes, CATALOGUE, "pale-crust", false, Optional.empty());
    BakeSheet shut = Answers.with(no, CATALOGUE, "oven-door-opened", false, Optional.empty());

    Heard heard = WORKUPS.work(again(shut)).heard();

    assertThat(heard.signs())
        .anyMatch(one -> one.key().equals("gummy-crumb") && one.degree() == Degree.MARKED)
        .anyMatch(one -> one.key().equals("pale-crust") && !one.seen());
    assertThat(heard.circumstances())
        .extracting(Heard.Circumstance::key)
        .containsExactly("oven-door-kept-shut");
    assertThat(heard.notUnderstood()).isEmpty();
  }

  private static BakeSheet again(BakeSheet sheet) {
    return sheet(SheetWriter.write(sheet));
  }

  private static String first(Findings findings) {
    return findings.ranked().get(0).cause().key();
  }

  private static Set<String> seen(Workup workup) {
    Set<String> keys = new HashSet<>();
    workup.heard().signs().stream().filter(Heard.Sign::seen).forEach(one -> keys.add(one.key()));
    workup.heard().circumstances().forEach(one -> keys.add(one.key()));
    return keys;
  }

  private static Set<String> heard(Workup workup) {
    Set<String> keys = seen(workup);
    workup.heard().signs().forEach(one -> keys.add(one.key()));
    return keys;
  }

  private static Firmness firmness(BakeSheet sheet) {
    try (Reasoning reasoning = reasoning()) {
      Workup workup = reasoning.work(sheet);
      return Firmness.of(reasoning, sheet, workup, reasoning.judge(workup));
    }
  }

  private static Reasoning reasoning() {
    return new Reasoning(WORKUPS, RULES, RANKING);
  }

  private static BakeSheet sheet(String json) {
    return SheetReader.read(json).sheet().orElseThrow();
  }

  private static List<BakeSheet> sheets() {
    List<BakeSheet> sheets = new ArrayList<>();
    for (String folder : List.of("cases", "src/test/resources/real-cases")) {
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
          JsonNode json = new ObjectMapper().readTree(Files.readString(file));
          JsonNode sheet = json.has("sheet") ? json.get("sheet") : json;
          sheets.add(SheetReader.read(sheet).sheet().orElseThrow());
        }
      } catch (IOException fault) {
        throw new UncheckedIOException(fault);
      }
    }
    return sheets;
  }
}
