package crumbtrail.dough;

import crumbtrail.dough.Acidity.Flour;
import crumbtrail.dough.Acidity.Sourness;
import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** How sour doughs become. */
public final class AcidityChecks implements PublishedChecks {
  private static final String BOOK = "The Sourdough Framework, table of pH values";
  private static final String TABLE = "Nutrients 11:2954, 2019, table 2";
  private static final Flour DOUGH = new Flour(20, 0, 2);
  private static final Flour STARTER = new Flour(20, 0, 0);
  private static final Flour WHITE = new Flour(0, 0, 0);

  @Override
  public String title() {
    return "Acidity of sourdough";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    buffer(checks);
    trail(checks);
    others(checks);
    return checks;
  }

  private static void buffer(List<Check> checks) {
    double[][] rows = {{28.2 + 6.2, 4.26}, {43.3 + 10.2, 3.89}, {93.3 + 20.3, 3.55}};
    for (double[] row : rows) {
      checks.add(
          check(
              "white sourdough with %.1f mmol of acid a kilogram".formatted(row[0]),
              row[1],
              Acidity.pH(row[0] * 1.6, WHITE),
              0.06,
              "calibration: one constant for three doughs; the acids are given to 1 %",
              TABLE));
    }
  }

  // A dough as the book makes it: a tenth of stiff starter on flour, a fifth of it whole grain, 2 %
  // of salt, 25 °C. Times as the book has them: bulk 8 to 12 h, a bench rest of 10 to 15 min, a
  // proof of 1 to 3 h in the room.
  private static void trail(List<Check> checks) {
    String set = "calibration: two constants for the whole trail";
    String process = "the book gives times as ranges only; a meter's and a reader's tenth";
    Sourness ready = run(Acidity.mixed(11.8, 4.2, STARTER), STARTER, 6, 25);
    checks.add(check("starter fed 1:5:2.5, after 6 h", 4.20, ready, STARTER, 0.2, process));
    Sourness mixed = Acidity.mixed(100 * 6.667 / 106.667, 4.2, DOUGH);
    checks.add(check("dough mixed", 6.00, mixed, DOUGH, 0.1, process));
    Sourness divided = run(mixed, DOUGH, 9.5, 25);
    checks.add(check("divided, after 9.5 h at 25 °C", 4.10, divided, DOUGH, 0.1, set));
    Sourness shaped = run(divided, DOUGH, 0.25, 25);
    checks.add(check("shaped, 15 min later", 4.05, shaped, DOUGH, 0.05, process));
    Sourness before = run(shaped, DOUGH, 0.1, 25);
    checks.add(check("before the proof, 6 min later", 4.03, before, DOUGH, 0.05, process));
    Sourness after = run(before, DOUGH, 2.5, 25);
    checks.add(check("after a proof of 2.5 h", 3.80, after, DOUGH, 0.05, set));
    checks.add(
        check(
            "baked",
            3.90,
            Acidity.pH(after.acid(), DOUGH) + Acidity.BAKED,
            0.05,
            "set: the one number there is",
            BOOK));
  }

  private static void others(List<Check> checks) {
    Sourness old = run(Acidity.mixed(25, 3.89, WHITE), WHITE, 24, 30);
    checks.add(
        check(
            "sourdough renewed, after 24 h at 30 °C",
            3.55,
            Acidity.pH(old.acid(), WHITE),
            0.1,
            "acid is published to be made to 3.6, and 3.6 it is",
            TABLE));
    Sourness young = run(Acidity.mixed(25, 3.89, WHITE), WHITE, 4, 30);
    checks.add(
        Check.missed(
            "sourdough renewed, after 4 h at 30 °C, a quarter of old dough assumed",
            4.26,
            Acidity.pH(young.acid(), WHITE),
            "pH",
            0.2,
            "how much old dough went in was not in what we read; a quarter sours too fast here",
            TABLE));
    checks.add(
        check(
            "proofed to 4.1, half an hour in the freezer, a night in the refrigerator",
            4.0,
            Acidity.pH(chilled().acid(), DOUGH),
            0.15,
            "published as around 4.0; mass and temperatures are ours",
            "a baker's letter on his pH meter (grade C)"));
    checks.add(
        check(
            "yeast dough after its bulk",
            5.3,
            Acidity.yeastDough(0.45),
            0.3,
            "their dough began at 6.5, ours at 6.2; a bulk is taken as 0.45 of the whole rise",
            "a study of resistant starch in bread, doughs of 6.5 falling to 5.3"));
    checks.add(
        Check.between(
            "yeast dough going into the oven",
            5.2,
            5.5,
            Acidity.yeastDough(1),
            "pH",
            "common practice; set"));
  }

  private static Sourness chilled() {
    Sourness sourness = run(Acidity.mixed(6.25, 4.2, DOUGH), DOUGH, 9.45, 25);
    double lag = DoughTemperature.timeConstant(900);
    List<Stretch> night = new ArrayList<>();
    double celsius = 25;
    for (int quarter = 0; quarter < 40; quarter++) {
      double place = quarter < 2 ? -18 : 4;
      double next = DoughTemperature.after(celsius, place, 15, lag);
      night.add(new Stretch(15, (celsius + next) / 2));
      celsius = next;
    }
    return Acidity.after(sourness, DOUGH, night);
  }

  private static Sourness run(Sourness start, Flour flour, double hours, double celsius) {
    return Acidity.after(start, flour, List.of(new Stretch(hours * 60, celsius)));
  }

  private static Check check(
      String what, double published, Sourness ours, Flour flour, double tolerance, String why) {
    return check(what, published, Acidity.pH(ours.acid(), flour), tolerance, why, BOOK);
  }

  private static Check check(
      String what, double published, double ours, double tolerance, String why, String by) {
    return Check.of(what, published, ours, "pH", tolerance, why, by);
  }
}
