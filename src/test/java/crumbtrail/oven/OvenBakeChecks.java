package crumbtrail.oven;

import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** Browning, usual bakes and their loss. */
public final class OvenBakeChecks implements PublishedChecks {
  private static final String ROUNDED = "published to a tenth of a minute";
  private static final String CORE = "bakerpedia, bread cooling";

  @Override
  public String title() {
    return "Oven: browning and usual bakes";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    double[][] halfTimes = {{140, 35.5}, {160, 15.0}, {180, 6.8}, {200, 3.3}};
    for (double[] row : halfTimes) {
      checks.add(
          Check.of(
              "half-time of browning at %.0f °C".formatted(row[0]),
              row[1],
              Kinetics.browningHalfTime(row[0]),
              "min",
              0.1,
              ROUNDED,
              "worked out of k0 and Ea of Zanoni, Peri and Bruno, LWT 28:604, 1995"));
    }
    checks.add(
        Check.of(
            "bake loss of 35.5 oz dough to a 32 oz loaf",
            9.86,
            BakeCourse.lossPercent(35.5, 32),
            "% of dough",
            0.01,
            "arithmetic, rounded",
            "Manual for Army Bakers, US War Department, 1916"));
    checks.addAll(usualBakes());
    checks.add(minutes("30 g buns at 204 °C", 15, Loaf.roll(30), 204, "bakemag.com, bun formula"));
    checks.add(
        minutes(
            "170 g test loaf in its tin at 218 °C",
            21,
            Loaf.tin(170, 140, 65, 60),
            218,
            "Western Wheat Quality Laboratory, AACC 10-10B"));
    return checks;
  }

  private static List<Check> usualBakes() {
    BakeCourse tin =
        Bake.of(Loaf.tin(900, 210, 110, 110), 25, List.of(OvenStage.still(38, 215)), 0);
    BakeCourse free = Bake.of(Loaf.hearth(900), 25, List.of(OvenStage.still(40, 230)), 0);
    Cooling.Lying rack = Cooling.Lying.RACK;
    String core = "core of a 900 g loaf, %s";
    return List.of(
        Check.missed(
            core.formatted("tin, 38 min at 215 °C"),
            95,
            tin.core(),
            "°C",
            2,
            "the published range is 93 to 97; ours comes to within a degree of boiling ten minutes"
                + " before the end, as the measured small loaf nearly does (97.5)",
            CORE),
        Check.between(
            "crust of a 900 g loaf, free, 40 min at 230 °C",
            150,
            180,
            free.crustTemperature(),
            "°C",
            CORE),
        Check.of(
            "loss of the tin loaf, bake and two hours of cooling",
            (9.8 + 11.5) / 2,
            tin.lossPercent() + Cooling.lossAfter(tin.end(), 120, 24, rack),
            "% of dough",
            (11.5 - 9.8) / 2,
            "the published range of 9.8 to 11.5; not independent: the radiation of a usual oven was"
                + " set on it",
            "bakingbusiness.com, dictionary"),
        Check.between(
            "minutes until the core of the tin loaf, on a rack at 24 °C, is at 40 °C",
            0,
            120,
            Cooling.minutesUntil(tin.end(), 40, 24, rack).orElse(0),
            "min",
            CORE),
        Check.between(
            "minutes until the core of the tin loaf, on a rack at 24 °C, is at 35 °C",
            0,
            120,
            Cooling.minutesUntil(tin.end(), 35, 24, rack).orElse(0),
            "min",
            CORE));
  }

  private static Check minutes(String what, double published, Loaf loaf, double oven, String by) {
    double ours = BakeTime.minutes(loaf, OvenStage.still(0, oven), 0);
    return Check.of(
        "time to bake " + what,
        published,
        ours,
        "min",
        published / 10,
        "a tenth: doneness is the baker's; not independent, the nine minutes for the crust were chosen on"
            + " these bakes",
        by);
  }
}
