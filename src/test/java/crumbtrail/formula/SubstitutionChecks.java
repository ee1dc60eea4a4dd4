package crumbtrail.formula;

import crumbtrail.pantry.Ingredient;
import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import crumbtrail.sheet.BakeSheet;
import java.util.List;

/** One ingredient in place of another, as a handbook and yeast makers have it. */
public final class SubstitutionChecks implements PublishedChecks {
  private static final String GISSLEN =
      "Gisslen, Professional Baking, 2008, dry milk for liquid milk (ckbk prof83497)";
  private static final String HAMELMAN =
      "Hamelman, Bread, 2004, yeast conversions (ckbk brea32715)";
  private static final String ROUNDED = "the table is rounded to tens of grams in the kilogram";

  @Override
  public String title() {
    return "One ingredient in place of another";
  }

  @Override
  public List<Check> checks() {
    BakeSheet skim = swapped("skim milk", "nonfat dry milk");
    BakeSheet whole = swapped("whole milk", "whole milk powder");
    BakeSheet lean = swapped("whole milk", "nonfat dry milk");
    BakeSheet yeast =
        of("fresh yeast", "instant yeast", "1000 g flour", "600 g water", "30 g fresh yeast");
    return List.of(
        milk("nonfat dry milk for 1 kg of skim milk", 90, grams(skim, "nonfat dry milk")),
        milk("water with it", 910, grams(skim, "water")),
        milk("dried whole milk for 1 kg of whole milk", 120, grams(whole, "whole milk powder")),
        milk("water with it", 880, grams(whole, "water")),
        milk("nonfat dry milk for 1 kg of whole milk", 90, grams(lean, "nonfat dry milk")),
        milk("butter with it", 40, grams(lean, "butter")),
        Check.of(
            "water with both",
            880,
            grams(lean, "water"),
            "g",
            10,
            "the table does not take the butter's own water off; " + ROUNDED,
            GISSLEN),
        Check.of(
            "instant yeast for 30 g of fresh",
            9.9,
            grams(yeast, "instant yeast"),
            "g",
            0.3,
            "a third is as often written as 0.33",
            HAMELMAN));
  }

  private static Check milk(String what, double published, double ours) {
    return Check.of(what, published, ours, "g", 7, ROUNDED, GISSLEN);
  }

  private static BakeSheet swapped(String milk, String powder) {
    return of(milk, powder, "1500 g bread flour", "1000 g " + milk);
  }

  private static BakeSheet of(String what, String with, String... lines) {
    Ingredient gone = Doughs.PANTRY.lookup(what).orElseThrow();
    Ingredient taken = Doughs.PANTRY.lookup(with).orElseThrow();
    return Substitution.of(
            Doughs.sheet(List.of(), List.of(), lines), Doughs.PANTRY, gone::equals, taken, 1)
        .orElseThrow()
        .sheet();
  }

  private static double grams(BakeSheet sheet, String name) {
    Ingredient one = Doughs.PANTRY.lookup(name).orElseThrow();
    return FormulaEdit.of(sheet, Doughs.PANTRY).grams(one::equals);
  }
}
