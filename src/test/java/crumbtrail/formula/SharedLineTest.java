package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.sheet.SheetReader;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A recipe is the same whether its ingredients stand on one line or each on its own. */
class SharedLineTest {
  private static final String CUPS =
      "4 cups bread flour, 1 1/2 cups warm water, 2 tsp instant yeast, 2 tsp salt, 2 tbsp sugar,"
          + " 2 tbsp butter";
  private static final String GRAMS =
      "500 g bread flour, 320 g water, 5 g instant yeast and 10 g salt";

  @ParameterizedTest
  @CsvSource({"recipe, cups", "recipe, grams", "formula, cups", "formula, grams"})
  void scaling_keeps_what_every_ingredient_is(String field, String which) {
    String text = which.equals("cups") ? CUPS : GRAMS;
    BakeSheet shared = sheet(field, text);
    BakeSheet apart = sheet(field, text.replace(", ", "\n").replace(" and ", "\n"));
    BakeSheet twice = FormulaEdit.of(shared, Doughs.PANTRY).scaled(2);

    assertThat(shared.formula()).extracting(FormulaLine::where).doesNotHaveDuplicates();
    assertThat(grams(shared)).isCloseTo(grams(apart), within(1e-9));
    assertThat(twice.formula())
        .extracting(FormulaLine::ingredient)
        .containsExactlyElementsOf(shared.formula().stream().map(FormulaLine::ingredient).toList());
    // Grams are written as a scale shows them.
    assertThat(grams(twice)).isCloseTo(2 * grams(shared), within(1.5));
  }

  private static double grams(BakeSheet sheet) {
    return FormulaWorker.work(sheet, Doughs.PANTRY).doughGrams().value();
  }

  private static BakeSheet sheet(String field, String text) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    if (field.equals("recipe")) {
      node.put(field, text);
    } else {
      var lines = node.putArray(field);
      Stream.of(text.split("\n", -1)).forEach(lines::add);
    }
    return SheetReader.read(node).sheet().orElseThrow();
  }
}
