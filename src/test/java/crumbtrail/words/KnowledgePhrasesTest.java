package crumbtrail.words;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.words.KnowledgeFiles.Entry;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The phrases of the knowledge files: readable, unique, and true to their names. */
class KnowledgePhrasesTest {

  /** The published vocabulary of signs, which keeps its keys for good. */
  private static final List<String> PUBLISHED =
      List.of(
          ("low-volume excess-volume weak-oven-spring flat-loaf over-round-loaf collapsed-top"
                  + " sunken-sides poor-shape burst-or-shelled-crust no-break-and-shred dense-crumb"
                  + " coarse-open-grain large-holes tunnels-under-crust gummy-crumb raw-centre"
                  + " streaks-or-cores crumbly-crumb dry-crumb grey-or-dull-crumb pale-crust"
                  + " dark-crust uneven-crust-colour thick-hard-crust thin-soft-crust"
                  + " tough-leathery-crust blistered-crust cracked-crust wrinkled-crust dull-crust"
                  + " spotted-crust rough-surface sour-flavour yeasty-flavour bland-flavour"
                  + " off-flavour stales-fast mould rope sticky-dough slack-dough stiff-dough"
                  + " tearing-dough slow-rise fast-rise")
              .split(" "));

  @Test
  void everyPublishedSignIsThere() {
    assertThat(PUBLISHED).hasSize(45);
    assertThat(KnowledgeFiles.entries("signs")).extracting(Entry::key).containsAll(PUBLISHED);
  }

  @Test
  void thereAreEnoughCircumstances() {
    assertThat(KnowledgeFiles.entries("circumstances")).hasSizeGreaterThanOrEqualTo(90);
  }

  @ParameterizedTest
  @ValueSource(strings = {"signs", "circumstances"})
  void keysAreUniqueAndWellFormed(String catalogue) {
    Set<String> seen = new HashSet<>();
    for (Entry entry : KnowledgeFiles.entries(catalogue)) {
      assertThat(entry.key()).as(entry.file().toString()).matches("[a-z0-9]+(-[a-z0-9]+)*");
      assertThat(seen.add(entry.key())).as("second " + entry.key()).isTrue();
      assertThat(entry.phrases()).as(entry.key()).isNotEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"signs", "circumstances"})
  void everyPhraseCompiles(String catalogue) {
    Map<String, List<String>> classes = KnowledgeFiles.wordClasses();
    for (Entry entry : KnowledgeFiles.entries(catalogue)) {
      assertThat(PhraseBook.of(Map.of(entry.key(), entry.phrases()), classes)).isNotNull();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"signs", "circumstances"})
  void everyNameIsUnderstoodAsItsOwnKey(String catalogue) {
    PhraseBook book = KnowledgeFiles.book(catalogue);
    for (Entry entry : KnowledgeFiles.entries(catalogue)) {
      assertThat(book.match(entry.name()))
          .as(entry.key() + ": " + entry.name())
          .anyMatch(match -> match.key().equals(entry.key()) && !match.negated());
    }
  }
}
