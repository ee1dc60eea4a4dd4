package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.rules.RuleBase;
import java.util.List;
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

  private static Findings findings(String cause, double probability) {
    return new Findings(
        List.of(
            new Finding(
                CATALOGUE.cause(cause).orElseThrow(), 0, probability, List.of(), List.of())),
        List.of());
  }
}
