package crumbtrail.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of a recipe that says what the lines after it belong to.
 *
 * @param name the name of the preferment in lower case; for other kinds the words of the line
 */
record Heading(Kind kind, String name) {

  enum Kind {
    /** A sponge, starter, soaker or scald: its ingredients are kept apart. */
    PREFERMENT,
    /** The dough itself. */
    DOUGH,
    /** Topping, glaze, filling: not part of the dough. */
    ASIDE,
    /** What is done: no ingredients follow. */
    STEPS,
    /** Ends with a colon and says nothing known. */
    OTHER
  }

  static final String PREFERMENTS =
      "poolish|biga|sponge|levain|leaven|sourdough starter|starter|pre-?ferment"
          + "|p[aâ]te ferment[eé]e|old dough|tangzhong|yudane|water roux|roux|scald|soaker|mash";

  private static final Pattern PREFERMENT =
      Pattern.compile("\\b(?:" + PREFERMENTS + ")\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern DOUGH =
      Pattern.compile(
          "^(?:(?:final|main|bread|the|rest of the) )*(?:dough|loaf|bread|mix|ingredients?"
              + "|you will need|what you need|formula|recipe)(?: (?:dough|mix|ingredients?))?"
              + "(?: \\(.*\\))?$");
  private static final Pattern ASIDE =
      Pattern.compile(
          "\\b(?:toppings?|glaze|fillings?|egg ?wash|wash|icing|streusel|coating|to finish|finishing"
              + "|dusting|garnish|sauce|decoration|brushing|boil|bath|lye|to serve|crumble)\\b");
  private static final Pattern STEPS =
      Pattern.compile(
          "^(?:method|directions?|instructions?|steps?|preparation|procedure|process|how to .*"
              + "|to (?:make|bake|prepare).*|mixing|kneading|shaping|proofing|proving|bulk.*|baking"
              + "|notes?|tips?|what (?:i did|happened).*|result.*|schedule|timetable|problem.*)$");
  private static final Pattern PLAIN_STEPS =
      Pattern.compile(
          "^(?:method|directions?|instructions?|steps?|preparation|procedure|process|what i did)$",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern AFTERWARDS =
      Pattern.compile(
          "^(?:notes?|tips?|what happened.*|result.*|problem.*)$", Pattern.CASE_INSENSITIVE);
  private static final Pattern BRACKETED = Pattern.compile(" ?\\([^)]*\\)");

  /** "Levain, 8 hours at 24 C": a name, and for how long. */
  private static final Pattern TIMED =
      Pattern.compile("([^,;:()-]{3,40}?) ?(?:[,;:]|-) ?([^(]+?):?");

  private static final int MOST_WORDS = 6;

  /** The heading that a plain line is, if it is one; a line with an amount never is. */
  static Optional<Heading> of(String line) {
    String bare = line.replaceAll("^[#*_= ]+|[#*_= ]+$", "");
    boolean colon = bare.endsWith(":");
    boolean marked = colon || line.startsWith("#") || line.startsWith("**");
    String words = BRACKETED.matcher(bare).replaceAll("").replaceAll(":$", "").strip();
    String lower = words.toLowerCase(Locale.ROOT).replaceAll("^(?:for |the |my )+", "");
    boolean forThe = words.length() > lower.length() + 2;
    Optional<Heading> timed = timed(bare);
    if (timed.isPresent()) {
      return timed;
    }
    if (lower.isEmpty() || lower.split(" ", -1).length > MOST_WORDS || lower.matches(".*\\d.*")) {
      return Optional.empty();
    }
    if (DOUGH.matcher(lower).matches()) {
      return Optional.of(new Heading(Kind.DOUGH, words));
    }
    if (STEPS.matcher(lower).matches()) {
      return Optional.of(new Heading(Kind.STEPS, words));
    }
    Matcher preferment = PREFERMENT.matcher(lower);
    if (preferment.find() && isName(lower, preferment, marked || forThe)) {
      return Optional.of(new Heading(Kind.PREFERMENT, lower));
    }
    if ((marked || forThe) && ASIDE.matcher(lower).find()) {
      return Optional.of(new Heading(Kind.ASIDE, words));
    }
    return marked ? Optional.of(new Heading(Kind.OTHER, words)) : Optional.empty();
  }

  private static Optional<Heading> timed(String bare) {
    Matcher parts = TIMED.matcher(bare);
    if (!parts.matches()) {
      return Optional.empty();
    }
    String name = parts.group(1).toLowerCase(Locale.ROOT).replaceAll("^(?:for |the |my )+", "");
    Matcher term = PREFERMENT.matcher(name);
    return term.find() && isName(name, term, false) && StageText.isAll(parts.group(2))
        ? Optional.of(new Heading(Kind.PREFERMENT, name))
        : Optional.empty();
  }

  /** Whether it says no more than that steps follow. */
  boolean isPlainSteps() {
    return PLAIN_STEPS.matcher(name).matches() || isAfterwards();
  }

  /** Whether what follows tells of the bread and not of what was done. */
  boolean isAfterwards() {
    return AFTERWARDS.matcher(name).matches();
  }

  /** "Rye levain" names one even without a colon; "feed the starter" and "wake the biga" do not. */
  private static boolean isName(String lower, Matcher term, boolean marked) {
    boolean last = term.end() == lower.length();
    int words = lower.split(" ", -1).length;
    return marked
        ? !lower.matches("(?:mix|make|feed|add|combine|prepare|build)\\b.*")
        : last && words <= 2 && !StepWords.startsStep(lower);
  }
}
