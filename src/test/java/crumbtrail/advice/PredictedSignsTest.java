package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.advice.PredictedSigns.Predicted;
import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Published;
import crumbtrail.rules.RuleBase;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PredictedSignsTest {
  private static final Catalogue CATALOGUE = RuleBase.bundled().catalogue();
  private final PredictedSigns predicted = new PredictedSigns(CATALOGUE);

  @Test
  void the_signs_of_a_likely_cause_are_those_that_tables_name_for_it() {
    assertThat(predicted.of(findings("over-proofed", 0.9), List.of("tin"), 0.1))
        .isNotEmpty()
        .first()
        .satisfies(
            one -> {
              assertThat(one.cause()).isEqualTo("over-proofed");
              assertThat(one.probability()).isBetween(0.1, 0.9);
            });
  }

  @Test
  void where_nothing_is_likely_nothing_is_predicted() {
    assertThat(predicted.of(new Findings(List.of(), List.of()), List.of(), 0)).isEmpty();
    assertThat(predicted.of(findings("over-proofed", 0.05), List.of(), 0.1)).isEmpty();
  }

  @Test
  void a_likelier_cause_makes_its_signs_likelier() {
    double less = predicted.of(findings("salt-omitted", 0.4), List.of(), 0).get(0).probability();
    double more = predicted.of(findings("salt-omitted", 0.8), List.of(), 0).get(0).probability();
    assertThat(more).isGreaterThan(less);
  }

  @Test
  void a_sign_is_as_likely_as_its_cause_and_its_share_of_the_tables_allow() {
    List<Predicted> signs = predicted.of(findings("over-proofed", 0.5), List.of("tin"), 0);

    assertThat(signs)
        .hasSizeGreaterThan(3)
        .allSatisfy(
            one ->
                assertThat(one.probability())
                    .isCloseTo(
                        0.5 * predicted.shares("over-proofed").get(one.sign().key()), within(1e-9)))
        .isSortedAccordingTo(
            Comparator.comparingDouble(Predicted::probability)
                .reversed()
                .thenComparing(one -> one.sign().key()));
    assertThat(predicted.shares("over-proofed").values())
        .allSatisfy(share -> assertThat(share).isGreaterThan(0).isLessThan(1));
  }

  @Test
  void two_causes_show_a_sign_each_by_its_own_chance_and_the_likelier_is_named() {
    Findings both =
        new Findings(
            List.of(finding("under-proofed", 0.8), finding("water-too-low", 0.3)), List.of());
    double one = 0.8 * predicted.shares("under-proofed").get("dense-crumb");
    double other = 0.3 * predicted.shares("water-too-low").get("dense-crumb");

    Predicted dense =
        predicted.of(both, List.of("tin"), 0).stream()
            .filter(sign -> sign.sign().key().equals("dense-crumb"))
            .findFirst()
            .orElseThrow();

    assertThat(dense.probability()).isCloseTo(1 - (1 - one) * (1 - other), within(1e-9));
    assertThat(dense.cause()).isEqualTo(one > other ? "under-proofed" : "water-too-low");
  }

  @Test
  void a_finer_cause_that_no_table_knows_shows_what_the_coarser_one_shows() {
    Set<String> known =
        CATALOGUE.knowledge().published().stream()
            .map(Published::cause)
            .collect(Collectors.toSet());
    Cause finer =
        CATALOGUE.knowledge().causes().stream()
            .filter(cause -> !known.contains(cause.key()) && cause.refines().size() == 1)
            .filter(cause -> known.contains(cause.refines().iterator().next()))
            .findFirst()
            .orElseThrow();

    assertThat(predicted.shares(finer.key()))
        .isEqualTo(predicted.shares(finer.refines().iterator().next()))
        .isNotEmpty();
    assertThat(predicted.shares("no such cause")).isEmpty();
  }

  @Test
  void what_a_bread_cannot_show_is_not_predicted() {
    List<String> all = keys(predicted.of(findings("over-proofed", 1), List.of("tin", "flat"), 0));
    List<String> flat = keys(predicted.of(findings("over-proofed", 1), List.of("flat"), 0));

    assertThat(all).containsAll(flat);
    assertThat(flat)
        .allSatisfy(
            sign ->
                assertThat(
                        CATALOGUE.question(sign).map(ask -> ask.fits(List.of("flat"))).orElse(true))
                    .isTrue());
  }

  private static List<String> keys(List<Predicted> signs) {
    return signs.stream().map(one -> one.sign().key()).toList();
  }

  private static Finding finding(String cause, double probability) {
    return new Finding(CATALOGUE.cause(cause).orElseThrow(), 0, probability, List.of(), List.of());
  }

  private static Findings findings(String cause, double probability) {
    return new Findings(List.of(finding(cause, probability)), List.of());
  }
}
