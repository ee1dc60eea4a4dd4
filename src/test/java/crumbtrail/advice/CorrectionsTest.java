package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.advice.Correction.Verdict;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import crumbtrail.workup.SheetWorkup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A correction does what it says, and what is said of it is what a re-check finds. */
class CorrectionsTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final SheetWorkup WORKUPS = new SheetWorkup(RULES.catalogue(), RULES.pantry());
  private static final Reasoning REASONING =
      new Reasoning(WORKUPS, RULES, new Ranking(RULES.catalogue(), Weights.of(RULES.catalogue())));

  @AfterAll
  static void close() {
    REASONING.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "over-proofed-tin-loaf",
        "cold-kitchen-tin-loaf",
        "salt-too-high-country-loaf",
        "sugar-too-high-us-sandwich-loaf",
        "water-too-low-us-whole-wheat",
        "dry-oven-sourdough",
        "fridge-stale-baguette",
        "hot-dough-long-bulk-rolls",
        "yeast-dead-focaccia",
        "self-raising-by-mistake"
      })
  void what_is_said_of_a_correction_is_what_a_re_check_finds(String name) {
    BakeSheet sheet = bake(name);
    Trial before = Trial.of(REASONING, sheet);
    int made = 0;
    for (String cause : sheet.knownCauses()) {
      List<Correction> all = corrections().of(sheet, cause);
      made += all.size();
      for (Correction one : all) {
        String as = name + ": " + one.change();
        Trial after = Trial.of(REASONING, one.altered());
        assertThat(one.cause()).as(as).isEqualTo(cause);
        assertThat(one.riskBefore()).as(as).isCloseTo(before.risk(cause), within(1e-9));
        assertThat(one.riskAfter()).as(as).isCloseTo(after.risk(cause), within(1e-9));
        assertThat(one.change()).as(as).isNotBlank();
        assertThat(one.from()).as(as).isNotBlank().isNotEqualTo(one.to());
        assertThat(one.altered().seen()).as(as).isEmpty();
        assertThat(SheetReader.read(SheetWriter.write(one.altered())).problems()).as(as).isEmpty();
        if (one.verdict() == Verdict.HELPS) {
          assertThat(one.riskAfter()).as(as).isLessThan(one.riskBefore());
        }
        if (one.verdict() == Verdict.UNTOLD) {
          assertThat(one.altered()).as(as).isEqualTo(before.sheet());
        } else {
          assertThat(one.altered()).as(as).isNotEqualTo(before.sheet());
        }
        moved(one, before, after);
      }
      List<Verdict> verdicts = all.stream().map(Correction::verdict).toList();
      assertThat(verdicts).as(name).isSortedAccordingTo(Comparator.naturalOrder());
    }
    assertThat(made).as(name).isPositive();
  }

  /** Every other cause that moves by a twentieth or more is told, and none that does not. */
  private static void moved(Correction one, Trial before, Trial after) {
    for (Correction.Moved moved : one.moved()) {
      assertThat(moved.cause()).isNotEqualTo(one.cause());
      assertThat(moved.before()).isCloseTo(before.risk(moved.cause()), within(1e-9));
      assertThat(moved.after()).isCloseTo(after.risk(moved.cause()), within(1e-9));
    }
    List<String> told = one.moved().stream().map(Correction.Moved::cause).toList();
    List<String> found = new ArrayList<>();
    RULES.catalogue().knowledge().causes().stream()
        .map(cause -> cause.key())
        .filter(key -> !key.equals(one.cause()))
        .filter(key -> Math.abs(after.risk(key) - before.risk(key)) >= 0.05)
        .forEach(found::add);
    assertThat(found).containsAll(told);
  }

  /** Three hours of proof at 30 °C for 1 % yeast: it is turned until the dough is just ripe. */
  @Test
  void a_proof_is_cut_to_where_the_dough_is_just_ripe() {
    BakeSheet sheet = bake("over-proofed-tin-loaf");
    Correction sooner = turned(sheet, "over-proofed", "proof-time");

    assertThat(sooner.from()).isEqualTo("3 h");
    double minutes = Stays.of(sooner.altered(), "proof").warmMinutes().orElseThrow();
    assertThat(sooner.change()).contains("by " + Math.round(180 - minutes) + " min");
    assertThat(sooner.to()).isEqualTo(Math.round(minutes) + " min");
    assertThat(Knob.reading(WORKUPS.work(sooner.altered()), "proof ripeness").orElseThrow())
        .isBetween(0.8, 1.2);
    assertThat(sooner.verdict()).isEqualTo(Verdict.HELPS);
  }

  /** By weight and on the flour: 5 g on 500 g is 1 %. */
  @Test
  void yeast_is_told_by_weight_and_on_the_flour() {
    BakeSheet sheet = bake("over-proofed-tin-loaf");
    Correction less = turned(sheet, "over-proofed", "yeast");
    double percent = Knob.reading(WORKUPS.work(less.altered()), "yeast").orElseThrow();

    assertThat(less.from()).isEqualTo("5 g instant yeast (1 % of the flour)");
    assertThat(less.to())
        .isEqualTo(
            Text.of(percent * 5, 1)
                + " g instant yeast ("
                + Text.of(percent, 2)
                + " % of the flour)");
    assertThat(less.change()).startsWith("Take less yeast, by ");
  }

  @Test
  void a_plan_mends_what_is_likely_and_a_sound_bake_is_left_alone() {
    BakeSheet faulty = bake("over-proofed-tin-loaf");
    Plan plan = Plan.of(corrections(), faulty, REASONING.judge(faulty));

    assertThat(plan.recommended().get(0).cause()).isEqualTo("over-proofed");
    assertThat(plan.before().get("over-proofed")).isGreaterThan(0.5);
    assertThat(plan.after().get("over-proofed")).isLessThan(0.1);
    assertThat(plan.raised()).isEmpty();
    assertThat(plan.tried()).extracting(Correction::cause).contains("over-proofed");
    assertThat(plan.next()).isNotEqualTo(Trial.of(REASONING, faulty).sheet());

    BakeSheet sound = bake("healthy-tin-loaf");
    Plan none = Plan.of(corrections(), sound, REASONING.judge(sound));
    assertThat(none.recommended()).isEmpty();
    assertThat(none.next()).isEqualTo(Trial.of(REASONING, sound).sheet());
    assertThat(none.after()).isEqualTo(none.before());
  }

  @Test
  void a_cause_that_nobody_knows_has_no_corrections() {
    assertThat(corrections().of(bake("healthy-tin-loaf"), "moonshine")).isEmpty();
  }

  private static Correction turned(BakeSheet sheet, String cause, String knob) {
    return corrections().of(sheet, cause).stream()
        .filter(one -> one.knob().equals(knob))
        .findFirst()
        .orElseThrow();
  }

  private static Corrections corrections() {
    return new Corrections(REASONING, RULES.catalogue(), RULES.pantry());
  }

  private static BakeSheet bake(String name) {
    try {
      return SheetReader.read(Files.readString(Path.of("cases", name + ".json")))
          .sheet()
          .orElseThrow();
    } catch (IOException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }
}
