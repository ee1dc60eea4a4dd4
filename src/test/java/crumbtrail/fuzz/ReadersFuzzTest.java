package crumbtrail.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.SignKind;
import crumbtrail.lessons.Turn;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.QuantityReading;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.TextReport;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.IngredientLine;
import crumbtrail.sheet.LineReading;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.RecipeText;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import crumbtrail.words.PhraseBook;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whatever stands on a sheet is read or refused in plain words, and soon. */
class ReadersFuzzTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final RuleBase RULES = RuleBase.bundled();
  private static final PostMortem POST_MORTEM = new PostMortem(RULES);

  private static final Knowledge KNOWLEDGE = RULES.catalogue().knowledge();
  private static final PhraseBook SIGNS =
      PhraseBook.of(
          KNOWLEDGE.signs().stream().collect(Collectors.toMap(SignKind::key, SignKind::phrases)),
          KNOWLEDGE.words());
  private static final PhraseBook CIRCUMSTANCES =
      PhraseBook.of(
          KNOWLEDGE.circumstances().stream()
              .collect(Collectors.toMap(CircumstanceKind::key, CircumstanceKind::phrases)),
          KNOWLEDGE.words());

  @Test
  void sheets() throws IOException {
    Fuzz.of("sheet", 0.20, Corpus.sheets(), ReadersFuzzTest::sheet);
  }

  @Test
  void sheets_with_odd_texts_in_them() throws IOException {
    Fuzz.ofTrees("sheet-texts", 0.10, Corpus.bakes(), ReadersFuzzTest::sheet);
  }

  private static boolean sheet(String text) {
    Reading reading = SheetReader.read(text);
    assertThat(reading.sheet().isPresent()).isEqualTo(reading.problems().isEmpty());
    refused(reading.problems());
    reading
        .sheet()
        .ifPresent(
            sheet -> assertThat(SheetReader.read(SheetWriter.write(sheet)).problems()).isEmpty());
    return reading.sheet().isPresent();
  }

  @Test
  void lines_of_a_formula() throws IOException {
    Fuzz.of(
        "line",
        0.23,
        Corpus.lines(),
        text -> {
          LineReading reading = IngredientLine.parse("formula[0]", text);
          assertThat(reading.line().isPresent()).isNotEqualTo(reading.problem().isPresent());
          reading.problem().ifPresent(problem -> refused(List.of(problem)));
          return reading.line().isPresent();
        });
  }

  @Test
  void quantities() throws IOException {
    Fuzz.of("quantity", 0.20, Corpus.texts(), ReadersFuzzTest::quantity);
  }

  private static boolean quantity(String text) {
    boolean any = false;
    for (Dimension dimension : Dimension.values()) {
      QuantityReading reading = Quantities.explain(text, dimension);
      assertThat(reading.quantity().isPresent()).isNotEqualTo(!reading.what().isBlank());
      reading
          .quantity()
          .ifPresent(
              quantity -> {
                assertThat(quantity.value()).isFinite();
                assertThat(quantity.value()).isBetween(quantity.low(), quantity.high());
              });
      any |= reading.quantity().isPresent();
    }
    return any;
  }

  @Test
  void pasted_recipes() throws IOException {
    Fuzz.of(
        "recipe",
        0.02,
        Corpus.recipes(),
        text -> {
          RecipeLayout.ofRecipe(text, RULES.pantry());
          return !RecipeText.read(text).lines().isEmpty();
        });
  }

  @Test
  void plain_words() throws IOException {
    Fuzz.of(
        "words",
        0.08,
        Corpus.sentences(),
        text ->
            Stream.of(SIGNS, CIRCUMSTANCES)
                .map(book -> book.hear(text))
                .peek(heard -> assertThat(heard.notUnderstood()).allMatch(text::contains))
                .anyMatch(heard -> !heard.matches().isEmpty()));
  }

  @Test
  void knobs_and_how_far_they_are_turned() throws IOException {
    Fuzz.of(
        "turn",
        0.05,
        List.of("0..3%", "0-3 %", "20 C to 32 C", "68..90 F", "30 min..2 h", "5 g – 10 g", "1..2"),
        text -> {
          boolean any = false;
          for (var knob : KNOWLEDGE.knobs()) {
            Turn.Reading reading = Turn.read(knob, text);
            assertThat(reading.turn().isPresent()).isEqualTo(reading.problems().isEmpty());
            reading.turn().ifPresent(turn -> assertThat(turn.high()).isGreaterThan(turn.low()));
            any |= reading.turn().isPresent();
          }
          return any;
        });
  }

  /** A sheet that can be read gets a report, whatever stands on it. */
  @Test
  void sheets_to_the_end_of_the_report() throws IOException {
    Fuzz.ofTrees(
        "report",
        0.01,
        Corpus.bakes(),
        text -> {
          Reading reading = SheetReader.read(text);
          reading
              .sheet()
              .ifPresent(
                  sheet -> {
                    // Strict JSON has no numbers that are none.
                    strict(JsonReport.line(POST_MORTEM.causes(sheet)));
                    TextReport.of(POST_MORTEM.precheck(sheet));
                  });
          return reading.sheet().isPresent();
        });
  }

  private static void strict(String json) {
    try {
      assertThat(JSON.readTree(json).isObject()).isTrue();
    } catch (JsonProcessingException fault) {
      throw new AssertionError(fault);
    }
  }

  private static void refused(List<Problem> problems) {
    for (Problem problem : problems) {
      assertThat(problem.what()).isNotBlank();
      assertThat(problem.remedy()).isNotBlank();
      assertThat(problem.what()).doesNotContain("Exception", "java.", "fasterxml");
    }
  }
}
