package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeSheet.Degree;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetReaderTest {

  @Test
  void readsEveryKeyOfTheContract() {
    Reading reading = SheetReader.read(ContractSheet.JSON);
    assertThat(reading.problems()).isEmpty();
    BakeSheet sheet = reading.sheet().orElseThrow();
    assertThat(sheet.style()).isEqualTo("white tin loaf");
    assertThat(sheet.formula()).hasSize(4);
    assertThat(sheet.formula().get(0).protein()).hasValue(12.5);
    assertThat(sheet.formula().get(3).ingredient()).isEqualTo("fine salt");
    assertThat(sheet.preferments().get(0).formula()).hasSize(3);
    BakeProcess process = sheet.process();
    assertThat(process.room().map(Quantity::value)).contains(21.0);
    assertThat(process.mixing().doughTemperature().map(Quantity::value)).contains(29.0);
    assertThat(process.bulk()).hasSize(2);
    assertThat(process.bulk().get(0).folds()).contains(1);
    assertThat(process.bulk().get(0).covered()).contains(true);
    assertThat(process.shaping().pieces()).contains(1);
    assertThat(process.vessel().size().orElseThrow().lengths())
        .containsExactly(228.6, 127.0, 69.85);
    assertThat(process.proof().get(0).humidity().map(Quantity::value)).contains(80.0);
    assertThat(process.baking().stages()).hasSize(2);
    assertThat(process.baking().steam()).contains("none");
    assertThat(process.baking().fan()).contains(false);
    assertThat(process.cooling().wrapped()).contains(false);
    assertThat(process.storage().time().map(Quantity::value)).contains(2880.0);
    assertThat(process.altitude().map(Quantity::value)).contains(1_600_000.0);
    assertThat(process.remarks()).hasSize(2);
    assertThat(sheet.seen().get(1).words()).isEqualTo("pale-crust");
    assertThat(sheet.seen().get(1).degree()).contains(Degree.MARKED);
    assertThat(sheet.notSeen()).containsExactly("sour smell");
    assertThat(sheet.knownCauses()).containsExactly("over-proofed");
  }

  @Test
  void reportsAllProblemsTogetherEachWithItsPlace() {
    Reading reading =
        SheetReader.read(
            """
            {"formla": ["500 g flour"],
             "formula": ["500 flour", {"ingredient": "salt", "amount": 6}, "-5 g salt", 7,
                         {"amount": "6 g"}, {"ingredient": "salt", "amount": "lots of it"}],
             "seen": ["dense", {"sign": "pale-crust", "degre": "marked"}, 3,
                      {"sign": "pale", "degree": "enormous"}],
             "process": {"room": 21, "bulk": [{"time": "60", "covered": "maybe", "folds": 1.5}],
                         "vessel": {"size": "big"}, "mixing": {"tme": "5 min"}, "proof": 5,
                         "baking": {"coreTemperature": "500 g"}, "cooling": []}}
            """);
    assertThat(reading.sheet()).isEmpty();
    assertThat(reading.problems())
        .extracting(Problem::where)
        .containsExactlyInAnyOrder(
            "formla",
            "formula[0]",
            "formula[1].amount",
            "formula[2]",
            "formula[3]",
            "formula[4].ingredient",
            "formula[5].amount",
            "seen[1].degre",
            "seen[2]",
            "seen[3].degree",
            "process.room",
            "process.bulk[0].time",
            "process.bulk[0].covered",
            "process.bulk[0].folds",
            "process.vessel.size",
            "process.mixing.tme",
            "process.proof",
            "process.baking.coreTemperature",
            "process.cooling");
    assertThat(reading.problems()).allMatch(p -> !p.what().isBlank() && !p.remedy().isBlank());
  }

  @ParameterizedTest
  @CsvSource({"formla,formula", "Seen,seen", "not_seen,notSeen", "procces,process", "titel,title"})
  void namesTheNearestKnownKey(String written, String meant) {
    Reading reading = SheetReader.read("{\"seen\": [\"dense\"], \"" + written + "x\": 1}");
    assertThat(reading.problems()).hasSize(1);
    assertThat(SheetReader.read("{\"" + written + "\": 1}").problems())
        .anyMatch(p -> p.remedy().equals("did you mean " + meant + "?"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{}", "{\"title\": \"x\"}", "{\"formula\": [], \"seen\": []}", "{\"seen\": \"\"}"})
  void asksForAFormulaOrSomethingSeen(String json) {
    Reading reading = SheetReader.read(json);
    assertThat(reading.sheet()).isEmpty();
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.problems().get(0).what()).contains("neither a formula nor anything seen");
  }

  @Test
  void saysWhereJsonGoesWrong() {
    Reading reading = SheetReader.read("{\"formula\": [\"500 g flour\",\n \"x\" \"y\"]}");
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.problems().get(0).where()).isEqualTo("line 2, column 6");
    assertThat(reading.problems().get(0).what()).startsWith("this is not JSON");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "[]",
        "3",
        "\"text\"",
        "{\"seen\": [\"a\"]} x",
        "{\"seen\": 1, \"seen\": 2}",
        "{",
        "{\"seen\": NaN}"
      })
  void refusesWhatIsNoSheet(String json) {
    Reading reading = SheetReader.read(json);
    assertThat(reading.sheet()).isEmpty();
    assertThat(reading.problems()).hasSize(1);
  }

  @Test
  void takesAPastedRecipeAndSingleTexts() {
    ObjectNode form = JsonNodeFactory.instance.objectNode();
    form.put("formula", "Mill loaf\n500 g flour\n300 g water\nPoolish:\n50 g flour\n50 g water");
    form.put("seen", "dense crumb\npale crust");
    form.putObject("process").put("remarks", "milk was hot").put("bulk", "60 min at 24 C");
    BakeSheet sheet = SheetReader.read(form).sheet().orElseThrow();
    assertThat(sheet.title()).isEqualTo("Mill loaf");
    assertThat(sheet.formula()).hasSize(2);
    assertThat(sheet.preferments()).hasSize(1);
    assertThat(sheet.seen()).hasSize(2);
    assertThat(sheet.process().remarks()).containsExactly("milk was hot");
    assertThat(sheet.process().bulk().get(0).time().map(Quantity::value)).contains(60.0);
    assertThat(sheet.process().bulk().get(0).temperature().map(Quantity::value)).contains(24.0);
  }

  @Test
  void takesYesAndNoAndEmptyFields() {
    BakeSheet sheet =
        SheetReader.read(
                """
                {"seen": ["x"], "title": "", "process": {"room": "", "altitude": null,
                 "baking": {"preheated": "yes", "fan": "No", "scored": "", "steam": false},
                 "shaping": {"pieces": "two"}, "vessel": null}}
                """)
            .sheet()
            .orElseThrow();
    assertThat(sheet.process().baking().preheated()).contains(true);
    assertThat(sheet.process().baking().fan()).contains(false);
    assertThat(sheet.process().baking().scored()).isEmpty();
    assertThat(sheet.process().baking().steam()).contains("no");
    assertThat(sheet.process().shaping().pieces()).contains(2);
    assertThat(sheet.process().room()).isEmpty();
  }

  @Test
  void keepsTheWordsBesideAQuantityAsARemark() {
    BakeProcess process =
        SheetReader.read(
                "{\"seen\":[\"x\"],\"process\":{\"proof\":[{\"time\":\"60 min in a warm oven\"}]}}")
            .sheet()
            .orElseThrow()
            .process();
    assertThat(process.proof().get(0).time().map(Quantity::value)).contains(60.0);
    assertThat(process.remarks()).containsExactly("60 min in a warm oven");
  }

  @Test
  void refusesMoreThanAnyBakeNeeds() {
    assertOneProblem("{\"seen\": [" + "\"x\",".repeat(200) + "\"x\"]}");
    assertOneProblem("{\"formula\": [" + "\"5 g salt\",".repeat(300) + "\"5 g salt\"]}");
    assertOneProblem("{\"seen\": [\"" + "x".repeat(3000) + "\"]}");
    assertOneProblem("{\"formula\": [\"5 g " + "x".repeat(3000) + "\"]}");
    assertOneProblem("{\"recipe\": \"" + "x".repeat(100_000) + "\"}");
    assertOneProblem("[".repeat(100_000));
    assertOneProblem("{\"seen\": \"" + "x".repeat(600_000) + "\"}");
    List<Problem> many = SheetReader.read("{\"formula\": [" + "1,".repeat(140) + "1]}").problems();
    assertThat(many).hasSize(101);
  }

  private static void assertOneProblem(String json) {
    Reading reading = SheetReader.read(json);
    assertThat(reading.sheet()).isEmpty();
    assertThat(reading.problems()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9 x 5 x 2.75 in        | 228.6,127.0,69.85",
        "9x5x2.75\"             | 228.6,127.0,69.85",
        "9 × 5 in               | 228.6,127.0",
        "23 cm x 13 cm x 7 cm   | 230.0,130.0,70.0",
        "23 by 13 by 7 cm       | 230.0,130.0,70.0",
        "23 cm                  | 230.0",
        "23 cm round            | 230.0",
        "24 cm round, 10 cm deep | 240.0,100.0",
        "300 x 110 x 110 mm     | 300.0,110.0,110.0",
        "8 1/2 x 4 1/2 in tin   | 215.9,114.3",
      })
  void readsVesselLengths(String written, String millimetres) {
    List<String> found =
        VesselSizes.read(written).orElseThrow().lengths().stream()
            .map(mm -> String.valueOf(Math.round(mm * 100) / 100.0))
            .toList();
    assertThat(String.join(",", found)).isEqualTo(millimetres);
  }

  @Test
  void readsVesselVolumesAndTinsNamedByWeight() {
    assertThat(VesselSizes.read("2 l").orElseThrow().millilitres()).contains(2000.0);
    assertThat(VesselSizes.read("8 cups").orElseThrow().millilitres().orElseThrow())
        .isBetween(1892.0, 1893.0);
    assertThat(VesselSizes.read("2 lb tin").orElseThrow().lengths()).isEmpty();
    assertThat(VesselSizes.read("2 lb tin").orElseThrow().millilitres())
        .isEqualTo(Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "big", "9 x 5", "9", "-9 x 5 in", "0 x 0 x 0 cm", "1 x 2 x 3 x 4 in", "9 km"})
  void refusesVesselSizesThatCannotBe(String written) {
    assertThat(VesselSizes.read(written)).isEmpty();
  }

  @Test
  void partsOfTheProcessMayBeToldInWords() {
    BakeProcess process =
        SheetReader.read(
                "{\"seen\": [\"dense\"], \"process\": {\"baking\": \"15 min at 230 C, then 20 min at 200"
                    + " C\", \"mixing\": \"8 min by hand\", \"vessel\": \"9 x 5 in loaf tin\","
                    + " \"cooling\": \"2 h\", \"storage\": \"bread box\"}}")
            .sheet()
            .orElseThrow()
            .process();

    assertThat(process.baking().stages())
        .extracting(stage -> stage.time().get().value(), stage -> stage.oven().get().value())
        .containsExactly(tuple(15.0, 230.0), tuple(20.0, 200.0));
    assertThat(process.mixing().time().get().value()).isEqualTo(8);
    assertThat(process.mixing().method()).hasValue("8 min by hand");
    assertThat(process.vessel().size().get().lengths()).hasSize(2);
    assertThat(process.cooling().time().get().value()).isEqualTo(120);
    assertThat(process.storage().place()).hasValue("bread box");
  }
}
