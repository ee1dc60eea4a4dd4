package crumbtrail.compare;

import crumbtrail.formula.Formula;
import crumbtrail.formula.FormulaEdit;
import crumbtrail.formula.FormulaWorker;
import crumbtrail.formula.Level;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Amounts;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Differences in what went into the dough, in baker's percentages, and in how much of it. */
final class FormulaSteps {
  /** Shares that differ by less than this part of them were measured, not changed. Our choice. */
  private static final double ALIKE = 0.02;

  /** Nor is this difference, percent of flour, one that was made on purpose. Our choice. */
  private static final double TRACE = 0.02;

  /** Points of protein between two sacks of one kind that are not worth a word. Our choice. */
  private static final double POINTS = 0.2;

  private static final String STARTER = "starter";

  private final Pantry pantry;
  private final Formula before;
  private final Formula after;
  private final List<Step> steps = new ArrayList<>();

  private FormulaSteps(Pantry pantry, BakeSheet before, BakeSheet after) {
    this.pantry = pantry;
    this.before = FormulaWorker.work(before, pantry);
    this.after = FormulaWorker.work(after, pantry);
  }

  static List<Step> of(Pantry pantry, BakeSheet before, BakeSheet after) {
    FormulaSteps all = new FormulaSteps(pantry, before, after);
    if (before.preferments().size() != after.preferments().size()) {
      all.steps.add(new Whole(all.preferments()));
      return all.steps;
    }
    all.ingredients();
    all.size();
    for (int place = 0; place < before.preferments().size(); place++) {
      all.ripening(before.preferments().get(place), after.preferments().get(place), place);
    }
    return all.steps;
  }

  private Difference preferments() {
    return new Difference("formula with its preferments", names(before), names(after));
  }

  private static String names(Formula formula) {
    return formula.parts().isEmpty()
        ? "none made ahead"
        : formula.parts().stream().map(Formula.Part::name).collect(Collectors.joining(", "));
  }

  private void ingredients() {
    Set<String> names = new LinkedHashSet<>(before.percentByIngredient().keySet());
    names.addAll(after.percentByIngredient().keySet());
    Set<String> flours = new LinkedHashSet<>();
    for (String name : names) {
      double was = percent(before, name);
      double is = percent(after, name);
      if (Math.abs(was - is) > Math.max(TRACE, ALIKE * Math.max(was, is))) {
        // What a starter brings is no ingredient of its own; the starter is asked for below.
        if (isFlour(name)) {
          flours.add(name);
        } else if (pantry.lookup(name).isPresent()) {
          steps.add(new Share(pantry, name, new Difference(name, shown(was), shown(is))));
        }
      }
    }
    starter();
    if (!flours.isEmpty()) {
      steps.add(new Flours(pantry, new Difference("flour", flours(before), flours(after))));
    } else {
      strength();
    }
  }

  // The same flour by name may come from a sack that states another protein.
  private void strength() {
    Optional<Level> was = before.flourAloneProtein();
    Optional<Level> is = after.flourAloneProtein();
    if (was.isPresent()
        && is.isPresent()
        && Math.abs(was.get().value() - is.get().value()) > POINTS) {
      steps.add(
          new Strength(
              pantry,
              new Difference(
                  "protein of the flour", shown(was.get().value()), shown(is.get().value()))));
    }
  }

  private void starter() {
    double was = before.reading(STARTER).map(Level::value).orElse(0.0);
    double is = after.reading(STARTER).map(Level::value).orElse(0.0);
    if (Math.abs(was - is) > Math.max(TRACE, ALIKE * Math.max(was, is))) {
      steps.add(new Ripe(pantry, new Difference("ripe starter", shown(was), shown(is))));
    }
  }

  private boolean isFlour(String name) {
    return flour(pantry, name);
  }

  private static boolean flour(Pantry pantry, String name) {
    return pantry.lookup(name).filter(one -> one.kind() == Kind.FLOUR).isPresent();
  }

  private String flours(Formula formula) {
    return formula.percentByIngredient().entrySet().stream()
        .filter(one -> isFlour(one.getKey()))
        .map(one -> shown(one.getValue().value()) + " " + one.getKey())
        .collect(Collectors.joining(", "));
  }

