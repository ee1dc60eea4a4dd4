package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import crumbtrail.quantity.PlainText;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** No text, however odd, makes a reader throw or hang; it reads, or it says what is wrong. */
class SheetPropertyTest {

  @Property(tries = 1000)
  void anyTextIsALineOrAProblem(@ForAll @StringLength(max = 300) String text) {
    checkLine(text);
  }

  @Property(tries = 3000)
  void anyPileOfRecipeWordsIsALineOrAProblem(@ForAll("recipeWords") String text) {
    checkLine(text);
  }

  private static void checkLine(String text) {
    LineReading reading = IngredientLine.parse("x", text);
    assertThat(reading.line().isPresent()).isNotEqualTo(reading.problem().isPresent());
    reading
        .line()
        .ifPresent(
            line -> {
              assertThat(line.ingredient().chars().anyMatch(Character::isLetter)).isTrue();
              assertThat(line.written()).isEqualTo(text.strip());
              // Reading the words again finds the same.
              assertThat(IngredientLine.read("x", line.written())).contains(line);
            });
  }

  @Property(tries = 500)
  void noLineOfARecipeIsLost(@ForAll("recipes") List<String> lines) {
    RecipeText recipe = RecipeText.read(String.join("\n", lines));
    assertThat(recipe.lines().size() + recipe.preferments().size()).isLessThanOrEqualTo(400);
    for (String line : lines) {
      String plain = PlainText.of(line);
      if (plain.isBlank()) {
        continue; // nothing to lose
      }
      boolean remark =
          Stream.concat(recipe.remarks().stream(), recipe.steps().stream())
              .anyMatch(r -> PlainText.of(r).contains(plain));
      boolean title = !recipe.title().isEmpty() && line.contains(recipe.title());
      boolean kept =
          remark
              || title
              || !RecipeLine.ingredients("x", line, true).isEmpty()
              || Heading.of(plain).isPresent();
      assertThat(kept).as(line).isTrue();
    }
  }

  @Property(tries = 500)
  void anyTextIsASheetOrProblems(@ForAll @StringLength(max = 200) String text) {
    checkSheet(text);
  }

  @Property(tries = 1000)
  void aSpoiltSheetIsASheetOrProblems(
      @ForAll @IntRange(max = 2000) int at,
      @ForAll @IntRange(max = 30) int cut,
      @ForAll("splinters") String splinter) {
    int from = Math.min(at, ContractSheet.JSON.length());
    int to = Math.min(from + cut, ContractSheet.JSON.length());
    checkSheet(ContractSheet.JSON.substring(0, from) + splinter + ContractSheet.JSON.substring(to));
  }

  @Property(tries = 500)
  void anyTreeUnderKnownKeysIsASheetOrProblems(@ForAll("trees") JsonNode tree) {
    Reading reading = SheetReader.read(tree);
    assertThat(reading.sheet().isPresent()).isEqualTo(reading.problems().isEmpty());
    reading
        .sheet()
        .ifPresent(
            sheet -> assertThat(SheetReader.read(SheetWriter.write(sheet)).problems()).isEmpty());
  }

  private static void checkSheet(String json) {
    Reading reading = SheetReader.read(json);
    assertThat(reading.sheet().isPresent()).isEqualTo(reading.problems().isEmpty());
  }

  @Test
  @Timeout(60)
  void longRepeatsAreReadInTime() {
    for (String piece :
        List.of(
            "1 ", "1/", "(", "a ", "1 cup ", "12 % ", "- ", "about ", ", ", "x ", "2 x (", ".")) {
      String text = piece.repeat(399 / piece.length());
      IngredientLine.parse("x", text);
      RecipeText.read((text + "\n").repeat(70));
      VesselSizes.read(text);
      StageText.of(text);
    }
    assertThat(RecipeText.read("1 cup water\n".repeat(500)).lines()).hasSize(500);
  }

