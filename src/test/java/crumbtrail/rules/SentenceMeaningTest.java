package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.Style;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Reading.Known;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every sentence that rules may use, compiled by the engine and held against facts on both sides.
 * One rule for each condition sentence; its name is the sentence, and it suspects "salt too low".
 */
class SentenceMeaningTest {
  private static final List<String> SIGNS =
      List.of(
          "dense crumb",
          "sticky dough",
          "pale crust",
          "thick crust",
          "sour smell",
          "large holes",
          "flat top",
          "collapsed top");
  private static final List<String> CIRCUMSTANCES =
      List.of("yeast old", "cut warm", "oven cold", "milk hot", "salt forgotten", "flour swapped");
  private static final List<String> TAGS = List.of("tin", "white", "rye", "sweet", "flat");

  private static final Map<String, String> RULES = new LinkedHashMap<>();
  private static final Map<String, String> VERDICTS = new LinkedHashMap<>();

  @TempDir static Path folder;
  @TempDir static Path cache;
  private static RuleBase base;

  @BeforeAll
  static void compile_a_rule_for_each_sentence() throws Exception {
    TinyRules.write(folder);
    for (String sentence :
        List.of(
            "The salt is under 1.5 %",
            "The salt is over 2.5 %",
            "The salt is between 1 % and 2 %",
            "The salt is between 1 and 2 %",
            "The water balance is under -3.5 points",
            "The bulk ripeness is over 1.5 times ready",
            "The salt is far too low for this bread",
            "The salt is far too high for this bread",
            "The salt is low beyond all custom for this bread",
            "The salt is high beyond all custom for this bread",
            "The salt is low for this bread",
            "The salt is high for this bread",
            "The salt is usual for this bread",
            "Nothing is known of the salt",
            "The baker looked for \"dense crumb\" and did not see it",
            "The baker did not speak of \"dense crumb\"",
            "The bread is not \"tin\"")) {
      RULES.put(sentence.replace('"', '\''), sentence);
    }
    rows("The baker clearly saw ", SIGNS.subList(0, 6));
    rows("The baker saw ", SIGNS);
    rows("It happened that ", CIRCUMSTANCES);
    rows("The bread is ", TAGS);
    RULES.put(
        "two things must hold",
        "The salt is under 1.5 %\nThe baker saw \"sticky dough\"\nThe bread is \"tin\"");
    StringBuilder text = new StringBuilder();
    RULES.forEach(
        (name, when) -> text.append(TinyRules.rule(name, when, "Suspect \"salt too low\" firmly")));
    for (String verdict :
        List.of(
            "Suspect \"yeast dead\" faintly",
            "Suspect \"yeast dead\" plainly",
            "Suspect \"yeast dead\" firmly",
            "Suspect \"yeast dead\" surely",
            "Suspect \"yeast dead\" beyond doubt",
            "Doubt \"yeast dead\" faintly",
            "Doubt \"yeast dead\" plainly",
            "Doubt \"yeast dead\" firmly",
            "Clear \"yeast dead\"")) {
      String name = verdict.replace('"', '\'');
      VERDICTS.put(name, verdict);
      // A limit of its own for each: two rules may not speak of one cause in the same case.
      String when = "The proof time is over 60.%d min".formatted(VERDICTS.size());
      text.append(TinyRules.rule(name, when, verdict));
    }
    TinyRules.file(folder, "stages/salt.dslr", text.toString());
    base = RuleBase.of(folder, cache, said -> {});
  }

  private static void rows(String start, List<String> things) {
    for (int many = 1; many <= things.size(); many++) {
      String sentence =
          start
              + things.subList(0, many).stream()
                  .map(thing -> "\"" + thing + "\"")
                  .collect(Collectors.joining(" or "));
      RULES.put(sentence.replace('"', '\''), sentence);
    }
  }

  @Test
  void no_sentence_of_the_sentence_file_is_left_out_here() {
    assertThat(TinyRules.forms("when"))
        .isNotEmpty()
        .allSatisfy(
            form ->
                assertThat(RULES.values())
                    .as(form)
                    .anyMatch(sentence -> new Sentences(form).condition(sentence).isPresent()));
    assertThat(TinyRules.forms("then"))
        .isNotEmpty()
        .allSatisfy(
            form ->
                assertThat(VERDICTS.values())
                    .as(form)
                    .anyMatch(sentence -> new Sentences(form).consequence(sentence).isPresent()));
  }

