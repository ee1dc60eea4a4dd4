package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.Allergen;
import crumbtrail.knowledge.Caution;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Each caution is shown where it concerns the sheet, and not where it does not. */
class CautionsTest {
  private static final RuleBase RULES = Scored.PIPELINE.rules();
  private static final Knowledge KNOWLEDGE = RULES.catalogue().knowledge();
  private static final Pantry PANTRY = RULES.pantry();

  private static final String LEAN =
      "'formula':['500 g bread flour','340 g water','10 g salt','5 g instant yeast']";

  /** A caution and two sheets: one that it concerns, one like it that it does not. */
  private record Pair(String key, String concerned, String spared) {
    @Override
    public String toString() {
      return key;
    }
  }

  static Stream<Pair> pairs() {
    return Stream.of(
        new Pair("mould", seen("mould"), seen("dense crumb")),
        new Pair("rope", seen("sticky threads in the crumb", "rope"), seen("sticky dough")),
        new Pair("raw-dough", seen("raw-centre"), seen("too-salty")),
        new Pair(
            "warm-perishable-dough",
            rich("'bulk':[{'time':'90 min','temperature':'26 C'}]", "60 min", "27 C"),
            rich("'bulk':[{'time':'14 h','temperature':'4 C'}]", "90 min", "27 C")),
        new Pair("perishable-filling", with("200 g custard"), with("200 g graham flour")),
        new Pair(
            "bread-in-jars", process("'vessel':{'kind':'glass jar'}"), process("'room':'21 C'")),
        new Pair("lye", with("30 g lye"), with("5 g baking soda")),
        new Pair("salt-substitute", with("6 g potassium chloride"), with("6 g table salt")),
        new Pair(
            "hot-steam",
            process("'vessel':{'kind':'cast iron pot','lid':true}"),
            process("'vessel':{'kind':'tin'}")),
        new Pair(
            "flour-dust",
            process("'shaping':{'dustingFlour':'heavy'}"),
            process("'shaping':{'dustingFlour':'light'}")),
        new Pair(
            "gluten-free",
            "{'formula':['500 g gluten-free flour','400 g water','10 g salt','7 g instant yeast']}",
            "{" + LEAN + "}"),
        new Pair("allergens", "{" + LEAN + "}", seen("dense crumb")));
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void a_caution_is_shown_where_it_concerns_the_sheet_and_not_elsewhere(Pair pair) {
    assertThat(shown(pair.concerned())).as("concerned").contains(pair.key());
    assertThat(shown(pair.spared())).as("spared").doesNotContain(pair.key());
  }

  @Test
  void every_caution_is_tried() {
    assertThat(pairs().map(Pair::key))
        .containsExactlyInAnyOrderElementsOf(
            KNOWLEDGE.cautions().stream().map(Caution::key).toList());
  }

  @Test
  void a_lean_loaf_gets_one_line() {
    assertThat(cautions("{" + LEAN + "}"))
        .containsExactly(
            "Allergens here: wheat (US and EU lists). Tell whoever eats the bread, as your local"
                + " food law asks.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          500 g rye flour | other-cereals
          500 g buckwheat flour | ''
          250 ml oat milk | other-cereals
          250 ml almond milk | tree-nuts
          50 g peanut butter | peanuts
          60 g unsalted butter | milk
          60 g vegan butter | ''
          2 large eggs | egg
          30 g sesame seeds | sesame
          30 g tahini | sesame
          100 g walnuts | tree-nuts
          1 tsp nutmeg | ''
          100 g coconut | ''
          20 g soya flour | soy
          1 tbsp mustard | mustard
          1 tsp celery salt | celery
          40 g anchovies | fish
          100 g dried apricots | sulphites
          80 g lupin flour | lupin
          100 g prawns | crustaceans
          50 g clams | molluscs
          300 g spelt flour | wheat
          500 g flour | wheat
          30 g milk powder | milk
          """)
  void a_line_holds(String line, String key) {
    assertThat(Allergens.in(KNOWLEDGE, PANTRY, sheet("{'formula':['" + line + "']}")))
        .extracting(Allergen::key)
        .containsExactlyElementsOf(key.isEmpty() ? List.of() : List.of(key));
  }

  @Test
  void the_lists_of_both_laws_are_complete() {
    List<String> us = names(KNOWLEDGE.allergens().stream().map(Allergen::us));
    List<String> eu = names(KNOWLEDGE.allergens().stream().map(Allergen::eu));
    assertThat(us).hasSize(9);
    assertThat(eu).hasSize(14);
  }

  private static List<String> names(Stream<String> names) {
    return names.filter(name -> name != null).distinct().toList();
  }

  @Test
  void the_pantry_and_the_allergens_know_each_other() {
    List<String> keys = KNOWLEDGE.allergens().stream().flatMap(a -> a.pantry().stream()).toList();
    assertThat(keys).allSatisfy(key -> assertThat(PANTRY.withKey(key)).as(key).isPresent());
    assertThat(PANTRY.all())
        .filteredOn(one -> one.kind() == Kind.FLOUR && !one.has("gluten-free"))
        .extracting(Ingredient::key)
        .allSatisfy(key -> assertThat(keys).contains(key));
    assertThat(PANTRY.all())
        .filteredOn(one -> one.kind() == Kind.EGG || one.kind() == Kind.DAIRY)
        .extracting(Ingredient::key)
        .allSatisfy(key -> assertThat(keys).contains(key));
  }

  @Test
  void warm_hours_are_told() {
    assertThat(cautions(rich("'bulk':[{'time':'90 min','temperature':'26 C'}]", "60 min", "27 C")))
        .anyMatch(
            one ->
                one.startsWith(
                    "This dough holds egg and milk or its like and stood in the warmth for 2 h 30"
                        + " min in all. "));
    assertThat(cautions(rich("'bulk':[{'time':'80 min','temperature':'35 C'}]", "10 min", "27 C")))
        .anyMatch(one -> one.contains("stood above 32 °C for 1 h 20 min."));
  }

  @Test
  void a_long_stage_of_which_no_temperature_is_told_may_have_been_in_the_fridge() {
    assertThat(shown(rich("'bulk':[{'time':'12 h'}]", "60 min", "27 C")))
        .doesNotContain("warm-perishable-dough");
  }

  private static String rich(String bulk, String proof, String celsius) {
    return "{'formula':['500 g flour','200 g milk','2 eggs','9 g salt','6 g instant yeast'],"
        + "'process':{"
        + bulk
        + ",'proof':[{'time':'"
        + proof
        + "','temperature':'"
        + celsius
        + "'}]}}";
  }

  private static String with(String line) {
    return "{" + LEAN.replace("]", ",'" + line + "']") + "}";
  }

  private static String process(String process) {
    return "{" + LEAN + ",'process':{" + process + "}}";
  }

  private static String seen(String... signs) {
    return Stream.of(signs).collect(Collectors.joining("','", "{'seen':['", "']}"));
  }

  private static List<String> cautions(String json) {
    return Scored.PIPELINE.trace(sheet(json)).cautions();
  }

  // The last sentence of a caution has nothing filled in and tells which it is.
  private static List<String> shown(String json) {
    List<String> cautions = cautions(json);
    return KNOWLEDGE.cautions().stream()
        .filter(one -> cautions.stream().anyMatch(said -> said.endsWith(last(one.words()))))
        .map(Caution::key)
        .toList();
  }

  private static String last(String words) {
    String[] sentences = words.split("(?<=\\.) ");
    return sentences[sentences.length - 1];
  }

  private static BakeSheet sheet(String json) {
    return SheetReader.read(json.replace('\'', '"')).sheet().orElseThrow();
  }
}
