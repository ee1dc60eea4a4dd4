package crumbtrail.workup;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.KnowledgeFolder;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;

/** Works sheets out with the project's own catalogues and pantry; no rules are involved. */
final class Bakes {
  static final Catalogue CATALOGUE = catalogue();
  private static final SheetWorkup WORKUPS = new SheetWorkup(CATALOGUE, pantry());

  private Bakes() {}

  /** A sheet from JSON in which single quotation marks stand for double ones. */
  static BakeSheet sheet(String json) {
    return SheetReader.read(json.replace('\'', '"')).sheet().orElseThrow();
  }

  static Workup work(String json) {
    return work(sheet(json), Care.FULL);
  }

  static Workup work(BakeSheet sheet, Care care) {
    return WORKUPS.work(sheet, care);
  }

  /** A white tin loaf of 500 g flour with 1 % instant yeast and 2 % salt, and this process. */
  static Workup tinLoaf(String process) {
    return work(
        """
        {'style': 'white tin loaf',
         'formula': ['500 g bread flour', '310 g water', '5 g instant yeast', '10 g salt'],
         'process': {%s}}
        """
            .formatted(process));
  }

  static Optional<Reading> reading(Workup workup, String name) {
    return workup.readings().stream().filter(one -> one.name().equals(name)).findFirst();
  }

  /** The value of a reading that must be there. */
  static double value(Workup workup, String name) {
    return reading(workup, name).map(Reading::value).orElseThrow();
  }

  private static Catalogue catalogue() {
    try {
      return new Catalogue(KnowledgeFolder.read(Path.of("rules")));
    } catch (FaultyKnowledge fault) {
      throw new IllegalStateException(fault);
    }
  }

  private static Pantry pantry() {
    try {
      return Pantry.read(Path.of("rules", "pantry"));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
