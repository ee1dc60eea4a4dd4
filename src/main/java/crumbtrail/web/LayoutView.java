package crumbtrail.web;

import crumbtrail.quantity.Amounts;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.RecipeLayout.OpenLine;
import crumbtrail.report.RecipeLayout.RecipeLine;
import crumbtrail.report.Report.FormulaTable;
import crumbtrail.sheet.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A recipe as it is laid out beside its field, in words.
 *
 * @param rows a line each
 * @param facts what bakers ask of a formula first
 * @param doubts what was not understood, and what would do
 * @param notes lines kept as notes on the day
 * @param said all of it in one breath, for those who hear the page
 */
public record LayoutView(
    List<Row> rows, List<Fact> facts, List<Doubt> doubts, List<String> notes, String said) {

  /** Millilitres below which a spoon is no measure. */
  private static final double NO_SPOON = 0.6;

  /**
   * One ingredient.
   *
   * @param part name of its part where a new one begins, else empty
   * @param takenFor what it is taken for, empty where its own words say so
   * @param weight empty if it cannot be told
   * @param fills the same in cups or spoons, where the baker uses them and the line does not
   * @param percent empty if it cannot be told
   */
  public record Row(
      String part, String written, String takenFor, String weight, String fills, String percent) {}

  /** A name and its number. */
  public record Fact(String name, String value) {}

  /**
   * Something not understood.
   *
   * @param about the line as written, or its place
   */
  public record Doubt(String about, String what, String remedy) {}

  /** Whether there is nothing to show. */
  public boolean empty() {
    return rows.isEmpty() && doubts.isEmpty() && notes.isEmpty();
  }

  static LayoutView of(RecipeLayout laid, Units units) {
    List<Row> rows = new ArrayList<>();
    String part = "";
    for (RecipeLine line : laid.lines()) {
      rows.add(row(line, line.part().equals(part) ? "" : line.part(), units));
      part = line.part();
    }
    List<Doubt> doubts = doubts(laid);
    return new LayoutView(rows, facts(laid, units), doubts, laid.notes(), said(laid, doubts));
  }

  private static Row row(RecipeLine line, String part, Units units) {
    boolean plain = line.written().toLowerCase(Locale.ROOT).contains(line.ingredient());
    String percent = line.percent() == null ? "" : Amounts.number(line.percent()) + " %";
    return new Row(
        part,
        line.written(),
        plain ? "" : line.ingredient(),
        weight(line, units),
        fills(line, units),
        line.inDough() ? percent : "not in the dough");
  }

  private static String weight(RecipeLine line, Units units) {
    if (line.grams() == null) {
      return "";
    }
    // A cup is no scale: the sign before the number says so, and no figure that nobody could know.
    double half = line.low() == null ? 0 : (line.high() - line.low()) / 2;
    return half > 0
        ? "≈ " + units.quantity(line.grams(), half, "g")
        : units.quantity(line.grams(), "g");
  }

  private static String fills(RecipeLine line, Units units) {
    boolean weighed = line.grams() != null && line.low() == null;
    return units.us() && weighed && line.millilitres() != null && line.millilitres() >= NO_SPOON
        ? units.quantity(line.millilitres(), "ml")
        : "";
  }

  private static List<Fact> facts(RecipeLayout laid, Units units) {
    List<Fact> facts = new ArrayList<>();
    FormulaTable formula = laid.formula();
    if (formula == null) {
      return facts;
    }
    // Percentages without any weight stand on a made-up kilogram, which is nobody's.
    boolean weighed = laid.lines().stream().anyMatch(line -> line.grams() != null);
    if (weighed) {
      facts.add(new Fact("Flour", units.quantity(formula.flourGrams(), "g")));
    }
    percent(facts, "Hydration", formula.hydration().liquid());
    percent(facts, "Salt", laid.salt());
    percent(facts, "Yeast", laid.yeast());
    percent(facts, "Flour made ahead", formula.percent().get("prefermented flour"));
    if (weighed) {
      facts.add(new Fact("Dough", units.quantity(formula.doughGrams(), "g")));
    }
    return facts;
  }

  private static void percent(List<Fact> facts, String name, Double value) {
    if (value != null && value > 0) {
      facts.add(new Fact(name, Amounts.number(value) + " %"));
    }
  }

  private static List<Doubt> doubts(RecipeLayout laid) {
    List<Doubt> doubts = new ArrayList<>();
    for (Problem problem : laid.problems()) {
      // That nothing is written yet is no news to somebody who is writing.
      if (!problem.where().isEmpty()) {
        doubts.add(new Doubt("", problem.what(), problem.remedy()));
      }
    }
    for (OpenLine open : laid.notUnderstood()) {
      doubts.add(new Doubt(open.written(), open.uncertain(), open.remedy()));
    }
    for (RecipeLine line : laid.lines()) {
      boolean open = line.inDough() && line.grams() == null && line.percent() == null;
      if (open && doubts.stream().noneMatch(doubt -> doubt.about().equals(line.written()))) {
        doubts.add(
            new Doubt(line.written(), "no amount, so it is left open", "write one, such as 10 g"));
      }
    }
    return doubts;
  }

  private static String said(RecipeLayout laid, List<Doubt> doubts) {
    if (laid.lines().isEmpty() && doubts.isEmpty()) {
      return "";
    }
    long understood =
        laid.lines().stream()
            .filter(
                line -> doubts.stream().noneMatch(doubt -> doubt.about().equals(line.written())))
            .count();
    List<String> parts = new ArrayList<>();
    parts.add(count(understood, "line understood", "lines understood"));
    if (laid.formula() != null && laid.formula().hydration().liquid() > 0) {
      parts.add("hydration " + Amounts.number(laid.formula().hydration().liquid()) + " %");
    }
    if (!doubts.isEmpty()) {
      parts.add(count(doubts.size(), "not quite clear", "not quite clear"));
    }
    return String.join(", ", parts);
  }

  private static String count(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }
}
