package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.Calibration;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.Prior;
import crumbtrail.knowledge.Published;
import crumbtrail.knowledge.Source;
import crumbtrail.rules.CircumstanceFact;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import crumbtrail.sheet.BakeSheet.Degree;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Four tables, of which two copy one another, on two causes and two signs; sums by hand. */
class WeightsTest {
  private static final Catalogue CATALOGUE =
      new Catalogue(
          new Knowledge(
              List.of(cause("old", Map.of("rye", Prior.EVERYDAY)), cause("young", Map.of())),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of(
                  source("one", null),
                  source("two", "press"),
                  source("three", "press"),
                  source("four", null)),
              List.of(),
              List.of(),
              Map.of(),
              List.of(
                  new Published("pale", "old", "one"),
                  new Published("pale", "old", "two"),
                  new Published("pale", "old", "three"),
                  new Published("flat", "young", "four"),
                  new Published("pale", "young", "four")),
              new Calibration(0.5, 0.4, 2, -10, 0, 1, 1, 0)));

  private final Weights weights = Weights.of(CATALOGUE);

  @Test
  void tables_of_one_lineage_are_one_witness() {
    assertThat(weights.lineages("pale", "old")).containsExactlyInAnyOrder("one", "press");
    assertThat(weights.lineages("flat", "old")).isEmpty();
  }

  @Test
  void what_a_kitchen_has_confirmed_moves_its_prior_odds_and_no_other() {
    Cause old = CATALOGUE.cause("old").orElseThrow();
    Cause young = CATALOGUE.cause("young").orElseThrow();
    Weights here = weights.in(Map.of("old", 4.0)).with(weights.calibration());

    assertThat(here.prior(old, List.of()))
        .isCloseTo(weights.prior(old, List.of()) + 4, within(1e-9));
    assertThat(here.prior(young, List.of())).isEqualTo(weights.prior(young, List.of()));
  }

  @Test
  void a_sign_weighs_by_how_much_oftener_the_tables_of_a_cause_name_it() {
    // Pale: named 3 times by 3 lineages that speak of a cause, so usual is 3.5 / 13. Both lineages
    // that speak of old dough name it: (2 + 2 x 3.5/13) / (2 + 2) against 3.5 / 13.
    double usual = 3.5 / 13;
    double expected = 10 * Math.log10((2 + 2 * usual) / 4 / usual);

    assertThat(weights.published("pale", "old").orElseThrow()).isCloseTo(expected, within(1e-9));
    assertThat(weights.published("flat", "old")).isEmpty();
    // Two fifths from the tables, the rest from the word.
    assertThat(weights.weigh(evidence("old", 6, sign("pale"))).decibans())
        .isCloseTo(0.4 * expected + 0.6 * 6, within(1e-9));
  }

  @Test
  void a_pair_that_tables_could_have_named_and_did_not_is_heard_softly() {
    // The faintest word gives 1; what a word has above it counts by its share.
    assertThat(weights.weigh(evidence("old", 3, sign("flat"))).decibans())
        .isCloseTo(1, within(1e-9));
    assertThat(weights.weigh(evidence("old", 6, sign("flat"))).decibans())
        .isCloseTo(1 + 0.6 * 3, within(1e-9));
    assertThat(weights.weigh(evidence("old", 6, sign("ringing"))).decibans())
        .isCloseTo(6, within(1e-9));
  }

  @Test
  void a_lineage_that_is_left_out_is_as_if_it_had_never_been_published() {
    assertThat(weights.without("four").published("pale", "young")).isEmpty();
    assertThat(weights.without("press").lineages("pale", "old")).containsExactly("one");
  }

  @Test
  void one_sign_is_one_strand_whatever_the_rule_says() {
    assertThat(weights.weigh(evidence("old", 6, sign("pale"))).strand()).isEqualTo("pale");
  }

  @Test
  void what_rests_on_more_than_a_sign_or_speaks_against_stands_as_the_rule_says() {
    Evidence story = evidence("old", 6, new CircumstanceFact("forgotten", "I forgot it"));
    Evidence both = evidence("old", 6, sign("pale"), new CircumstanceFact("forgotten", "forgot"));
    Evidence against = evidence("old", -6, sign("pale"));

    assertThat(weights.weigh(story)).isEqualTo(story);
    assertThat(weights.weigh(both)).isEqualTo(both);
    assertThat(weights.weigh(against)).isEqualTo(against);
  }

  @Test
  void priors_draw_towards_the_middle_and_go_by_the_bread() {
    Cause old = CATALOGUE.cause("old").orElseThrow();

    // Rare is -20, common -13, everyday -10; half way between each and common.
    assertThat(weights.prior(old, List.of())).isCloseTo(-16.5, within(1e-9));
    assertThat(weights.prior(old, List.of("hearth", "rye"))).isCloseTo(-11.5, within(1e-9));
  }

  private static SignFact sign(String name) {
    return new SignFact(name, true, Degree.PLAIN, name);
  }

  private static Evidence evidence(String cause, double decibans, Object... facts) {
    return new Evidence(
        cause, "rule", "strand of the rule", decibans, "", "common practice", List.of(facts));
  }

  private static Source source(String id, String lineage) {
    return new Source(id, id, "nobody", 2000, "B", null, lineage, null, null);
  }

  private static Cause cause(String key, Map<String, Prior> priorIn) {
    return new Cause(
        key,
        key,
        "bulk",
        Prior.RARE,
        priorIn,
        List.of(),
        List.of(),
        "",
        "",
        "",
        "",
        null,
        null,
        List.of("one"));
  }
}
