package crumbtrail.dough;

import crumbtrail.dough.DoughBody.Form;
import crumbtrail.dough.DoughBody.Holder;
import crumbtrail.dough.DoughTemperature.Part;
import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.List;

/** Worked examples of dough temperature, friction and ice, and doughs timed as they cooled. */
public final class TemperatureChecks implements PublishedChecks {
  private static final String EXACT = "a sum of whole degrees leaves no room";
  private static final String TREATISE =
      "Wihlfahrt, A Treatise on Baking, early 20th century (chestofbooks.com)";

  @Override
  public String title() {
    return "Water, friction, ice and dough temperature";
  }

  @Override
  public List<Check> checks() {
    return List.of(
        rule("80 from 65, 75, friction 35", 65, three(80, 65, 75, 35), "Pizza Today, June 2018"),
        rule("78 from 72, 71, friction 22", 69, three(78, 72, 71, 22), "culinaryjourneysllc.com"),
        rule("80 from 68, 72, friction 20", 80, three(80, 68, 72, 20), "duelingmargaritas (2011)"),
        rule("78 from 60, 70, friction 16", 88, three(78, 60, 70, 16), "pizzamaking.com 14506"),
        rule("78 from 72, 72, by hand", 90, three(78, 72, 72, 0), "cooking.stackexchange 107561"),
        rule(
            "75 from three of 71, friction 20",
            67,
            WaterTemperature.fourFactors(75, 71, 71, 71, 20),
            "Cook's Illustrated how-to 5818"),
        back("dough 80 of 65, 75, water 65", 35, WaterTemperature.frictionOfThree(80, 65, 75, 65)),
        back(
            "dough 75 of three of 71, water 67",
            20,
            WaterTemperature.frictionOfFour(75, 71, 71, 71, 67)),
        dough("shop 85, flour 67, water 82", 67, 82, 85),
        dough("shop 72, flour 62, water 100", 62, 100, 72),
        balance("shop 85, flour 67, water 82", 67, 82),
        Check.missed(
            "dough by heat balance, shop 72, flour 62, water 100",
            78,
            fahrenheit(mixed(62, 100, 0)),
            "°F",
            3.6,
            "missed by 3.7 °C: hot water in a cold shop loses heat to trough and air, for which the"
                + " rule counts the shop as a third; the balance knows only flour and water",
            TREATISE),
        Check.of(
            "water at 65 °F into flour at 65 °F, friction 35: dough by heat balance",
            80,
            fahrenheit(mixed(65, 65, 35)),
            "°F",
            3.6,
            "2 °C: the room of 75 °F counts in the rule and not in the balance",
            "Pizza Today, June 2018"),
        Check.of(
            "work of 11 Wh/kg warms a dough by",
            14,
            40 / DoughTemperature.DOUGH_HEAT,
            "°C",
            1,
            "the published rise is a round figure; 40 kJ/kg over the specific heat of dough",
            "Chorleywood process, from memory of Cauvain and Young"),
        Check.of(
            "ice in 40 kg of water from 20 to 10 °C",
            4.00,
            WaterTemperature.ice(40, 20, 10),
            "kg",
            0.005,
            "rounding; the article prints 4.4 kg, having left the ice in the liquid water too",
            "heat balance; constants of Argyriou, A Simple Calculation"),
        Check.of(
            "the same by the trade formula",
            4.00,
            WaterTemperature.iceByTradeFormula(40, 68, 50),
            "kg",
            0.005,
            "rounding",
            "Gisslen, Professional Baking (formula from memory)"),
        Check.of(
            "ice in 10 lb of water from 65 to 50 °F",
            0.85,
            WaterTemperature.ice(10, celsius(65), celsius(50)),
            "lb",
            0.005,
            "rounding",
            "heat balance"),
        Check.of(
            "the same by the trade formula",
            0.85,
            WaterTemperature.iceByTradeFormula(10, 65, 50),
            "lb",
            0.005,
            "rounding",
            "Gisslen, Professional Baking (formula from memory)"),
        chilled("22 oz", 624, 180),
        chilled("13 oz", 369, 120),
        Check.missed(
            "pan loaf of 560 g, 27 °C, after 60 min in a proofer of 43 °C, published 33 to 36",
            34.5,
            new DoughBody(560, Form.LOAF, Holder.TIN, false)
                .meanAfter(27, new Surroundings(60, 43, Surroundings.PROOFER), 60),
            "°C",
            1.5,
            "0.6 °C above the range: rows of tins shield one another and cool the air between"
                + " them, and a risen dough conducts less; neither is in the model",
            "bakerpedia, The importance of proofing (air 40 to 46 °C, 55 to 65 min)"));
  }

  private static Check chilled(String weight, double grams, double minutes) {
    Surroundings cooler = new Surroundings(600, celsius(37), Surroundings.RETARDER);
    double ours =
        new DoughBody(grams, Form.BALL, Holder.PLASTIC_TUB, false)
            .minutesUntilCore(celsius(77.5), cooler, celsius(45))
            .orElseThrow();
    return Check.of(
        "pizza dough of " + weight + " in stacked boxes, middle from 77.5 to 45 °F at 37 °F",
        minutes,
        ours,
        "min",
        30,
        "half an hour, being told in whole hours, for a cooler of 36 to 38 and a dough of 75 to 80 °F; boxes are stacked"
            + " crosswise, open to the air, while they cool (from memory)",
        "T. Lehmann, thinktank.pmq.com 16457");
  }

  private static Check rule(String what, double published, double ours, String source) {
    return Check.of("water for a dough of " + what, published, ours, "°F", 0.01, EXACT, source);
  }

  private static Check back(String what, double published, double ours) {
    return Check.of(
        "friction of a " + what,
        published,
        ours,
        "°F",
        0.01,
        EXACT,
        "the examples of Pizza Today and Cook's Illustrated worked back");
  }

  private static Check dough(String what, double flour, double water, double shop) {
    // The treatise goes the other way: three temperatures, no friction, mean 78 °F.
    return Check.of(
        "dough by the rule, " + what,
        78,
        78 + (water - three(78, flour, shop, 0)) / 3,
        "°F",
        0.01,
        EXACT,
        TREATISE);
  }

  private static Check balance(String what, double flour, double water) {
    return Check.of(
        "dough by heat balance, " + what,
        78,
        fahrenheit(mixed(flour, water, 0)),
        "°F",
        3.6,
        "2 °C: the shop counts in the rule and not in the balance, and 60 % water is our guess",
        TREATISE);
  }

  private static double three(double wanted, double flour, double room, double friction) {
    return WaterTemperature.threeFactors(wanted, flour, room, friction);
  }

  private static double mixed(double flour, double water, double friction) {
    return DoughTemperature.mixed(
        List.of(Part.flour(100, celsius(flour)), Part.water(60, celsius(water))),
        WaterTemperature.warming(friction / 1.8, 3));
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  private static double fahrenheit(double celsius) {
    return celsius * 1.8 + 32;
  }
}
