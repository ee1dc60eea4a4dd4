package crumbtrail.formula;

import crumbtrail.formula.Substitution.Totals;
import crumbtrail.pantry.Composition;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Makes good what a formula lacks, or has too much of, in water, fat, sugar and salt: each in the
 * line that is there for it. The lines share what they bring (butter has water and salt), so all
 * are solved for at once.
 */
final class Balance {
  /** What the totals are kept with, and what is put in where the formula has none. */
  private enum Part {
    WATER(Kind.WATER, "water", 0.5),
    FAT(Kind.FAT, "butter", 0.4),
    SUGAR(Kind.SWEETENER, "sugar", 0.4),
    SALT(Kind.SALT, "fine salt", 0.05);

    private final Kind kind;
    private final String plain;

    /** Percent on flour that is worth a line. Our choice. */
    private final double worth;

    Part(Kind kind, String plain, double worth) {
      this.kind = kind;
      this.plain = plain;
      this.worth = worth;
    }

    double of(Totals totals) {
      return switch (this) {
        case WATER -> totals.water();
        case FAT -> totals.fat();
        case SUGAR -> totals.sugar();
        case SALT -> totals.salt();
      };
    }

    double of(Composition one) {
      return of(Totals.NONE.plus(one, 100)) / 100;
    }
  }

  private final BakeSheet start;
  private final Pantry pantry;
  private final Totals missing;
  private final List<String> made = new ArrayList<>();
  private final List<String> lost = new ArrayList<>();
  private final Map<Part, Ingredient> lines = new EnumMap<>(Part.class);

  /**
   * @param missing grams that are to come in; below nought, to go out
   * @param taken what came in and stays as it is
   */
  Balance(BakeSheet sheet, Pantry pantry, Totals missing, Ingredient taken) {
    this.start = sheet;
    this.pantry = pantry;
    this.missing = missing;
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    double flour = FormulaWorker.work(sheet, pantry).flourGrams().value();
    for (Part part : Part.values()) {
      boolean worth = Math.abs(part.of(missing)) > part.worth / 100 * flour;
      // The moisture and the fat of flours are no water and no fat to a baker; their salt is salt.
      boolean counts = taken.kind() != Kind.FLOUR || part == Part.SALT;
      if (worth && counts && taken.kind() != part.kind) {
        line(edit, part, taken).ifPresent(line -> lines.put(part, line));
      }
    }
  }

  /** What was made good, in sentences. */
  List<String> made() {
    return made;
  }

  /** What could not be, in sentences. */
  List<String> lost() {
    return lost;
  }

  private Optional<Ingredient> line(FormulaEdit edit, Part part, Ingredient taken) {
    Predicate<Ingredient> kind = one -> one.kind() == part.kind && !one.key().equals(taken.key());
    return edit.ingredients(kind).stream().findFirst().or(() -> pantry.lookup(part.plain));
  }

  BakeSheet settled() {
    FormulaEdit edit = FormulaEdit.of(start, pantry);
    Map<Part, Double> changes = solved();
    // A line cannot fall below nought: what is left of it goes, and the others are solved again.
    for (Part part : List.copyOf(changes.keySet())) {
      double now = edit.grams(lines.get(part)::equals);
      if (changes.containsKey(part) && now + changes.get(part) < 0) {
        lines.remove(part);
        changes = solved();
        lost.add("More " + word(part) + " comes in with it than the sheet has to take out again.");
      }
    }
    BakeSheet sheet = start;
    for (Map.Entry<Part, Double> change : changes.entrySet()) {
      Ingredient line = lines.get(change.getKey());
      double grams = change.getValue();
      FormulaEdit next = FormulaEdit.of(sheet, pantry);
      sheet = next.to(line::equals, next.grams(line::equals) + grams, line.plainName());
      made.add(
          Substitution.weight(Math.abs(grams))
              + (grams > 0 ? "more " : "less ")
              + line.plainName()
              + " keeps the "
              + word(change.getKey())
              + " as it was.");
    }
    return sheet;
  }

  private static String word(Part part) {
    return part.name().toLowerCase(Locale.ROOT);
  }

  private Map<Part, Double> solved() {
    List<Part> parts = List.copyOf(lines.keySet());
    Map<Part, Double> changes = new EnumMap<>(Part.class);
    if (parts.isEmpty()) {
      return changes;
    }
    RealMatrix brings = MatrixUtils.createRealMatrix(parts.size(), parts.size());
    RealVector wanted = MatrixUtils.createRealVector(new double[parts.size()]);
    for (int row = 0; row < parts.size(); row++) {
      wanted.setEntry(row, parts.get(row).of(missing));
      for (int column = 0; column < parts.size(); column++) {
        Composition line = lines.get(parts.get(column)).per100();
        brings.setEntry(row, column, parts.get(row).of(line));
      }
    }
    RealVector grams = new LUDecomposition(brings).getSolver().solve(wanted);
    for (int row = 0; row < parts.size(); row++) {
      changes.put(parts.get(row), grams.getEntry(row));
    }
    return changes;
  }
}
