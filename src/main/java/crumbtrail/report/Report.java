package crumbtrail.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.pantry.Pantry;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The answer to a bake sheet. Written to JSON as it stands; every number is in the unit that its
 * key or its neighbour names.
 *
 * @param title the baker's name for the bake
 * @param style the style that the bread was taken for
 * @param causes ranked, likeliest first
 * @param together keys of the smallest plausible set of causes that accounts for all signs
 * @param togetherProbability how likely it is that all of them were at work, 0 to 1
 * @param actingTogether which of them are known to act together
 * @param unexplained keys of signs for which no cause accounts
 * @param firmness how far the ranking holds where the sheet leaves something open
 * @param askNext what is most worth finding out next, best first
 * @param corrections what to change, tried on the sheet; those of the likeliest causes first
 * @param nextBake the sheet of the next bake with all that is recommended, null where there is none
 * @param foresight of a bake that is still to come; null in a post-mortem
 * @param notUnderstood phrases and ingredients that were not understood, word for word
 * @param understood what the baker's words were taken to mean
 * @param assumptions what was assumed where the sheet was silent or vague
 * @param formula baker's percentages, null where the sheet has no formula
 * @param workup readings by name, in the order of the catalogue
 * @param courses rise and bake minute by minute, null where neither is known
 * @param cautions what to be careful about
 * @param ruleBase version of the rule base
 * @param kitchen what the odds of one kitchen moved in the ranking, the most moved first; null
 *     where it goes by the odds of all kitchens
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Report(
    String title,
    String style,
    List<RankedCause> causes,
    List<String> together,
    double togetherProbability,
    List<Joint> actingTogether,
    List<String> unexplained,
    @Nullable Firmness firmness,
    List<NextQuestion> askNext,
    List<CorrectionLine> corrections,
    @Nullable NextBakeSheet nextBake,
    @Nullable ForesightTable foresight,
    List<String> notUnderstood,
    List<Understood> understood,
    List<String> assumptions,
    @Nullable FormulaTable formula,
    Map<String, WorkedReading> workup,
    @Nullable Courses courses,
    List<String> cautions,
    String ruleBase,
    @Nullable List<KitchenShift> kitchen) {

  /** A report by the odds of all kitchens. */
  public Report(
      String title,
      String style,
      List<RankedCause> causes,
      List<String> together,
      double togetherProbability,
      List<Joint> actingTogether,
      List<String> unexplained,
      @Nullable Firmness firmness,
      List<NextQuestion> askNext,
      List<CorrectionLine> corrections,
      @Nullable NextBakeSheet nextBake,
      @Nullable ForesightTable foresight,
      List<String> notUnderstood,
      List<Understood> understood,
      List<String> assumptions,
      @Nullable FormulaTable formula,
      Map<String, WorkedReading> workup,
      @Nullable Courses courses,
      List<String> cautions,
      String ruleBase) {
    this(
        title,
        style,
        causes,
        together,
        togetherProbability,
        actingTogether,
        unexplained,
        firmness,
        askNext,
        corrections,
        nextBake,
        foresight,
        notUnderstood,
        understood,
        assumptions,
        formula,
        workup,
        courses,
        cautions,
        ruleBase,
        null);
  }

  /** The same by the odds of a kitchen. */
  public Report movedBy(List<KitchenShift> shifts) {
    return new Report(
        title,
        style,
        causes,
        together,
        togetherProbability,
        actingTogether,
        unexplained,
        firmness,
        askNext,
        corrections,
        nextBake,
        foresight,
        notUnderstood,
        understood,
        assumptions,
        formula,
        workup,
        courses,
        cautions,
        ruleBase,
        List.copyOf(shifts));
  }

  /**
   * What the odds of one kitchen did to a cause.
   *
   * @param cause key
   * @param name plain words
   * @param decibans by how much its own log-odds were moved; it moves with those of others too
   * @param placeBefore its place by the odds of all kitchens, from 1; 0 where it was not ranked
   * @param place its place now
   * @param before its probability by the odds of all kitchens, 0 to 1
   * @param now its probability now
   */
  public record KitchenShift(
      String cause,
      String name,
      double decibans,
      int placeBefore,
      int place,
      double before,
      double now) {}

  /**
   * A cause and what speaks for and against it.
   *
   * @param key stable key
   * @param name plain words
   * @param stage where in the bake it arises
   * @param probability 0 to 1; causes are not exclusive
   * @param story two or three sentences on this bake: what points to the cause and what away from
   *     it; null further down the list
   * @param what what went wrong, one sentence
   * @param change what to do next time
   * @param tell how to tell it from its neighbours
   * @param evidence strongest for it first, strongest against it last
   * @param explains keys of the signs it accounts for
   * @param sources citations
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record RankedCause(
      String key,
      String name,
      String stage,
      double probability,
      @Nullable String story,
      String what,
      String change,
      String tell,
      List<EvidenceLine> evidence,
      List<String> explains,
      List<String> sources) {}

  /**
   * One piece of evidence.
   *
   * @param rule name of the rule
   * @param says the rule itself, null further down the list
   * @param strand the independent observation it rests on
   * @param decibans weight; negative speaks against the cause
   * @param because why
   * @param readings what matched on this sheet, in plain words
   * @param source citation in full, or "common practice"
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record EvidenceLine(
      String rule,
      @Nullable RuleText says,
      String strand,
      double decibans,
      String because,
      List<String> readings,
      String source) {}

  /**
   * A rule in its own sentences.
   *
   * @param when what must hold, all of it
   * @param then what it says
   */
  public record RuleText(List<String> when, List<String> then) {}

  /**
   * Causes that are known to act together.
   *
   * @param causes their keys
   * @param why what they do together
   * @param source citation in full, or "common practice"
   */
  public record Joint(List<String> causes, String why, String source) {}

  /**
   * How far the ranking holds where the sheet leaves something open.
   *
   * @param runs how often the pipeline was run; 1 where nothing is open
   * @param firstIn share of the runs in which each cause came first, the largest first
   * @param matters what leaves the ranking open, the most telling first
   */
  public record Firmness(int runs, Map<String, Double> firstIn, List<Matter> matters) {}

  /**
   * Something open that moves the ranking.
   *
   * @param what the quantity as the baker wrote it, or what had to be assumed
   * @param from its smallest plausible value, with its unit
   * @param to its largest
   * @param reading name of the reading that it moves most
   * @param moves how far: "hydration from 58 to 71 %"
   * @param advice what would settle it, one sentence
   */
  public record Matter(
      String what, String from, String to, String reading, String moves, String advice) {}

  /**
   * Something worth finding out.
   *
   * @param about key of a sign or circumstance, or name of a reading
   * @param question in plain words
   * @param how how to find out
   * @param bits expected drop in entropy over the leading causes
   * @param cost look, measure, remember or bake again
   * @param answer "yes or no", or "amount"
   */
  public record NextQuestion(
      String about, String question, String how, double bits, String cost, String answer) {}

  /**
   * How a phrase was read.
   *
   * @param said the baker's words
   * @param kind "sign", "sign not seen", "circumstance" or "style"
   * @param key key of the catalogue entry
   * @param name its plain name
   */
  public record Understood(String said, String kind, String key, String name) {}

  /**
   * The formula laid out.
   *
   * @param flourGrams all flour, preferments included
   * @param percent baker's percent by ingredient group
   * @param hydration poured liquids, and all water, percent of flour
   * @param doughGrams weight of the dough
   * @param lines the ingredients with grams and percent
   * @param contradictions where weight and measure of one line disagree
   */
  public record FormulaTable(
      double flourGrams,
      Map<String, Double> percent,
      Hydration hydration,
      double doughGrams,
      List<FormulaRow> lines,
      List<String> contradictions) {}

  /** Hydration both ways that bakers state it, percent of flour. */
  public record Hydration(double liquid, double allWater) {}

  /**
   * One ingredient.
   *
   * @param part the preferment it belongs to, empty for the final dough
   * @param written the baker's words
   * @param ingredient what it was taken for, empty if it is not known
   * @param spoons little yeast or salt of a next bake by the spoon, null for anything else
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record FormulaRow(
      String part,
      String written,
      String ingredient,
      @Nullable Double grams,
      @Nullable Double percent,
      @Nullable String spoons) {

    /** A line by weight alone. */
    public FormulaRow(
        String part,
        String written,
        String ingredient,
        @Nullable Double grams,
        @Nullable Double percent) {
      this(part, written, ingredient, grams, percent, null);
    }

    /** The same line in other words. */
    FormulaRow written(String words) {
      return new FormulaRow(part, words, ingredient, grams, percent, spoons);
    }

    /** The same line, its little yeast or salt by the spoon too. */
    FormulaRow spooned(Pantry pantry) {
      return new FormulaRow(
          part,
          written,
          ingredient,
          grams,
          percent,
          grams == null ? null : Spoons.of(ingredient, grams, pantry).orElse(null));
    }
  }

  /**
   * A reading.
   *
   * @param value in the unit
   * @param low smallest plausible value
   * @param high largest plausible value
   * @param known "measured", "worked out", "assumed" or "beyond the model's range"
   * @param usualLow lower end of the usual range for this style, null if the style has none
   * @param usualHigh upper end
   * @param usualSource source of the range
   * @param group heading under which the reading belongs, empty where it has none
   * @param what what the number means, one sentence
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record WorkedReading(
      double value,
      String unit,
      double low,
      double high,
      String known,
      @Nullable Double usualLow,
      @Nullable Double usualHigh,
      @Nullable String usualSource,
      String group,
      String what) {}

  /**
   * A change to the next bake.
   *
   * @param cause key of the cause that it is to mend
   * @param name its plain name
   * @param change what to do
   * @param from how it was; "not told" where the sheet is silent
   * @param to how it is to be
   * @param why cause and effect
   * @param riskBefore how likely the cause is on the sheet without its signs, 0 to 1
   * @param riskAfter the same with the change made
   * @param recommended whether it goes into the next bake
   * @param verdict what the re-check says, in plain words
   * @param moves other causes whose risk it moves
   * @param knob key of what is turned, empty where nothing is
   * @param source ids of the bibliography in full, or "common practice"
   */
  public record CorrectionLine(
      String cause,
      String name,
      String change,
      String from,
      String to,
      String why,
      double riskBefore,
      double riskAfter,
      boolean recommended,
      String verdict,
      List<Move> moves,
      String knob,
      String source) {}

  /** Another cause whose risk a change moves, by key and plain name. */
  public record Move(String cause, String name, double before, double after) {}

  /**
   * The next bake.
   *
   * @param changes what differs from the bake that failed, the greatest gain first
   * @param conflicts what was left out because of another change, in sentences
   * @param notes what was fitted to the baker's wishes
   * @param lines the formula by weight and percent
   * @param steps the day
   * @param risks the largest risks that are left
   * @param sheet the bake sheet, to be read by this program; null where there is no formula to bake
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record NextBakeSheet(
      String title,
      List<CorrectionLine> changes,
      List<String> conflicts,
      List<String> notes,
      List<FormulaRow> lines,
      double doughGrams,
      List<DayStep> steps,
      List<String> untold,
      List<Risk> risks,
      @Nullable JsonNode sheet) {}

  /**
   * A step of the day.
   *
   * @param clock the time of day, null where no start was given
   * @param begins minutes after the mixing begins, below nought before it
   * @param minutes how long it takes
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record DayStep(
      String step,
      String name,
      @Nullable String clock,
      double begins,
      double minutes,
      String how,
      String look) {}

  /** How likely a cause is to strike. */
  public record Risk(String cause, String name, double probability) {}

  /**
   * What lies ahead of a bake.
   *
   * @param predicted signs to be expected if nothing is changed
   * @param missing what the recipe leaves out that matters
   * @param levels each level of the formula in words
   * @param watch what to look for, step by step
   */
  public record ForesightTable(
      List<PredictedSign> predicted,
      List<Gap> missing,
      List<LevelLine> levels,
      List<DayStep> watch) {}

  /** A sign to be expected, and the cause that does most for it. */
  public record PredictedSign(String sign, String name, double probability, String cause) {}

  /** Something that a recipe leaves out. */
  public record Gap(String key, String what, String why) {}

  /** A level of the formula in words. */
  public record LevelLine(String reading, String words, boolean outside) {}
}
