package crumbtrail.formula;

import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Preferment;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.sheet.IngredientLine;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes bake sheets and formulas out of plain lines. */
final class Doughs {
  static final Pantry PANTRY = shipped();

  private Doughs() {}

  static Formula of(String... lines) {
    return FormulaWorker.work(sheet(List.of(), List.of(), lines), PANTRY);
  }

  static Formula with(List<Preferment> preferments, String... lines) {
    return FormulaWorker.work(sheet(preferments, List.of(), lines), PANTRY);
  }

  static Preferment part(String name, String... lines) {
    return new Preferment(name, lines("preferments[0].formula", lines), List.of());
  }

  static BakeSheet sheet(List<Preferment> preferments, List<String> remarks, String... lines) {
    return sheetOf(preferments, remarks, lines("formula", lines));
  }

  static BakeSheet sheetOf(
      List<Preferment> preferments, List<String> remarks, List<FormulaLine> lines) {
    BakeProcess process =
        new BakeProcess(
            Optional.empty(),
            new BakeProcess.Temperatures(Optional.empty(), Optional.empty(), Optional.empty()),
            new BakeProcess.Mixing(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            List.of(),
            new BakeProcess.Shaping(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            new BakeProcess.Vessel(Optional.empty(), Optional.empty(), Optional.empty()),
            List.of(),
            new BakeProcess.Baking(
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            new BakeProcess.Cooling(Optional.empty(), Optional.empty()),
            new BakeProcess.Storage(Optional.empty(), Optional.empty()),
            Optional.empty(),
            remarks,
            List.of(),
            List.of());
    return new BakeSheet("", "", lines, preferments, process, List.of(), List.of(), List.of());
  }

  private static List<FormulaLine> lines(String where, String... texts) {
    List<FormulaLine> lines = new ArrayList<>();
    for (int i = 0; i < texts.length; i++) {
      String text = texts[i];
      lines.add(
          IngredientLine.read(where + "[" + i + "]", text)
              .orElseThrow(() -> new AssertionError("no ingredient line: " + text)));
    }
    return lines;
  }

  static double value(Formula formula, String reading) {
    return formula
        .reading(reading)
        .orElseThrow(() -> new AssertionError("no reading " + reading))
        .value();
  }

  private static Pantry shipped() {
    try {
      return Pantry.read(Path.of("rules", "pantry"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
