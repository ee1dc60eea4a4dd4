package crumbtrail.sheet;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;

/**
 * The JSON Schema (2020-12) of the bake sheet. It takes whatever {@link SheetReader} could take by
 * its shape; whether an amount or a time can be read is found out by reading it.
 */
public final class SheetSchema {
  private static final SchemaParts OF = new SchemaParts();

  private SheetSchema() {}

  /** The schema, without an address of its own; it refers to nothing outside itself. */
  public static ObjectNode node() {
    ObjectNode sheet =
        OF.object(
            "A bake: what went into it, what was done, what was seen. Every key may be missing, and"
                + " null or an empty text is as good as missing; a formula or something seen is"
                + " needed. Amounts, times, temperatures and lengths are texts with their unit,"
                + " metric or US, and may be vague: \"60-75 min\", \"about 26 C\", \"1 1/2 tsp\".",
            SheetReader.SHEET,
            OF.part("title", OF.words("The baker's name for the bake")),
            OF.part("style", OF.words("The kind of bread, in the baker's words", "white tin loaf")),
            OF.part("formula", formula("The ingredients of the dough", true)),
            OF.part("recipe", OF.longText("A whole recipe as it was pasted", SheetLimits.RECIPE)),
            OF.part("preferments", OF.list("What is made ahead", 100, preferment())),
            OF.part("process", process()),
            OF.part("seen", OF.list("What was seen, in the baker's words or by key", 100, sign())),
            OF.part("notSeen", OF.texts("What was looked for and not seen")),
            OF.part("knownCauses", OF.texts("The true causes, where a case states them")));
    sheet.put("title", "Bake sheet");
    for (String key : List.of("formula", "recipe", "preferments", "seen")) {
      sheet.withArrayProperty("anyOf").addObject().putArray("required").add(key);
    }
    return sheet;
  }

  private static ObjectNode formula(String what, boolean text) {
    ObjectNode line =
        OF.object(
            "An ingredient in parts",
            FormulaReader.LINE,
            OF.part("ingredient", OF.text("What it is", 2_000)),
            OF.part("amount", OF.amount("How much, with its unit", "6 g")),
            OF.part("note", OF.words("What else there is to say: coarse, lukewarm")));
    line.putArray("required").add("ingredient");
    ObjectNode written = OF.text("A line as it is written: \"500 g bread flour\"", 2_000);
    ObjectNode lines = OF.list(what, SheetLimits.LINES, OF.either(written, line));
    if (!text) {
      return lines;
    }
    return OF.either(OF.longText("All lines in one text", SheetLimits.RECIPE), lines);
  }

  private static ObjectNode preferment() {
    return OF.object(
        "A part of the dough that is made ahead: a sponge, a poolish, a starter, a soaker",
        FormulaReader.PREFERMENT,
        OF.part("name", OF.words("Its name", "poolish")),
        OF.part("formula", formula("Its ingredients", false)),
        OF.part("stages", OF.list("How it stood", 100, stage())));
  }

  private static ObjectNode process() {
    return OF.object(
        "What was done, from mixing to storage",
        ProcessReader.PROCESS,
        OF.part("room", OF.amount("Temperature of the kitchen", "21 C")),
        OF.part(
            "temperatures",
            OF.object(
                "Temperatures before mixing",
                ProcessReader.TEMPERATURES,
                OF.part("flour", OF.amount("Of the flour", "20 C")),
                OF.part("liquid", OF.amount("Of the liquid", "38 C")),
                OF.part("preferment", OF.amount("Of what was made ahead", "20 C")))),
        OF.part("mixing", inWords("8 min by hand", mixing())),
        OF.part("bulk", OF.list("The first rise, stage by stage", 100, stage())),
        OF.part("shaping", shaping()),
        OF.part(
            "vessel",
            inWords(
                "9 x 5 in loaf tin",
                OF.object(
                    "What it was baked in",
                    ProcessReader.VESSEL,
                    OF.part("kind", OF.words("Tin, pot, stone, tray", "tin")),
                    OF.part("size", OF.words("Its size or volume", "9 x 5 x 2.75 in")),
                    OF.part("lid", OF.yesOrNo("Whether it had a lid", Part.YES, Part.NO))))),
        OF.part("proof", OF.list("The final proof, stage by stage", 100, stage())),
        OF.part("baking", OF.either(stages(), inWords("35 min at 210 C", baking()))),
        OF.part(
            "cooling",
            inWords(
                "2 h",
                OF.object(
                    "After the oven",
                    ProcessReader.COOLING,
                    OF.part("time", OF.amount("How long before it was cut", "20 min")),
                    OF.part("wrapped", OF.yesOrNo("Whether it was wrapped", Part.YES, Part.NO))))),
        OF.part(
            "storage",
            inWords(
                "bread box",
                OF.object(
                    "Where it was kept",
                    ProcessReader.STORAGE,
                    OF.part("place", OF.words("Where", "refrigerator")),
                    OF.part("time", OF.amount("How long", "2 d"))))),
        OF.part("altitude", OF.amount("Height above the sea", "1600 m")),
        OF.part("remarks", OF.texts("Whatever else happened, in sentences")));
  }

