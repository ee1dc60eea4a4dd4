package crumbtrail.formula;

import crumbtrail.pantry.Composition;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.LineText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One ingredient in place of another, with the totals that matter kept: water, fat, sugar, salt and
 * the protein of the flour. What the new one brings too little or too much of is made good in the
 * lines that are there for it, by a balance of masses over the compositions of the pantry.
 *
 * <p>How much of the new one is taken follows from what the old one was there for: yeast by its
 * strength, salt by its salt, sweeteners by their sugar, fats by their fat, eggs, milk and other
 * liquids by their water, milk powder by its solids without fat, all else by weight.
 *
 * @param sheet with the other ingredient in it
 * @param from what goes out, with its weight
 * @param to what comes in, with its weight
 * @param balanced what was made good, in sentences
 * @param lost what cannot be kept, in sentences
 */
public record Substitution(
    BakeSheet sheet, String from, String to, List<String> balanced, List<String> lost) {

  /** Differences of protein that a baker notices, percent on flour. Our choice. */
  private static final double NOTABLE = 0.3;

  /** Above this share of water, percent, a thing is poured. */
  private static final double WET = 45;

  public Substitution {
    balanced = List.copyOf(balanced);
    lost = List.copyOf(lost);
  }

  /**
   * Puts an ingredient in place of others.
   *
   * @param gone what goes out
   * @param taken what comes in
   * @param share how much of it goes, above 0, 1 for all
   * @return empty if nothing of it is on the sheet by an amount, or if it is what comes in already
   */
  public static Optional<Substitution> of(
      BakeSheet sheet, Pantry pantry, Predicate<Ingredient> gone, Ingredient taken, double share) {
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    Predicate<Ingredient> other = gone.and(one -> !one.key().equals(taken.key()));
    List<Ingredient> leaving = edit.ingredients(other);
    double grams = share * edit.grams(other);
    if (leaving.isEmpty() || grams <= 0) {
      return Optional.empty();
    }
    Totals missing = Totals.NONE;
    double needed = 0;
    for (Ingredient one : leaving) {
      double of = share * edit.grams(one::equals);
      needed += of * perGram(one, taken);
      missing = missing.plus(one.per100(), of);
    }
    missing = missing.plus(taken.per100(), -needed);
    BakeSheet swapped = swapped(sheet, pantry, other, taken, needed, share);
    Balance balance = new Balance(swapped, pantry, missing, taken);
    BakeSheet settled = balance.settled();
    List<String> balanced = new ArrayList<>(balance.made());
    List<String> lost = new ArrayList<>(balance.lost());
    // Bran and germ bring protein that makes no gluten; nothing is lost with it.
    boolean whole = leaving.stream().anyMatch(one -> one.has("wholegrain"));
    if (taken.kind() == Kind.FLOUR && !whole) {
      settled = strengthened(sheet, settled, pantry, balanced);
    } else if (taken.kind() != Kind.FLOUR) {
      protein(sheet, settled, missing.protein(), pantry).ifPresent(lost::add);
    }
    return Optional.of(
        new Substitution(
            settled,
            weight(grams) + String.join(" and ", edit.names(other)),
            weight(needed) + taken.plainName(),
            balanced,
            lost));
  }

  /** Grams of one ingredient that do the work of a gram of another. */
  static double perGram(Ingredient old, Ingredient taken) {
    Composition was = old.per100();
    Composition is = taken.per100();
    return switch (old.kind()) {
      case YEAST -> ratio(old.yeastFactor(), taken.yeastFactor());
      case SALT -> ratio(was.salt(), is.salt());
      case SWEETENER -> ratio(was.sugar(), is.sugar());
      case FAT -> ratio(was.fat(), is.fat());
      case EGG, DAIRY, LIQUID, WATER ->
          was.water() >= WET && is.water() >= WET
              ? ratio(was.water(), is.water())
              : ratio(solids(was), solids(is));
      default -> 1;
    };
  }

  // Fat is made good by a fat: what a powder stands for is the rest.
  private static double solids(Composition one) {
    return 100 - one.water() - one.fat();
  }

  // What has none of it stands in by weight: a salt without sodium is salt to the baker's hand.
  private static double ratio(double was, double is) {
    return was > 0 && is > 0 ? was / is : 1;
  }

  private static BakeSheet swapped(
      BakeSheet sheet,
      Pantry pantry,
      Predicate<Ingredient> gone,
      Ingredient taken,
      double grams,
      double share) {
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    Predicate<Ingredient> same = one -> one.key().equals(taken.key());
    if (share >= 1 && edit.grams(same) <= 0) {
      return edit.swapped(gone, taken.plainName(), grams / edit.grams(gone));
    }
    FormulaEdit without = FormulaEdit.of(edit.to(gone, (1 - share) * edit.grams(gone), ""), pantry);
    return without.to(same, without.grams(same) + grams, taken.plainName());
  }

  // A weaker flour gets wheat gluten until the flour has its protein again. The protein of the
  // flour is a straight line in so little gluten, so two points settle it.
  private static BakeSheet strengthened(
      BakeSheet before, BakeSheet after, Pantry pantry, List<String> balanced) {
    double was = flourProtein(before, pantry);
    double is = flourProtein(after, pantry);
    Optional<Ingredient> gluten = pantry.lookup("vital wheat gluten");
    if (was - is < NOTABLE || is <= 0 || gluten.isEmpty()) {
      return after;
    }
    FormulaEdit edit = FormulaEdit.of(after, pantry);
    double now = edit.grams(Substitution::isGluten);
    double step = FormulaWorker.work(after, pantry).flourGrams().value() / 100;
    String name = gluten.get().plainName();
    double then = flourProtein(edit.to(Substitution::isGluten, now + step, name), pantry);
    double more = (was - is) / (then - is) * step;
    if (!(more > 0)) {
      return after;
    }
    balanced.add(
        weight(more)
            + name
            + " brings the protein of the flour back to "
            + number(was)
            + " %, from "
            + number(is)
            + " %.");
    return edit.to(Substitution::isGluten, now + more, name);
  }

  private static boolean isGluten(Ingredient one) {
    return one.kind() == Kind.GLUTEN;
  }

  private static double flourProtein(BakeSheet sheet, Pantry pantry) {
    return FormulaWorker.work(sheet, pantry).reading("flour protein").map(Level::value).orElse(0.0);
  }

  private static Optional<String> protein(
      BakeSheet before, BakeSheet after, double missing, Pantry pantry) {
    double flour = FormulaWorker.work(before, pantry).flourGrams().value();
    if (before.equals(after) || flour <= 0 || missing / flour * 100 < 2 * NOTABLE) {
      return Optional.empty();
    }
    return Optional.of(
        weight(missing).strip()
            + " of protein are not made good: expect a paler crust and a crumb that sets less"
            + " firmly.");
  }

  /** "10.4 g ", as a kitchen scale shows it. */
  static String weight(double grams) {
    return number(LineText.onScale(grams)) + " g ";
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  /** Grams of what a dough is made of. */
  record Totals(double water, double fat, double sugar, double salt, double protein) {
    static final Totals NONE = new Totals(0, 0, 0, 0, 0);

    Totals plus(Composition one, double grams) {
      double share = grams / 100;
      return new Totals(
          water + share * one.water(),
          fat + share * one.fat(),
          sugar + share * one.sugar(),
          salt + share * one.salt(),
          protein + share * one.protein());
    }
  }
}
