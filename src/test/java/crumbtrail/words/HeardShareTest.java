package crumbtrail.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How much of what bakers say is understood at all, and how much is understood as meant: on
 * sentences that the vocabulary was widened with, and on others that were kept back.
 */
class HeardShareTest {
  private static final PhraseBook SIGNS = KnowledgeFiles.book("signs");
  private static final PhraseBook CIRCUMSTANCES = KnowledgeFiles.book("circumstances");

  private record Said(String words, List<String> meant) {
    Set<String> heard() {
      Set<String> keys = new HashSet<>();
      for (PhraseBook book : List.of(SIGNS, CIRCUMSTANCES)) {
        book.match(words).forEach(match -> keys.add((match.negated() ? "!" : "") + match.key()));
      }
      return keys;
    }

    boolean right() {
      return heard().stream().anyMatch(meant::contains);
    }
  }

  @ParameterizedTest
  @CsvSource({"heard-worked.tsv, 97, 94", "heard-held-out.tsv, 95, 90"})
  void most_of_what_is_said_is_understood_as_meant(String file, int understood, int right)
      throws IOException {
    List<Said> all = read(file);
    long any = all.stream().filter(said -> !said.heard().isEmpty()).count();
    long good = all.stream().filter(Said::right).count();
    System.out.printf(
        "%s: %d sentences, understood %.1f %%, as meant %.1f %%%n",
        file, all.size(), 100.0 * any / all.size(), 100.0 * good / all.size());

    assertThat(100.0 * any / all.size()).isGreaterThanOrEqualTo(understood);
    assertThat(100.0 * good / all.size()).isGreaterThanOrEqualTo(right);
  }

  private static List<Said> read(String file) throws IOException {
    List<Said> all = new ArrayList<>();
    try (var in = HeardShareTest.class.getResourceAsStream(file)) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split("\t"))
          .forEach(row -> all.add(new Said(row[0], List.of(row[1].split("\\|")))));
    }
    return all;
  }
}