  private static ObjectNode mixing() {
    return OF.object(
        "Mixing and kneading",
        ProcessReader.MIXING,
        OF.part("method", OF.words("By hand, stand mixer, no-knead", "stand mixer")),
        OF.part("time", OF.amount("How long", "8 min")),
        OF.part("speed", OF.words("How fast", "medium")),
        OF.part("rest", OF.amount("Rest of flour and water before kneading", "20 min")),
        OF.part("fat", OF.words("When the fat went in", "at the start")),
        OF.part("doughTemperature", OF.amount("Of the dough after mixing", "26 C")));
  }

  private static ObjectNode shaping() {
    return OF.object(
        "Shaping",
        ProcessReader.SHAPING,
        OF.part("pieces", OF.count("How many pieces", 1, 10_000)),
        OF.part("pieceWeight", OF.amount("Weight of a piece", "900 g")),
        OF.part("benchRest", OF.amount("Rest before shaping", "15 min")),
        OF.part("tension", OF.words("Loose or tight", "loose")),
        OF.part("dustingFlour", OF.words("How much flour to dust with", "heavy")));
  }

  private static ObjectNode stages() {
    ObjectNode stage =
        OF.object(
            "A stage of the bake",
            ProcessReader.OVEN_STAGE,
            OF.part("time", OF.amount("How long", "35 min")),
            OF.part("oven", OF.amount("Heat of the oven", "220 C")));
    ObjectNode words = OF.text("A stage in words: \"40 min at 230 C\"", 2_000);
    return OF.list("Stage by stage", 100, OF.either(words, stage));
  }

  // A part that may be told in words.
  private static ObjectNode inWords(String example, ObjectNode part) {
    return OF.either(OF.text("In words: \"" + example + "\"", SheetLimits.TEXT), part);
  }

  private static ObjectNode baking() {
    return OF.object(
        "Baking",
        ProcessReader.BAKING,
        OF.part("stages", stages()),
        OF.part("preheated", OF.yesOrNo("Whether the oven was hot", Part.YES, Part.NO)),
        OF.part("steam", OF.words("Steam, and how", "none")),
        OF.part("fan", OF.yesOrNo("Whether a fan ran", Part.YES, Part.NO)),
        OF.part("scored", OF.yesOrNo("Whether it was slashed", Part.YES, Part.NO)),
        OF.part("coreTemperature", OF.amount("In the middle of the loaf at the end", "96 C")));
  }

  private static ObjectNode stage() {
    ObjectNode stage =
        OF.object(
            "A stretch of time at a temperature",
            ProcessReader.STAGE,
            OF.part("time", OF.amount("How long", "60 min")),
            OF.part("temperature", OF.amount("Of the place", "24 C")),
            OF.part("folds", OF.count("How many folds", 0, 50)),
            OF.part("covered", OF.yesOrNo("Whether it was covered", Part.YES, Part.NO)),
            OF.part("humidity", OF.amount("Of the air", "80 %")));
    return OF.either(OF.text("A stage in words: \"60 min at 24 C\"", 2_000), stage);
  }

  private static ObjectNode sign() {
    ObjectNode sign =
        OF.object(
            "A sign and how marked it was",
            SheetReader.SIGN,
            OF.part("sign", OF.words("What was seen", "pale crust")),
            OF.part("words", OF.words("The same, under another name")),
            OF.part("degree", degree()));
    for (String key : List.of("sign", "words")) {
      sign.withArrayProperty("anyOf").addObject().putArray("required").add(key);
    }
    return OF.either(OF.words("A phrase as people say it", "dense crumb near the base"), sign);
  }

  private static ObjectNode degree() {
    Set<String> words = SheetReader.DEGREES.keySet();
    return OF.oneOfWords("How marked it was: slight, plain or marked", words);
  }
}
