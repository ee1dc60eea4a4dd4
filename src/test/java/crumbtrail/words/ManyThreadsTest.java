package crumbtrail.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** One book serves all requests at once. */
class ManyThreadsTest {
  @Test
  void answersAreTheSameFromEveryThread() {
    PhraseBook book = KnowledgeFiles.book("signs");
    List<String> said = List.of("dense crumb near the base", "colapsed in the oven", "not sour");
    List<List<Match>> alone = said.stream().map(book::match).toList();
    assertThat(
            IntStream.range(0, 600)
                .parallel()
                .allMatch(i -> book.match(said.get(i % 3)).equals(alone.get(i % 3))))
        .isTrue();
  }
}
