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

  @BeforeAll
  static void trace() {
    for (Path file : Scored.files(Path.of("cases"))) {
      JsonNode sheet = Scored.json(file);
      CASES.add(Scored.of(file.getFileName().toString(), sheet, sheet.path("knownCauses")));
    }
    System.out.printf(
        "Own cases: %d; known cause first in %d, in the first three in %d%n",
        CASES.size(), Scored.within(CASES, 1), Scored.within(CASES, 3));
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

  @Test
  void there_are_at_least_24_cases() {
    assertThat(CASES).hasSizeGreaterThanOrEqualTo(24);
  }

  @Test
  void the_known_cause_is_among_the_first_three_in_every_case() {
    assertThat(CASES).filteredOn(scored -> !scored.within(3)).isEmpty();
  }

  @Test
  void the_known_cause_is_first_in_at_least_20() {
    assertThat(Scored.within(CASES, 1)).isGreaterThanOrEqualTo(20);
  }

  /** Faults of hours and degrees, which the models of dough and oven are there to find. */
  @Test
  void where_time_and_temperature_decide_the_known_cause_is_first() {
    List<Scored> timed =
        CASES.stream()
            .filter(scored -> scored.expected().stream().anyMatch(TIMED::contains))
            .toList();

    assertThat(timed).hasSizeGreaterThanOrEqualTo(15);
    assertThat(timed).filteredOn(scored -> !scored.within(1)).isEmpty();
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
