package crumbtrail.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A report laid out for the page: every number is already a text with its unit, every list is in
 * the order in which it is read. Nothing here is escaped; the templates do that.
 *
 * @param title the baker's name for the bake, or empty
 * @param style the style that the bread was taken for, or empty
 * @param advice what to change, and what lies ahead
 * @param together names of the fewest plausible causes that account for everything seen
 * @param togetherNotes what else there is to say about them, in sentences
 * @param kitchen what the odds of one kitchen moved; null where it goes by those of all
 * @param unexplained names of what was seen and no cause accounts for
 * @param firmness how firm the ranking is, in sentences; empty where nothing is ranked
 * @param next questions, to be answered in place
 * @param notUnderstood the baker's words that were not understood, as typed
 * @param drawn pictures of signs that were seen
 * @param understood how the other words were read
 * @param formula the ingredients, line by line
 * @param groups the percentages by group of ingredients
 * @param formulaNotes what else there is to say about the formula, in sentences
 * @param figures pictures of what went on in dough and oven
 * @param readings numbers under their headings
 * @param readingSources sources of the usual ranges, by number from 1
 * @param share how it is kept or passed on; null where no server stands behind the page
 */
public record ReportView(
    String title,
    String style,
    List<Cause> causes,
    AdviceView advice,
    List<String> together,
    List<Said> togetherNotes,
    KitchenView kitchen,
    List<String> unexplained,
    List<String> firmness,
    AskView next,
    List<String> notUnderstood,
    List<Drawn> drawn,
    List<Understood> understood,
    List<String> assumptions,
    List<Line> formula,
    List<Pair> groups,
    List<Said> formulaNotes,
    List<Figure> figures,
    List<Group> readings,
    List<String> readingSources,
    List<String> cautions,
    ShareView share) {

  /**
   * A sentence.
   *
   * @param english whether there is no other than the English one
   */
  public record Said(String text, boolean english) {}

  /**
   * One suspected cause.
   *
   * @param key stable key
   * @param stage where in the bake it arises, or empty
   * @param likelihood the probability in words: "very likely"
   * @param percent the probability with its sign: "83 %"
   * @param bar the probability as a whole number from 0 to 100, for drawing
   * @param story why it is suspected, in sentences, or empty
   * @param what what went wrong, one sentence
   * @param tell how to tell it from its neighbours
   * @param change what to do next time
   * @param explains plain names of the signs it accounts for
   * @param speaksFor what points to it, weightiest first
   * @param speaksAgainst what points away from it, weightiest first
   * @param sources sources by number from 1
   */
  public record Cause(
      String key,
      String name,
      String stage,
      String likelihood,
      String percent,
      int bar,
      String story,
      String what,
      String tell,
      String change,
      List<String> explains,
      List<Evidence> speaksFor,
      List<Evidence> speaksAgainst,
      List<String> sources) {}

  /**
   * One piece of evidence.
   *
   * @param because the reason in a sentence
   * @param weight how much it counts, in words: "firm"
   * @param readings what on this sheet matched, each as a short text
   * @param source number of the source in the list of the cause: "[2]", or empty
   * @param citation the source in full, or empty
   * @param rule the rule in its own sentences, line by line, or empty
   * @param name the name of the rule
   */
  public record Evidence(
      String because,
      String weight,
      List<String> readings,
      String source,
      String citation,
      List<String> rule,
      String name) {}

  /**
   * A picture of a sign.
   *
   * @param name plain name of the sign
   * @param svg the whole element, as the drawing engine made it from words of its own
   */
  public record Drawn(String name, String svg) {}

  /**
   * How words of the baker were read.
   *
   * @param said the words
   * @param meant the name of what they were taken for
   * @param tongue the language of that name where it is not that of the page, or null
   * @param kind what it is: a sign, a circumstance
   */
  public record Understood(String said, String meant, @Nullable String tongue, String kind) {}

  /** Two texts that belong together: a name and what it stands for. */
  public record Pair(String name, String value) {}

  /**
   * One ingredient.
   *
   * @param part the preferment it belongs to, empty for the final dough
   * @param written the baker's words
   * @param takenFor what it was read as, empty if that adds nothing to the words
   */
  public record Line(String part, String written, String takenFor, String percent, String grams) {}

  /**
   * Something in pictures, words and numbers.
   *
   * @param id of its heading
   * @param pictures the same for a wide and for a narrow page; the stylesheet shows one
   * @param caption what to look at
   * @param english whether the caption is in English only
   * @param warnings what keeps it from being trusted, in sentences
   * @param columns heads of the table
   * @param rows its cells
   */
  public record Figure(
      String id,
      String heading,
      List<Picture> pictures,
      String caption,
      boolean english,
      List<String> warnings,
      List<String> columns,
      List<List<String>> rows) {}

  /** Readings under one heading. */
  public record Group(String name, List<Reading> readings) {}

  /**
   * One worked-out reading.
   *
   * @param value with unit and spread: "1.2 % (1.1–1.3)"
   * @param known how it is known: "measured", "worked out", "assumed" …
   * @param usual the usual range for the style, or empty
   * @param lies where the value lies against that range: "below", "within", "above" or empty
   * @param source number of the source of the range: "[2]", or empty
   * @param what what the number means, or empty
   */
  public record Reading(
      String name,
      String value,
      String known,
      String usual,
      String lies,
      String source,
      String what) {}
}
