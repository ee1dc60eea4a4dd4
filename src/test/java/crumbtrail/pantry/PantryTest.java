package crumbtrail.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PantryTest {
  private static final Pantry PANTRY = shipped();

  private static Pantry shipped() {
    try {
      return Pantry.read(Path.of("rules", "pantry"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "bread flour, bread-flour",
    "strong white bread flour, bread-flour",
    "Strong White Flour, bread-flour",
    "flour (strong white), bread-flour",
    "organic unbleached bread flour, bread-flour",
    "bread fluor, bread-flour",
    "plain flour, all-purpose-flour",
    "all purpose flour, all-purpose-flour",
    "wholemeal spelt flour, whole-spelt-flour",
    "whole-wheat flour, whole-wheat-flour",
    "wholemeal flour, whole-wheat-flour",
    "whole wheat bread flour, whole-wheat-flour",
    "buckweat flour, buckwheat-flour",
    "T65, flour-t65",
    "T65 flour, flour-t65",
    "wheat flour type 550, flour-550",
    "tipo 00 flour, flour-00",
    "Manitoba flour, manitoba-flour",
    "self-raising flour, self-raising-flour",
    "self rising flour, self-rising-flour",
    "dark rye flour, rye-flour-dark",
    "whole rye flour, rye-flour-whole",
    "gluten free white bread flour, gluten-free-flour",
    "instant dry yeast, instant-yeast",
    "fast-action dried yeast, instant-yeast",
    "quick yeast, instant-yeast",
    "bread machine yeast, instant-yeast",
    "active dried yeast, active-dry-yeast",
    "fresh yeast, fresh-yeast",
    "osmotolerant instant yeast, osmotolerant-yeast",
    "rye levain, rye-starter",
    "stiff levain, stiff-starter",
    "stiff milk levain, stiff-starter",
    "levain, sourdough-starter",
    "ripe sourdough starter, sourdough-starter",
    "lukewarm water, water",
    "water from the tap, water",
    "waters, water",
    "eggs, egg",
    "whole eggs, egg",
    "egg yolks, egg-yolk",
    "beaten eggs, egg",
    "skimmed milk powder, milk-powder-nonfat",
    "milk, whole-milk",
    "butter, butter",
    "softened butter, butter",
    "salted butter, salted-butter",
    "peanut butter, peanut-butter",
    "extra virgin olive oil, olive-oil",
    "vegetable oil, vegetable-oil",
    "coarse salt, coarse-salt",
    "kosher salt, coarse-salt",
    "flaky sea salt, flaked-salt",
    "potassium chloride, potassium-chloride",
    "low-sodium salt, low-sodium-salt",
    "diastatic malt powder, diastatic-malt",
    "dark rye malt, rye-malt",
    "invert sugar, invert-sugar",
    "dried cranberries, dried-fruit",
    "candied and dried fruit, dried-fruit",
    "crème fraîche, sour-cream",
    "potatoes boiled, potato-boiled",
    "miso, miso",
    "baker's yeast, active-dry-yeast"
  })
  void findsWhatBakersSay(String name, String key) {
    assertThat(PANTRY.lookup(name)).map(Ingredient::key).contains(key);
  }

  @ParameterizedTest
  @CsvSource({
    "flour, all-purpose-flour",
    "yeast, active-dry-yeast",
    "dry yeast, active-dry-yeast",
    "salt, table-salt",
    "milk, whole-milk",
    "butter, butter",
    "honey or invert sugar, invert-sugar",
    "lupin flour, all-purpose-flour"
  })
  void saysWhenANameIsAGuess(String name, String key) {
    Find find = PANTRY.find(name).orElseThrow();
    assertThat(find.ingredient().key()).isEqualTo(key);
    assertThat(find.assumed()).isTrue();
    assertThat(find.note()).contains(name).contains(find.ingredient().plainName());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bread flour", "instant yeast", "water", "table salt", "egg"})
  void isSureOfPlainNames(String name) {
    assertThat(PANTRY.find(name)).hasValueSatisfying(f -> assertThat(f.assumed()).isFalse());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "dilithium", "preheat the oven", "butter beans", "§§§", "42"})
  void knowsWhatItDoesNotKnow(String name) {
    assertThat(PANTRY.lookup(name)).isEmpty();
  }

  @Test
  void everyOwnNameFindsItsIngredient() {
    for (Ingredient ingredient : PANTRY.all()) {
      for (String name : ingredient.names()) {
        assertThat(PANTRY.find(name))
            .as(name)
            .hasValueSatisfying(
                find -> {
                  assertThat(find.ingredient().key()).isEqualTo(ingredient.key());
                  assertThat(find.assumed()).isFalse();
                });
      }
    }
  }

  @Test
  void holdsAtLeastNinetyIngredientsEachWithASource() {
    assertThat(PANTRY.all()).hasSizeGreaterThanOrEqualTo(90);
    assertThat(PANTRY.all()).allSatisfy(i -> assertThat(i.source()).isNotBlank());
    assertThat(PANTRY.all())
        .filteredOn(i -> i.source().contains("usda"))
        .hasSizeGreaterThanOrEqualTo(60);
  }

  @Test
  void spreadsOfMeasuresRise() {
    for (Ingredient ingredient : PANTRY.all()) {
      if (ingredient.measures().containsKey("cup")) {
        double cup = ingredient.grams("cup").orElseThrow();
        assertThat(ingredient.grams("cup_low").orElseThrow())
            .as(ingredient.key())
            .isLessThanOrEqualTo(cup);
        assertThat(ingredient.grams("cup_high").orElseThrow())
            .as(ingredient.key())
            .isGreaterThanOrEqualTo(cup);
      }
    }
  }

  /** USDA SR 01123, knowledge table: one large egg of 50 g carries 38.1 g water, 4.8 g fat. */
  @Test
  void largeEggAsPublished() {
    Ingredient egg = PANTRY.lookup("egg").orElseThrow();
    double grams = egg.grams("large").orElseThrow();
    assertThat(grams).isEqualTo(50);
    assertThat(grams * egg.per100().water() / 100).isCloseTo(38.1, within(0.05));
    assertThat(grams * egg.per100().fat() / 100).isCloseTo(4.8, within(0.05));
    assertThat(grams * egg.per100().protein() / 100).isCloseTo(6.3, within(0.05));
  }

  /** USDA SR: sodium 643 mg salted against 11 mg unsalted, 387.58 mg to the gram of salt. */
  @Test
  void saltInSaltedButterAsPublished() {
    Ingredient butter = PANTRY.lookup("salted butter").orElseThrow();
    assertThat(butter.per100().salt()).isCloseTo((643 - 11) / 387.58, within(0.005));
  }

  /** Grain Craft sheet: 4.5 oz fresh does as 1.5 oz instant; Hamelman 2004: 1.8 oz active dry. */
  @Test
  void yeastSwapsAsPublished() {
    double instant = 4.5 * PANTRY.lookup("fresh yeast").orElseThrow().yeastFactor();
    assertThat(instant).isCloseTo(1.5, within(0.05));
    double dry = instant / PANTRY.lookup("active dry yeast").orElseThrow().yeastFactor();
    assertThat(dry).isCloseTo(1.8, within(0.05));
  }

  /** Common practice: a tablespoon of coarse salt weighs less than one of table salt. */
  @Test
  void coarseSaltIsLighterByTheSpoon() {
    assertThat(PANTRY.lookup("coarse salt").orElseThrow().grams("tbsp").orElseThrow())
        .isLessThan(PANTRY.lookup("table salt").orElseThrow().grams("tbsp").orElseThrow());
  }

  @Test
  void survivesJson() throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    for (Ingredient ingredient : PANTRY.all()) {
      String json = mapper.writeValueAsString(ingredient);
      assertThat(mapper.readValue(json, Ingredient.class)).isEqualTo(ingredient);
    }
  }

  @Test
  void namesFileAndLineOfAMistake(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("bad.csv"),
        "key,names,kind,water,source\nmud,mud,soil,50,common practice\n");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pantry.read(folder))
        .withMessageContaining("bad.csv, line 2")
        .withMessageContaining("soil");
  }

  @Property(tries = 300)
  void noNameMakesItFail(@ForAll @StringLength(max = 60) String name) {
    assertThat(PANTRY.find(name)).isNotNull();
  }
}
