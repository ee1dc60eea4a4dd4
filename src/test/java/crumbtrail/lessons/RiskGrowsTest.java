package crumbtrail.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.advice.Knob;
import crumbtrail.advice.Knobs;
import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A fault that grows does not make its cause less likely, and far out it is likely: by how much
 * each fault has to be stands in its row, set after a first look at what the rules reach. The steps
 * of a knob go from sound to absurd; the risk is that of the likeliest of the causes that name the
 * fault.
 */
class RiskGrowsTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final SheetWorkup WORKUPS = new SheetWorkup(RULES.catalogue(), RULES.pantry());
  private static final Ranking RANKING =
      new Ranking(RULES.catalogue(), Weights.of(RULES.catalogue()));
  private static final Knobs KNOBS = new Knobs(RULES.catalogue(), RULES.pantry());

  /**
   * Readings far out are a little less trusted, which may take a point from what is all but sure.
   */
  private static final double ROUNDING = 0.02;

  @ParameterizedTest(name = "{1} of {0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          healthy-tin-loaf | proof-time        | 60 90 110 130 160 200 300 480 720 | over-proofed                | 0.9
          healthy-tin-loaf | proof-time        | 60 45 30 20 10 5                  | under-proofed               | 0.7
          healthy-tin-loaf | bulk-time         | 70 90 120 150 200 300 480 720     | over-fermented              | 0.9
          healthy-tin-loaf | bulk-time         | 70 45 30 20 10 5                  | under-fermented             | 0.65
          healthy-tin-loaf | salt              | 1.9 1.4 1.1 0.8 0.5 0.2 0         | salt-too-low salt-omitted   | 0.9
          healthy-tin-loaf | salt              | 1.9 2.6 3 3.6 4 5                 | salt-too-high               | 0.9
          healthy-tin-loaf | yeast             | 1 0.59 0.52 0.45 0.4 0.2 0.1      | yeast-too-low               | 0.8
          healthy-tin-loaf | water             | 62 58 55 50 47 43 40              | water-too-low               | 0.9
          healthy-tin-loaf | water             | 63 70 75 80 90 100                | water-too-high              | 0.9
          healthy-tin-loaf | oven              | 215 240 260 280 300               | oven-too-hot                | 0.7
          healthy-tin-loaf | oven              | 215 180 160 140 120               | oven-too-cool               | 0.7
          healthy-tin-loaf | bake-time         | 37 30 25 20 15 10 5               | under-baked                 | 0.9
          healthy-tin-loaf | bake-time         | 37 50 60 80 100                   | over-baked                  | 0.7
          healthy-tin-loaf | dough-temperature | 25 30 33 36 38                    | dough-too-warm              | 0.9
          healthy-tin-loaf | dough-temperature | 25 20 17 14 10                    | dough-too-cold              | 0.9
          healthy-tin-loaf | tin               | 3 2 1.7 1.4 1.2 1                 | pan-too-small               | 0.9
          healthy-tin-loaf | protein           | 12.5 11 10 9 8                    | flour-weak                  | 0.7
          healthy-tin-loaf | cooling-time      | 180 60 40 20 5 0                  | cut-while-warm              | 0.6
          healthy-hearth-loaf | proof-time     | 60 120 180 300 480 720            | over-proofed                | 0.8
          healthy-hearth-loaf | salt           | 2 1.4 1.1 0.8 0.5 0               | salt-too-low salt-omitted   | 0.9
          healthy-hearth-loaf | water          | 72 80 90 100 110                  | water-too-high              | 0.7
          healthy-soft-rolls | proof-time      | 45 70 90 120 180 300 480 720      | over-proofed                | 0.9
          healthy-soft-rolls | salt            | 1.9 3 3.6 4 5                     | salt-too-high               | 0.9
          """)
  void risk_never_falls_while_a_fault_grows_and_ends_high(
      String sheet, String knob, String steps, String causes, double atLast) throws IOException {
    List<Double> risks = risks(sheet, KNOBS.named(knob).orElseThrow(), numbers(steps), causes);
    for (int step = 1; step < risks.size(); step++) {
      assertThat(risks.get(step))
          .as("step %d of %s", step, risks)
          .isGreaterThanOrEqualTo(risks.get(step - 1) - ROUNDING);
    }
    assertThat(risks.get(0)).as("sound: %s", risks).isLessThanOrEqualTo(0.3);
    assertThat(risks.get(risks.size() - 1)).as("absurd: %s", risks).isGreaterThanOrEqualTo(atLast);
    assertThat(risks.stream().map(risk -> Math.round(risk * 20)).distinct())
        .as("tiers of %s", risks)
        .hasSizeGreaterThanOrEqualTo(3);
  }

  private static List<Double> risks(String sheet, Knob knob, double[] steps, String causes)
      throws IOException {
    BakeSheet sound =
        SheetReader.read(Files.readString(Path.of("cases", sheet + ".json")))
            .sheet()
            .orElseThrow()
            .unseen();
    Set<String> named = Set.of(causes.split(" "));
    List<Double> risks = new ArrayList<>();
    try (Reasoning reasoning = new Reasoning(WORKUPS, RULES, RANKING)) {
      Workup workup = reasoning.work(sound);
      for (double step : steps) {
        Findings findings = reasoning.foresee(reasoning.work(knob.turned(sound, workup, step)));
        risks.add(
            findings.ranked().stream()
                .filter(one -> named.contains(one.cause().key()))
                .mapToDouble(Finding::probability)
                .max()
                .orElse(0));
      }
    }
    return risks;
  }

  private static double[] numbers(String steps) {
    return Arrays.stream(steps.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
