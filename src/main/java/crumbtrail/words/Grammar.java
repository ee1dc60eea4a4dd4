package crumbtrail.words;

import java.util.Set;

/** The small words of English that decide how the others are meant. */
final class Grammar {
  /** Words that deny what follows them. */
  static final Set<String> DENIERS =
      Set.of(
          "not",
          "no",
          "never",
          "without",
          "hardly",
          "barely",
          "scarcely",
          "nor",
          "neither",
          "none",
          "nothing",
          "lack",
          "lacks",
          "lacked",
          "lacking",
          "fail",
          "fails",
          "failed",
          "failing",
          "refuse",
          "refuses",
          "refused",
          "refusing",
          "unable",
          "devoid",
          "non",
          "free",
          "absence",
          "nope");

  /** Words that leave something undone, but deny nothing else in the sentence. */
  static final Set<String> WITHHOLDERS =
      Set.of(
          "little",
          "few",
          "insufficient",
          "insufficiently",
          "forgot",
          "forget",
          "forgotten",
          "skipped",
          "skip",
          "omitted",
          "omit",
          "neglected",
          "missed",
          "zero",
          "nil",
          "struggled",
          "struggles",
          "struggling",
          "inadequate",
          "inadequately",
          "minimal",
          "minimally");

  /** Words that deny what stands before them: "oven spring was lacking". */
  static final Set<String> AFTER_DENIERS =
      Set.of("lacking", "absent", "missing", "none", "nil", "zero", "nonexistent", "negligible");

  /** Deniers that only deny when one of these follows. */
  static final Set<String> FAILING =
      Set.of(
          "fail",
          "fails",
          "failed",
          "failing",
          "refuse",
          "refuses",
          "refused",
          "refusing",
          "unable",
          "struggled",
          "struggles",
          "struggling");

  /** After "not": what follows is said to be so, if only a little. */
  static final Set<String> SOFTENED =
      Set.of(
          "very",
          "particularly",
          "especially",
          "really",
          "that",
          "terribly",
          "super",
          "extremely",
          "quite",
          "so",
          "as",
          "hugely",
          "exactly",
          "overwhelmingly");

  /** After "not" or "no": nothing is denied at all. */
  static final Set<String> UNDENIED =
      Set.of("only", "just", "merely", "simply", "doubt", "matter", "sooner");

  /** Words that a denial does not reach across. */
  static final Set<String> WALLS =
      Set.of(
          "because", "when", "after", "before", "until", "since", "so", "which", "if", "why", "how",
          "what", "whether", "then", "with", "despite", "due", "while", "once", "unless", "who");

  /** "wrong with", "problem with": here the denial does reach across "with". */
  static final Set<String> BLAME =
      Set.of(
          "wrong",
          "problem",
          "problems",
          "issue",
          "issues",
          "trouble",
          "happy",
          "complaint",
          "complaints",
          "difficulty");

  static final Set<String> SLIGHT =
      Set.of(
          "slight",
          "slightly",
          "bit",
          "somewhat",
          "kinda",
          "kind",
          "sort",
          "touch",
          "mildly",
          "faint",
          "faintly",
          "marginally",
          "tad",
          "hint",
          "smidge",
          "tiny");

  static final Set<String> MARKED =
      Set.of(
          "very",
          "extremely",
          "really",
          "badly",
          "totally",
          "completely",
          "terribly",
          "awfully",
          "super",
          "severely",
          "incredibly",
          "hugely",
          "massively",
          "seriously",
          "extreme",
          "severe",
          "horribly",
          "ridiculously",
          "entirely",
          "utterly",
          "way",
          "far",
          "much",
          "so",
          "absolutely",
          "insanely",
          "excessively",
          "exceptionally",
          "heavily",
          "greatly",
          "dramatically",
          "lot",
          "awful",
          "terrible",
          "horrible",
          "horrendously",
          "unbelievably",
          "intensely");

  /** Small words, which say nothing of their own. */
  static final Set<String> STOP =
      Set.of(
          "a",
          "an",
          "the",
          "is",
          "was",
          "were",
          "are",
          "be",
          "been",
          "being",
          "am",
          "it",
          "its",
          "this",
          "that",
          "these",
          "those",
          "i",
          "we",
          "you",
          "he",
          "she",
          "they",
          "my",
          "our",
          "your",
          "his",
          "her",
          "their",
          "of",
          "to",
          "in",
          "on",
          "at",
          "by",
          "for",
          "from",
          "with",
          "into",
          "as",
          "and",
          "or",
          "do",
          "did",
          "does",
          "done",
          "have",
          "has",
          "had",
          "would",
          "could",
          "should",
          "will",
          "can",
          "may",
          "might",
          "there",
          "here",
          "very",
          "really",
          "quite",
          "too",
          "so",
          "just",
          "also",
          "still",
          "even",
          "some",
          "any",
          "me",
          "us",
          "them",
          "bit",
          "slightly",
          "rather",
          "pretty",
          "got",
          "get",
          "gets",
          "kind",
          "sort",
          "which",
          "then",
          "than",
          "all",
          "about",
          "up",
          "out",
          "again",
          "always",
          "usually",
          "often",
          "sometimes",
          "every",
          "time",
          "way",
          "much",
          "little",
          "more",
          "yet",
          "while");

  /** Words that leave a sentence as bare as before: "it came out dry" says "dry" and no more. */
  static final Set<String> FILLER =
      Set.of(
          "bread",
          "breads",
          "loaf",
          "loaves",
          "came",
          "come",
          "comes",
          "turned",
          "turns",
          "ended",
          "end",
          "result",
          "results",
          "went",
          "looks",
          "looked",
          "seems",
          "seemed",
          "feels",
          "felt",
          "extremely",
          "totally",
          "completely",
          "badly",
          "terribly",
          "somewhat",
          "bake",
          "baked",
          "far",
          "awfully",
          "horribly",
          "rolls",
          "buns",
          "mine",
          "whole",
          "thing",
          "tastes",
          "tasted",
          "taste",
          "overall",
          "kept",
          "keeps",
          "like",
          "almost",
          "nearly",
          "tad");

  /** Words that end a clause for good. */
  static final Set<String> TURNS =
      Set.of("but", "although", "though", "whereas", "however", "except");

  /** Words at which a clause is parted when both sides make sense alone. */
  static final Set<String> JOINTS = Set.of("and", "while", "because", "plus", "also", "since");

  /** After "so", these show that a new sentence begins. */
  static final Set<String> BEGINNERS =
      Set.of("i", "we", "the", "it", "my", "they", "he", "she", "then", "this", "that", "our");

  private Grammar() {}
}
