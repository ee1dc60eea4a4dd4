package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.Prior;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import crumbtrail.sheet.BakeSheet.Degree;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FindingsTest {
  private static final Set<String> SEEN = Set.of("dense", "pale", "blue");

  /** 10 decibans are odds of ten to one, -10 one to ten. */
  @Test
  void probability_is_the_log_odds_turned_back() {
    assertThat(probability(0)).isCloseTo(0.5, within(1e-12));
    assertThat(probability(10)).isCloseTo(10 / 11.0, within(1e-12));
    assertThat(probability(-10)).isCloseTo(1 / 11.0, within(1e-12));
    assertThat(probability(400)).isEqualTo(1);
    assertThat(probability(-400)).isBetween(0.0, 1e-30);
  }

  @Test
  void evidence_stands_strongest_for_it_first_and_strongest_against_it_last() {
    Finding finding =
        first(
            List.of(
                evidence("a", "one", -3),
                evidence("a", "two", 10),
                evidence("a", "three", -20),
                evidence("a", "four", 3)));

    assertThat(finding.evidence())
        .extracting(Evidence::decibans)
        .containsExactly(10.0, 3.0, -3.0, -20.0);
  }

  @Test
  void causes_as_likely_as_each_other_stand_in_the_order_of_their_keys() {
    Findings findings =
        Ranking.of(
            catalogue("c", "a", "b"),
            List.of(evidence("b", "x", 6), evidence("c", "x", 6), evidence("a", "x", 6)),
            Set.of());

    assertThat(findings.ranked())
        .extracting(finding -> finding.cause().key())
        .containsExactly("a", "b", "c");
  }

  @Test
  void a_sign_explained_by_a_weaker_rule_of_a_strand_is_explained_all_the_same() {
    Finding finding =
        first(
            List.of(
                evidence("a", "crumb", 10, "dense", "blue"),
                evidence("a", "crumb", 3, "pale", "blue")));

    assertThat(finding.decibans()).isCloseTo(-13 + 10, within(1e-9));
    assertThat(finding.explains()).containsExactly("blue", "dense", "pale");
  }

  @Test
  void what_speaks_against_a_cause_and_what_was_not_seen_explain_nothing() {
    Evidence against = evidence("a", "crumb", -10, "dense");
    Evidence absent =
        new Evidence(
            "a", "r", "s", 3, "l", "s", List.of(new SignFact("pale", false, Degree.PLAIN, "")));

    assertThat(first(List.of(against, absent)).explains()).isEmpty();
  }

  @Test
  void a_sign_for_which_no_cause_accounts_is_named() {
    Findings findings =
        Ranking.of(catalogue("a"), List.of(evidence("a", "crumb", 6, "dense")), SEEN);

    assertThat(findings.unexplained()).containsExactly("blue", "pale");
    assertThat(findings.explained()).containsExactly("dense");
  }

  @Test
  void evidence_for_a_cause_that_the_catalogue_does_not_hold_is_passed_over() {
    assertThat(Ranking.of(catalogue("a"), List.of(evidence("ghost", "x", 10)), Set.of()).ranked())
        .isEmpty();
  }

  @Test
  void the_order_in_which_evidence_comes_in_does_not_change_the_ranking() {
    List<Evidence> evidence = new ArrayList<>();
    Random random = new Random(11);
    for (int nth = 0; nth < 60; nth++) {
      evidence.add(
          evidence(
              "" + (char) ('a' + nth % 5),
              "strand " + nth % 7,
              nth % 3 - 1 + nth % 11 * 0.5,
              nth % 2 == 0 ? "dense" : "pale"));
    }
    evidence.removeIf(one -> one.decibans() == 0);
    Catalogue catalogue = catalogue("a", "b", "c", "d", "e");
    List<String> expected = shown(Ranking.of(catalogue, evidence, SEEN));

    for (int turn = 0; turn < 50; turn++) {
      Collections.shuffle(evidence, random);
      assertThat(shown(Ranking.of(catalogue, evidence, SEEN))).isEqualTo(expected);
    }
  }

  private static List<String> shown(Findings findings) {
    List<String> shown = new ArrayList<>();
    findings
        .ranked()
        .forEach(
            finding ->
                shown.add(
                    finding.cause().key()
                        + Math.round(finding.decibans() * 1e6)
                        + finding.evidence()
                        + finding.explains()));
    shown.add(findings.explained().toString() + findings.unexplained());
    return shown;
  }

  private static double probability(double decibans) {
    return new Finding(cause("a"), decibans, List.of(), List.of()).probability();
  }

  private static Finding first(List<Evidence> evidence) {
    return Ranking.of(catalogue("a"), evidence, SEEN).ranked().get(0);
  }

  private static Evidence evidence(String cause, String strand, double decibans, String... signs) {
    List<Object> facts = new ArrayList<>();
    for (String sign : signs) {
      facts.add(new SignFact(sign, true, Degree.PLAIN, sign));
    }
    return new Evidence(
        cause, strand + " " + decibans, strand, decibans, "Why.", "common practice", facts);
  }

  private static Catalogue catalogue(String... causes) {
    return new Catalogue(
        new Knowledge(
            List.of(causes).stream().map(FindingsTest::cause).toList(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Map.of()));
  }

  private static Cause cause(String key) {
    return new Cause(
        key, key, "proof", Prior.COMMON, null, List.of(), "", "", "", "", List.of("x"));
  }
}
