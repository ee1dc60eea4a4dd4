package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.KnobKind.Turns;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.KnowledgeFolder;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Every knob, set to a value, stands at that value. */
class KnobsTest {
  private static final Set<String> NOT_IN_THIS_DOUGH =
      Set.of("starter", "preferment-time", "preferment-temperature");
  private static final Knowledge KNOWLEDGE = knowledge();
  private static final Pantry PANTRY = pantry();
  private static final Catalogue CATALOGUE = new Catalogue(KNOWLEDGE);
  private static final Knobs KNOBS = new Knobs(CATALOGUE, PANTRY);
  private static final SheetWorkup WORKUP = new SheetWorkup(CATALOGUE, PANTRY);

  private static final BakeSheet SHEET =
      SheetReader.read(
              """
              {"style": "white tin loaf",
               "formula": ["500 g bread flour, 12.5 % protein", "310 g water", "1 1/2 tsp instant yeast",
                 "6 g fine salt", "25 g butter", "20 g sugar", "60 g milk", "40 g raisins", "1 large egg",
                 "5 g vital wheat gluten", "2 g diastatic malt"],
               "process": {"room": "21 C", "temperatures": {"liquid": "38 C"},
                 "mixing": {"time": "8 min", "doughTemperature": "29 C"},
                 "bulk": [{"time": "60 min", "temperature": "24 C"}, {"time": "14 h", "temperature": "4 C"}],
                 "shaping": {"pieceWeight": "900 g", "benchRest": "15 min"},
                 "vessel": {"kind": "tin", "size": "9 x 5 x 2.75 in"},
                 "proof": [{"time": "75 min", "temperature": "30 C"}],
                 "baking": {"stages": [{"time": "15 min", "oven": "230 C"}, {"time": "20 min", "oven": "200 C"}]}}}
              """)
          .sheet()
          .orElseThrow();

  @Test
  void every_knob_stands_where_it_is_set() {
    SoftAssertions softly = new SoftAssertions();
    Workup workup = WORKUP.work(SHEET);
    for (Knob knob : KNOBS.all()) {
      if (NOT_IN_THIS_DOUGH.contains(knob.kind().key())) {
        continue;
      }
      assertThat(knob.turns(SHEET, workup)).as(knob.kind().key()).isTrue();
      double wanted = knob.settable((2 * knob.kind().low() + knob.kind().high()) / 3);
      if (knob.kind().turns() == Turns.INGREDIENT) {
        // What other ingredients bring cannot be taken out.
        wanted = Math.max(wanted, knob.value(SHEET, workup).orElse(0.0) + knob.kind().step());
      }
      BakeSheet turned = knob.turned(SHEET, workup, wanted);
      double stands = knob.value(turned, WORKUP.work(turned)).orElseThrow();
      double fine = Math.max(knob.kind().step(), 0.02 * wanted);
      softly.assertThat(stands).as(knob.kind().key()).isCloseTo(wanted, within(fine));
      softly
          .assertThat(SheetReader.read(SheetWriter.write(turned)).sheet())
          .as(knob.kind().key() + " reads back")
          .hasValueSatisfying(
              back ->
                  assertThat(knob.value(back, WORKUP.work(back)).orElseThrow())
                      .isCloseTo(stands, within(1e-6)));
    }
    softly.assertAll();
  }

  @Test
  void an_ingredient_that_was_not_there_is_put_in_and_one_turned_to_nought_is_gone() {
    BakeSheet plain =
        SheetReader.read("{\"formula\": [\"500 g flour\", \"300 g water\", \"10 g salt\"]}")
            .sheet()
            .orElseThrow();
    Knob yeast = KNOBS.named("yeast").orElseThrow();
    BakeSheet raised = yeast.turned(plain, WORKUP.work(plain), 1);
    assertThat(raised.formula().get(3).written()).isEqualTo("5 g instant yeast");
    BakeSheet flat = yeast.turned(raised, WORKUP.work(raised), 0);
    assertThat(flat.formula()).hasSize(3);
  }

  @Test
  void percentages_stay_percentages() {
    BakeSheet percents =
        SheetReader.read(
                "{\"formula\": [\"100 % bread flour\", \"62 % water\", \"1 % salt\", \"1 % instant yeast\"]}")
            .sheet()
            .orElseThrow();
    BakeSheet salted = KNOBS.named("salt").orElseThrow().turned(percents, WORKUP.work(percents), 2);
    assertThat(salted.formula().get(2).written()).isEqualTo("2 % salt");
  }

  // Water has 4.19 and flour 1.7 kJ/kg K (docs/science/mixing-and-temperature.md): 62 g of water
  // and
  // 12 g of milk on 100 g of flour hold 0.65 of the heat, so ten degrees of liquid are 6.5 of
  // dough.
  @Test
  void a_measured_dough_follows_its_liquid() {
    Workup workup = WORKUP.work(SHEET);
    BakeSheet cooler = KNOBS.named("liquid-temperature").orElseThrow().turned(SHEET, workup, 28);
    double dough = Knob.reading(WORKUP.work(cooler), "dough temperature").orElseThrow();
    assertThat(29 - dough).isCloseTo(6.5, within(0.2));
  }

  private static Knowledge knowledge() {
    try {
      return KnowledgeFolder.read(Path.of("rules"));
    } catch (FaultyKnowledge fault) {
      throw new IllegalStateException(fault);
    }
  }

  private static Pantry pantry() {
    try {
      return Pantry.read(Path.of("rules/pantry"));
    } catch (IOException fault) {
      throw new IllegalStateException(fault);
    }
  }
}
