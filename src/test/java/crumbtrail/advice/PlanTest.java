package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.findings.Findings;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.formula.FormulaWorker;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import crumbtrail.workup.SheetWorkup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is recommended helps, is consistent, and is a bake sheet again. */
class PlanTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final SheetWorkup WORKUPS = new SheetWorkup(RULES.catalogue(), RULES.pantry());
  private static final Ranking RANKING =
      new Ranking(RULES.catalogue(), Weights.of(RULES.catalogue()));

  private record Advised(String name, boolean faulty, BakeSheet sheet, Findings found, Plan plan) {}

  private static final List<Advised> CASES = cases();

  // The share is asked for; what was measured stands in docs/post-mortem.md.
  @Test
  void all_that_is_recommended_lowers_the_leading_risk_and_raises_no_other() {
    List<String> notLower = new ArrayList<>();
    List<String> raised = new ArrayList<>();
    int faulty = 0;
    for (Advised one : CASES) {
      if (one.faulty()) {
        faulty++;
        String lead = one.found().ranked().get(0).cause().key();
        if (one.plan().after().get(lead) >= one.plan().before().get(lead)) {
          notLower.add(one.name());
        }
      }
      if (!one.plan().raised().isEmpty()) {
        raised.add(one.name() + " " + one.plan().raised());
      }
    }
    assertThat(notLower).as("of " + faulty).hasSizeLessThanOrEqualTo(faulty / 20);
    assertThat(raised).hasSizeLessThanOrEqualTo(faulty / 20);
  }

  @Test
  void the_next_bake_is_a_bake_sheet_that_stands_as_it_was_judged() {
    for (Advised one : CASES) {
      BakeSheet next = next(one, Wish.PLAIN).sheet();
      if (next.formula().isEmpty()) {
        continue; // a sheet of signs alone has nothing to bake
      }
      BakeSheet back = SheetReader.read(SheetWriter.write(next)).sheet().orElseThrow();
      assertThat(FormulaWorker.work(back, RULES.pantry()).doughGrams().value())
          .as(one.name())
          .isCloseTo(FormulaWorker.work(next, RULES.pantry()).doughGrams().value(), within(1e-6));
      assertThat(SheetWriter.write(back)).as(one.name()).isEqualTo(SheetWriter.write(next));
    }
  }

  @Test
  void leavening_is_fitted_to_the_hours_that_are_wished() {
    Advised one = named("over-proofed-tin-loaf");
    Wish hours =
        new Wish(
            Wish.PLAIN.start(),
            Wish.PLAIN.ready(),
            OptionalDouble.of(60),
            OptionalDouble.of(60),
            OptionalDouble.empty(),
            OptionalDouble.of(1200),
            Wish.PLAIN.loaves(),
            Wish.PLAIN.tin(),
            List.of(),
            false);
    NextBake next = next(one, hours);
    assertThat(Knob.reading(next.workup(), "bulk ripeness").orElseThrow())
        .isCloseTo(1, within(0.06));
    assertThat(Knob.reading(next.workup(), "dough weight").orElseThrow())
        .isCloseTo(1200, within(3.0));
  }

  @Test
  void the_clock_counts_from_the_mixing_to_the_oven() {
    Timetable day = next(named("over-proofed-tin-loaf"), Wish.PLAIN).timetable();
    double all =
        day.steps().stream()
            .filter(step -> !List.of("preheat", "cool", "core").contains(step.key()))
            .mapToDouble(Timetable.Step::minutes)
            .sum();
    assertThat(day.end()).isCloseTo(all, within(1e-9));
    assertThat(day.steps()).extracting(Timetable.Step::look).noneMatch(String::isBlank);
  }

  @Test
  void a_correction_that_cannot_be_seen_is_not_recommended() {
    for (Advised one : CASES) {
      Map<String, Double> before = one.plan().before();
      assertThat(one.plan().recommended())
          .as(one.name())
          .allSatisfy(
              done -> {
                assertThat(done.riskAfter()).isLessThan(done.riskBefore());
                assertThat(before).containsKey(done.cause());
              });
    }
  }

  private static NextBake next(Advised one, Wish wish) {
    try (Reasoning reasoning = new Reasoning(WORKUPS, RULES, RANKING)) {
      Corrections corrections = new Corrections(reasoning, RULES.catalogue(), RULES.pantry());
      return NextBake.of(
          corrections, RULES.catalogue(), RULES.pantry(), one.plan(), wish, one.sheet());
    }
  }

  private static Advised named(String name) {
    return CASES.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<Advised> cases() {
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .map(PlanTest::advised)
          .toList();
    } catch (IOException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  private static Advised advised(Path file) {
    try (Reasoning reasoning = new Reasoning(WORKUPS, RULES, RANKING)) {
      BakeSheet sheet = SheetReader.read(Files.readString(file)).sheet().orElseThrow();
      Findings found = reasoning.judge(sheet);
      Plan plan =
          Plan.of(new Corrections(reasoning, RULES.catalogue(), RULES.pantry()), sheet, found);
      String name = file.getFileName().toString().replace(".json", "");
      return new Advised(name, !sheet.knownCauses().isEmpty(), sheet, found, plan);
    } catch (IOException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }
}
