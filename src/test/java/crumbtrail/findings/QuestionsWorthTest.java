package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.QuestionKind.Cost;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which questions are worth asking, and how much, reckoned by hand. */
class QuestionsWorthTest extends TinyKitchen {
  private Map<String, Question> asked(BakeSheet sheet, String... passed) {
    Workup workup = reasoning.work(sheet);
    return NextQuestions.of(reasoning, sheet, workup, reasoning.judge(workup), Set.of(passed), 30)
        .stream()
        .collect(Collectors.toMap(Question::about, one -> one));
  }

  // -20 + 20 decibans: even odds, from which ten decibans lead to 10/11 or 1/11.
  @Test
  void even_odds_are_what_the_rules_say() {
    Findings findings = reasoning.judge(DENSE);

    assertThat(findings.ranked())
        .extracting(one -> one.cause().key())
        .containsExactly("yeast-dead");
    assertThat(findings.probability("yeast-dead")).isCloseTo(0.5, within(1e-9));
  }

  /** Bits by the textbook: the entropy of the mean less the mean entropy, after Bayes' theorem. */
  private static double bits(double share, double now, double yes, double no) {
    return bits(now, new double[] {share, 1 - share}, yes, no);
  }

  private static double bits(double now, double[] shares, double... after) {
    double all = 0;
    double mean = 0;
    double left = 0;
    for (int answer = 0; answer < shares.length; answer++) {
      double likely = shares[answer] * (1 - now + now * odds(after[answer]) / odds(now));
      all += likely;
      mean += likely * after[answer];
      left += likely * entropy(after[answer]);
    }
    return entropy(mean / all) - left / all;
  }

  private static double odds(double probability) {
    return probability / (1 - probability);
  }

  private static double entropy(double p) {
    return -(p * Math.log(p) + (1 - p) * Math.log(1 - p)) / Math.log(2);
  }

  @Test
  void what_a_question_teaches_is_reckoned_for_each_of_its_answers() {
    Map<String, Question> asked = asked(DENSE);

    // No rule looks for the absence of a sour smell: a no leaves even odds.
    Question sour = asked.get("sour-smell");
    assertThat(sour.bits()).isCloseTo(bits(0.08, 0.5, 1 / 11.0, 0.5), within(1e-6));
    assertThat(sour)
        .extracting(Question::question, Question::how, Question::cost, Question::amount)
        .containsExactly("Is it sour?", "Smell it.", Cost.LOOK, false);
    // Pale crust: only its absence speaks.
    Question pale = asked.get("pale-crust");
    assertThat(pale.bits()).isCloseTo(bits(0.2, 0.5, 0.5, 1 / 11.0), within(1e-6));
    assertThat(pale)
        .extracting(Question::how, Question::cost)
        .containsExactly("By day.", Cost.MEASURE);
    Question old = asked.get("yeast-old");
    assertThat(old.bits()).isCloseTo(bits(0.02, 0.5, 10 / 11.0, 0.5), within(1e-6));
    assertThat(old.how()).isEqualTo("Its date.");
    // No rule heeds a cold oven, but one heeds what a no says.
    assertThat(asked.get("oven-cold").bits())
        .isCloseTo(bits(0.08, 0.5, 0.5, 1 / 11.0), within(1e-6));
    assertThat(asked.get("flat-top").bits())
        .isCloseTo(bits(0.08, 0.5, 10 / 11.0, 0.5), within(1e-6));
  }

  /**
   * Proofed for 10, 60 or 110 minutes: a quarter, a half, a quarter; only the first moves a cause.
   */
  @Test
  void an_amount_is_tried_below_in_and_above_what_is_usual() {
    Question proof = asked(DENSE).get("proof time");

    // Over 90 minutes another cause is suspected, of which there was no question.
    double[] shares = {0.25, 0.5, 0.25};
    assertThat(proof.bits()).isCloseTo(bits(0.5, shares, 1 / 11.0, 0.5, 10 / 11.0), within(1e-6));
    assertThat(asked(salted("10 g salt"))).containsKey("proof time");
    assertThat(proof.amount()).isTrue();
    assertThat(asked(sheet(timed("60 min")))).doesNotContainKey("proof time");
  }

  @Test
  void what_no_rule_ties_to_the_causes_in_question_is_not_asked() {
    // Holes speak of proofing, which nothing suspects; rye alone is asked for its thick crust.
    assertThat(asked(DENSE)).doesNotContainKeys("large-holes", "thick-crust", "collapsed-top");
    assertThat(asked(sheet("{\"style\": \"rye loaf\", \"seen\": [\"dense crumb\"]}")))
        .containsKey("thick-crust");
    // Where nothing is suspected every cause is in question.
    assertThat(asked(HUMMED)).containsKeys("large-holes", "flat-top");
  }

  @Test
  void what_is_answered_passed_over_or_settled_is_not_asked() {
    assertThat(asked(DENSE, "sour-smell", "flour-swapped"))
        .doesNotContainKeys("sour-smell", "oven-cold", "dense-crumb")
        .containsKey("pale-crust");
    assertThat(asked(told("\"sticky dough\"", ""))).doesNotContainKey("flat-top");
    assertThat(asked(told("", "\"sticky dough\""))).containsKey("flat-top");
    assertThat(asked(told("\"cut warm\"", ""))).doesNotContainKey("flat-top");
    assertThat(asked(told("\"old yeast\"", ""))).doesNotContainKey("yeast-old");
    assertThat(asked(told("", "\"sour\""))).doesNotContainKey("sour-smell");
    assertThat(asked(salted("10 g salt"))).doesNotContainKey("flat-top");
    assertThat(asked(salted("0 g salt"))).containsKey("flat-top");
    assertThat(asked(told("\"hot milk\"", ""))).containsKey("flat-top");
  }

  private static BakeSheet salted(String salt) {
    return sheet(
        "{\"style\": \"yeast bread\", \"formula\": [\"500 g flour\", \"%s\"], \"seen\": [\"dense crumb\"]}"
            .formatted(salt));
  }

  @Test
  void the_best_come_first_and_no_more_than_are_wanted() {
    Workup workup = reasoning.work(DENSE);
    List<Question> two =
        NextQuestions.of(reasoning, DENSE, workup, reasoning.judge(workup), Set.of(), 2);
    List<Question> all = new ArrayList<>(asked(DENSE).values());
    all.sort((one, other) -> Double.compare(other.worth(), one.worth()));

    assertThat(two).containsExactlyElementsOf(all.subList(0, 2));
    assertThat(all).allSatisfy(one -> assertThat(one.bits()).isGreaterThanOrEqualTo(0.002));
  }

  @Test
  void worth_is_bits_for_what_they_cost() {
    assertThat(new Question("a", "?", "", 0.3, Cost.LOOK, false).worth()).isEqualTo(0.3);
    assertThat(new Question("a", "?", "", 0.3, Cost.MEASURE, false).worth())
        .isCloseTo(0.2, within(1e-9));
    assertThat(new Question("a", "?", "", 0.3, Cost.BAKE_AGAIN, false).worth())
        .isCloseTo(0.05, within(1e-9));
  }
}
