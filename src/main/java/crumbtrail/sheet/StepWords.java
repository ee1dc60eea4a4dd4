package crumbtrail.sheet;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Words by which a sentence of a recipe is told from an ingredient. */
final class StepWords {

  private static final Set<String> VERBS =
      Set.of(
          "add",
          "allow",
          "autolyse",
          "bake",
          "beat",
          "blend",
          "boil",
          "brush",
          "bring",
          "bulk",
          "chill",
          "combine",
          "cook",
          "cool",
          "cover",
          "cream",
          "cut",
          "dissolve",
          "divide",
          "dust",
          "feed",
          "ferment",
          "fold",
          "form",
          "grease",
          "heat",
          "incorporate",
          "knead",
          "leave",
          "let",
          "line",
          "make",
          "melt",
          "mix",
          "place",
          "pour",
          "preheat",
          "prepare",
          "proof",
          "prove",
          "punch",
          "put",
          "refrigerate",
          "remove",
          "repeat",
          "rest",
          "retard",
          "rise",
          "roll",
          "rub",
          "score",
          "set",
          "shape",
          "sift",
          "slash",
          "soak",
          "spray",
          "sprinkle",
          "steam",
          "stir",
          "stretch",
          "take",
          "tip",
          "transfer",
          "turn",
          "use",
          "wait",
          "warm",
          "weigh",
          "whisk",
          "work",
          "wrap",
          "after",
          "when",
          "once",
          "then",
          "next",
          "finally",
          "while",
          "meanwhile",
          "first",
          "in",
          "on",
          "at",
          "serves",
          "makes",
          "yield",
          "yields",
          "i",
          "we",
          "my",
          "it",
          "this",
          "that",
          "the",
          "there",
          "if",
          "to",
          "don't",
          "do",
          "keep",
          "store",
          "slice",
          "enjoy",
          "total",
          "hydration",
          "oven",
          "prep",
          "time",
          "temperature",
          "servings",
          "calories",
          "scale",
          "deflate",
          "degas",
          "pat",
          "press",
          "lower",
          "reduce",
          "room",
          "dough",
          "bulk-ferment",
          "final",
          "second");

  private static final Pattern SENTENCE =
      Pattern.compile(
          "\\b(?:was|were|is|are|i|we|it|then|until|minutes?|mins?|hours?|hrs?|seconds?|degrees"
              + "|came|turned|became|knead(?:ed)?|baked?|proofed|rested?|add(?:ed)?|stir|mix(?:ed)?"
              + "|let|overnight|oven|smooth|loaves|didn|wasn)\\b",
          Pattern.CASE_INSENSITIVE);

  private StepWords() {}

  static boolean startsStep(String line) {
    String first = line.toLowerCase(Locale.ROOT).split("[^\\p{L}'-]+", 2)[0];
    return VERBS.contains(first);
  }

  /** Whether the words hold something that sentences have and ingredients have not. */
  static boolean isSentence(String words) {
    return SENTENCE.matcher(words).find();
  }

  static int count(String words) {
    return words.isBlank() ? 0 : words.strip().split("\\s+", -1).length;
  }
}
