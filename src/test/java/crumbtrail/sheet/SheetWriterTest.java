package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SheetWriterTest {

  @Test
  void whatWasWrittenReadsTheSame() {
    BakeSheet sheet = SheetReader.read(ContractSheet.JSON).sheet().orElseThrow();
    assertThat(SheetReader.read(SheetWriter.write(sheet)).sheet()).contains(sheet);
  }

  @Test
  void leavesOutWhatWasNotSaid() {
    BakeSheet sheet = SheetReader.read("{\"seen\": [\"dense\"]}").sheet().orElseThrow();
    assertThat(SheetWriter.node(sheet)).hasToString("{\"seen\":[\"dense\"]}");
  }

  @Test
  void writesAPastedRecipeAsAFormula() {
    String json =
        "{\"recipe\": \"Poolish:\\n50 g flour\\n50 g water\\nleave 12 h at 20 C\\nDough:\\n"
            + "450 g flour, 250 g water\\n9 g salt\\nMix well.\"}";
    BakeSheet sheet = SheetReader.read(json).sheet().orElseThrow();
    BakeSheet again = SheetReader.read(SheetWriter.write(sheet)).sheet().orElseThrow();
    assertThat(again.formula())
        .usingRecursiveFieldByFieldElementComparatorIgnoringFields("where")
        .isEqualTo(sheet.formula());
    assertThat(again.preferments().get(0).stages()).isEqualTo(sheet.preferments().get(0).stages());
    assertThat(again.process()).isEqualTo(sheet.process());
  }
}
