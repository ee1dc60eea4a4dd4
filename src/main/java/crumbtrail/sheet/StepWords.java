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

  // Words of somebody who tells what they did, or how it came out.
  private static final Pattern TOLD =
      Pattern.compile(
          "\\b(?:i|i'm|i've|i'd|we|my|our|was|were|wasn't|weren't|came|went|did|didn't|got|turned|never"
              + "|wouldn't|couldn't|forgot|ended|looked|felt|seemed|had)\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern NUMBER = Pattern.compile("^(?:[-*•] )?(?:step )?\\d{1,2}[.):] +");

  private StepWords() {}

  // First words of steps that are no verbs: a line may tell of the dough with them as well.
  private static final Pattern NO_VERB =
      Pattern.compile(
          "^(?:the|this|that|there|it|dough|room|oven|total|hydration|serves|makes|yields?|prep|time"
              + "|temperature|servings|calories|final|second|in|on|at|after|when|first)\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern WANTED =
      Pattern.compile("\\b(?:until|should|if the|if your|if it)\\b", Pattern.CASE_INSENSITIVE);

  /** Whether a line says what is to be done, not what was done: "Bake until golden." */
  static boolean isOrder(String plain) {
    String line = NUMBER.matcher(plain).replaceFirst("");
    boolean verb = startsStep(line) && !NO_VERB.matcher(line).find();
    boolean numbered = line.length() < plain.length();
    return !TOLD.matcher(line).find() && (verb || numbered || WANTED.matcher(line).find());
  }

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
