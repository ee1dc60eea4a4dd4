package crumbtrail.formula;

import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** Absorption, gluten and falling numbers. */
public final class FlourChecks implements PublishedChecks {
  private static final String CZECH = "Croat J Food Sci Technol 15(2), 2023";
  private static final String BLEND =
      "US grain inspection service's rule, example on a seed maker's page (2020)";

  @Override
  public String title() {
    return "Flour: absorption, gluten, falling number";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    absorption(checks);
    gluten(checks);
    falling(checks);
    return checks;
  }

  private static void absorption(List<Check> checks) {
    double weak = Absorption.white(10.55).expected();
    double strong = Absorption.white(14.75).expected();
    String stiffer =
        "the farinograph asks for a stiffer dough than a baker; its weakest flour lies";
    checks.add(
        Check.missed(
            "water for flour of 10.55 % protein",
            55.7, weak, "%", 3, stiffer + " 4.5 points below ours", CZECH));
    checks.add(
        Check.of(
            "water for flour of 14.75 % protein",
            63.2,
            strong,
            "%",
            3,
            "two points of formula spread and one for the stiffer dough of the farinograph",
            CZECH));
    checks.add(
        Check.of(
            "rise of water with protein",
            1.79,
            (strong - weak) / (14.75 - 10.55),
            "points a point",
            0.6,
            "common practice says 1 to 1.5; two flours do not fix a slope",
            CZECH));
    checks.add(
        Check.between(
            "water for soft-wheat flour of 9 % protein",
            50,
            60,
            Absorption.white(9).expected(),
            "%",
            "AIB International, farinogram notes (soft 50 to 60, hard above 60)"));
    checks.add(
        Check.between(
            "water for a tin loaf, 3.75 sugar, 3.1 fat, 2.5 milk powder (on this the 62 was set)",
            62.5,
            65,
            new Absorption(12, 0, 2.5, 0, 0, 0, 0, 3.75, 3.1).expected(),
            "%",
            "Grain Craft, straight dough sheet"));
    checks.add(
        Check.between(
            "water of whole wheat above that of white",
            5,
            10,
            new Absorption(12, 1, 0, 0, 0, 0, 0, 0, 0).expected() - Absorption.white(12).expected(),
            "points",
            "common practice"));
    checks.add(
        Check.between(
            "water of 65 % rye above that of white",
            4,
            6,
            new Absorption(12, 0.65, 0, 0, 0, 0, 0, 0, 0).expected()
                - Absorption.white(12).expected(),
            "points",
            "Hamelman, Bread: 74 % against 68 to 70"));
    checks.add(
        Check.between(
            "water to each part of milk powder",
            0.58,
            1.20,
            new Absorption(12, 0, 6, 0, 0, 0, 0, 0, 0).expected() / 6
                - Absorption.white(12).expected() / 6,
            "parts",
            "J Dairy Sci 34:1092, 1951 (low heat to well heated)"));
    checks.add(
        Check.of(
            "water to each part of defatted soy flour",
            1,
            Absorption.white(47).expected() / 100,
            "parts",
            0.1,
            "the published figure is round and from memory",
            "common practice"));
    checks.add(
        Check.of(
            "water with 2 % dry gluten",
            3,
            new Absorption(12, 0, 0, 2, 0, 0, 0, 0, 0).expected() - Absorption.white(12).expected(),
            "points",
            0.01,
            "the factor 1.5 of Cauvain and Young gives the same",
            "T. Lehmann, thinktank.pmq.com 9468"));
    checks.add(
        Check.between(
            "water of 12 % damaged starch above that of 6 %",
            0.7 * 6 * 0.4,
            0.7 * 6 * 0.8,
            Absorption.forDamagedStarch(12) - Absorption.forDamagedStarch(6),
            "points",
            "asbe.org: 2 to 3 times the 40 % of sound starch"));
  }

  private static void gluten(List<Check> checks) {
    double[][] rows = {
      {500, 12.7, 14, 75, 10.66, 10.43, 0.005},
      {500, 10.5, 13, 75.16, 20.1, 19.3, 0.05},
      {1000, 11.5, 13, 75, 24.2, 23.6, 0.05}
    };
    for (double[] row : rows) {
      GlutenNeed need = GlutenNeed.of(row[0], row[1], row[2], row[3]);
      String what = "%.0f g flour from %s to %s %%".formatted(row[0], row[1], row[2]);
      checks.add(mass("gluten to add, " + what, row[4], need.addGrams(), row[6]));
      checks.add(mass("gluten to swap, " + what, row[5], need.swapGrams(), row[6]));
    }
  }

  private static void falling(List<Check> checks) {
    checks.add(number("liquefaction number of 400 s", 17.1, Enzymes.liquefaction(400), 0.05, ""));
    checks.add(number("liquefaction number of 220 s", 35.3, Enzymes.liquefaction(220), 0.05, ""));
    checks.add(
        number(
            "falling number of equal parts of 400 and 220 s",
            279,
            Enzymes.fallingNumber((Enzymes.liquefaction(400) + Enzymes.liquefaction(220)) / 2),
            0.5,
            "s"));
    checks.add(
        Check.between(
            "falling number of a flour of 350 s with 0.2 % malt (on this the malt was set)",
            250,
            290,
            Enzymes.malted(350, 0.2),
            "s",
            "malted bread flour (experts123); dose from memory"));
  }

  private static Check number(
      String what, double published, double ours, double tolerance, String unit) {
    return Check.of(what, published, ours, unit, tolerance, "rounding", BLEND);
  }

  private static Check mass(String what, double published, double ours, double tolerance) {
    return Check.of(what, published, ours, "g", tolerance, "rounding", "mass balance, by hand");
  }
}
