package crumbtrail.workup;

import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.Stage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fields of a process that hold words or a yes or no, by their path on the sheet. */
final class WordFields {
  private WordFields() {}

  static Map<String, String> of(BakeProcess process) {
    Map<String, String> fields = new LinkedHashMap<>();
    put(fields, "mixing.method", process.mixing().method());
    put(fields, "mixing.fat", process.mixing().fat());
    put(fields, "bulk.covered", covered(process.bulk()));
    put(fields, "proof.covered", covered(process.proof()));
    put(fields, "shaping.tension", process.shaping().tension());
    put(fields, "shaping.dustingFlour", process.shaping().dustingFlour());
    put(fields, "vessel.kind", process.vessel().kind());
    put(fields, "baking.preheated", yesNo(process.baking().preheated()));
    put(fields, "baking.steam", process.baking().steam());
    put(fields, "baking.fan", yesNo(process.baking().fan()));
    put(fields, "baking.scored", yesNo(process.baking().scored()));
    put(fields, "cooling.wrapped", yesNo(process.cooling().wrapped()));
    put(fields, "storage.place", process.storage().place());
    return fields;
  }

  // One uncovered stretch is enough to skin a dough.
  private static Optional<String> covered(List<Stage> stages) {
    List<Boolean> told = stages.stream().flatMap(stage -> stage.covered().stream()).toList();
    return told.isEmpty() ? Optional.empty() : yesNo(Optional.of(!told.contains(false)));
  }

  private static Optional<String> yesNo(Optional<Boolean> told) {
    return told.map(answer -> answer ? "yes" : "no");
  }

  private static void put(Map<String, String> fields, String path, Optional<String> text) {
    text.ifPresent(words -> fields.put(path, words));
  }
}
