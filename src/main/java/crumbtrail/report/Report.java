package crumbtrail.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;

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
 * @param notUnderstood phrases and ingredients that were not understood, word for word
 * @param understood what the baker's words were taken to mean
 * @param assumptions what was assumed where the sheet was silent or vague
 * @param formula baker's percentages, null where the sheet has no formula
 * @param workup readings by name, in the order of the catalogue
 * @param courses rise and bake minute by minute, null where neither is known
 * @param cautions what to be careful about
 * @param ruleBase version of the rule base
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
    Firmness firmness,
    List<NextQuestion> askNext,
    List<String> notUnderstood,
    List<Understood> understood,
    List<String> assumptions,
    FormulaTable formula,
    Map<String, WorkedReading> workup,
    Courses courses,
    List<String> cautions,
    String ruleBase) {

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
      String story,
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
      RuleText says,
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
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record FormulaRow(
      String part, String written, String ingredient, Double grams, Double percent) {}

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
      Double usualLow,
      Double usualHigh,
      String usualSource,
      String group,
      String what) {}
}
