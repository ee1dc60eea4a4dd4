package crumbtrail.vessel;

import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** Measured and listed tins, and dough for them. */
public final class VesselChecks implements PublishedChecks {
  private static final double INCH = 25.4;
  private static final double CUP = 236.6;
  private static final String LIST = "baking site's list, via cooking.stackexchange 64270";
  private static final String MAKERS = "vizaca.co.uk; middlebread.com";
  private static final String SUPPLIER = "confectionery supplier (rakuten.ne.jp kashizairyo)";
  private static final String ROUND_LIST = "thebakingpan.com, baking pan sizes";

  @Override
  public String title() {
    return "Tins and the dough for them";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    String rounded = "lengths are rounded to whole millimetres";
    Tin large = Tin.tapered(250, 113, 238, 105, 120);
    Tin small = Tin.tapered(220, 113, 208, 105, 120);
    checks.add(volume("tapered 250(238) x 113(105) x 120 mm", 3192, large, 4, rounded, SUPPLIER));
    checks.add(volume("tapered 220(208) x 113(105) x 120 mm", 2800, small, 4, rounded, SUPPLIER));
    checks.add(
        volume(
            "250 x 113 x 120 mm, base unknown", 3192, flared(250, 113, 120), 110, SLOPE, SUPPLIER));
    checks.add(
        volume(
            "220 x 113 x 120 mm, base unknown", 2800, flared(220, 113, 120), 96, SLOPE, SUPPLIER));
    wordloaf(checks);
    listed(checks);
    british(checks);
    round(checks);
    dough(checks, large, small);
    return checks;
  }

  private static final String SLOPE =
      "how far sides slope differs from tin to tin by some 3.5 %; the 0.92 was not set on this one";

  private static void wordloaf(List<Check> checks) {
    String by = "wordloaf, Size matters";
    checks.add(
        volume(
            "tin of 8.5 x 4.5 x 2.6 in, base 7.5 x 3.5 in",
            1440,
            Tin.tapered(8.5 * INCH, 4.5 * INCH, 7.5 * INCH, 3.5 * INCH, 2.6 * INCH),
            0.065 * 1440,
            "the base is told to half an inch (4.6 %), the depth to a tenth (1.9 %)",
            by));
    checks.add(
        volume(
            "tin of 8.5 x 4.5 x 2.5 in, base unknown (on this the 0.92 was set)",
            1440,
            flared(8.5 * INCH, 4.5 * INCH, 2.5 * INCH),
            0.02 * 1440,
            "depth to a tenth of an inch",
            by));
  }

  private static void listed(List<Check> checks) {
    String cups = "the list is in whole cups: half a cup either way";
    checks.add(volume("8.5 x 4.5 x 2.5 in", 1400, inches(8.5, 4.5, 2.5), CUP / 2, cups, LIST));
    checks.add(
        Check.missed(
            "volume of 9 x 5 x 3 in",
            1900,
            inches(9, 5, 3).volume(),
            "ml",
            CUP / 2,
            "7 % too much: the tin slopes more, or is less than its nominal 3 in deep (2.75 in gives"
                + " 1865 ml)",
            LIST));
    checks.add(
        Check.missed(
            "volume of 8 x 4 x 2.5 in",
            948,
            inches(8, 4, 2.5).volume(),
            "ml",
            CUP / 2,
            "27 % too much: the listed volume does not fit its own lengths; sides would have to"
                + " slope to half the base",
            LIST));
  }

  private static void british(List<Check> checks) {
    String litre =
        "told to a tenth of a litre, with slopes that differ by some 5 % from maker to" + " maker";
    double[][] tins = {{245, 120, 75, 2000}, {215, 112.5, 65, 1400}};
    for (double[] tin : tins) {
      checks.add(
          volume(
              "%.0f x %.1f x %.0f mm".formatted(tin[0], tin[1], tin[2]),
              tin[3],
              flared(tin[0], tin[1], tin[2]),
              50 + 0.05 * tin[3],
              litre,
              MAKERS));
    }
    checks.add(
        Check.missed(
            "volume of 240.0 x 140.0 x 75 mm",
            2500,
            flared(240, 140, 75).volume(),
            "ml",
            50 + 0.05 * 2500,
            "7 % too little: this tin holds 99 % of its box, so its sides must be nearly upright",
            MAKERS));
    checks.add(
        Check.between(
            "volume of a \"1 lb\" tin of 180 x 100 x 60 mm",
            600,
            1000,
            flared(180, 100, 60).volume(),
            "ml",
            MAKERS));
  }