  @Provide
  Arbitrary<String> recipeWords() {
    return words(
        "1",
        "2",
        "1/2",
        "½",
        "500",
        "2,5",
        "g",
        "kg",
        "cups",
        "T",
        "oz.",
        "packet",
        "(",
        ")",
        "[",
        ",",
        ";",
        "-",
        "x",
        "%",
        "each",
        "large",
        "eggs",
        "flour",
        "water",
        "salt",
        "milk",
        "yeast",
        "bread",
        "active",
        "dry",
        "warm",
        "and",
        "or",
        "of",
        "a",
        "pinch",
        "to taste",
        "plus more",
        "protein",
        "hydration",
        "at",
        "38 C",
        "110 F",
        "beaten",
        "half",
        "juice of",
        ":",
        "/",
        "~",
        "about",
        "handful",
        "\u00a0",
        "•",
        "1.",
        "egg",
        "xl",
        "99999999999999999");
  }

  @Provide
  Arbitrary<List<String>> recipes() {
    Arbitrary<String> line =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(4, recipeWords()),
            net.jqwik.api.Tuple.of(
                2,
                Arbitraries.of(
                    "Poolish:",
                    "Dough",
                    "Method",
                    "For the topping:",
                    "Mix 10 min.",
                    "Ingredients",
                    "500 g flour",
                    "leave 12 h at 20 C",
                    "# Levain",
                    "Serves 4")));
    return line.map(String::strip).filter(text -> !text.isBlank()).list().ofMaxSize(12);
  }

  @Provide
  Arbitrary<String> splinters() {
    return Arbitraries.of(
        "",
        "\"",
        "{",
        "}",
        "[",
        "]",
        ",",
        ":",
        "null",
        "1",
        "\\",
        "\u0000",
        "true",
        "1e999",
        "-",
        "\\u12",
        "\"x\":",
        "[[[[",
        "{\"a\":{\"b\":",
        "\ud800",
        "ü");
  }

  @Provide
  Arbitrary<JsonNode> trees() {
    Arbitrary<JsonNode> leaf =
        Arbitraries.of(
                "500 g flour",
                "60 min",
                "24 C",
                "",
                "x",
                "9 x 5 in",
                "yes",
                "marked",
                "overnight",
                "1 cup",
                "60 min in a box",
                "2")
            .map(text -> (JsonNode) JsonNodeFactory.instance.textNode(text));
    Arbitrary<JsonNode> odd =
        Arbitraries.of(
            JsonNodeFactory.instance.numberNode(3),
            JsonNodeFactory.instance.numberNode(Double.NaN),
            JsonNodeFactory.instance.booleanNode(true),
            JsonNodeFactory.instance.nullNode(),
            JsonNodeFactory.instance.arrayNode(),
            JsonNodeFactory.instance.objectNode());
    Arbitrary<JsonNode> value =
        Arbitraries.recursive(
            () -> Arbitraries.oneOf(leaf, leaf, odd), SheetPropertyTest::inside, 0, 4);
    return objects(value);
  }

  private static Arbitrary<JsonNode> inside(Arbitrary<JsonNode> value) {
    Arbitrary<JsonNode> lists =
        value.list().ofMaxSize(3).map(list -> JsonNodeFactory.instance.arrayNode().addAll(list));
    return Arbitraries.oneOf(lists, objects(value));
  }

  private static Arbitrary<JsonNode> objects(Arbitrary<JsonNode> value) {
    Arbitrary<String> key =
        Arbitraries.of(
            "formula",
            "recipe",
            "preferments",
            "process",
            "seen",
            "notSeen",
            "title",
            "room",
            "mixing",
            "bulk",
            "proof",
            "vessel",
            "size",
            "baking",
            "stages",
            "time",
            "temperature",
            "oven",
            "ingredient",
            "amount",
            "name",
            "sign",
            "degree",
            "remarks",
            "folds",
            "lid");
    Arbitrary<java.util.Map<String, JsonNode>> map = Arbitraries.maps(key, value).ofMaxSize(5);
    return Combinators.combine(map, Arbitraries.of(true, false))
        .as((entries, ignored) -> JsonNodeFactory.instance.objectNode().setAll(entries));
  }

  private static Arbitrary<String> words(String... words) {
    return Arbitraries.of(words)
        .list()
        .ofMaxSize(12)
        .map(list -> String.join(" ", list))
        .flatMap(text -> Arbitraries.of(text, text.replace(" ", "")));
  }
}
