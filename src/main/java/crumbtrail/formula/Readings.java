package crumbtrail.formula;

import crumbtrail.formula.Tally.Item;
import crumbtrail.pantry.Kind;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The numbers that rules see, from the sums of a dough. */
final class Readings {
  /** A liquid "as needed" beside a measured one: common practice puts it within ten points. */
  private static final double AS_NEEDED = 10;

  private final Tally tally;
  private final Level flour;
  private final Set<Kind> unmeasured;
  private final boolean flourNamed;
  private final boolean whole;
  private final Map<String, Level> readings = new LinkedHashMap<>();

  /**
   * @param unmeasured kinds of which the sheet names something without saying how much
   * @param flourNamed whether the sheet names any flour; of a flour only taken for granted neither
   *     protein nor thirst is known
   * @param whole whether the sheet gives a whole formula, so that what it does not name is not
   *     there; of a few loose percentages nothing is known but what they say
   */
  Readings(Tally tally, Set<Kind> unmeasured, boolean flourNamed, boolean whole) {
    this.flourNamed = flourNamed;
    this.tally = tally;
    this.flour = tally.get(Item.FLOUR);
    this.unmeasured = unmeasured;
    this.whole = whole;
  }

  Map<String, Level> all() {
    water();
    put("salt", Item.SALT, Kind.SALT);
    put("yeast", Item.YEAST, Kind.YEAST);
    put("sugar", Item.SUGAR, Kind.SWEETENER);
    put("fat", Item.FAT, Kind.FAT);
    put("egg", Item.EGG, Kind.EGG);
    put("milk", Item.MILK, Kind.DAIRY);
    put("milk solids", Item.MILK_SOLIDS, Kind.DAIRY);
    put("starter", Item.STARTER, Kind.STARTER);
    if (tally.get(Item.STARTER_FLOUR).value() > 0) {
      readings.put(
          "starter water", tally.get(Item.STARTER_WATER).percentOf(tally.get(Item.STARTER_FLOUR)));
    }
    put("gluten added", Item.GLUTEN, Kind.GLUTEN);
    put("malt", Item.MALT, Kind.MALT);
    put("inclusions", Item.INCLUSIONS, Kind.INCLUSION);
    share("prefermented flour", Item.PREFERMENTED, Kind.STARTER);
    share("whole grain", Item.WHOLE_GRAIN, Kind.FLOUR);
    share("rye", Item.RYE, Kind.FLOUR);
    flourAloneProtein().ifPresent(level -> readings.put("flour protein", withGluten(level)));
    saltSubstitute();
    fallingNumber().ifPresent(level -> readings.put("falling number", level));
    waterBalance().ifPresent(level -> readings.put("water balance", level));
    return readings;
  }

  private void water() {
    Level poured = tally.get(Item.POURED);
    if (poured.value() > 0) {
      readings.put("hydration", open(poured.percentOf(flour)));
    }
    allButFat().filter(level -> level.value() > 0).ifPresent(l -> readings.put("total water", l));
  }

  private Optional<Level> allButFat() {
    Level water = tally.get(Item.WATER);
    Level percent = open(water.percentOf(flour));
    double unknown = tally.get(Item.UNKNOWN).percentOf(flour).high();
    return Optional.of(percent.widened(0, unknown));
  }

  private Level open(Level percent) {
    boolean asNeeded =
        unmeasured.contains(Kind.WATER)
            || unmeasured.contains(Kind.LIQUID)
            || unmeasured.contains(Kind.DAIRY);
    return asNeeded ? percent.widened(0, AS_NEEDED) : percent;
  }

  /** Percent of flour with the water of fats; empty if there is no water. */
  Optional<Level> allWater() {
    Level fat = tally.get(Item.WATER_OF_FAT).percentOf(flour);
    return allButFat().map(level -> level.plus(fat)).filter(level -> level.value() > 0);
  }

  /** Percent protein of flour and added gluten together. */
  private Level withGluten(Level blend) {
    double gluten = tally.get(Item.GLUTEN).value();
    double added = tally.get(Item.GLUTEN_PROTEIN).value();
    double all = flour.value() + gluten;
    return blend.times(flour.value() / all).plus(Level.exact(added / all * 100));
  }

  private void put(String name, Item item, Kind kind) {
    Level grams = tally.get(item);
    if (isKnown(grams, kind)) {
      readings.put(name, grams.percentOf(flour));
    }
  }

  private void share(String name, Item item, Kind kind) {
    Level grams = tally.get(item);
    if (isKnown(grams, kind)) {
      readings.put(name, grams.shareOf(flour));
    }
  }

  /** Something not there is known to be zero only if the formula is whole and measured. */
  private boolean isKnown(Level grams, Kind kind) {
    return grams.value() > 0 || (whole && !unmeasured.contains(kind));
  }

  /** Percent protein of the flour, empty if that of no flour is known. */
  Optional<Level> flourAloneProtein() {
    Level known = tally.get(Item.PROTEIN_FLOUR);
    if (known.value() <= 0 || !flourNamed) {
      return Optional.empty();
    }
    return Optional.of(tally.get(Item.FLOUR_PROTEIN).times(100 / known.value()));
  }

  /** Seconds; empty where neither a falling number nor active malt is on the sheet. */
  private Optional<Level> fallingNumber() {
    double malt = percent(Item.MALT);
    double known = tally.get(Item.PROTEIN_FLOUR).value();
    if (known <= 0 || (tally.get(Item.FALLING_STATED).value() <= 0 && malt <= 0)) {
      return Optional.empty();
    }
    Level added =
        Level.of(Enzymes.MALT_WEAK * malt, Enzymes.MALT * malt, Enzymes.MALT_STRONG * malt);
    Level all = tally.get(Item.LIQUEFACTION).times(1 / known).plus(added);
    return Optional.of(
        Level.of(
            Enzymes.fallingNumber(all.high()),
            Enzymes.fallingNumber(all.value()),
            Enzymes.fallingNumber(all.low())));
  }

  private void saltSubstitute() {
    Level potassium = tally.get(Item.POTASSIUM);
    Level all = potassium.plus(tally.get(Item.SALT));
    if (all.value() > 0) {
      readings.put("salt substitute", potassium.shareOf(all));
    }
  }

  private Optional<Level> waterBalance() {
    Optional<Level> protein = flourAloneProtein();
    Optional<Level> water = allButFat().filter(level -> level.value() > 0);
    boolean bread = tally.get(Item.GLUTEN_FLOUR).value() >= flour.value() / 2;
    if (protein.isEmpty() || water.isEmpty() || !bread) {
      return Optional.empty();
    }
    double expected =
        new Absorption(
                protein.get().value(),
                tally.get(Item.THIRSTY_FLOUR).value() / flour.value(),
                percent(Item.MILK_SOLIDS),
                percent(Item.GLUTEN),
                percent(Item.BOUND),
                percent(Item.SCALDED_FLOUR),
                percent(Item.SCALD_WATER),
                percent(Item.SUGAR),
                percent(Item.FAT))
            .expected();
    Level level = water.get();
    // The flour's own spread moves the expected water by 1.25 a point of protein.
    double proteinUp = 1.25 * (protein.get().high() - protein.get().value());
    double down = Math.hypot(Math.hypot(level.value() - level.low(), Absorption.SPREAD), proteinUp);
    double up = Math.hypot(Math.hypot(level.high() - level.value(), Absorption.SPREAD), proteinUp);
    double balance = level.value() - expected;
    return Optional.of(new Level(balance, balance - down, balance + up, level.vague()));
  }

  private double percent(Item item) {
    return tally.get(item).percentOf(flour).value();
  }
}
