package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Lines that are written anew read back as they stand. */
class LineTextTest {

  @TestFactory
  Stream<DynamicTest> every_line_of_the_cases_reads_back() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> back(file)))
          .toList()
          .stream();
    }
  }

  private static void back(Path file) throws IOException {
    BakeSheet sheet = SheetReader.read(Files.readString(file)).sheet().orElseThrow();
    for (FormulaLine line : sheet.formula()) {
      FormulaLine anew = LineText.weighing(line, 123.4);
      FormulaLine read = IngredientLine.read(line.where(), anew.written()).orElseThrow();
      assertThat(read.ingredient()).as(anew.written()).isEqualTo(anew.ingredient());
      assertThat(read.amount()).as(anew.written()).isEqualTo(anew.amount());
      assertThat(read.protein()).as(anew.written()).isEqualTo(anew.protein());
      assertThat(read.hydration()).as(anew.written()).isEqualTo(anew.hydration());
      assertThat(read.notes()).as(anew.written()).containsExactlyInAnyOrderElementsOf(anew.notes());
    }
  }

  @Test
  void weights_are_written_as_a_kitchen_scale_shows_them() {
    List<Double> grams = List.of(312.46, 12.345, 0.4567, 100.0);
    assertThat(grams.stream().map(LineText::onScale).toList())
        .containsExactly(312.0, 12.3, 0.46, 100.0);
    assertThat(LineText.added("formula[0]", "fine salt", 9.96).written())
        .isEqualTo("10 g fine salt");
  }
}