  @Test
  void under_and_over_leave_out_the_limit_itself() {
    assertThat(fired(salt(1.49))).contains("The salt is under 1.5 %");
    assertThat(fired(salt(1.5))).doesNotContain("The salt is under 1.5 %");
    assertThat(fired(salt(2.51))).contains("The salt is over 2.5 %");
    assertThat(fired(salt(2.5))).doesNotContain("The salt is over 2.5 %");
  }

  @Test
  void limits_may_be_negative_and_units_may_have_two_words() {
    assertThat(fired(reading("water balance", -3.6)))
        .contains("The water balance is under -3.5 points");
    assertThat(fired(reading("water balance", 3.6)))
        .doesNotContain("The water balance is under -3.5 points");
    assertThat(fired(reading("bulk ripeness", 1.6)))
        .contains("The bulk ripeness is over 1.5 times ready");
    assertThat(fired(reading("bulk ripeness", 1.5)))
        .doesNotContain("The bulk ripeness is over 1.5 times ready");
  }

  @Test
  void between_takes_both_ends_in() {
    for (String sentence :
        List.of("The salt is between 1 and 2 %", "The salt is between 1 % and 2 %")) {
      assertThat(fired(salt(1))).contains(sentence);
      assertThat(fired(salt(2))).contains(sentence);
      assertThat(fired(salt(0.99))).doesNotContain(sentence);
      assertThat(fired(salt(2.01))).doesNotContain(sentence);
    }
  }

  /** Usual 1.6 to 2.2: far is beyond a quarter of the nearer edge, 1.2 and 2.75. */
  @Test
  void low_holds_far_too_low_and_both_stop_at_the_usual_range() {
    assertThat(placed(1.19))
        .containsExactlyInAnyOrder(
            "The salt is low for this bread", "The salt is far too low for this bread");
    assertThat(placed(1.21)).containsExactly("The salt is low for this bread");
    assertThat(placed(1.6)).containsExactly("The salt is usual for this bread");
    assertThat(placed(2.2)).containsExactly("The salt is usual for this bread");
    assertThat(placed(2.74)).containsExactly("The salt is high for this bread");
    assertThat(placed(2.76))
        .containsExactlyInAnyOrder(
            "The salt is high for this bread", "The salt is far too high for this bread");
  }

  /** Usual 1.6 to 2.2: twice as far as far, 0.8 and 3.3. */
  @Test
  void beyond_all_custom_is_twice_as_far_as_far() {
    assertThat(placed(0.79))
        .containsExactlyInAnyOrder(
            "The salt is low for this bread",
            "The salt is far too low for this bread",
            "The salt is low beyond all custom for this bread");
    assertThat(placed(0.81)).doesNotContain("The salt is low beyond all custom for this bread");
    assertThat(placed(3.29)).doesNotContain("The salt is high beyond all custom for this bread");
    assertThat(placed(3.31))
        .containsExactlyInAnyOrder(
            "The salt is high for this bread",
            "The salt is far too high for this bread",
            "The salt is high beyond all custom for this bread");
  }

  @Test
  void without_a_usual_range_nothing_is_low_high_or_usual() {
    assertThat(fired(salt(0.1), salt(9)))
        .noneMatch(rule -> rule.startsWith("The salt is ") && rule.endsWith("for this bread"));
  }

  @Test
  void a_reading_of_another_name_does_not_count() {
    assertThat(fired(reading("proof time", 1))).doesNotContain("The salt is under 1.5 %");
  }

  @Test
  void nothing_is_known_only_while_the_reading_is_missing() {
    assertThat(fired(reading("proof time", 1))).contains("Nothing is known of the salt");
    assertThat(fired(salt(0))).doesNotContain("Nothing is known of the salt");
  }

  @Test
  void what_is_said_of_missing_facts_names_no_facts() {
    assertThat(base.run(List.of()))
        .filteredOn(evidence -> evidence.rule().equals("Nothing is known of the salt"))
        .singleElement()
        .satisfies(evidence -> assertThat(evidence.facts()).isEmpty());
  }

  @Test
  void seen_ruled_out_and_not_spoken_of_are_three_things() {
    String saw = "The baker saw 'dense crumb'";
    String ruledOut = "The baker looked for 'dense crumb' and did not see it";
    String silent = "The baker did not speak of 'dense crumb'";
    List<String> three = List.of(saw, ruledOut, silent);

    assertThat(of(three, seen("dense crumb", Degree.SLIGHT))).containsExactly(saw);
    assertThat(of(three, new SignFact("dense crumb", false, Degree.PLAIN, "")))
        .containsExactly(ruledOut);
    assertThat(of(three, seen("pale crust", Degree.PLAIN))).containsExactly(silent);
  }

