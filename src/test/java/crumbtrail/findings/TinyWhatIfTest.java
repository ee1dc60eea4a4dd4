package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.QuestionKind.Cost;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.TinyRules;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.BakeSheet.SeenSign;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading.Known;
import crumbtrail.workup.Reading.Scale;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What-ifs on a few rules, small enough to reckon by hand. Priors: over-proofed everyday (-10),
 * salt too low common (-13), dead yeast rare (-20); surely is 20 decibans, firmly 10.
 */
class TinyWhatIfTest {
  private static final String QUESTIONS =
      """
      - {about: sour-smell, ask: "Is it sour?", often: sometimes}
      - {about: pale-crust, ask: "Is it pale?", how: "By day.", cost: measure, often: often}
      - {about: flat-top, ask: "Is it flat?", unless: [sticky-dough, salt, cut-warm]}
      - {about: thick-crust, ask: "Is it thick?", breads: [rye]}
      - {about: yeast-old, ask: "Was it old?", how: "Its date.", cost: remember, often: seldom}
      - {about: oven-cold, ask: "Was it heated?", how: "Think.", cost: bake again, no: flour-swapped}
      - {about: proof time, ask: "How long?", how: "A clock.", field: "proof[0].time", cost: remember}
      """;

  private static RuleBase rules;
  private Reasoning reasoning;

  @BeforeAll
  static void lay_out(@TempDir Path folder, @TempDir Path cache)
      throws IOException, FaultyKnowledge {
    TinyRules.write(folder);
    TinyRules.file(folder, "questions.yaml", QUESTIONS);
    TinyRules.file(folder, "readings.yaml", Files.readString(Path.of("rules", "readings.yaml")));
    TinyRules.file(
        folder,
        "circumstances/all.yaml",
        TinyRules.CIRCUMSTANCES.replace(
            "phrases: [cut warm]", "outcome: true, phrases: [cut warm]"));
    TinyRules.file(
        folder,
        "styles/all.yaml",
        TinyRules.STYLES.replace(
            "    salt: {low",
            "    proof time: {low: 40, high: 80, source: common practice}\n    salt: {low"));
    String dense = rule("dense", "The baker saw \"dense crumb\"", "Suspect \"yeast dead\" surely");
    TinyRules.file(
        folder,
        "stages/more.dslr",
        dense
            + rule("sour", "The baker saw \"sour smell\"", "Doubt \"yeast dead\" firmly")
            + rule("flat", "The baker saw \"flat top\"", "Suspect \"yeast dead\" firmly")
            + rule("thick", "The baker saw \"thick crust\"", "Suspect \"yeast dead\" firmly")
            + rule(
                "not pale",
                "The baker looked for \"pale crust\" and did not see it",
                "Doubt \"yeast dead\" firmly")
            + rule("holes", "The baker saw \"large holes\"", "Suspect \"over proofed\" firmly")
            + rule("old", "It happened that \"yeast old\"", "Suspect \"yeast dead\" firmly")
            + rule("swapped", "It happened that \"flour swapped\"", "Doubt \"yeast dead\" firmly")
            + rule("long", "The proof time is over 90 min", "Suspect \"over proofed\" surely")
            + rule(
                "brisk",
                "The proof time is between 9 min and 11 min",
                "Doubt \"yeast dead\" firmly")
            + rule(
                "late",
                "The proof time is between 109 min and 111 min",
                "Suspect \"yeast dead\" firmly"));
    rules = RuleBase.of(folder, cache, said -> {});
  }

  private static String rule(String name, String when, String then) {
    return TinyRules.rule(name, when, then) + "\n";
  }

  @BeforeEach
  void open() {
    reasoning =
        new Reasoning(
            new SheetWorkup(rules.catalogue(), rules.pantry()),
            rules,
            new Ranking(rules.catalogue(), Weights.of(rules.catalogue())));
  }

  @AfterEach
  void close() {
    reasoning.close();
  }

