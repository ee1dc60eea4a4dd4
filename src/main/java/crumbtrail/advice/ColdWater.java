package crumbtrail.advice;

import crumbtrail.formula.FormulaEdit;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Amounts;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.MixWarmth;
import java.util.Optional;

/** Water colder than the tap gives it, and water so cold that part of it must be ice. */
final class ColdWater {
  /** A refrigerator makes water as cold as this, °C (common practice). */
  static final double FRIDGE = 4;

  /** A cold tap of which nothing is known, °C (common practice; 8 to 20 by place and season). */
  static final double TAP = 15;

  private static final int MOST_ICE = 70;

  private ColdWater() {}

  /** Plain water, not ice. */
  static boolean water(Ingredient one) {
    return one.kind() == Kind.WATER && !ice(one);
  }

  static boolean ice(Ingredient one) {
    return one.key().equals(MixWarmth.ICE);
  }

  /**
   * The sheet with as much of its water taken as ice as makes all of it act like water of this
   * temperature, the rest from the refrigerator.
   *
   * @param celsius below that of the refrigerator; below nought stands for ice
   */
  static BakeSheet iced(BakeSheet sheet, Pantry pantry, double celsius) {
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    double all = edit.grams(one -> one.kind() == Kind.WATER);
    double ice = Math.min(all * MOST_ICE / 100, MixWarmth.ice(all, FRIDGE, celsius));
    if (all <= 0 || ice <= 0) {
      return sheet;
    }
    BakeSheet less = edit.to(ColdWater::water, all - ice, "water");
    return FormulaEdit.of(less, pantry).to(ColdWater::ice, ice, MixWarmth.ICE);
  }

  /** The sheet with its ice counted as water again. */
  static BakeSheet thawed(BakeSheet sheet, Pantry pantry) {
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    double ice = edit.grams(ColdWater::ice);
    if (ice <= 0) {
      return sheet;
    }
    FormulaEdit without = FormulaEdit.of(edit.to(ColdWater::ice, 0, ""), pantry);
    return without.to(ColdWater::water, without.grams(ColdWater::water) + ice, "water");
  }

  /**
   * Temperature that water without ice would need to cool a dough as much.
   *
   * @param liquid temperature of the liquid beside the ice, °C
   * @return below nought for much ice
   */
  static double asLiquid(BakeSheet sheet, Pantry pantry, double liquid) {
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    double all = edit.grams(one -> one.kind() == Kind.WATER);
    double perGram = MixWarmth.coolingByIce(liquid);
    return all > 0 ? liquid - edit.grams(ColdWater::ice) / all * perGram : liquid;
  }

  /** How to come by the cold water of a sheet; empty if the tap will do. */
  static Optional<String> note(BakeSheet sheet, Pantry pantry) {
    Optional<Double> liquid =
        sheet.process().temperatures().liquid().map(quantity -> quantity.value());
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    double water = edit.grams(ColdWater::water);
    if (edit.has(ColdWater::ice)) {
      return Optional.of(
          "Weigh the ice as crushed ice and count it as water; knead until none of it is left.");
    }
    if (liquid.isEmpty() || liquid.get() >= TAP || water <= 0) {
      return Optional.empty();
    }
    double ice = MixWarmth.ice(water, TAP, liquid.get());
    return Optional.of(
        "For "
            + Grams.of(water).strip()
            + " of water at "
            + Amounts.quantity(liquid.get(), "C")
            + " stand it in the refrigerator, or take "
            + Grams.of(ice).strip()
            + " of it as crushed ice and the rest from a tap of "
            + Amounts.quantity(TAP, "C")
            + ".");
  }
}