  @Test
  void clearly_seen_wants_a_marked_sign_that_was_seen() {
    String clearly = "The baker clearly saw 'dense crumb'";

    assertThat(fired(seen("dense crumb", Degree.MARKED))).contains(clearly);
    assertThat(fired(seen("dense crumb", Degree.PLAIN))).doesNotContain(clearly);
    assertThat(fired(new SignFact("dense crumb", false, Degree.MARKED, "")))
        .doesNotContain(clearly);
  }

  @Test
  void any_one_sign_of_a_row_will_do_and_no_other() {
    for (int nth = 0; nth < SIGNS.size(); nth++) {
      Set<String> fired = fired(seen(SIGNS.get(nth), Degree.MARKED));

      assertThat(inRow(fired, "The baker saw ")).isEqualTo(SIGNS.size() - nth);
      assertThat(inRow(fired, "The baker clearly saw ")).isEqualTo(Math.max(0, 6 - nth));
    }
  }

  @Test
  void any_one_circumstance_of_a_row_will_do_and_no_other() {
    for (int nth = 0; nth < CIRCUMSTANCES.size(); nth++) {
      Set<String> fired = fired(new CircumstanceFact(CIRCUMSTANCES.get(nth), "said"));

      assertThat(inRow(fired, "It happened that ")).isEqualTo(CIRCUMSTANCES.size() - nth);
    }
    assertThat(inRow(fired(new CircumstanceFact("yeast", "")), "It happened that ")).isZero();
  }

  @Test
  void any_one_kind_of_a_row_will_do_and_no_other() {
    for (int nth = 0; nth < TAGS.size(); nth++) {
      Set<String> fired = fired(new Bread("loaf", List.of(TAGS.get(nth), "lean")));

      assertThat(inRow(fired, "The bread is '")).isEqualTo(TAGS.size() - nth);
      assertThat(fired.contains("The bread is not 'tin'")).isEqualTo(nth > 0);
    }
  }

  @Test
  void a_rule_wants_all_its_sentences() {
    Reading salt = salt(1.2);
    SignFact sticky = seen("sticky dough", Degree.SLIGHT);
    Bread tin = new Bread("tin loaf", List.of("tin"));

    assertThat(fired(salt, sticky, tin)).contains("two things must hold");
    assertThat(fired(salt, sticky)).doesNotContain("two things must hold");
    assertThat(fired(salt, tin)).doesNotContain("two things must hold");
    assertThat(fired(sticky, tin)).doesNotContain("two things must hold");
    assertThat(fired(salt(1.5), sticky, tin)).doesNotContain("two things must hold");
  }

  @Test
  void each_verdict_has_its_weight() {
    Map<String, Double> weights =
        base.run(List.of(reading("proof time", 61))).stream()
            .filter(evidence -> evidence.cause().equals("yeast-dead"))
            .collect(Collectors.toMap(Evidence::rule, Evidence::decibans));

    assertThat(weights)
        .isEqualTo(
            Map.of(
                "Suspect 'yeast dead' faintly", 3.0,
                "Suspect 'yeast dead' plainly", 6.0,
                "Suspect 'yeast dead' firmly", 10.0,
                "Suspect 'yeast dead' surely", 20.0,
                "Suspect 'yeast dead' beyond doubt", 30.0,
                "Doubt 'yeast dead' faintly", -3.0,
                "Doubt 'yeast dead' plainly", -6.0,
                "Doubt 'yeast dead' firmly", -10.0,
                "Clear 'yeast dead'", -20.0));
    assertThat(base.run(List.of(reading("proof time", 60))))
        .noneMatch(evidence -> evidence.cause().equals("yeast-dead"));
  }

  @Test
  void evidence_carries_what_the_rule_says_and_what_matched() {
    Reading salt = salt(1.2);
    SignFact sticky = seen("sticky dough", Degree.SLIGHT);

    Evidence evidence =
        base.run(List.of(new Bread("tin loaf", List.of("tin")), salt, sticky)).stream()
            .filter(one -> one.rule().equals("two things must hold"))
            .findFirst()
            .orElseThrow();

    assertThat(evidence.cause()).isEqualTo("salt-too-low");
    assertThat(evidence.strand()).isEqualTo("two things must hold");
    assertThat(evidence.lesson()).isEqualTo("For tests.");
    assertThat(evidence.source()).isEqualTo("common practice");
    assertThat(evidence.facts()).containsExactlyInAnyOrder(salt, sticky);
  }

