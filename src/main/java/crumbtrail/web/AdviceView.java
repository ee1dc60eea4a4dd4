package crumbtrail.web;

import crumbtrail.lessons.Drawn;
import crumbtrail.web.ReportView.Pair;
import java.util.List;

/**
 * Advice laid out for the page: what to change, the bake with the changes made, and what lies ahead
 * of a bake that is still to come. Nothing here is escaped; the templates do that.
 *
 * @param changes what is recommended, in the order of the report
 * @param others what else was tried
 * @param next the bake with the changes made, null where there is none
 * @param ahead null in a post-mortem
 * @param wish the form for the next bake, null where no server answers or the sheet is too long
 */
public record AdviceView(
    List<Change> changes, List<Change> others, Next next, Ahead ahead, WishForm wish) {

  /**
   * One change.
   *
   * @param what what to do
   * @param span "from 6 g to 10 g", or empty
   * @param why cause and effect
   * @param cause plain name of the cause it is to mend
   * @param verdict what the re-check says of a change that is not recommended, or empty
   * @param but what speaks against it, in English, or empty
   * @param moves other causes whose risk it moves, in words
   * @param source citation, or empty
   */
  public record Change(
      String what,
      String span,
      String why,
      String cause,
      Risk before,
      Risk after,
      String verdict,
      String but,
      List<String> moves,
      String source) {}

  /**
   * A risk.
   *
   * @param words how likely, "very likely"
   * @param percent the same as a number with its sign
   * @param bar the same from 0 to 100, for drawing
   */
  public record Risk(String words, String percent, int bar) {
    static Risk of(double probability, Texts t) {
      return new Risk(
          t.likelihood(probability),
          t.number(ReportWords.percent(probability)),
          (int) Math.round(100 * Math.max(0, Math.min(1, probability))));
    }
  }

  /**
   * The next bake.
   *
   * @param head what, in what and how hot, for the head of a sheet of paper
   * @param changes as they were made, the greatest gain first
   * @param notes what was left out and what was fitted, in sentences
   * @param dough weight of the dough in words, or empty
   * @param clock whether the steps have times of day
   * @param untold steps of which the sheet does not say how long they take
   * @param risks the largest risks that are left, and how likely they are
   */
  public record Next(
      String title,
      Head head,
      List<Change> changes,
      List<String> notes,
      List<Weighed> formula,
      String dough,
      boolean clock,
      List<Step> steps,
      List<String> untold,
      List<Pair> risks) {}

  /**
   * The head of the next bake; what the sheet does not tell is empty and is filled in by hand.
   *
   * @param style the kind of bread
   * @param vessel what it is baked in or on, and its size as the baker wrote it
   * @param pieces how many, and how heavy each
   * @param oven how long and how hot
   */
  public record Head(String style, String vessel, String pieces, String oven) {}

  /**
   * One ingredient of the next bake.
   *
   * @param part the preferment it belongs to, empty for the final dough
   * @param spoons little yeast or salt by the spoon, or empty
   */
  public record Weighed(String part, String name, String percent, String weight, String spoons) {}

  /**
   * A step of the day.
   *
   * @param when the time of day, or hours and minutes since the mixing
   * @param length how long it takes, or empty
   */
  public record Step(String when, String name, String length, String how, String look) {}

  /**
   * What lies ahead.
   *
   * @param missing what the recipe leaves out, and why that matters
   * @param loaf all expected signs in one drawing, null where none can be drawn
   * @param single the likeliest of them one by one
   * @param signs all expected signs, and how likely they are
   * @param watch what to look for, step by step
   */
  public record Ahead(
      List<Pair> missing,
      List<Level> levels,
      Drawn loaf,
      List<Drawn> single,
      List<Pair> signs,
      List<Pair> watch) {}

  /**
   * A level of the formula.
   *
   * @param outside whether it lies outside what is usual
   */
  public record Level(String words, boolean outside) {}
}
