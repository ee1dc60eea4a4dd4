package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.BakeSheet.SeenSign;
import crumbtrail.sheet.Reading;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading.Known;
import crumbtrail.workup.Reading.Scale;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What one bake looks like to the rules, before it and after it. */
class StandingTest extends TinyKitchen {
  @Test
  void two_workups_between_the_same_edges_are_judged_once() {
    Alike alike = new Alike(rules.sights());
    List<List<Object>> judged = new ArrayList<>();
    List<Findings> found = new ArrayList<>();
    for (double minutes : new double[] {50, 55, 95}) {
      found.add(
          alike.alike(
              proofed(minutes),
              facts -> {
                judged.add(facts);
                return new Findings(List.of(), List.of());
              }));
    }

    assertThat(judged).hasSize(2);
    assertThat(found.get(1)).isSameAs(found.get(0));
    assertThat(found.get(2)).isNotSameAs(found.get(0));
    assertThat(judged.get(1)).hasSameSizeAs(judged.get(0)).isNotEqualTo(judged.get(0));
    // The sign is alike in both, and the first of the two stands for it.
    assertThat(judged.get(1)).anyMatch(fact -> judged.get(0).stream().anyMatch(one -> one == fact));
  }

  private Workup proofed(double minutes) {
    Workup dense = reasoning.work(DENSE);
    crumbtrail.workup.Reading proof =
        new crumbtrail.workup.Reading(
            "proof time",
            minutes,
            minutes,
            minutes,
            Known.MEASURED,
            Optional.empty(),
            1,
            Scale.AMOUNT);
    return new Workup(
        dense.style(), dense.formula(), List.of(proof), dense.heard(), dense.assumptions());
  }

  @Test
  void what_stands_is_what_is_judged_and_ahead_of_the_bake_no_sign_counts() {
    Workup late = reasoning.work(sheet(timed("95 min")));

    assertThat(reasoning.standing(late).ranked())
        .extracting(one -> one.cause().key())
        .containsExactly("over-proofed", "yeast-dead");
    assertThat(reasoning.standing(late).probability("over-proofed"))
        .isEqualTo(reasoning.judge(late).probability("over-proofed"));
    assertThat(reasoning.foresee(late).ranked())
        .extracting(one -> one.cause().key())
        .containsExactly("over-proofed");
    assertThat(reasoning.prospect(late).ranked())
        .extracting(one -> one.cause().key())
        .containsExactly("over-proofed");
    assertThat(reasoning.judge(DENSE).explained()).containsExactly("dense-crumb");
    assertThat(reasoning.isOutcome("cut-warm")).isTrue();
    assertThat(reasoning.isOutcome("yeast-old")).isFalse();
    assertThat(reasoning.isOutcome("no such thing")).isFalse();
  }

  @Test
  void before_the_bake_what_was_done_stays_and_what_was_seen_goes() {
    BakeSheet sheet = told("\"the milk was hot milk\", \"cut warm\"", "");
    Workup ahead = Beforehand.of(rules.catalogue(), reasoning.work(sheet));
    BakeSheet before = Beforehand.sheet(reasoning, sheet);

    assertThat(ahead.heard().signs()).isEmpty();
    assertThat(ahead.heard().circumstances())
        .extracting(Heard.Circumstance::key)
        .containsExactly("milk-hot");
    assertThat(before.seen()).isEmpty();
    assertThat(before.process().remarks()).containsExactly("milk-hot");
    assertThat(Beforehand.sheet(reasoning, before).process().remarks()).containsExactly("milk-hot");
    assertThat(Beforehand.sheet(reasoning, told("", "\"sour\"")).notSeen()).isEmpty();
  }

  @Test
  void an_answer_is_written_where_it_belongs() {
    BakeSheet yes = answer("sour-smell", true, Optional.of(Degree.MARKED));
    assertThat(yes.seen())
        .endsWith(new SeenSign("sour-smell", Optional.of(Degree.MARKED)))
        .hasSize(2);
    assertThat(yes.notSeen()).isEmpty();
    assertThat(answer("sour-smell", false, Optional.empty()).notSeen())
        .containsExactly("sour-smell");
    assertThat(answer("yeast-old", true, Optional.empty()).process().remarks())
        .containsExactly("yeast-old");
    assertThat(answer("oven-cold", false, Optional.empty()).process().remarks())
        .containsExactly("flour-swapped");
    assertThat(answer("yeast-old", false, Optional.empty()).process().remarks()).isEmpty();
    assertThat(answer("milk-hot", false, Optional.empty())).isEqualTo(DENSE);
    Reading timed = Answers.with(DENSE, rules.catalogue(), "proof time", "70 min");
    assertThat(timed.sheet().orElseThrow().process().proof().get(0).time().orElseThrow().value())
        .isEqualTo(70);
    Reading no = Answers.with(DENSE, rules.catalogue(), "sour-smell", "70 min");
    assertThat(no.sheet()).isEmpty();
    assertThat(no.problems()).hasSize(1);
  }

  private static BakeSheet answer(String about, boolean yes, Optional<Degree> degree) {
    return Answers.with(DENSE, rules.catalogue(), about, yes, degree);
  }
}
