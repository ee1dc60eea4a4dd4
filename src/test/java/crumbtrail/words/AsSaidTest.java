package crumbtrail.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Sentences as bakers say them, against the knowledge files. */
class AsSaidTest {
  private static final PhraseBook SIGNS = KnowledgeFiles.book("signs");
  private static final PhraseBook CIRCUMSTANCES = KnowledgeFiles.book("circumstances");

  static Stream<Arguments> signs() throws IOException {
    return Stream.concat(table("signs-as-said.tsv"), table("real-signs.tsv"));
  }

  static Stream<Arguments> circumstances() throws IOException {
    return table("circumstances-as-said.tsv");
  }

  @ParameterizedTest
  @MethodSource("signs")
  void signsAreHeard(String said, List<String> meant) {
    check(SIGNS.match(said), meant);
  }

  @ParameterizedTest
  @MethodSource("circumstances")
  void circumstancesAreHeard(String said, List<String> meant) {
    check(CIRCUMSTANCES.match(said), meant);
  }

  private static void check(List<Match> matches, List<String> meant) {
    List<String> heard = new ArrayList<>();
    for (Match match : matches) {
      String key = (match.negated() ? "!" : "") + match.key();
      heard.add(key);
      heard.add(key + mark(match.degree()));
    }
    for (String expected : meant) {
      if (expected.equals("none")) {
        assertThat(matches).allMatch(Match::negated);
      } else if (expected.startsWith("~")) {
        assertThat(heard).doesNotContain(expected.substring(1));
      } else {
        assertThat(heard).contains(expected);
      }
    }
  }

  private static String mark(Degree degree) {
    return switch (degree) {
      case SLIGHT -> "-";
      case PLAIN -> "=";
      case MARKED -> "+";
    };
  }

  private static Stream<Arguments> table(String name) throws IOException {
    try (var in = AsSaidTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split("\t"))
          .map(row -> Arguments.of(row[0], List.of(row[1].split(" "))));
    }
  }
}
