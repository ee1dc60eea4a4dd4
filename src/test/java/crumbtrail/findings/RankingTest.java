package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.Prior;
import crumbtrail.rules.CircumstanceFact;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import crumbtrail.sheet.BakeSheet.Degree;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The sums are worked by hand from the priors: common is -13 decibans, rare is -20. */
class RankingTest {
  private static final SignFact DENSE =
      new SignFact("dense crumb", true, Degree.PLAIN, "it was heavy");
  private static final CircumstanceFact HOT_MILK = new CircumstanceFact("milk hot", "hot milk");
  private static final Catalogue CATALOGUE =
      new Catalogue(
          new Knowledge(
              List.of(
                  cause("yeast-dead", Prior.COMMON, null),
                  cause("yeast-scalded", Prior.RARE, "yeast-dead")),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              Map.of()));

  @Test
  void prior_and_decibans_of_different_strands_add_up() {
    Finding dead =
        rank(
            evidence("yeast-dead", "rise", 10, DENSE),
            evidence("yeast-dead", "milk", 6, HOT_MILK),
            evidence("yeast-dead", "smell", -3, DENSE));

    // -13 + 10 + 6 - 3 = 0: even odds.
    assertThat(dead.decibans()).isCloseTo(0, within(1e-9));
    assertThat(dead.probability()).isCloseTo(0.5, within(1e-9));
    assertThat(dead.explains()).containsExactly("dense-crumb");
  }

  @Test
  void a_sign_that_is_all_a_rule_rests_on_is_heard_once_whatever_strands_its_rules_name() {
    Finding dead =
        rank(evidence("yeast-dead", "rise", 10, DENSE), evidence("yeast-dead", "crumb", 6, DENSE));

    // -13 + 10: the other six are the same dense crumb.
    assertThat(dead.decibans()).isCloseTo(-3, within(1e-9));
  }

  @Test
  void a_strand_is_heard_once_for_and_once_against() {
    Finding dead =
        rank(
            evidence("yeast-dead", "rise", 5, DENSE),
            evidence("yeast-dead", "rise", 10, DENSE),
            evidence("yeast-dead", "rise", -2, DENSE),
            evidence("yeast-dead", "rise", -4, DENSE));

    // -13 + 10 - 4: the strongest word of each side.
    assertThat(dead.decibans()).isCloseTo(-7, within(1e-9));
    assertThat(dead.evidence()).extracting(Evidence::decibans).containsExactly(10.0, -4.0);
  }

  @Test
  void a_finer_cause_takes_over_what_speaks_for_its_coarser_one_once_something_points_to_it() {
    Findings findings =
        findings(
            evidence("yeast-dead", "rise", 10, DENSE),
            evidence("yeast-scalded", "milk", 15, HOT_MILK));

    // Scalded: -20 + 15 + 10 = 5. Dead: -13 + 10 = -3.
    assertThat(findings.ranked())
        .extracting(finding -> finding.cause().key())
        .containsExactly("yeast-scalded", "yeast-dead");
    assertThat(findings.ranked())
        .extracting(Finding::decibans)
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(5.0, -3.0);
  }

  @Test
  void a_rule_that_speaks_of_the_finer_cause_is_not_heard_again_through_the_coarser_one() {
    Evidence milk = evidence("yeast-scalded", "milk", 15, HOT_MILK);
    Evidence against =
        new Evidence(
            "yeast-dead",
            milk.rule(),
            "other",
            -6,
            "For tests.",
            "common practice",
            List.of(HOT_MILK));
    Findings findings = findings(evidence("yeast-dead", "rise", 10, DENSE), milk, against);

    // -20 + 15 + 10, and not less 6.
    assertThat(findings.ranked().get(0).cause().key()).isEqualTo("yeast-scalded");
    assertThat(findings.ranked().get(0).decibans()).isCloseTo(5, within(1e-9));
  }

  @Test
  void neither_a_sign_nor_a_faint_word_points_to_a_finer_cause() {
    // -20 + 15 and -20 + 4: nothing is taken over from the coarser cause.
    assertThat(scalded(evidence("yeast-scalded", "milk", 15, DENSE))).isCloseTo(-5, within(1e-9));
    assertThat(scalded(evidence("yeast-scalded", "milk", 4, HOT_MILK)))
        .isCloseTo(-16, within(1e-9));
  }

  @Test
  void a_cause_with_nothing_for_it_is_not_ranked_and_its_sign_stays_open() {
    Findings findings = findings(evidence("yeast-dead", "rise", -5, DENSE));

    assertThat(findings.ranked()).isEmpty();
    assertThat(findings.unexplained()).containsExactly("dense-crumb");
  }

  private static double scalded(Evidence own) {
    return findings(evidence("yeast-dead", "rise", 10, DENSE), own).ranked().stream()
        .filter(finding -> finding.cause().key().equals("yeast-scalded"))
        .findFirst()
        .orElseThrow()
        .decibans();
  }

  private static Finding rank(Evidence... evidence) {
    Findings findings = findings(evidence);
    assertThat(findings.ranked()).hasSize(1);
    return findings.ranked().get(0);
  }

  private static Findings findings(Evidence... evidence) {
    return Ranking.of(CATALOGUE, List.of(evidence), Set.of("dense-crumb"));
  }

  private static Evidence evidence(String cause, String strand, double decibans, Object fact) {
    return new Evidence(
        cause,
        "rule on " + strand + " " + decibans,
        strand,
        decibans,
        "For tests.",
        "common practice",
        List.of(fact));
  }

  private static Cause cause(String key, Prior prior, String refines) {
    return new Cause(
        key,
        Catalogue.spoken(key),
        "ingredients",
        prior,
        refines == null ? List.of() : List.of(refines),
        List.of(),
        "Invented.",
        "Invented.",
        "Invented.",
        "Invented.",
        List.of("common practice"));
  }
}
