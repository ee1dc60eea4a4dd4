package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.compare.Comparer;
import crumbtrail.compare.Comparison;
import crumbtrail.compare.Difference;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetFields;
import crumbtrail.workup.SheetWorkup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Published formulas held against themselves with one thing broken and three things changed that do
 * no harm: the broken thing has to come first.
 */
class ComparisonMatrixTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final Set<String> HARMLESS =
      Set.of("dusting flour", "place of keeping", "it rained all morning");

  @Test
  void what_was_broken_explains_more_than_what_does_no_harm() {
    SheetWorkup workups = new SheetWorkup(RULES.catalogue(), RULES.pantry());
    Knobs knobs = new Knobs(RULES.catalogue(), RULES.pantry());
    List<String> misses = new ArrayList<>();
    int asked = 0;
    for (SoundBakes.Sound sound : SoundBakes.all()) {
      try (Reasoning reasoning = reasoning(workups)) {
        Comparer comparer = new Comparer(reasoning, RULES.catalogue(), RULES.pantry());
        for (Breakage breakage : Breakage.values()) {
          Optional<BakeSheet> broken = breakage.of(sound.sheet(), knobs, workups);
          if (broken.isPresent()) {
            asked++;
            Comparison found = comparer.of(sound.sheet(), harmless(broken.get()));
            Comparison.Explained first = found.differences().get(0);
            if (HARMLESS.contains(first.difference().what()) || first.power() <= 0) {
              misses.add(sound.name() + ", " + breakage.words() + ": " + first);
            }
          }
        }
      }
    }
    assertThat(asked).isGreaterThan(300);
    // Those that are missed are breakages whose own causes the risks do not name either; see
    // docs/precheck-matrix.md.
    assertThat(misses).as(misses.size() + " of " + asked).hasSizeLessThan(asked / 50);
  }

  @Test
  void a_bake_held_against_itself_has_nothing_to_tell() {
    SheetWorkup workups = new SheetWorkup(RULES.catalogue(), RULES.pantry());
    try (Reasoning reasoning = reasoning(workups)) {
      Comparer comparer = new Comparer(reasoning, RULES.catalogue(), RULES.pantry());
      for (SoundBakes.Sound sound : SoundBakes.all()) {
        Comparison found = comparer.of(sound.sheet(), sound.sheet());

        assertThat(found.differences()).as(sound.name()).isEmpty();
        assertThat(found.readings()).isEmpty();
        assertThat(found.together()).isZero();
      }
    }
  }

  @Test
  void the_other_way_round_the_same_difference_explains_nothing() {
    SheetWorkup workups = new SheetWorkup(RULES.catalogue(), RULES.pantry());
    Knobs knobs = new Knobs(RULES.catalogue(), RULES.pantry());
    try (Reasoning reasoning = reasoning(workups)) {
      Comparer comparer = new Comparer(reasoning, RULES.catalogue(), RULES.pantry());
      BakeSheet sound = SoundBakes.all().get(0).sheet();
      BakeSheet broken = Breakage.SALT_LEFT_OUT.of(sound, knobs, workups).orElseThrow();

      assertThat(comparer.of(sound, broken).differences())
          .first()
          .satisfies(one -> assertThat(one.power()).isPositive())
          .extracting(Comparison.Explained::difference)
          .extracting(Difference::after)
          .isEqualTo("none");
      assertThat(comparer.of(broken, sound).differences())
          .allSatisfy(one -> assertThat(one.power()).isLessThanOrEqualTo(0.01));
    }
  }

  private static Reasoning reasoning(SheetWorkup workups) {
    return new Reasoning(
        workups, RULES, new Ranking(RULES.catalogue(), Weights.of(RULES.catalogue())));
  }

  private static BakeSheet harmless(BakeSheet sheet) {
    BakeSheet dusted =
        SheetFields.with(sheet, "shaping.dustingFlour", "light").sheet().orElseThrow();
    BakeSheet kept = SheetFields.with(dusted, "storage.place", "bread box").sheet().orElseThrow();
    List<String> remarks = new ArrayList<>(kept.process().remarks());
    remarks.add("it rained all morning");
    return kept.with(kept.process().withRemarks(remarks));
  }
}
