package crumbtrail.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PaintTest {
  private static final String TEXT =
      """
      Tin loaf (white tin loaf)
      =========================

      1. final proof too long                       ##########..........  50 %
         for      proof ripeness 2.65 times ready: Proof near twice its length is over
         against  you did not see: sour smell
         change   Bake sooner.
        proof time          3 h              measured     35–100 min, above
      ! Do not eat it.
      Right: too much dough for the tin.
         for all that, a plain line stays plain for it starts otherwise
      """;

  @Test
  void without_its_colours_the_text_is_as_it_was() {
    assertThat(Paint.report(TEXT).replaceAll("\u001b\\[\\d+m", "")).isEqualTo(TEXT);
    assertThat(Paint.report("no break at the end")).isEqualTo("no break at the end");
    assertThat(Paint.report("")).isEmpty();
  }

  @Test
  void headings_names_and_leading_words_are_marked() {
    assertThat(Paint.report(TEXT))
        .contains("\u001b[1mTin loaf (white tin loaf)\u001b[0m\n====")
        .contains("\u001b[1m1. final proof too long\u001b[0m ")
        .contains("   \u001b[32mfor\u001b[0m      proof ripeness")
        .contains("   \u001b[35magainst\u001b[0m  you")
        .contains("   \u001b[36mchange\u001b[0m   Bake")
        .contains("35–100 min, \u001b[33mabove\u001b[0m\n")
        .contains("\u001b[1mRight:\u001b[0m too much");
  }

  @Test
  void every_colour_ends_on_its_line() {
    assertThat(Paint.report(TEXT).lines())
        .filteredOn(line -> line.contains("\u001b"))
        .hasSize(8)
        .allSatisfy(
            line ->
                assertThat(line.lastIndexOf("\u001b[0m"))
                    .isGreaterThan(line.replace("\u001b[0m", "....").lastIndexOf("\u001b")));
  }
}
