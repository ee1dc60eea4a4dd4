package crumbtrail.dough;

import crumbtrail.dough.Fermentation.Stay;
import crumbtrail.oven.Boiling;
import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Gas, rise and growth of yeast in dough. */
public final class FermentationChecks implements PublishedChecks {
  private static final String PRACTICE = "common practice";
  private static final String BAKEMAG = "bakemag.com, The science of fermentation";
  private static final String PUP = "excerpt of an unattributed baking paper (pup loaf)";
  private static final String COUNTS = "Pyler-type text, foodelphi.com, fermentation";
  private static final String BOOK = "The Sourdough Framework";

  @Override
  public String title() {
    return "Fermentation with yeast";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>(practice());
    checks.addAll(warmth());
    checks.addAll(pupLoaf());
    checks.addAll(counts());
    checks.addAll(concentration());
    checks.addAll(sourdough());
    checks.addAll(altitude());
    return checks;
  }

  private static List<Check> practice() {
    DoughMix one = Doughs.plain(1);
    Fermentation fermentation = new Fermentation(one);
    DoughState shaped =
        fermentation.after(fermentation.start(26), new Stay(60, 26, 60)).handled(0.2);
    List<DoughState> proof = fermentation.through(shaped, new Stay(240, 28, 60));
    double ready =
        Readiness.within(proof, Readiness.proofGas(one, shaped, Readiness.PROOFED)).orElseThrow();
    String hour = "about an hour: a quarter of it either way";
    return List.of(
        Check.of(
            "1 % instant yeast, 2 % salt, 26 °C: doubles after (the rate is set on this)",
            60, Doughs.minutesTo(one, 26, 2), "min", 5, "the rate is set on it", PRACTICE),
        Check.of("the same, shaped, at 28 °C: proofed after", 60, ready, "min", 15, hour, PRACTICE),
        Check.of(
            "straight dough, 0.94 % yeast, 27 to 29 °C: doubled at the first punch",
            45,
            Doughs.minutesTo(Doughs.MILLER, 28, 2),
            "min",
            8,
            "the sheet's own range of temperature is worth 5 min either way",
            "Grain Craft, straight dough sheet"));
  }

  private static List<Check> warmth() {
    double best = 0;
    for (double celsius = 20; celsius < 45; celsius += 0.1) {
      best = YeastActivity.at(celsius) > YeastActivity.at(best) ? celsius : best;
    }
    double degree = 100 * (YeastActivity.at(26.5) / YeastActivity.at(25.5) - 1);
    return List.of(
        Check.of("one degree more at 26 °C", 10, degree, "%", 2, "\"about\" 10 %", BAKEMAG),
        Check.between(
            "ten degrees, 20 to 30 °C",
            2.0,
            2.6,
            YeastActivity.at(30) / YeastActivity.at(20),
            "times",
            "worked out from published figures per degree"),
        Check.between(
            "ten degrees, 25 to 35 °C",
            2.0,
            2.6,
            YeastActivity.at(35) / YeastActivity.at(25),
            "times",
            "worked out from published figures per degree"),
        Check.between("gas comes fastest", 32, 40, best, "°C", BAKEMAG),
        Check.between(
            "rate in the refrigerator at 4 °C against 26 °C",
            0,
            0.03,
            YeastActivity.at(4),
            "times",
            "bakingbusiness dictionary, Retarder: all but stops at 1.7 to 4.4 °C"));
  }

  private static List<Check> pupLoaf() {
    DoughMix mix = Doughs.PUP;
    DoughState proofed = Doughs.proofedPup();
    double volume = mix.volume() + proofed.held();
    double withFat = springOn515(mix, proofed);
    double without = springOn515(withoutFat(mix), proofed);
    String process =
        "the source gives neither yeast nor times; those of the standard test loaf are assumed, and"
            + " yeasts differ by a tenth in gassing power";
    return List.of(
        Check.of(
            "pup loaf, dough after mixing",
            145,
            mix.volume(),
            "cm³",
            7,
            "a rounding to 5 cm³ and water as optimised",
            PUP),
        Check.of("pup loaf, end of proof", 515, volume, "cm³", 52, process, PUP),
        Check.missed(
            "pup loaf, share of the gas made that the proofed dough holds",
            40,
            100 * proofed.held() / proofed.made(),
            "%",
            8,
            process + "; a shorter fermentation would lose less",
            PUP),
        Check.of(
            "oven spring with shortening (set on this)", 360, withFat, "cm³", 20, "set on it", PUP),
        Check.of("oven spring without (set on this)", 220, without, "cm³", 15, "set on it", PUP),
        Check.between(
            "proofed dough over dough without gas",
            3,
            4,
            proofed.rise(mix),
            "times",
            "bakerpedia, final proof"));
  }

