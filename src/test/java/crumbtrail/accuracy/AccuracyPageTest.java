package crumbtrail.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.accuracy.TableScore.Question;
import crumbtrail.rules.RuleBase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The accuracy page states what the rules now do, and what is asked of them is reached. */
class AccuracyPageTest {
  private static final Path PAGE = Path.of("docs/accuracy.md");
  private static Accuracy accuracy;

  @BeforeAll
  static void measure() throws IOException {
    accuracy =
        Accuracy.of(
            RuleBase.bundled(),
            Path.of("cases"),
            Path.of("src/test/resources/real-cases"),
            Path.of("src/test/resources/published-tables.json"));
  }

  @Test
  void the_accuracy_page_is_current() throws IOException {
    String page = accuracy.page();
    if (Boolean.getBoolean("crumbtrail.write")) {
      Files.writeString(PAGE, page);
    }
    assertThat(PAGE)
        .as("out of date; write it anew: mvn test -Dtest=AccuracyPageTest -Dcrumbtrail.write=true")
        .hasContent(page);
  }

  @Test
  void a_cause_that_two_lineages_name_for_a_sign_is_among_its_first() {
    assertThat(accuracy.signs(2)).hasSizeGreaterThan(140);
    assertThat(share(accuracy.signs(2), 0)).isGreaterThanOrEqualTo(0.95);
  }

  @Test
  void a_cause_comes_out_given_its_published_signs() {
    assertThat(accuracy.causes()).hasSizeGreaterThan(40);
    assertThat(share(accuracy.causes(), 1)).isGreaterThanOrEqualTo(0.75);
    assertThat(share(accuracy.causes(), 3)).isGreaterThanOrEqualTo(0.95);
  }

  @Test
  void what_a_table_shares_with_others_is_found_without_it() {
    assertThat(accuracy.signsUnseen(1)).hasSizeGreaterThan(400);
    assertThat(share(accuracy.signsUnseen(1), 0)).isGreaterThanOrEqualTo(0.95);
  }

  @Test
  void no_healthy_bake_gives_a_cause_above_three_in_ten() {
    assertThat(accuracy.healthy()).hasSizeGreaterThanOrEqualTo(8);
    assertThat(accuracy.healthy())
        .filteredOn(bake -> accuracy.ranked(bake).stream().anyMatch(one -> one.probability() > 0.3))
        .isEmpty();
  }

  @Test
  void stated_probabilities_come_true_within_eight_points() {
    List<Reliability.Claim> first =
        accuracy.crossValidated().stream()
            .filter(bake -> !bake.isEmpty())
            .map(bake -> bake.get(0))
            .toList();

    assertThat(first).hasSizeGreaterThan(100);
    assertThat(Reliability.error(Reliability.byTenths(first))).isLessThanOrEqualTo(0.08);
  }

  private static double share(List<Question> questions, int places) {
    return questions.stream().filter(one -> places == 0 ? one.hit() : one.within(places)).count()
        / (double) questions.size();
  }
}
