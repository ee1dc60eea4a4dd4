package crumbtrail.cli.interview;

import crumbtrail.cli.interview.Question.Kind;
import java.util.List;

/**
 * What is asked about a bake: the bread, the recipe and what came out, by which a cause is found
 * soonest; then what was done, in the order in which it happened.
 */
final class Questions {
  private static final String BREAD = "The bread";
  private static final String RECIPE = "The recipe";
  private static final String CAME_OUT = "What came out";
  private static final String MIXING = "Mixing";
  private static final String BULK = "First rise";
  private static final String SHAPING = "Shaping";
  private static final String PROOF = "Final proof";
  private static final String OVEN = "Baking";
  private static final String AFTER = "After the oven";

  /** Without an answer to this one nothing can be traced. */
  static final Question SIGNS =
      words(CAME_OUT, "seen", "What did you see, taste or feel?", "gummy near the base");

  static final List<Question> ALL =
      List.of(
          line(BREAD, "title", "A name for this bake?", "Tin loaf, Tuesday class"),
          new Question(
              BREAD, "style", "What bread was it meant to be?", "white tin loaf", Kind.STYLE),
          new Question(
              RECIPE,
              "recipe",
              "The recipe, line by line or pasted whole.",
              "500 g bread flour",
              Kind.RECIPE),
          SIGNS,
          words(CAME_OUT, "notSeen", "What did you look for and not find?", "sour smell"),
          line(MIXING, "process.mixing.method", "Mixed how?", "by hand, or stand mixer"),
          line(MIXING, "process.mixing.time", "Mixed or kneaded how long?", "8 min"),
          line(MIXING, "process.mixing.doughTemperature", "How warm was the dough then?", "25 C"),
          line(MIXING, "process.room", "How warm was the kitchen?", "21 C"),
          stages(BULK, "process.bulk", "How long and how warm, a stage a line?", "60 min at 24 C"),
          line(SHAPING, "process.shaping.pieces", "How many pieces?", "1"),
          line(SHAPING, "process.vessel.kind", "Baked in or on what?", "tin, pot, stone, sheet"),
          line(SHAPING, "process.vessel.size", "How large is it?", "9 x 5 x 2.75 in"),
          stages(
              PROOF, "process.proof", "How long and how warm, a stage a line?", "75 min at 26 C"),
          stages(
              OVEN,
              "process.baking.stages",
              "How long and how hot, a stage a line?",
              "35 min at 220 C"),
          yes(OVEN, "process.baking.preheated", "Was the oven hot when the bread went in?"),
          line(OVEN, "process.baking.steam", "Steam?", "none, some, plenty"),
          line(
              OVEN,
              "process.baking.coreTemperature",
              "How hot was the middle when it came out?",
              "94 C"),
          line(AFTER, "process.cooling.time", "How long did it cool before it was cut?", "1 h"),
          words(
              AFTER,
              "process.remarks",
              "Anything else: swaps, things forgotten, old yeast …",
              "forgot it over lunch"));

  private Questions() {}

  private static Question line(String stage, String key, String ask, String example) {
    return new Question(stage, key, ask, example, Kind.LINE);
  }

  private static Question yes(String stage, String key, String ask) {
    return new Question(stage, key, ask, "y or n", Kind.YES_NO);
  }

  private static Question stages(String stage, String key, String ask, String example) {
    return new Question(stage, key, ask, example, Kind.STAGES);
  }

  private static Question words(String stage, String key, String ask, String example) {
    return new Question(stage, key, ask, example, Kind.WORDS);
  }
}
