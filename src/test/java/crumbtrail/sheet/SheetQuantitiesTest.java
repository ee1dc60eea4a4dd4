package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.quantity.Quantity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetQuantitiesTest {

  @Test
  void a_sheet_of_which_nothing_is_changed_is_the_same_sheet() throws IOException {
    BakeSheet sheet = full();

    assertThat(SheetQuantities.changed(sheet, (where, quantity) -> quantity)).isEqualTo(sheet);
    assertThat(SheetQuantities.withLines(sheet, line -> line)).isEqualTo(sheet);
  }

  @Test
  void every_quantity_is_met_once_under_the_name_of_its_place() throws IOException {
    List<String> met = new ArrayList<>();

    SheetQuantities.changed(
        full(),
        (where, quantity) -> {
          met.add(where);
          return quantity;
        });

    assertThat(met)
        .doesNotHaveDuplicates()
        .contains(
            "process.room",
            "process.temperatures.liquid",
            "process.mixing.doughTemperature",
            "process.bulk[1].time",
            "process.shaping.pieceWeight",
            "process.proof[0].humidity",
            "process.baking.stages[1].oven",
            "process.baking.coreTemperature",
            "process.cooling.time",
            "process.storage.time",
            "process.altitude",
            "preferments[0].stages[0].temperature");
  }

  @Test
  void only_what_is_changed_changes() throws IOException {
    BakeSheet changed =
        SheetQuantities.changed(
            full(),
            (where, quantity) ->
                where.equals("process.room")
                    ? new Quantity("x", quantity.unit(), 5, 5, 5)
                    : quantity);

    assertThat(changed.process().room().orElseThrow().value()).isEqualTo(5);
    assertThat(changed.process().bulk()).isEqualTo(full().process().bulk());
  }

  @Test
  void a_field_is_filled_in_wherever_it_stands_and_what_is_no_amount_is_refused()
      throws IOException {
    BakeSheet poor = SheetReader.read("{\"seen\": [\"dense\"]}").sheet().orElseThrow();

    BakeSheet filled = SheetFields.with(poor, "bulk[1].time", "90 min").sheet().orElseThrow();
    BakeSheet written = SheetFields.with(full(), "room", "77 F").sheet().orElseThrow();

    assertThat(filled.process().bulk().get(1).time().orElseThrow().value()).isEqualTo(90);
    assertThat(written.process().room().orElseThrow().value()).isBetween(24.9, 25.1);
    assertThat(SheetFields.with(poor, "room", "balmy").problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.remedy()).isNotBlank());
  }

  private static BakeSheet full() throws IOException {
    return SheetReader.read(
            Files.readString(Path.of("src", "test", "resources", "contract-sheet.json")))
        .sheet()
        .orElseThrow();
  }
}
