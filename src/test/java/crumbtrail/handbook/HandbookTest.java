package crumbtrail.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.SignKind;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Writes docs/handbook when asked to, and otherwise checks that it says what the rules now say. */
class HandbookTest {
  private static final Path FOLDER = Path.of("docs/handbook");

  private static RuleBook book;
  private static Map<String, String> pages;

  @BeforeAll
  static void write() throws IOException, FaultyKnowledge {
    book = RuleBook.read(Path.of("rules"));
    List<SheetFiles.Named> sheets = new ArrayList<>();
    for (Path folder : SheetFiles.projects()) {
      sheets.addAll(SheetFiles.read(folder));
    }
    pages = Handbook.pages(book, Coverage.of(RuleBase.bundled(), book, sheets));
    if (Boolean.getBoolean("crumbtrail.write")) {
      Handbook.write(pages, FOLDER);
    }
  }

  @Test
  void every_page_is_current() throws IOException {
    List<String> old = new ArrayList<>();
    for (Map.Entry<String, String> page : pages.entrySet()) {
      Path file = FOLDER.resolve(page.getKey());
      if (!Files.exists(file) || !Files.readString(file).equals(page.getValue())) {
        old.add(page.getKey());
      }
    }
    assertThat(old)
        .as("out of date; write them anew: crumbtrail rules handbook --out docs/handbook")
        .isEmpty();
  }

  @Test
  void no_page_is_left_of_what_is_no_more() throws IOException {
    assertThat(Handbook.left(pages, FOLDER)).isEmpty();
  }

  @Test
  void the_front_page_and_the_stages_lead_to_every_cause_and_sign() {
    String stages = String.join("\n", Overviews.STAGES.stream().map(this::stage).toList());
    for (Cause cause : book.catalogue().knowledge().causes()) {
      assertThat(pages.get("README.md")).contains("(causes/" + cause.key() + ".md)");
      assertThat(stages).contains("(../causes/" + cause.key() + ".md)");
    }
    for (SignKind sign : book.catalogue().knowledge().signs()) {
      assertThat(pages.get("README.md")).contains("(signs/" + sign.key() + ".md)");
    }
  }

  private String stage(String stage) {
    return pages.get("stages/" + stage + ".md");
  }

  @Test
  void a_cause_page_says_what_it_is_how_it_shows_and_what_to_do() {
    Cause cause = book.catalogue().cause("salt-too-low").orElseThrow();

    assertThat(pages.get("causes/salt-too-low.md"))
        .startsWith("# Too little salt\n")
        .contains(cause.what(), cause.mechanism(), cause.tell(), cause.change())
        .contains("## How it shows", "## What speaks against it", "## What to do", "## Sources")
        .contains("(../signs/bland-flavour.md)", "(../stages/formula.md)");
  }

  @Test
  void a_sign_page_ranks_its_causes_and_says_how_to_look() {
    SignKind sign = book.catalogue().sign("pale-crust").orElseThrow();

    assertThat(pages.get("signs/pale-crust.md"))
        .startsWith("# Crust too pale\n")
        .contains(sign.meaning(), sign.look())
        .contains("(../causes/oven-too-cool.md)", "(../causes/over-fermented.md)")
        .contains("## What would tell the likeliest apart", "## Opposite causes of this sign");
  }

  @Test
  void the_sheet_of_the_matrix_has_a_row_for_each_sign_and_a_column_for_each_cause() {
    List<String> rows = pages.get("matrix.csv").lines().toList();

    assertThat(rows).hasSize(book.catalogue().knowledge().signs().size() + 1);
    assertThat(rows)
        .allSatisfy(
            row ->
                assertThat(row.split(",", -1))
                    .hasSize(book.catalogue().knowledge().causes().size() + 1));
  }

  @Test
  void weights_are_told_in_words() {
    assertThat(Strengths.word(3)).isEqualTo("faintly");
    assertThat(Strengths.word(-6)).isEqualTo("plainly");
    assertThat(Strengths.word(10)).isEqualTo("firmly");
    assertThat(Strengths.word(1)).isEqualTo("hardly");
    assertThat(Strengths.word(-20)).isEqualTo("rules it out");
  }
}
