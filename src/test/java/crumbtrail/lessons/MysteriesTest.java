package crumbtrail.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.MysteryKind;
import crumbtrail.knowledge.MysteryKind.Level;
import crumbtrail.lessons.Verdict.Outcome;
import crumbtrail.rules.RuleBase;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Mystery loaves: the same again for the same seed, solvable, and silent about their cause. */
class MysteriesTest {
  private static final Pipeline PIPELINE = new Pipeline(RuleBase.bundled());
  private static final Mysteries MYSTERIES = new Mysteries(PIPELINE);

  static List<MysteryKind> listed() {
    return PIPELINE.catalogue().knowledge().mysteries();
  }

  @ParameterizedTest
  @MethodSource("listed")
  void a_loaf_can_be_solved_once_all_is_asked(MysteryKind kind) {
    MysteryLoaf loaf =
        new MysteryMaker(PIPELINE).of(kind, 7, kind.level(), new SplittableRandom(7));
    assertThat(loaf.complaint()).isNotEmpty();
    assertThat(loaf.whole().title()).isEmpty();
    assertThat(loaf.whole().knownCauses()).isEmpty();
    if (!loaf.choices().isEmpty()) {
      assertThat(loaf.choices()).contains(loaf.cause()).noneMatch(loaf.others()::contains);
    }
    MysteryRound round = MysteryRound.of(loaf);
    for (Clue clue : loaf.clues()) {
      round = round.ask(clue.key());
    }
    try (Reasoning reasoning = PIPELINE.open()) {
      assertThat(PIPELINE.suspects(reasoning, Clues.known(round)).first(3)).contains(kind.cause());
    }
  }

  @ParameterizedTest
  @EnumSource(Level.class)
  void a_seed_brings_the_same_loaf_again(Level level) {
    for (long seed = 1; seed <= 4; seed++) {
      assertThat(MYSTERIES.loaf(seed, level)).isEqualTo(MYSTERIES.loaf(seed, level));
    }
  }

  @Test
  void every_level_has_a_dozen_loaves() {
    for (Level level : Level.values()) {
      assertThat(listed()).filteredOn(one -> one.level() == level).hasSizeGreaterThan(11);
    }
  }

  @Test
  void a_round_keeps_what_was_asked_and_knows_no_more() {
    MysteryLoaf loaf = MYSTERIES.loaf(3, Level.EASY);
    MysteryRound start = MysteryRound.of(loaf);
    MysteryRound next = start.ask(Clues.RECIPE).ask("no-such-clue").ask(Clues.RECIPE);
    assertThat(start.asked()).isEmpty();
    assertThat(next.asked()).containsExactly(Clues.RECIPE);
    assertThat(next.open()).hasSize(loaf.clues().size() - 1);
    assertThat(Clues.known(start).formula()).isEmpty();
    assertThat(Clues.known(start).seen()).hasSize(loaf.complaint().size());
    assertThat(Clues.known(next).formula()).isEqualTo(loaf.whole().formula());
    assertThat(Clues.known(next).process().proof()).isEmpty();
  }

  @Test
  void a_verdict_tells_right_from_wrong_and_the_way_in_bits() {
    MysteryLoaf loaf = MYSTERIES.loaf(3, Level.EASY);
    MysteryRound round = MysteryRound.of(loaf).ask(Clues.VESSEL);
    Verdict right = MYSTERIES.verdict(round, loaf.cause());
    assertThat(right.outcome()).isEqualTo(Outcome.RIGHT);
    assertThat(right.asked()).hasSize(1);
    assertThat(right.asked().get(0).before()).isEqualTo(right.start());
    assertThat(right.better()).isNotEmpty();
    assertThat(right.better().get(0).clue().key()).isEqualTo(Clues.RECIPE);
    String wrong =
        loaf.choices().stream().filter(key -> !key.equals(loaf.cause())).findFirst().orElseThrow();
    assertThat(MYSTERIES.verdict(round, wrong).outcome()).isNotEqualTo(Outcome.RIGHT);
    String words =
        MysteryText.of(
            right,
            MYSTERIES.cause(loaf.cause()).name(),
            MYSTERIES.cause(loaf.cause()),
            List.of(),
            60);
    assertThat(words).startsWith("Right: ").contains("good diagnostician");
    assertThat(words.lines()).allMatch(line -> line.length() <= 60);
  }
}
