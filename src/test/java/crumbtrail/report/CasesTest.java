package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Our own invented cases. They show that the pipeline holds together; they are no measure of truth,
 * since those who wrote the rules wrote the cases too.
 */
class CasesTest {
  private static final List<Scored> CASES = new ArrayList<>();

  /** Bakes that were sound: no cause is to be found. */
  private static final List<Scored> HEALTHY = new ArrayList<>();

  @BeforeAll
  static void trace() {
    for (Path file : Scored.files(Path.of("cases"))) {
      JsonNode sheet = Scored.json(file);
      Scored scored = Scored.of(file.getFileName().toString(), sheet, sheet.path("knownCauses"));
      (scored.expected().isEmpty() ? HEALTHY : CASES).add(scored);
    }
    System.out.printf(
        "Own cases: %d; known cause first in %d, in the first three in %d%n",
        CASES.size(), Scored.within(CASES, 1), Scored.within(CASES, 3));
    System.out.printf(
        "Healthy bakes: %d; with a cause above 30 %%: %d%n",
        HEALTHY.size(), HEALTHY.stream().filter(scored -> likeliest(scored) > 0.3).count());
  }

  private static final Set<String> TIMED =
      Set.of(
          "dough-too-cold",
          "dough-too-warm",
          "under-fermented",
          "over-fermented",
          "under-proofed",
          "over-proofed",
          "proof-too-cool",
          "proof-too-hot",
          "retard-too-warm-or-long",
          "shaped-cold",
          "preferment-unripe",
          "preferment-spent",
          "scald-or-hot-liquid-killed-yeast",
          "oven-too-hot",
          "oven-too-cool",
          "oven-thermostat-fault",
          "under-baked",
          "over-baked",
          "core-below-set",
          "cut-while-warm",
          "refrigerated-bread",
          "altitude");

  private static double likeliest(Scored healthy) {
    return healthy.report().causes().stream()
        .mapToDouble(Report.RankedCause::probability)
        .max()
        .orElse(0);
  }

  @Test
  void there_are_at_least_75_faulty_and_8_healthy_bakes() {
    assertThat(CASES).hasSizeGreaterThanOrEqualTo(75);
    assertThat(HEALTHY).hasSizeGreaterThanOrEqualTo(8);
  }

  @Test
  void the_known_cause_is_among_the_first_three_in_every_case() {
    assertThat(CASES).filteredOn(scored -> !scored.within(3)).isEmpty();
  }

  @Test
  void the_known_cause_is_first_in_at_least_90_of_100() {
    assertThat(Scored.within(CASES, 1)).isGreaterThanOrEqualTo(90L * CASES.size() / 100);
  }

  @Test
  void of_two_known_causes_both_are_among_the_first_five_in_most_cases() {
    List<Scored> pairs = CASES.stream().filter(scored -> scored.expected().size() > 1).toList();

    assertThat(pairs).hasSizeGreaterThanOrEqualTo(10);
    assertThat(pairs)
        .filteredOn(
            scored ->
                scored.report().causes().stream()
                    .limit(5)
                    .map(Report.RankedCause::key)
                    .toList()
                    .containsAll(scored.expected()))
        .hasSizeGreaterThanOrEqualTo(pairs.size() - 2);
  }

  /** Faults of hours and degrees, which the models of dough and oven are there to find. */
  @Test
  void where_time_and_temperature_decide_the_known_cause_is_nearly_always_first() {
    List<Scored> timed =
        CASES.stream()
            .filter(scored -> scored.expected().stream().anyMatch(TIMED::contains))
            .toList();

    assertThat(timed).hasSizeGreaterThanOrEqualTo(15);
    assertThat(Scored.within(timed, 1)).isGreaterThanOrEqualTo(90L * timed.size() / 100);
    assertThat(timed).filteredOn(scored -> !scored.within(3)).isEmpty();
  }

  @Test
  void every_sign_that_was_understood_is_explained_or_said_to_be_unexplained() {
    for (Scored scored : CASES) {
      Report report = scored.report();
      List<String> explained =
          report.causes().stream().flatMap(cause -> cause.explains().stream()).toList();
      report.understood().stream()
          .filter(one -> one.kind().equals("sign"))
          .forEach(
              one ->
                  assertThat(
                          explained.contains(one.key()) || report.unexplained().contains(one.key()))
                      .as(scored.name() + ": " + one.key())
                      .isTrue());
    }
  }
}
