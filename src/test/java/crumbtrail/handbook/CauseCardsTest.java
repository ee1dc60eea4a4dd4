package crumbtrail.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.rules.RuleBook;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class CauseCardsTest {
  private static RuleBook book;
  private static CauseCards cards;

  @BeforeAll
  static void read() throws FaultyKnowledge {
    book = RuleBook.read(Path.of("rules"));
    cards = new CauseCards(book);
  }

  private static List<Cause> causes() {
    return book.catalogue().knowledge().causes();
  }

  private static String proof(String cause) {
    return String.join("\n", card(cause).section(Card.HEADINGS.get(6)).items());
  }

  private static Card card(String cause) {
    return cards.card(book.catalogue().cause(cause).orElseThrow());
  }

  @Test
  void every_cause_has_a_card_with_all_sections_and_each_says_something() {
    for (Cause cause : causes()) {
      Card card = cards.card(cause);
      assertThat(card.sections()).extracting(Card.Section::heading).startsWith(headings());
      assertThat(card.sections())
          .as(cause.key())
          .allMatch(section -> !section.paragraphs().isEmpty() || !section.items().isEmpty());
      assertThat(card.section("What to do").items()).as(cause.key()).isNotEmpty();
    }
  }

  private static String[] headings() {
    return Card.HEADINGS.toArray(String[]::new);
  }

  @Test
  void every_proof_names_what_to_change_and_what_to_look_for_or_says_why_there_is_none() {
    for (Cause cause : causes()) {
      if (cards.instead(cause) == null) {
        assertThat(cards.changed(cause)).as(cause.key()).isNotBlank();
        assertThat(proof(cause.key()))
            .as(cause.key())
            .contains("One thing is different", cards.changed(cause))
            .containsPattern("Look (in the second piece for: \\[|for what tells this cause: .)");
      } else {
        assertThat(cards.instead(cause)).as(cause.key()).isEqualTo(cause.noBake());
      }
    }
  }

  @Test
  void what_would_be_unsafe_is_not_to_be_tried() {
    for (String cause :
        List.of("contamination", "raw-milk-or-fruit-enzymes", "salt-substitute-no-sodium")) {
      assertThat(cards.instead(book.catalogue().cause(cause).orElseThrow()))
          .startsWith("Do not try this one");
    }
    for (Cause cause : causes()) {
      assertThat(proof(cause.key()))
          .as(cause.key())
          .doesNotContain("(../signs/mould.md)", "(../signs/rope.md)", "starter-mouldy");
    }
    assertThat(String.join(" ", card("under-baked").section("Take care").items()))
        .contains("half-baked dough");
  }

  @Test
  void a_number_is_pushed_the_way_from_which_the_remedy_comes_back() {
    for (Cause cause : causes()) {
      book.catalogue().knowledge().remedies().stream()
          .filter(remedy -> remedy.cause().equals(cause.key()) && remedy.step() != null)
          .forEach(
              remedy -> {
                var knob = new RemedyWords(book.catalogue()).knob(remedy).orElseThrow();
                Pushed.of(book.catalogue(), remedy, knob)
                    .ifPresent(
                        pushed -> {
                          assertThat(pushed.pushed()).isBetween(knob.low(), knob.high());
                          assertThat(pushed.pushed() < pushed.usual())
                              .as(cause.key())
                              .isEqualTo(RemedyWords.up(remedy));
                        });
              });
    }
  }

  @Test
  void the_card_of_a_proof_too_long_says_when_each_piece_is_baked() {
    assertThat(proof("over-proofed"))
        .contains("time of the final proof", "in the first piece, as usual", "top sunk");
    assertThat(String.join(" ", card("over-proofed").section("What to do").items()))
        .contains("until the proof ripeness is just ready; for a start, 25 % less")
        .contains("Not for sourdough bread.");
  }

  @Test
  void every_form_of_a_card_says_the_same_without_links() {
    for (Cause cause : causes()) {
      Card card = cards.card(cause);
      for (CardWriter form : CardWriter.values()) {
        assertThat(form.write(card)).as(cause.key()).doesNotContain("](").contains("What to do");
      }
      assertThat(CardWriter.TEXT.write(card).lines()).allMatch(line -> line.length() <= 80);
    }
    assertThat(CardWriter.HTML.write(card("over-proofed")))
        .startsWith("<!DOCTYPE html>")
        .contains("<h1>Final proof too long</h1>", "<li>");
    assertThat(CardWriter.MARKDOWN.write(card("over-proofed")))
        .startsWith("# Final proof too long");
  }

  @Test
  void words_in_a_page_are_escaped() {
    Card card =
        new Card(
            "x", "a <b>", List.of(new Card.Section("<h>", List.of("<script>"), List.of("a & b"))));
    assertThat(CardWriter.HTML.write(card))
        .contains("A &lt;b&gt;", "&lt;h&gt;", "&lt;script&gt;", "a &amp; b")
        .doesNotContain("<script>");
  }
}
