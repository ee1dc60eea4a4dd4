package crumbtrail.workup;

import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A field of the process that holds words or a yes or no, as a small sentence and, where the field
 * leaves no doubt, as a circumstance.
 *
 * @param words a sentence that says what the field says
 * @param circumstance key of the circumstance, where the field itself is one
 */
record ProcessWords(String words, Optional<String> circumstance) {

  /** All fields that say something in words. */
  static List<ProcessWords> of(BakeProcess process) {
    List<ProcessWords> fields = new ArrayList<>();
    BakeProcess.Mixing mixing = process.mixing();
    BakeProcess.Shaping shaping = process.shaping();
    BakeProcess.Baking baking = process.baking();
    mixing
        .method()
        .ifPresent(
            told -> fields.add(spoken("mixed by " + told, key(told, "bread-machine", "machine"))));
    mixing
        .fat()
        .ifPresent(
            told ->
                fields.add(
                    spoken(
                        "fat added " + told,
                        key(
                            told,
                            "fat-at-the-start",
                            "start",
                            "begin",
                            "first",
                            "with the flour",
                            "all at once"))));
    mixing
        .fat()
        .ifPresent(
            told ->
                fields.add(
                    spoken(
                        "fat added " + told,
                        key(told, "fat-late", "late", "after", "end", "developed"))));
    shaping
        .tension()
        .ifPresent(
            told ->
                fields.add(
                    spoken("shaped " + told, key(told, "shaped-loose", "loose", "slack", "weak"))));
    shaping
        .tension()
        .ifPresent(
            told ->
                fields.add(spoken("shaped " + told, key(told, "shaped-tight", "tight", "hard"))));
    shaping
        .dustingFlour()
        .ifPresent(
            told ->
                fields.add(
                    spoken(
                        "dusting flour " + told,
                        key(
                            told,
                            "dusting-flour-heavy",
                            "heavy",
                            "lot",
                            "much",
                            "generous",
                            "plenty"))));
    process
        .vessel()
        .kind()
        .ifPresent(
            told -> fields.add(spoken("baked in " + told, key(told, "tin-dark", "dark", "black"))));
    process
        .vessel()
        .kind()
        .ifPresent(
            told ->
                fields.add(spoken("baked in " + told, key(told, "tin-glass", "glass", "pyrex"))));
    baking
        .steam()
        .ifPresent(
            told -> fields.add(spoken("steam " + told, key(told, "no-steam", "none", "no"))));
    baking
        .steam()
        .ifPresent(
            told ->
                fields.add(
                    spoken(
                        "steam " + told,
                        key(told, "steam-whole-bake", "whole", "throughout", "all the time"))));
    yesNo(baking.preheated(), false, "oven not preheated", "oven-not-preheated", fields);
    yesNo(baking.fan(), true, "fan oven on", "fan-on", fields);
    yesNo(baking.scored(), false, "loaf not scored", "not-scored", fields);
    yesNo(process.cooling().wrapped(), true, "wrapped to cool", "wrapped-warm", fields);
    uncovered(process.bulk(), "dough uncovered in bulk", fields);
    uncovered(process.proof(), "dough uncovered in the proof", fields);
    process
        .storage()
        .place()
        .ifPresent(
            told ->
                fields.add(
                    spoken(
                        "stored in " + told,
                        key(told, "stored-fridge", "fridge", "refrigerator"))));
    return fields;
  }

  private static void uncovered(List<Stage> stages, String words, List<ProcessWords> fields) {
    if (stages.stream()
        .anyMatch(stage -> stage.covered().filter(covered -> !covered).isPresent())) {
      fields.add(spoken(words, Optional.of("left-uncovered")));
    }
  }

  private static void yesNo(
      Optional<Boolean> told,
      boolean telling,
      String words,
      String key,
      List<ProcessWords> fields) {
    if (told.filter(answer -> answer == telling).isPresent()) {
      fields.add(spoken(words, Optional.of(key)));
    }
  }

  private static ProcessWords spoken(String words, Optional<String> circumstance) {
    return new ProcessWords(words, circumstance);
  }

  private static Optional<String> key(String told, String circumstance, String... hints) {
    String words = " " + told.toLowerCase(Locale.ROOT) + " ";
    for (String hint : hints) {
      if (words.contains(" " + hint)) {
        return Optional.of(circumstance);
      }
    }
    return Optional.empty();
  }
}
