package crumbtrail.sheet;

import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of a step of a recipe with one thing to do.
 *
 * @param words of this part, without what is said by the way
 * @param kind what is done
 * @param shapes whether the loaf is shaped or put into its tin first
 * @param time how long
 * @param tin with its lengths
 */
record StepClause(
    String words,
    Kind kind,
    boolean shapes,
    Optional<Quantity> time,
    Optional<StepVessel.Named> tin) {

  /** What is done, as far as the words alone tell. */
  enum Kind {
    PREHEAT,
    BAKE,
    /** More of the same bake, if there was one: "uncover, 20 minutes more". */
    BAKE_ON,
    COOL,
    KNEAD,
    REST,
    RISE,
    BULK,
    SECOND,
    FINAL,
    DIVIDE,
    OTHER
  }

  private static final String NEXT =
      "bake|reduce|lower|turn|remove|uncover|cover|let|allow|leave|knead|shape|proof|prove|rise"
          + "|ferment|cool|refrigerate|chill|retard|rest|divide|place|put|punch|transfer|return"
          + "|continue|then|mix|set|form|roll|autolyse";
  private static final Pattern NUMBERED = pattern("^(?:[-*•] )?(?:step )?\\d{1,2}[.):] +");
  private static final Pattern CUT =
      pattern(
          "(?<=[.!;])\\s+|\\s*\\bthen\\b,?\\s*|,\\s*(?=(?:and )?(?:"
              + NEXT
              + ")\\b)|\\band (?=(?:"
              + NEXT
              + ")\\b)");

  // Words that hold the name of a step and are none, and times that are no duration of it.
  private static final Pattern ASIDES =
      pattern(
          "\\b(?:non-?stick )?baking[ -](?:sheets?|pans?|stones?|tins?|trays?|powder|soda|paper"
              + "|parchment|steels?|dish(?:es)?)\\b|\\bbake ?ware\\b|\\broom temperature\\b"
              + "|\\b(?:before|until ready to|when (?:you are )?ready to|while|prior to|during) (?:the"
              + " )?(?:bak|shap|proof|prov|ris|knead)\\w*"
              + "|\\bevery(?: \\S+){1,3}? (?:min|hour|hr)\\w*"
              + "|\\b\\S+ (?:min|minutes|mins|hours?) (?:apart|intervals?|before|prior)\\b"
              + "|\\b(?:halfway|check|rotate|tent|turn the (?:pan|loaf|bread))\\b.*"
              + "|\\b(?:after|in) (?:the )?(?:first|last)? ?\\S+ (?:min|minutes|mins)\\b(?=,? (?:check|rotate|tent))"
              + "|\\bproofing (?:basket|box|drawer)s?\\b|\\bcool(?:er)? (?:place|spot|room|water)\\b"
              + "|\\b(?:yeast|rising) agent\\b");
  private static final Pattern CORE =
      pattern(
          "\\b(?:internal|inside|interior|centre|center|core|middle|thermometer|registers?|reads?"
              + "|reach(?:es)?)\\b[^.;]*");

  private static final Pattern WAKING =
      pattern("\\b(?:foam\\w*|froth\\w*|bubbl\\w*|bloom\\w*|activat\\w*|dissolv\\w*)\\b");
  private static final Pattern YEAST = pattern("\\byeast\\b");
  private static final Pattern DOUGH = pattern("\\b(?:dough|flour)\\b");
  // What was meant, what others do, and by how much it was more, is not what was done.
  private static final Pattern HEARSAY =
      pattern(
          "\\b(?:longer than|shorter than|more than (?:the|other|usual)|less than (?:the|other|usual)"
              + "|instead|recipes?|instructions?|says?|said|supposed|should(?:n't)?|usual(?:ly)?"
              + "|normal(?:ly)?|next time|last time|tried|ago|old)\\b");
  private static final Pattern COOLING = pattern("\\bracks?\\b|\\bcool(?:s|ed|ing)?\\b");
  private static final Pattern IN_TIN =
      pattern("\\b(?:in|from) (?:the|its|their) (?:tin|pan)s?\\b");
  private static final Pattern PREHEATING =
      pattern(
          "\\bpre-?heat\\w*|\\bheat (?:the |your |an? )?oven|\\boven to\\b|\\bset (?:the )?oven");
  private static final Pattern LOWERING =
      pattern(
          "\\b(?:reduce|lower|drop|turn (?:it |the \\w+ )?(?:down|up)|decrease|increase)\\w*\\b");
  private static final Pattern BAKING =
      pattern("\\bbak(?:e|ed|es|ing)\\b|\\bin(?:to)? the oven\\b");
  private static final Pattern GOING_ON =
      pattern("\\b(?:more|another|longer|further|additional|uncover\\w*|lid)\\b");
  private static final Pattern FINAL =
      pattern("\\b(?:final|last) (?:ris|proo?[fv]|prov|ferment)\\w*");
  private static final Pattern SECOND = pattern("\\b(?:second|2nd) (?:ris|proo?[fv]|prov)\\w*");
  private static final Pattern BULK =
      pattern("\\bbulk\\b|\\b(?:first|1st|primary) (?:ris|proo?[fv]|prov|ferment)\\w*");
  private static final Pattern RISING =
      pattern(
          "\\b(?:ris(?:e|es|ing|en)|ferment\\w*|doubled?|doubles|proof(?:s|ed|ing)?|prov(?:e|ed|ing)"
              + "|refrigerat\\w*|fridge|retard\\w*|overnight|come (?:up )?to(?: temperature)?|chill(?:ed)?|warm (?:place|spot)"
              + "|stretch and folds?|coil folds?)\\b");
  // Folds during a rise take none of their own time.
  private static final Pattern FOLDS_WITHIN =
      pattern("\\bfold(?:s|ing)?\\b.*\\b(?:during|apart|first)\\b");
  private static final Pattern SPEED = pattern("\\b(?:low|slow|medium|high|fast|speed)\\b");
  private static final Pattern SHAPING =
      pattern(
          "\\b(?:(?<!pre-|pre)shap(?:e|ed|ing)|form (?:\\w+ )?(?:into|loaves|rolls|a loaf)|roll (?:\\w+"
              + " ){0,3}(?:up|into)|(?:in|into) (?:\\S+ ){0,5}?(?:loaf|bread)?"
              + " ?(?:tins?|pans?|bannetons?|baskets?|moulds?))\\b");
  private static final Pattern BALL = pattern("\\bballs?\\b|\\bbowl\\b");
  private static final Pattern DIVIDING =
      pattern(
          "\\b(?:divid\\w+|portion\\w*|pre-?shap\\w*|scale|(?:cut|split)(?: the dough| it)? in(?:to)?)\\b");
  private static final Pattern RESTING =
      pattern("\\b(?:rest(?:s|ed|ing)?|autolys\\w*|relax\\w*|stand|sit)\\b");
  private static final Pattern KNEADING = pattern("\\b(?:knead\\w*|mix(?:ed|ing)?|beat(?:en)?)\\b");
  private static final Pattern FRIDGE =
      pattern("\\b(?:refrigerat\\w*|fridge|retard\\w*|chill\\w*)\\b");

  private static final double COLDEST_OVEN = 110;
  private static final double WARMEST_PLACE = 60;

  /** The parts of a line, in order. */
  static List<StepClause> of(String line) {
    List<StepClause> clauses = new ArrayList<>();
    String plain = NUMBERED.matcher(PlainText.of(line)).replaceFirst("");
    for (String part : CUT.split(plain, -1)) {
      if (!part.isBlank()) {
        clauses.add(clause(part.strip()));
      }
    }
    return clauses;
  }

  private static Pattern pattern(String words) {
    return Pattern.compile(words, Pattern.CASE_INSENSITIVE);
  }

  private static StepClause clause(String part) {
    String words = ASIDES.matcher(part).replaceAll(" ");
    Optional<Quantity> time = StageText.of(words).time().map(StepClause::bare);
    boolean within = has(FOLDS_WITHIN, part) && !has(BULK, words);
    Kind kind = within ? Kind.OTHER : kind(words, time.isPresent());
    boolean shapes =
        has(SHAPING, words) && !has(BALL, words) && kind != Kind.COOL && kind != Kind.BAKE;
    return new StepClause(words, kind, shapes, time, StepVessel.tin(part));
  }

  private static Kind kind(String words, boolean timed) {
    if (has(HEARSAY, words) || (has(WAKING, words) && !has(RISING, words))) {
      return Kind.OTHER;
    }
    if (has(COOLING, words)) {
      return has(IN_TIN, words) ? Kind.OTHER : Kind.COOL;
    }
    boolean bakes = has(BAKING, words);
    if (has(LOWERING, words)) {
      return bakes || timed ? Kind.BAKE : Kind.PREHEAT;
    }
    if (has(PREHEATING, words) && !(bakes && timed)) {
      return Kind.PREHEAT;
    }
    if (bakes) {
      return Kind.BAKE;
    }
    return rising(words);
  }

  private static Kind rising(String words) {
    if (has(FINAL, words)) {
      return Kind.FINAL;
    }
    if (has(SECOND, words)) {
      return Kind.SECOND;
    }
    if (has(BULK, words)) {
      return Kind.BULK;
    }
    if (has(RISING, words)) {
      return Kind.RISE;
    }
    if (has(RESTING, words)) {
      return Kind.REST;
    }
    if (has(KNEADING, words)) {
      return Kind.KNEAD;
    }
    if (has(DIVIDING, words)) {
      return Kind.DIVIDE;
    }
    return has(GOING_ON, words) ? Kind.BAKE_ON : Kind.OTHER;
  }

  private static boolean has(Pattern pattern, String words) {
    Matcher matcher = pattern.matcher(words);
    return matcher.find();
  }

  /** Whether it tells how fast a mixer runs. */
  boolean isSpeed() {
    return has(SPEED, words);
  }

  /** Whether yeast is woken in this part, so that what waits next is not the dough. */
  boolean wakes() {
    return has(YEAST, words) && !has(DOUGH, words);
  }

  /** Whether it says no more than what comes next: "Bulk fermentation:". */
  boolean isHeading() {
    return time.isEmpty() && StepWords.count(words) <= 3;
  }

  /** The oven, °C. */
  Optional<Quantity> oven() {
    return warmth().filter(celsius -> celsius.value() >= COLDEST_OVEN);
  }

  /** The place where a dough stands, °C. */
  Optional<Quantity> place() {
    return warmth().filter(celsius -> celsius.value() <= WARMEST_PLACE);
  }

  boolean inFridge() {
    return has(FRIDGE, words);
  }

  private Optional<Quantity> warmth() {
    return StageText.of(CORE.matcher(words).replaceAll(" ")).temperature().map(StepClause::bare);
  }

  // What stands before and after it in the sentence is not of the quantity.
  private static Quantity bare(Quantity found) {
    String written = found.written().replaceAll("^for |[.,]$", "");
    return new Quantity(written, found.unit(), found.low(), found.value(), found.high());
  }
}