  @Test
  void the_kind_of_bread_is_named_where_nothing_else_matched() {
    Bread rye = new Bread("rye loaf", List.of("rye"));

    assertThat(base.run(List.of(rye)))
        .filteredOn(evidence -> evidence.rule().equals("The bread is not 'tin'"))
        .singleElement()
        .satisfies(evidence -> assertThat(evidence.facts()).isEqualTo(List.of(rye)));
  }

  @Test
  void the_least_trusted_reading_sets_the_weight() {
    Reading vague =
        new Reading(
            "salt", 1.2, 0.5, 2, Known.ASSUMED, Optional.empty(), 0.4, Reading.Scale.AMOUNT);

    Map<String, Double> weights =
        base
            .run(
                List.of(
                    vague,
                    reading("proof time", 61),
                    seen("sticky dough", Degree.PLAIN),
                    new Bread("tin loaf", List.of("tin"))))
            .stream()
            .filter(evidence -> evidence.cause().equals("salt-too-low"))
            .collect(Collectors.toMap(Evidence::rule, Evidence::decibans));

    assertThat(weights)
        .containsEntry("The salt is under 1.5 %", 4.0)
        .containsEntry("two things must hold", 4.0)
        .containsEntry("The baker saw 'dense crumb' or 'sticky dough'", 10.0);
  }

  @Test
  void the_order_of_facts_does_not_show() {
    List<Object> facts = new ArrayList<>(manyFacts());
    List<Evidence> expected = base.run(facts);
    Random random = new Random(7);

    assertThat(expected).hasSizeGreaterThan(20);
    for (int turn = 0; turn < 20; turn++) {
      Collections.shuffle(facts, random);
      assertThat(base.run(facts)).isEqualTo(expected);
    }
  }

  @Test
  void eight_threads_hear_what_one_hears() throws Exception {
    List<Object> many = manyFacts();
    List<Object> few = List.of(salt(2));
    List<Evidence> ofMany = base.run(many);
    List<Evidence> ofFew = base.run(few);
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Callable<List<Evidence>>> runs = new ArrayList<>();
      for (int turn = 0; turn < 200; turn++) {
        List<Object> facts = turn % 2 == 0 ? many : few;
        runs.add(() -> base.run(facts));
      }
      List<Future<List<Evidence>>> answers = threads.invokeAll(runs);
      for (int turn = 0; turn < answers.size(); turn++) {
        assertThat(answers.get(turn).get()).isEqualTo(turn % 2 == 0 ? ofMany : ofFew);
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void the_rule_base_names_its_rules_and_its_version() {
    assertThat(base.size()).isEqualTo(RULES.size() + VERDICTS.size());
    assertThat(base.ruleNames()).containsAll(RULES.keySet()).isSorted();
    assertThat(base.version()).matches("[0-9a-f]{16}");
  }

  private static List<Object> manyFacts() {
    List<Object> facts = new ArrayList<>();
    facts.add(salt(1.2));
    facts.add(reading("proof time", 90));
    facts.add(reading("water balance", -4));
    SIGNS.forEach(sign -> facts.add(seen(sign, Degree.MARKED)));
    CIRCUMSTANCES.forEach(one -> facts.add(new CircumstanceFact(one, "said")));
    facts.add(new Bread("tin loaf", List.of("tin", "white")));
    return facts;
  }

  private static Set<String> fired(Object... facts) {
    return rules(base.run(List.of(facts)));
  }

  private static Set<String> of(List<String> rules, Object... facts) {
    Set<String> fired = fired(facts);
    fired.retainAll(rules);
    return fired;
  }

  private static Set<String> placed(double salt) {
    Style.Range usual = new Style.Range(1.6, 2.2, "common practice");
    Set<String> fired =
        fired(
            Reading.of(
                "salt",
                salt,
                salt,
                salt,
                Known.MEASURED,
                Optional.of(usual),
                Reading.Scale.AMOUNT));
    fired.removeIf(rule -> !rule.endsWith("for this bread"));
    return fired;
  }

  private static Set<String> rules(Collection<Evidence> evidence) {
    return evidence.stream().map(Evidence::rule).collect(Collectors.toCollection(HashSet::new));
  }

  private static long inRow(Set<String> rules, String start) {
    return rules.stream().filter(rule -> rule.startsWith(start)).count();
  }

  private static Reading salt(double percent) {
    return reading("salt", percent);
  }

  private static Reading reading(String name, double value) {
    return Reading.of(
        name, value, value, value, Known.MEASURED, Optional.empty(), Reading.Scale.AMOUNT);
  }

  private static SignFact seen(String sign, Degree degree) {
    return new SignFact(sign, true, degree, "said");
  }
}
