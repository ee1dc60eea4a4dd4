package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.Problem;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BakeFormTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  @Test
  void anEmptyFormIsAnEmptySheet() {
    assertThat(BakeForm.EMPTY.sheetJson()).isEqualTo("{}");
    assertThat(new BakeForm(Map.of("style", " \n", "nonsense", "x")).sheetJson()).isEqualTo("{}");
  }

  @Test
  void putsEachFieldInItsPlace() throws JsonProcessingException {
    Map<String, String> typed =
        Map.of(
            "style", " white tin loaf ",
            "recipe", "500 g flour\r\n\r\nMix well.",
            "seen", "pale crust\r\n\r\n sour smell ",
            "liquid", "38 C",
            "pieces", "2",
            "lid", "no",
            "scored", "yes",
            "bake-0-time", "15 min",
            "bake-0-oven", "230 C",
            "remarks", "yeast opened a year ago");
    assertThat(JSON.readTree(new BakeForm(typed).sheetJson()))
        .isEqualTo(
            JSON.readTree(
                """
                {"style": "white tin loaf", "seen": ["pale crust", "sour smell"],
                 "recipe": "500 g flour\\n\\nMix well.",
                 "process": {
                   "remarks": ["yeast opened a year ago"],
                   "temperatures": {"liquid": "38 C"}, "shaping": {"pieces": 2},
                   "vessel": {"lid": false},
                   "baking": {"scored": true, "stages": [{"time": "15 min", "oven": "230 C"}]}}}
                """));
  }

  @Test
  void leavesOutRowsThatAreEmpty() throws JsonProcessingException {
    BakeForm form = new BakeForm(Map.of("bulk-1-time", "14 h", "ahead-formula", "100 g water"));
    JsonNode sheet = JSON.readTree(form.sheetJson());
    assertThat(sheet.at("/process/bulk")).hasSize(1);
    assertThat(sheet.at("/process/bulk/0/time").asText()).isEqualTo("14 h");
    assertThat(sheet.at("/preferments/0/formula/0").asText()).isEqualTo("100 g water");
    assertThat(form.fieldOf(new Problem("process.bulk[0].time", "", "")))
        .hasValueSatisfying(field -> assertThat(field.name()).isEqualTo("bulk-1-time"));
  }

  @Test
  void passesOnWhatIsNoNumberForTheReaderToJudge() throws JsonProcessingException {
    JsonNode sheet = JSON.readTree(new BakeForm(Map.of("pieces", "two-ish")).sheetJson());
    assertThat(sheet.at("/process/shaping/pieces").asText()).isEqualTo("two-ish");
  }

  @Test
  void picked_signs_go_where_typed_ones_go() throws JsonProcessingException {
    BakeForm form =
        new BakeForm(
            Map.of(
                "seen", "sour smell",
                "sign-pale-crust", "saw",
                "sign-flat-loaf", "saw",
                "sign-large-holes", "not",
                "sign-dense-crumb", "",
                "sign-mould", "perhaps"));
    assertThat(JSON.readTree(form.sheetJson()))
        .isEqualTo(
            JSON.readTree(
                "{\"seen\": [\"sour smell\", \"flat-loaf\", \"pale-crust\"],"
                    + " \"notSeen\": [\"large-holes\"]}"));
    assertThat(form.withoutSigns().sheetJson()).isEqualTo("{}");
    assertThat(new BakeForm(Map.of("sign-mould", "saw")).saysSomething()).isTrue();
    assertThat(new BakeForm(Map.of("sign-mould", "not")).saysSomething()).isFalse();
  }

  @Test
  void the_formula_alone_is_what_was_made_ahead_and_the_recipe() {
    BakeForm form =
        new BakeForm(
            Map.of("recipe", "500 g flour", "ahead-formula", "100 g water", "room", "warmish"));
    assertThat(form.formula().typed()).containsOnlyKeys("recipe", "ahead-formula");
  }

  @ParameterizedTest
  @CsvSource({
    "recipe, recipe",
    "recipe line 3, recipe",
    "preferments[0].formula[1], ahead-formula",
    "seen[0], seen",
    "notSeen[0], not-seen",
    "process.mixing.time, mix-time",
    "process.baking.stages[0].oven, bake-0-oven",
    "process.room, room",
    "process.vessel.size, vessel-size",
    "title, title"
  })
  void knowsTheFieldOfAProblem(String where, String field) {
    BakeForm form = new BakeForm(Map.of("bake-0-oven", "hot"));
    assertThat(form.fieldOf(new Problem(where, "", "")))
        .hasValueSatisfying(found -> assertThat(found.name()).isEqualTo(field));
  }

  @ParameterizedTest
  @CsvSource({"knownCauses[0]", "formula[0]", "recipes", "''"})
  void aProblemOfNoFieldConcernsTheWholeSheet(String where) {
    assertThat(BakeForm.EMPTY.fieldOf(new Problem(where, "", ""))).isEmpty();
  }
}
