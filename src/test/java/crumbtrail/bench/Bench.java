package crumbtrail.bench;

import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the benchmarks share: the sheet on which they run. */
final class Bench {
  /** A case with formula, process and signs, as a baker would fill it in. */
  static final String CASE = "cases/over-proofed-tin-loaf.json";

  /** A sheet that uses every key that a sheet may have. */
  static final String FULL = "src/test/resources/contract-sheet.json";

  private Bench() {}

  /** Reads a sheet; run from the root of the project. */
  static BakeSheet sheet(String file) {
    try {
      return SheetReader.read(Files.readString(Path.of(file))).sheet().orElseThrow();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
