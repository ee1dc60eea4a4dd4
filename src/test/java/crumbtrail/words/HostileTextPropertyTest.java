package crumbtrail.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Assertions;

/** Whatever is written, the matcher answers, and soon. */
class HostileTextPropertyTest {
  private static final PhraseBook SIGNS = KnowledgeFiles.book("signs");
  private static final Duration SOON = Duration.ofSeconds(20);

  @Property(tries = 500)
  void anyTextIsAnswered(@ForAll String text) {
    answered(text);
  }

  @Property(tries = 500)
  void anyRowOfBreadWordsIsAnswered(@ForAll("breadWords") List<String> words) {
    answered(String.join(" ", words));
  }

  @Property(tries = 40)
  void oneWordOverAndOverIsAnswered(@ForAll("breadWord") String word) {
    answered((word + " ").repeat(700));
    answered((word + ", ").repeat(700));
    answered((word + " and ").repeat(700));
    answered(word.repeat(700));
  }

  private static void answered(String text) {
    Heard heard = Assertions.assertTimeout(SOON, () -> SIGNS.hear(text));
    for (Match match : heard.matches()) {
      assertThat(text).contains(match.spoken());
      assertThat(match.terms()).isPositive();
    }
    assertThat(heard.notUnderstood()).allMatch(text::contains);
  }

  @Provide
  Arbitrary<String> breadWord() {
    return Arbitraries.of(
        "dough",
        "crumb",
        "crust",
        "loaf",
        "not",
        "dense",
        "sour",
        "and",
        ",",
        "but",
        "no",
        "oven",
        "rise",
        "tin",
        "sticky",
        "too",
        "hard",
        "didn't",
        "over-proofed",
        "shrivled",
        "n't",
        "\"",
        "-",
        "’s",
        "so",
        "the",
        "very",
        "hole",
        "starter",
        "İ",
        "ß",
        "\uD83C\uDF5E",
        "1,5",
        "%");
  }

  @Provide
  Arbitrary<List<String>> breadWords() {
    return breadWord().list().ofMaxSize(60);
  }
}
