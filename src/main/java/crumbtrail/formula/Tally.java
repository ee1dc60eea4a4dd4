package crumbtrail.formula;

import crumbtrail.pantry.Composition;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Adds up what the shares of a dough bring, in grams with spread. */
final class Tally {
  /** What is added up. */
  enum Item {
    DOUGH,
    FLOUR,
    /** Flour that can form gluten. */
    GLUTEN_FLOUR,
    WHOLE_GRAIN,
    RYE,
    /** Flour whose bran or gums take more water than white flour: whole grain or rye. */
    THIRSTY_FLOUR,
    /** Flour whose protein is known. */
    PROTEIN_FLOUR,
    FLOUR_PROTEIN,
    GLUTEN,
    GLUTEN_PROTEIN,
    /** Poured liquids at full weight. */
    POURED,
    WATER,
    WATER_OF_FAT,
    SALT,
    POTASSIUM,
    SUGAR,
    FAT,
    YEAST,
    EGG,
    MILK,
    MILK_SOLIDS,
    PREFERMENTED,
    STARTER,
    STARTER_FLOUR,
    STARTER_WATER,
    /** Flour that states a falling number. */
    FALLING_STATED,
    /** Flour times its liquefaction number. */
    LIQUEFACTION,
    /** Malt that still works on starch. */
    MALT,
    INCLUSIONS,
    /** Water that bran, flakes, gluten and the like bind beyond flour. */
    BOUND,
    SCALDED_FLOUR,
    SCALD_WATER,
    UNKNOWN
  }

  /** Shares of drier goods keep their water to themselves, as flour does. Grams in 100 g. */
  private static final double DRY = 15;

  /** Whole egg powder is made up with three parts of water. Common practice. */
  private static final double DRIED_EGG = 4;

  /** Protein of flour may be off by this where the baker does not state it (section 7 bands). */
  private static final double PROTEIN_SPREAD = 1;

  private final Map<Item, Level> sums = new EnumMap<>(Item.class);
  private final boolean starchIsFlour;

  private Tally(boolean starchIsFlour) {
    this.starchIsFlour = starchIsFlour;
  }

  static Tally of(List<Share> shares) {
    // Without any gluten-forming flour the starches carry the crumb and belong to the 100 %.
    boolean gluten = shares.stream().anyMatch(Tally::formsGluten);
    boolean flour = shares.stream().anyMatch(kind(Kind.FLOUR));
    Tally tally = new Tally(flour && !gluten);
    shares.forEach(tally::add);
    return tally;
  }

  Level get(Item item) {
    return sums.getOrDefault(item, Level.ZERO);
  }

  private void put(Item item, Level grams) {
    sums.merge(item, grams, Level::plus);
  }

  private void add(Share share) {
    Level grams = share.grams();
    put(Item.DOUGH, grams);
    if (share.ingredient().isEmpty()) {
      put(Item.UNKNOWN, grams);
      return;
    }
    Ingredient known = share.ingredient().get();
    if (isFlour(known)) {
      addFlour(share, known);
    }
    addParts(share, known);
    // In a levain all of it is ripe starter, not only the culture it was fed from.
    if (share.part() == PartKind.LEVAIN || share.leavening()) {
      put(Item.STARTER, grams);
      if (isFlour(known)) {
        put(Item.STARTER_FLOUR, grams);
      } else if (known.kind() != Kind.FAT && givesWater(known)) {
        put(Item.STARTER_WATER, grams.times(known.per100().water() / 100));
      }
    }
    addKind(known, grams);
  }

  boolean isFlour(Ingredient ingredient) {
    return ingredient.kind() == Kind.FLOUR || (starchIsFlour && ingredient.kind() == Kind.STARCH);
  }

  private void addFlour(Share share, Ingredient known) {
    Level grams = share.grams();
    put(Item.FLOUR, grams);
    if (formsGluten(share)) {
      put(Item.GLUTEN_FLOUR, grams);
    }
    boolean whole = known.has("wholegrain");
    if (whole) {
      put(Item.WHOLE_GRAIN, grams);
    }
    if (known.has("rye")) {
      put(Item.RYE, grams);
    }
    if (whole || known.has("rye")) {
      put(Item.THIRSTY_FLOUR, grams);
    }
    if (share.part().fermented()) {
      put(Item.PREFERMENTED, grams);
    }
    if (share.part() == PartKind.SCALD) {
      put(Item.SCALDED_FLOUR, grams);
    }
    if (!known.key().equals(StarterSplit.FLOUR_KEY)) {
      put(Item.LIQUEFACTION, liquefaction(share).times(grams.value()));
      if (share.fallingNumber().isPresent()) {
        put(Item.FALLING_STATED, grams);
      }
      double protein = share.protein().orElse(known.per100().protein());
      double open = share.protein().isPresent() ? 0 : PROTEIN_SPREAD;
      double mass = grams.value() / 100;
      put(Item.PROTEIN_FLOUR, Level.exact(grams.value()));
      put(
          Item.FLOUR_PROTEIN,
          Level.of(mass * Math.max(0, protein - open), mass * protein, mass * (protein + open)));
    }
  }

