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
 * @param steps what its steps tell of times and heat, in English
 * @param notes lines kept as notes on the day
 * @param said all of it in one breath, for those who hear the page
 */
public record LayoutView(
    List<Row> rows,
    List<Fact> facts,
    List<Doubt> doubts,
    List<String> steps,
    List<String> notes,
    String said) {

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
   * @param english whether it can be told in English only
   */
  public record Doubt(String about, String what, String remedy, boolean english) {}

  /** Whether there is nothing to show. */
  public boolean empty() {
    return rows.isEmpty() && doubts.isEmpty() && notes.isEmpty();
  }

  static LayoutView of(RecipeLayout laid, Units units, Texts t) {
    List<Row> rows = new ArrayList<>();
    String part = "";
    for (RecipeLine line : laid.lines()) {
      rows.add(row(line, line.part().equals(part) ? "" : line.part(), units, t));
      part = line.part();
    }
    List<Doubt> doubts = doubts(laid, t);
    return new LayoutView(
        rows, facts(laid, units, t), doubts, laid.steps(), laid.notes(), said(laid, doubts, t));
  }

  private static Row row(RecipeLine line, String part, Units units, Texts t) {
    boolean plain = line.written().toLowerCase(Locale.ROOT).contains(line.ingredient());
    String percent = line.percent() == null ? "" : percent(line.percent(), t);
    return new Row(
        part,
        line.written(),
        plain ? "" : line.ingredient(),
        t.number(weight(line, units)),
        t.number(fills(line, units)),
        line.inDough() ? percent : t.of("laid.notindough"));
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

  private static List<Fact> facts(RecipeLayout laid, Units units, Texts t) {
    List<Fact> facts = new ArrayList<>();
    FormulaTable formula = laid.formula();
    if (formula == null) {
      return facts;
    }
    // Percentages without any weight stand on a made-up kilogram, which is nobody's.
    boolean weighed = laid.lines().stream().anyMatch(line -> line.grams() != null);
    if (weighed) {
      facts.add(new Fact(t.of("laid.flour"), t.number(units.quantity(formula.flourGrams(), "g"))));
    }
    percent(facts, t, "laid.hydration", formula.hydration().liquid());
    percent(facts, t, "laid.salt", laid.salt());
    percent(facts, t, "laid.yeast", laid.yeast());
    percent(facts, t, "laid.ahead", formula.percent().get("prefermented flour"));
    if (weighed) {
      facts.add(new Fact(t.of("laid.dough"), t.number(units.quantity(formula.doughGrams(), "g"))));
    }
    return facts;
  }

  private static void percent(List<Fact> facts, Texts t, String key, Double value) {
    if (value != null && value > 0) {
      facts.add(new Fact(t.of(key), percent(value, t)));
    }
  }

  private static List<Doubt> doubts(RecipeLayout laid, Texts t) {
    List<Doubt> doubts = new ArrayList<>();
    for (Problem problem : laid.problems()) {
      // That nothing is written yet is no news to somebody who is writing.
      if (!problem.where().isEmpty()) {
        doubts.add(new Doubt("", problem.what(), problem.remedy(), true));
      }
    }
    for (OpenLine open : laid.notUnderstood()) {
      doubts.add(new Doubt(open.written(), open.uncertain(), open.remedy(), true));
    }
    for (RecipeLine line : laid.lines()) {
      boolean open = line.inDough() && line.grams() == null && line.percent() == null;
      if (open && doubts.stream().noneMatch(doubt -> doubt.about().equals(line.written()))) {
        doubts.add(
            new Doubt(line.written(), t.of("laid.noamount"), t.of("laid.noamount.remedy"), false));
      }
    }
    return doubts;
  }

  private static String said(RecipeLayout laid, List<Doubt> doubts, Texts t) {
    if (laid.lines().isEmpty() && doubts.isEmpty()) {
      return "";
    }
    long understood =
        laid.lines().stream()
            .filter(
                line -> doubts.stream().noneMatch(doubt -> doubt.about().equals(line.written())))
            .count();
    List<String> parts = new ArrayList<>();
    parts.add(t.of("laid.said.lines", understood));
    if (laid.formula() != null && laid.formula().hydration().liquid() > 0) {
      parts.add(t.of("laid.said.hydration", percent(laid.formula().hydration().liquid(), t)));
    }
    if (!doubts.isEmpty()) {
      parts.add(t.of("laid.said.doubts", doubts.size()));
    }
    return String.join(", ", parts);
  }

  private static String percent(double value, Texts t) {
    return t.number(Amounts.number(value) + " %");
  }
}