  private void size() {
    double was = before.doughGrams().value();
    double is = after.doughGrams().value();
    if (before.scaleKnown()
        && after.scaleKnown()
        && Math.min(was, is) > 0
        && Math.abs(was - is) > 2 * ALIKE * Math.max(was, is)) {
      steps.add(
          new Size(
              pantry,
              new Difference(
                  "weight of the dough",
                  Amounts.quantity(Amounts.rounded(was, 0), "g"),
                  Amounts.quantity(Amounts.rounded(is, 0), "g"))));
    }
  }

  private void ripening(BakeSheet.Preferment was, BakeSheet.Preferment is, int place) {
    if (!was.stages().equals(is.stages())) {
      steps.add(
          new Ripening(
              place,
              new Difference("ripening of the " + is.name(), Stages.of(was), Stages.of(is))));
    }
  }

  private static double percent(Formula formula, String name) {
    Level level = formula.percentByIngredient().get(name);
    return level == null ? 0 : level.value();
  }

  private static String shown(double percent) {
    return percent == 0
        ? "none"
        : Amounts.number(Amounts.rounded(percent, percent < 5 ? 2 : 1)) + " %";
  }

  private static Predicate<Ingredient> named(String name) {
    return one -> one.plainName().equals(name);
  }

  /** One ingredient in its share of the flour. */
  private record Share(Pantry pantry, String name, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      double percent = percent(FormulaWorker.work(from, pantry), name);
      double flour = FormulaWorker.work(into, pantry).flourGrams().value();
      // Of a formula without weights its percentages stand for grams on a hundred of flour.
      double grams = percent / 100 * (flour > 0 ? flour : 100);
      return Optional.of(FormulaEdit.of(into, pantry).to(named(name), grams, name));
    }
  }

  /** All starter of the dough, in its share of the flour. */
  private record Ripe(Pantry pantry, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      double percent =
          FormulaWorker.work(from, pantry).reading(STARTER).map(Level::value).orElse(0.0);
      double flour = FormulaWorker.work(into, pantry).flourGrams().value();
      return Optional.of(
          FormulaEdit.of(into, pantry)
              .to(
                  one -> one.kind() == Kind.STARTER,
                  percent / 100 * (flour > 0 ? flour : 100),
                  "sourdough starter"));
    }
  }

  /** The flours of the dough, to the same weight of flour. */
  private record Flours(Pantry pantry, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      Map<String, Level> shares = FormulaWorker.work(from, pantry).percentByIngredient();
      double flour = FormulaWorker.work(into, pantry).flourGrams().value();
      BakeSheet changed = into;
      for (String name : FormulaWorker.work(into, pantry).percentByIngredient().keySet()) {
        if (flour(pantry, name) && !shares.containsKey(name)) {
          changed = FormulaEdit.of(changed, pantry).to(named(name), 0, name);
        }
      }
      for (Map.Entry<String, Level> share : shares.entrySet()) {
        if (flour(pantry, share.getKey())) {
          changed =
              FormulaEdit.of(changed, pantry)
                  .to(
                      named(share.getKey()),
                      share.getValue().value() / 100 * flour,
                      share.getKey());
        }
      }
      return flour > 0 ? Optional.of(changed) : Optional.empty();
    }
  }

  /** The protein that the flours state, the same for all of them. */
  private record Strength(Pantry pantry, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      return FormulaWorker.work(from, pantry)
          .flourAloneProtein()
          .map(
              protein ->
                  FormulaEdit.of(into, pantry)
                      .withProtein(one -> one.kind() == Kind.FLOUR, protein.value()));
    }
  }

  /** The weight of the whole dough. */
  private record Size(Pantry pantry, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      double wanted = FormulaWorker.work(from, pantry).doughGrams().value();
      double now = FormulaWorker.work(into, pantry).doughGrams().value();
      return now > 0
          ? Optional.of(FormulaEdit.of(into, pantry).scaled(wanted / now))
          : Optional.empty();
    }
  }

  /** What happened to a preferment before mixing. */
  private record Ripening(int place, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      List<BakeSheet.Preferment> ahead = new ArrayList<>(into.preferments());
      BakeSheet.Preferment old = ahead.get(place);
      ahead.set(
          place,
          new BakeSheet.Preferment(
              old.name(), old.formula(), from.preferments().get(place).stages()));
      return Optional.of(into.with(into.formula(), ahead));
    }
  }

  /** The whole formula, where what is made ahead cannot be set against each other. */
  private record Whole(Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      return Optional.of(into.with(from.formula(), from.preferments()));
    }
  }
}