  // Laboratories repeat a falling number to about 5 % (from memory of the standard method).
  private static Level liquefaction(Share share) {
    double low = Enzymes.USUAL_LOW;
    double value = Enzymes.USUAL;
    double high = Enzymes.USUAL_HIGH;
    if (share.fallingNumber().isPresent()) {
      value = share.fallingNumber().getAsDouble();
      low = 0.95 * value;
      high = 1.05 * value;
    }
    return Level.of(
        Enzymes.liquefaction(high), Enzymes.liquefaction(value), Enzymes.liquefaction(low));
  }

  private void addParts(Share share, Ingredient known) {
    Level grams = share.grams();
    Composition per100 = known.per100();
    boolean poured = known.has("liquid");
    if (poured) {
      put(Item.POURED, grams);
    }
    if (known.kind() == Kind.FAT) {
      put(Item.WATER_OF_FAT, grams.times(per100.water() / 100));
    } else if (givesWater(known)) {
      put(Item.WATER, grams.times(per100.water() / 100));
    }
    if (poured && share.part() == PartKind.SCALD) {
      put(Item.SCALD_WATER, grams.times(per100.water() / 100));
    }
    put(Item.SALT, grams.times(per100.salt() / 100));
    if (known.kind() == Kind.SWEETENER || known.has("sweet")) {
      put(Item.SUGAR, grams.times(per100.sugar() / 100));
    }
    if (givesFat(known)) {
      put(Item.FAT, grams.times(per100.fat() / 100));
    }
    if (known.kind() != Kind.GLUTEN) {
      put(Item.BOUND, grams.times(known.absorbs()));
    }
    if (known.has("milk")) {
      double sugarPutIn = known.has("sweet") ? per100.sugar() : 0;
      double solids = 100 - per100.water() - per100.fat() - per100.salt() - sugarPutIn;
      put(Item.MILK_SOLIDS, grams.times(Math.max(0, solids) / 100));
    }
  }

  private void addKind(Ingredient known, Level grams) {
    switch (known.kind()) {
      case YEAST -> put(Item.YEAST, grams.times(known.yeastFactor()));
      case EGG -> put(Item.EGG, grams.times(known.has("dried") ? DRIED_EGG : 1));
      case MALT -> {
        if (known.has("diastatic")) {
          put(Item.MALT, grams);
        }
      }
      case INCLUSION -> put(Item.INCLUSIONS, grams);
      case GLUTEN -> {
        put(Item.GLUTEN, grams);
        put(Item.GLUTEN_PROTEIN, grams.times(known.per100().protein() / 100));
      }
      case DAIRY -> {
        if (known.has("milk") && known.has("liquid")) {
          put(Item.MILK, grams);
        }
      }
      case SALT -> {
        if (known.has("potassium")) {
          double chloride = 100 - known.per100().salt() - known.per100().water();
          put(Item.POTASSIUM, grams.times(chloride / 100));
        }
      }
      default -> {}
    }
  }

  /**
   * Whether the water in it joins the dough. Dry goods and pieces keep theirs; the water of fresh
   * yeast is left out as in published examples.
   */
  private static boolean givesWater(Ingredient known) {
    return switch (known.kind()) {
      case FLOUR, STARCH, GLUTEN, YEAST, INCLUSION, SALT, SPICE, IMPROVER -> false;
      default -> known.per100().water() > DRY;
    };
  }

  /** Whether its fat is spread through the dough: not that of flour, nor of nuts and cheese. */
  private static boolean givesFat(Ingredient known) {
    return switch (known.kind()) {
      case FAT, EGG, DAIRY, LIQUID, OTHER -> true;
      default -> false;
    };
  }

  private static boolean formsGluten(Share share) {
    return kind(Kind.FLOUR).test(share) && !share.has("gluten-free");
  }

  private static Predicate<Share> kind(Kind kind) {
    return share -> share.ingredient().map(known -> known.kind() == kind).orElse(false);
  }
}
