package crumbtrail.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The notation of phrases and how it is matched, on a vocabulary of its own. */
class PhraseBookTest {
  private static final Map<String, List<String>> CLASSES =
      Map.of(
          "crumb", List.of("crumb", "inside"),
          "dense", List.of("dense", "heavy", "lead like"),
          "subject", List.of("crumb", "crust", "dough"),
          "praise", List.of("nice", "good"),
          "approval", List.of("fine", "even"));
  private static final PhraseBook BOOK =
      PhraseBook.of(
          Map.of(
              "dense", List.of("<crumb> <dense>"),
              "hard", List.of("crust hard", "crumb hard"),
              "no-rise", List.of("not rise"),
              "no-spring", List.of("not rise oven"),
              "thick", List.of("crust thick"),
              "skinned", List.of("\"thick skinned\" crust"),
              "swap", List.of("plain > instead > strong"),
              "dry", List.of("alone dry"),
              "sour", List.of("sour"),
              "proof", List.of("\"over proofed\"")),
          CLASSES);

  private static List<String> keys(String text) {
    return BOOK.match(text).stream().map(m -> (m.negated() ? "!" : "") + m.key()).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "the crumb is heavy, dense",
    "heavy inside, dense",
    "lead-like crumb, dense",
    "crust is thick, thick",
    "thick-skinned crust, skinned",
    "it never rises, no-rise",
    "it rose, ''",
    "it did not rise in the oven, no-spring",
    "plain flour instead of strong, swap",
    "strong flour instead of plain, ''",
    "it was dry, dry",
    "the crust was dry, ''",
    "not sour, !sour",
    "overproofed, proof",
    "over-proved, proof",
    "dennse crumb, dense",
  })
  void matches(String text, String expected) {
    assertThat(keys(text)).isEqualTo(expected.isEmpty() ? List.of() : List.of(expected));
  }

  @Test
  void partsAreTakenApartOnlyWhenEachMakesSense() {
    assertThat(keys("crumb heavy and crust hard")).containsExactly("dense", "hard");
    assertThat(keys("crust thick and hard")).containsExactlyInAnyOrder("hard", "thick");
    assertThat(keys("crumb soft and crust hard")).containsExactly("hard");
  }

  @Test
  void denialReachesToTheTurnOfTheSentence() {
    assertThat(keys("crust not thick but crumb dense"))
        .containsExactlyInAnyOrder("!thick", "dense");
    assertThat(keys("not only sour, crumb dense")).containsExactlyInAnyOrder("sour", "dense");
  }

  @ParameterizedTest
  @CsvSource({
    "slightly sour, SLIGHT",
    "a bit sour, SLIGHT",
    "not very sour, SLIGHT",
    "sour, PLAIN",
    "very sour, MARKED",
    "far too sour, MARKED",
    "it did not rise at all, MARKED",
    "it did not rise, PLAIN",
  })
  void degree(String text, Degree degree) {
    assertThat(BOOK.match(text)).singleElement().extracting(Match::degree).isEqualTo(degree);
  }

  @Test
  void praiseIsNoFault() {
    assertThat(BOOK.hear("nice thick crust")).isEqualTo(new Heard(List.of(), List.of()));
  }

  @Test
  void whatIsNotUnderstoodComesBackWordForWord() {
    Heard heard = BOOK.hear("Crumb heavy, smells of Petrol; Blue Moon!");
    assertThat(heard.matches()).extracting(Match::key).containsExactly("dense");
    assertThat(heard.notUnderstood()).containsExactly("smells of Petrol", "Blue Moon");
    assertThat(heard.complete()).isFalse();
  }

  @Test
  void aKeyIsUnderstoodAsItself() {
    assertThat(keys("No-spring")).containsExactly("no-spring");
  }

  @Test
  void longTextIsCutAndTheRestReported() {
    String text = "sour. ".repeat(1000);
    Heard heard = BOOK.hear(text);
    assertThat(heard.matches()).extracting(Match::key).containsExactly("sour");
    assertThat(heard.notUnderstood())
        .containsExactly(text.strip().substring(PhraseBook.LONGEST_TEXT));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"<nothing> dense", "\"open", "a||b", "not", "Dense", "a*b", "no holes", "<crumb"})
  void faultyPhrasesAreNamed(String phrase) {
    assertThatThrownBy(() -> PhraseBook.of(Map.of("some-key", List.of(phrase)), CLASSES))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("some-key")
        .hasMessageContaining(phrase);
  }
}
