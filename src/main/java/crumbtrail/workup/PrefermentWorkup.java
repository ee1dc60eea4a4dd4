package crumbtrail.workup;

import crumbtrail.dough.DoughMix;
import crumbtrail.dough.DoughState;
import crumbtrail.dough.Fermentation;
import crumbtrail.dough.Fermentation.Stay;
import crumbtrail.dough.Leaven;
import crumbtrail.dough.PrefermentRipeness;
import crumbtrail.dough.Stretch;
import crumbtrail.formula.Formula;
import crumbtrail.formula.Level;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How ripe the starter or preferment was at use: of several, the one with the most flour. */
final class PrefermentWorkup {
  private static final String SEED = "flour in starter";
  private static final double ROOM = 21;

  // Two degrees either way move the time by a sixth, the four of an unknown place by a third.
  private static final double TOLD = 0.15;
  private static final double GUESSED = 0.33;

  private static final double LAG = 30;

  private PrefermentWorkup() {}

  /**
   * Puts the reading.
   *
   * @return yeast that grew in the preferment, as instant, percent of all flour
   */
  static double work(BakeSheet sheet, Formula formula, Pantry pantry, ReadingList readings) {
    return formula.parts().stream()
        .filter(part -> part.flourGrams().value() > 0 && fermented(part, pantry))
        .max(Comparator.comparingDouble(part -> part.flourGrams().value()))
        .flatMap(
            part ->
                sheet.preferments().stream()
                    .filter(preferment -> preferment.name().equals(part.name()))
                    .findFirst()
                    .map(told -> ripeness(part, told.stages(), sheet, pantry, readings)))
        .orElse(0.0);
  }

  private static boolean fermented(Formula.Part part, Pantry pantry) {
    return seed(part) > 0 || yeast(part, pantry) > 0;
  }

  private static double ripeness(
      Formula.Part part, List<Stage> stages, BakeSheet sheet, Pantry pantry, ReadingList readings) {
    Optional<Double> room = sheet.process().room().map(Quantity::value);
    List<Stretch> schedule = new ArrayList<>();
    boolean guessed = false;
    double spread = 0;
    for (Stage stage : stages) {
      Optional<Double> place = stage.temperature().map(Quantity::value).or(() -> room);
      if (stage.time().isPresent()) {
        Quantity time = stage.time().get();
        guessed |= place.isEmpty();
        spread = Math.hypot(spread, time.value() > 0 ? time.spread() / time.value() : 0);
        schedule.add(new Stretch(Math.max(0, time.value()), place.orElse(ROOM)));
      }
    }
    if (schedule.isEmpty()) {
      return 0;
    }
    double hydration = part.hydration().map(Level::value).orElse(100.0);
    double salt = percent(part.percentByIngredient(), pantry, Kind.SALT, false);
    double ripe =
        PrefermentRipeness.starter(seed(part), schedule)
            + PrefermentRipeness.yeasted(yeast(part, pantry), hydration, salt, schedule);
    Known known = PrefermentRipeness.covers(schedule) ? Known.WORKED_OUT : Known.EXTRAPOLATED;
    readings.put(
        "preferment ripeness",
        ripe,
        Math.hypot(spread, guessed ? GUESSED : TOLD),
        guessed ? Known.ASSUMED : known);
    double share = part.percentOfFlour().map(Level::value).orElse(0.0) / 100;
    return share * grown(yeast(part, pantry), hydration, salt, schedule);
  }

  // Percent of the preferment's flour. A preferment is taken to be as warm as its place.
  private static double grown(double yeast, double hydration, double salt, List<Stretch> schedule) {
    if (yeast <= 0) {
      return 0;
    }
    double water = Math.max(40, hydration);
    DoughMix mix =
        new DoughMix(Leaven.ofYeast(yeast), water, salt, 0, 0, 12, 0, 0, 1, 100 + water + salt);
    Fermentation fermentation = new Fermentation(mix);
    DoughState state = fermentation.start(schedule.get(0).celsius());
    for (Stretch stretch : schedule) {
      state = fermentation.after(state, new Stay(stretch.minutes(), stretch.celsius(), LAG));
    }
    return Math.max(0, state.yeast() - yeast);
  }

  private static double seed(Formula.Part part) {
    Level seed = part.percentByIngredient().get(SEED);
    return seed == null ? 0 : seed.value() / 100;
  }

  private static double yeast(Formula.Part part, Pantry pantry) {
    return percent(part.percentByIngredient(), pantry, Kind.YEAST, true);
  }

  private static double percent(
      Map<String, Level> percents, Pantry pantry, Kind kind, boolean asInstant) {
    return percents.entrySet().stream()
        .mapToDouble(
            entry ->
                pantry
                    .lookup(entry.getKey())
                    .filter(known -> known.kind() == kind)
                    .map(known -> factor(known, asInstant) * entry.getValue().value())
                    .orElse(0.0))
        .sum();
  }

  private static double factor(Ingredient ingredient, boolean asInstant) {
    return asInstant ? ingredient.yeastFactor() : 1;
  }
}