  private static void round(List<Check> checks) {
    double[][] held = {{6, 2, 4}, {8, 2, 7}, {9, 1.75, 7.5}, {9, 3, 13}};
    for (double[] tin : held) {
      checks.add(
          volume(
              "round, %s x %s in".formatted(tin[0], tin[1]),
              tin[2] * CUP,
              Tin.round(tin[0] * INCH, tin[1] * INCH),
              CUP / 2,
              "the list is in whole or half cups",
              ROUND_LIST));
    }
    double[][] off = {{8, 1.5, 4}, {9, 1.5, 6}, {9, 2, 8}};
    for (double[] tin : off) {
      checks.add(
          Check.missed(
              "volume of round, %s x %s in".formatted(tin[0], tin[1]),
              tin[2] * CUP,
              Tin.round(tin[0] * INCH, tin[1] * INCH).volume(),
              "ml",
              CUP / 2,
              "a cylinder of these lengths holds more; the list does not agree with itself, for its"
                  + " 8 x 2 in holds 1.75 times its 8 x 1.5 in",
              ROUND_LIST));
    }
  }

  private static void dough(List<Check> checks, Tin large, Tin small) {
    String exact = "a quotient of the published numbers";
    checks.add(
        grams(
            "365 x 120 x 125 mm at 4.0 cm³/g",
            1368.75,
            Tin.straight(365, 120, 125).volume() / 4,
            0.01,
            exact,
            "baker's notes (santa-baking.work, 2020)"));
    checks.add(
        grams(
            "the 250 mm tapered tin at 4.0 cm³/g",
            798,
            TinRoom.LIGHT.doughFor(large.volume()),
            1,
            rounded(),
            SUPPLIER));
    checks.add(
        grams(
            "the 220 mm tapered tin at 4.0 cm³/g",
            700,
            TinRoom.LIGHT.doughFor(small.volume()),
            1,
            rounded(),
            SUPPLIER));
    checks.add(
        Check.of(
            "flour for the larger tin, from 380 g for the smaller",
            435,
            380 * large.volume() / small.volume(),
            "g",
            2.5,
            "the source scales by 800 g over 700 g and rounds to 5 g",
            SUPPLIER));
    checks.add(
        Check.of(
            "room of 550 g in 2200 cm³",
            4.0,
            TinRoom.of(2200, 550),
            "cm³/g",
            0.001,
            exact,
            "hii-tan.or.tv"));
    checks.add(
        Check.of(
            "7.6 in³ to the ounce",
            TinRoom.AIRY_WHITE.middle(),
            7.6 * 16.387 / 28.35,
            "cm³/g",
            0.01,
            "rounding; published is the figure that the model uses",
            "bakery formulary (haisendata.com 14725)"));
    checks.add(
        Check.of(
            "5.35 g to the cubic inch",
            TinRoom.WHOLE_GRAIN.middle(),
            16.387 / 5.35,
            "cm³/g",
            0.01,
            "rounding; published is the figure that the model uses",
            "wholegrain100.com, 2015"));
  }

  private static String rounded() {
    return "the source rounds to whole grams";
  }

  private static Tin flared(double length, double width, double height) {
    return Tin.flared(length, width, height);
  }

  private static Tin inches(double length, double width, double height) {
    return Tin.flared(length * INCH, width * INCH, height * INCH);
  }

  private static Check volume(
      String what, double published, Tin tin, double tolerance, String argument, String source) {
    return Check.of(
        "volume of " + what, published, tin.volume(), "ml", tolerance, argument, source);
  }

  private static Check grams(
      String what, double published, double ours, double tolerance, String why, String source) {
    return Check.of("dough for " + what, published, ours, "g", tolerance, why, source);
  }
}
