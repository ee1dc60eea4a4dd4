package crumbtrail.formula;

import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Preferment;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.sheet.LineText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Alters how much of something is in a formula. Lines that change are written anew, by weight, or
 * by percentage where the sheet gives percentages; all others stay as the baker wrote them.
 *
 * <p>What is to be changed is looked for in the final dough first; only where it is not there, in
 * what is made ahead.
 */
public final class FormulaEdit {
  private final BakeSheet sheet;
  private final double flour;
  private final boolean percents;
  private final Map<String, WeighedLine> weighed = new HashMap<>();

  private FormulaEdit(BakeSheet sheet, Pantry pantry) {
    this.sheet = sheet;
    this.flour = FormulaWorker.work(sheet, pantry).flourGrams().value();
    LineWeigher weigher = new LineWeigher(pantry, new Notes());
    Stream.concat(
            weigher.weigh(sheet.formula()).stream(),
            sheet.preferments().stream().flatMap(ahead -> weigher.weigh(ahead.formula()).stream()))
        .forEach(line -> weighed.put(line.line().where(), line));
    this.percents =
        weighed.values().stream().anyMatch(line -> line.isKind(Kind.FLOUR))
            && weighed.values().stream()
                .filter(line -> line.isKind(Kind.FLOUR))
                .allMatch(line -> line.way() == WeighedLine.Way.PERCENT);
  }

  /** An edit of this sheet's formula. */
  public static FormulaEdit of(BakeSheet sheet, Pantry pantry) {
    return new FormulaEdit(sheet, pantry);
  }

  /**
   * Grams of the lines that a choice of ingredients picks, as far as they can be weighed.
   *
   * @param chosen which ingredients
   */
  public double grams(Predicate<Ingredient> chosen) {
    return lines(chosen).stream().mapToDouble(this::grams).sum();
  }

  /** Whether any line is picked, weighable or not. */
  public boolean has(Predicate<Ingredient> chosen) {
    return !lines(chosen).isEmpty();
  }

  /** Names of what is picked, as the pantry writes them. */
  public List<String> names(Predicate<Ingredient> chosen) {
    return lines(chosen).stream()
        .map(line -> line.ingredient().orElseThrow().plainName())
        .distinct()
        .toList();
  }

  /** What is picked, in the order of the sheet. */
  List<Ingredient> ingredients(Predicate<Ingredient> chosen) {
    return lines(chosen).stream().map(line -> line.ingredient().orElseThrow()).distinct().toList();
  }

  /**
   * The sheet with this much of the chosen ingredients, all lines of them in proportion.
   *
   * @param grams 0 takes the lines out
   * @param added name of what to put in where no line is picked
   */
  public BakeSheet to(Predicate<Ingredient> chosen, double grams, String added) {
    List<WeighedLine> lines = lines(chosen);
    double now = lines.stream().mapToDouble(this::grams).sum();
    if (lines.isEmpty()) {
      return grams > 0 ? with(added, grams) : sheet;
    }
    Map<String, FormulaLine> changed = new HashMap<>();
    for (WeighedLine line : lines) {
      double share = now > 0 ? grams(line) / now : 1.0 / lines.size();
      changed.put(line.line().where(), line(line, share * grams));
    }
    return replaced(changed, grams <= 0 ? changed.keySet() : Set.of());
  }

  /**
   * The sheet with another ingredient in place of the chosen ones.
   *
   * @param name of the other ingredient
   * @param perGram grams of the other that stand for one gram
   */
  public BakeSheet swapped(Predicate<Ingredient> chosen, String name, double perGram) {
    Map<String, FormulaLine> changed = new HashMap<>();
    Set<String> gone = new HashSet<>();
    for (WeighedLine line : lines(chosen)) {
      double grams = grams(line) * perGram;
      if (grams > 0) {
        changed.put(line.line().where(), anew(line.line().where(), name, grams));
      } else {
        gone.add(line.line().where());
      }
    }
    return replaced(changed, gone);
  }

  /** The sheet with each chosen flour stating this percentage of protein. */
  public BakeSheet withProtein(Predicate<Ingredient> chosen, double percent) {
    Map<String, FormulaLine> changed = new HashMap<>();
    for (WeighedLine line : weighed.values()) {
      if (line.inDough() && line.ingredient().filter(chosen).isPresent()) {
        double rounded = Math.round(percent * 10) / 10.0;
        FormulaLine stated = VagueLines.withProtein(line.line(), rounded);
        changed.put(line.line().where(), line(stated, line));
      }
    }
    return replaced(changed, Set.of());
  }

  /** The sheet with every line by weight, and all weights times a factor. */
  public BakeSheet scaled(double factor) {
    Map<String, FormulaLine> changed = new HashMap<>();
    for (WeighedLine line : weighed.values()) {
      if (grams(line) > 0 && !percents) {
        changed.put(line.line().where(), LineText.weighing(line.line(), factor * grams(line)));
      }
    }
    return replaced(changed, Set.of());
  }

  private FormulaLine line(FormulaLine stated, WeighedLine was) {
    return grams(was) > 0
        ? line(new WeighedLine(stated, was.find(), was.grams(), was.way(), true), grams(was))
        : stated;
  }

  private BakeSheet with(String ingredient, double grams) {
    List<FormulaLine> lines = new ArrayList<>(sheet.formula());
    int place = lines.size();
    // Where lines were taken out before, a number may still be in use.
    while (weighed.containsKey("formula[" + place + "]")) {
      place++;
    }
    lines.add(anew("formula[" + place + "]", ingredient, grams));
    return sheet.with(lines, sheet.preferments());
  }

  private FormulaLine anew(String where, String ingredient, double grams) {
    return percents && flour > 0
        ? LineText.addedPercent(where, ingredient, grams / flour * 100)
        : LineText.added(where, ingredient, grams);
  }

  private FormulaLine line(WeighedLine old, double grams) {
    return old.way() == WeighedLine.Way.PERCENT && flour > 0
        ? LineText.percent(old.line(), grams / flour * 100)
        : LineText.weighing(old.line(), grams);
  }

  private BakeSheet replaced(Map<String, FormulaLine> changed, Set<String> gone) {
    return sheet.with(
        replaced(sheet.formula(), changed, gone),
        sheet.preferments().stream()
            .map(
                ahead ->
                    new Preferment(
                        ahead.name(), replaced(ahead.formula(), changed, gone), ahead.stages()))
            .toList());
  }

  private static List<FormulaLine> replaced(
      List<FormulaLine> lines, Map<String, FormulaLine> changed, Set<String> gone) {
    return lines.stream()
        .filter(line -> !gone.contains(line.where()))
        .map(line -> changed.getOrDefault(line.where(), line))
        .toList();
  }

  private List<WeighedLine> lines(Predicate<Ingredient> chosen) {
    List<WeighedLine> main = lines(sheet.formula(), chosen);
    return main.isEmpty()
        ? sheet.preferments().stream()
            .flatMap(ahead -> lines(ahead.formula(), chosen).stream())
            .toList()
        : main;
  }

  private List<WeighedLine> lines(List<FormulaLine> lines, Predicate<Ingredient> chosen) {
    return lines.stream()
        .map(line -> Optional.ofNullable(weighed.get(line.where())))
        .flatMap(Optional::stream)
        .filter(line -> line.inDough() && line.ingredient().filter(chosen).isPresent())
        .toList();
  }

  private double grams(WeighedLine line) {
    if (line.way() == WeighedLine.Way.PERCENT) {
      return line.percent() / 100 * flour;
    }
    return line.grams().map(Level::value).orElse(0.0);
  }
}
