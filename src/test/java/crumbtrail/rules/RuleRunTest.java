package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.SignKind;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.Reading;
import crumbtrail.workup.SheetWorkup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A run that is asked again must answer as one that begins anew. */
class RuleRunTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final List<List<Object>> BAKES = new ArrayList<>();

  @BeforeAll
  static void work_out_every_case() throws IOException {
    SheetWorkup workups = new SheetWorkup(RULES.catalogue(), RULES.pantry());
    for (String folder : List.of("cases", "src/test/resources/real-cases")) {
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
          JsonNode json = new ObjectMapper().readTree(Files.readString(file));
          JsonNode sheet = json.has("sheet") ? json.get("sheet") : json;
          BAKES.add(Facts.of(workups.work(SheetReader.read(sheet).sheet().orElseThrow())));
        }
      }
    }
  }

  @Test
  void one_run_led_from_bake_to_bake_says_of_each_what_a_fresh_run_says() {
    try (RuleRun run = RULES.open()) {
      for (int round = 0; round < 2; round++) {
        for (List<Object> facts : BAKES) {
          assertThat(flat(run.evidence(facts))).isEqualTo(RULES.run(facts)).isNotEmpty();
        }
      }
    }
  }

  @Test
  void a_run_through_small_changes_says_what_a_fresh_run_says() {
    Random random = new Random(7);
    for (List<Object> bake : BAKES) {
      try (RuleRun run = RULES.open()) {
        for (int turn = 0; turn < 4; turn++) {
          List<Object> facts = altered(bake, random);
          assertThat(flat(run.evidence(facts))).isEqualTo(RULES.run(facts));
        }
        assertThat(flat(run.evidence(bake))).isEqualTo(RULES.run(bake));
      }
    }
  }

  @Test
  void the_same_facts_again_and_a_fact_said_twice_change_nothing() {
    List<Object> facts = BAKES.get(0);
    List<Object> doubled = new ArrayList<>(facts);
    doubled.addAll(facts);
    try (RuleRun run = RULES.open()) {
      Map<String, List<Evidence>> first = run.evidence(facts);

      assertThat(run.evidence(facts)).isEqualTo(first);
      assertThat(run.evidence(doubled)).isEqualTo(first);
    }
  }

  @Test
  void the_words_on_a_cause_of_which_nothing_else_is_said_are_the_very_same_list() {
    List<Object> facts = BAKES.get(0);
    List<Object> more = new ArrayList<>(facts);
    more.add(new SignFact("sticky dough", true, Degree.PLAIN, "it stuck"));
    try (RuleRun run = RULES.open()) {
      Map<String, List<Evidence>> before = run.evidence(facts);
      Map<String, List<Evidence>> after = run.evidence(more);

      assertThat(after).isNotEqualTo(before);
      before.forEach(
          (cause, words) -> {
            if (words.equals(after.get(cause))) {
              assertThat(after.get(cause)).isSameAs(words);
            }
          });
    }
  }

  @Test
  void what_each_of_some_signs_adds_is_told_apart_after_one_run_with_all_of_them() {
    List<Object> signs = new ArrayList<>();
    for (SignKind kind : RULES.catalogue().knowledge().signs()) {
      if (!RULES.mindsSilence(kind.key())) {
        signs.add(sign(kind.key(), true));
        signs.add(sign(kind.key(), false));
      }
    }
    for (int bake = 0; bake < BAKES.size(); bake += 5) {
      List<Object> facts = BAKES.get(bake);
      try (RuleRun run = RULES.open();
          RuleRun single = RULES.open()) {
        RuleRun.OneMore each = run.withOneMore(facts, signs);
        assertThat(each.changes()).hasSameSizeAs(signs);
        for (int one = 0; one < signs.size(); one++) {
          List<Object> more = new ArrayList<>(facts);
          more.add(signs.get(one));
          Map<String, List<Evidence>> heard = new HashMap<>(each.without());
          heard.putAll(each.changes().get(one));
          assertThat(heard).as("%s", signs.get(one)).isEqualTo(single.evidence(more));
        }
      }
    }
  }

  @Test
  void a_sign_of_whose_silence_a_rule_speaks_is_known_for_it() {
    assertThat(RULES.mindsSilence("butter-leaked")).isTrue();
    assertThat(RULES.mindsSilence("dense-crumb")).isFalse();
  }

  private static SignFact sign(String key, boolean seen) {
    return new SignFact(Catalogue.spoken(key), seen, Degree.PLAIN, "tried");
  }

  // What is alike to the rules may not make them speak otherwise.
  @Test
  void readings_that_look_the_same_have_the_same_rules_speak_with_the_same_weight() {
    Sights sights = RULES.sights();
    Random random = new Random(7);
    int alike = 0;
    for (List<Object> bake : BAKES) {
      for (int turn = 0; turn < 6; turn++) {
        List<Object> facts = new ArrayList<>();
        for (Object fact : bake) {
          Object moved = fact instanceof Reading reading ? moved(reading, random) : fact;
          facts.add(sights.of(moved).equals(sights.of(fact)) ? moved : fact);
        }
        alike += facts.equals(bake) ? 0 : 1;
        assertThat(words(RULES.run(facts))).isEqualTo(words(RULES.run(bake)));
      }
    }
    assertThat(alike).isGreaterThan(BAKES.size());
  }

  private static Reading moved(Reading reading, Random random) {
    return new Reading(
        reading.name(),
        reading.value() * (0.9 + 0.2 * random.nextDouble()),
        reading.low(),
        reading.high(),
        reading.known(),
        reading.usual(),
        reading.trust(),
        reading.scale());
  }

  private static List<String> words(List<Evidence> evidence) {
    return evidence.stream()
        .map(one -> one.cause() + " " + one.rule() + " " + one.decibans())
        .toList();
  }

  private static List<Evidence> flat(Map<String, List<Evidence>> heard) {
    return heard.values().stream().flatMap(List::stream).toList();
  }

  // Readings shifted or lost, signs and circumstances lost, a sign put in.
  private static List<Object> altered(List<Object> bake, Random random) {
    List<Object> facts = new ArrayList<>();
    for (Object fact : bake) {
      int lot = random.nextInt(6);
      if (lot == 0 && fact instanceof Reading reading) {
        double value = reading.value() * (0.5 + random.nextDouble());
        facts.add(
            Reading.of(
                reading.name(),
                value,
                value,
                value,
                reading.known(),
                reading.usual(),
                reading.scale()));
      } else if (lot != 1 || fact instanceof Bread) {
        facts.add(fact);
      }
    }
    facts.add(new SignFact("pale crust", random.nextBoolean(), Degree.MARKED, "put in"));
    return facts;
  }
}