  // Growth in the oven of a proofed dough, scaled to the published 515 cm³.
  private static double springOn515(DoughMix mix, DoughState proofed) {
    double volume = mix.volume() + proofed.held();
    return (new Fermentation(mix).baked(proofed) / volume - 1) * 515;
  }

  private static DoughMix withoutFat(DoughMix mix) {
    return new DoughMix(
        mix.leaven(),
        mix.water(),
        mix.salt(),
        mix.sugar(),
        0,
        12,
        0,
        0,
        1,
        mix.total() - mix.fat());
  }

  private static List<Check> counts() {
    String error = "counts of cells agree to about a tenth; three of these set two constants";
    return List.of(
        Check.of(
            "0.5 % fresh yeast, 27 °C, growth in 6 h",
            88, grown(0.5, 0, 6), "%", 10, error, COUNTS),
        Check.of("1.67 % fresh yeast, first 2 h", 0, grown(1.67, 0, 2), "%", 10, error, COUNTS),
        Check.of("1.67 % fresh yeast, 2 to 4 h", 26, grown(1.67, 2, 4), "%", 10, error, COUNTS),
        Check.of("1.67 % fresh yeast, 4 to 6 h", 9, grown(1.67, 4, 6), "%", 10, error, COUNTS),
        Check.of("2 % fresh yeast, growth in 6 h", 29, grown(2, 0, 6), "%", 10, error, COUNTS));
  }

  private static double grown(double fresh, double from, double to) {
    DoughMix mix = Doughs.plain(fresh / 3);
    double before = Doughs.after(mix, 27, 60 * from).yeast();
    return 100 * (Doughs.after(mix, 27, 60 * to).yeast() / before - 1);
  }

  private static List<Check> concentration() {
    String range = "end of a published range of 35 to 100 atm, given in fives";
    String source = "chapter on yeast, buffalobrewingstl.com info-hhr";
    DoughMix lean = Doughs.plain(1);
    return List.of(
        Check.of(
            "osmotic pressure, no sugar",
            35,
            Gassing.osmoticPressure(lean),
            "atm",
            5,
            range,
            source),
        Check.of(
            "osmotic pressure, 30 % sugar",
            100, Gassing.osmoticPressure(lean.with(2, 30, 60)), "atm", 5, range, source));
  }

  private static List<Check> sourdough() {
    String set = "the rates are set on these two";
    double eight = risen(10, 25);
    String kitchen = "the book's times are given to the hour, its doses to 5 %";
    return List.of(
        Check.of(
            "20 % starter at 25 °C, risen by three quarters",
            5, risen(20, 25), "h", 0.5, set, BOOK),
        Check.of("10 % starter at 25 °C, risen by three quarters", 8, eight, "h", 0.5, set, BOOK),
        Check.of(
            "5 % at 30 °C for the same time as 10 % at 25 °C",
            1, risen(5, 30) / eight, "times", 0.3, kitchen, BOOK),
        Check.of(
            "15 % at 20 °C for the same time as 10 % at 25 °C",
            1, risen(15, 20) / eight, "times", 0.3, kitchen, BOOK));
  }

  private static double risen(double starter, double celsius) {
    return Doughs.minutesTo(DoughMix.plain(Leaven.ofStarter(starter)), celsius, 1.75) / 60;
  }

  private static List<Check> altitude() {
    String source = "bread-bakers v116n020";
    String spoons = "a home baker's fraction";
    return List.of(
        Check.of("less yeast for the same rise at 6300 ft", 25, less(6300), "%", 5, spoons, source),
        Check.of(
            "less yeast for the same rise at 9200 ft", 33, less(9200), "%", 5, spoons, source));
  }

  // Less yeast that makes, in an hour at that height, the gas of 1 % at the sea.
  private static double less(double feet) {
    double thinAir = Boiling.pressure(0) / Boiling.pressure(feet * 0.3048);
    double sea = hourOf(1, 1);
    double dose = new BrentSolver(1e-6).solve(100, yeast -> hourOf(yeast, thinAir) - sea, 0.2, 1.5);
    return 100 * (1 - dose);
  }

  private static double hourOf(double yeast, double thinAir) {
    Fermentation fermentation = new Fermentation(Doughs.plain(yeast), thinAir);
    return fermentation.after(fermentation.start(26), new Stay(60, 26, 60)).made();
  }
}