  private static BakeSheet sheet(String json) {
    return SheetReader.read(json).sheet().orElseThrow();
  }

  private static final BakeSheet DENSE =
      sheet("{\"style\": \"yeast bread\", \"seen\": [\"dense crumb\"]}");

  private static final BakeSheet HUMMED = sheet("{\"seen\": [\"it hummed a tune\"]}");

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

  private static String timed(String proof) {
    return """
        {"style": "yeast bread", "seen": ["dense crumb"],
         "process": {"proof": [{"time": "%s", "temperature": "26 C"}]}}
        """
        .formatted(proof);
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

  private static BakeSheet told(String seen, String not) {
    String more = seen.isEmpty() ? "" : ", " + seen;
    return sheet(
        "{\"style\": \"yeast bread\", \"seen\": [\"dense crumb\"%s], \"notSeen\": [%s]}"
            .formatted(more, not));
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

  /** Ninety minutes are the middle of 80 to 100: about half of the draws are over the edge. */
  @Test
  void half_of_the_draws_have_the_proof_too_long_and_what_it_leaves_open_is_named() {
    BakeSheet sheet = sheet(timed("80-100 min"));
    Workup workup = reasoning.work(sheet);
    Firmness firmness = Firmness.of(reasoning, sheet, workup, reasoning.judge(workup));
    double sure = reading(sheet, "proof time").trust();
    // docs/rule-language.md: firmly by the trust, and what surely says above it by twice that less
    // one.
    double weighs = 10 * sure + 10 * (2 * sure - 1);
    double after = 1 / (1 + Math.pow(10, -(weighs - 10) / 10));

    assertThat(firmness.runs()).isEqualTo(300);
    // Three standard deviations of 300 throws of a coin are 0.087.
    assertThat(firmness.firstIn()).containsOnlyKeys("over-proofed", "yeast-dead");
    assertThat(firmness.firstIn().get("over-proofed")).isCloseTo(0.5, within(0.087));
    assertThat(firmness.firstIn().values().stream().mapToDouble(one -> one).sum())
        .isCloseTo(1, within(1e-9));
    assertThat(List.copyOf(firmness.firstIn().values()))
        .isSortedAccordingTo((one, other) -> Double.compare(other, one));
    assertThat(firmness.matters()).hasSize(1);
    Firmness.Matter matter = firmness.matters().get(0);
    // Of a clock that was read nobody needs telling; what follows from it is shown.
    assertThat(matter.reading()).isEqualTo("proof ripeness");
    assertThat(matter.from()).isEqualTo(reading(sheet(timed("80 min")), "proof ripeness").value());
    assertThat(matter.to()).isEqualTo(reading(sheet(timed("100 min")), "proof ripeness").value());
    assertThat(matter.uncertain().culprit()).isEqualTo("\"80-100 min\"");
    assertThat(matter.effect()).isCloseTo(after, within(1e-6));
  }

  private crumbtrail.workup.Reading reading(BakeSheet sheet, String name) {
    return reasoning.work(sheet).readings().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void what_moves_no_cause_is_not_named_and_what_is_told_to_a_point_is_run_once() {
    Firmness open = firmness(sheet(timed("40-60 min")));
    Firmness exact = firmness(sheet(timed("50 min")));
    Firmness nothing = firmness(HUMMED);

    assertThat(open.runs()).isEqualTo(300);
    assertThat(open.firstIn()).isEqualTo(Map.of("yeast-dead", 1.0));
    assertThat(open.matters()).isEmpty();
    assertThat(exact.runs()).isEqualTo(1);
    assertThat(exact.firstIn()).isEqualTo(Map.of("yeast-dead", 1.0));
    assertThat(nothing.firstIn()).isEmpty();
  }

  private Firmness firmness(BakeSheet sheet) {
    Workup workup = reasoning.work(sheet);
    return Firmness.of(reasoning, sheet, workup, reasoning.judge(workup));
  }

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
