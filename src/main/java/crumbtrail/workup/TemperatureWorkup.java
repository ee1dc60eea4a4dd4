package crumbtrail.workup;

import crumbtrail.dough.DoughTemperature;
import crumbtrail.dough.DoughTemperature.Part;
import crumbtrail.dough.WaterTemperature;
import crumbtrail.formula.Formula;
import crumbtrail.formula.Level;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Temperatures at mixing: the room, the liquid, the dough. */
final class TemperatureWorkup {
  /** A kitchen of which nothing is said, °C (common practice). */
  static final double KITCHEN = 21;

  /** Liquid that kills yeast, °C (Figoni 2003; Hamelman 2004). */
  private static final double SCALDING = 55;

  // Friction factors of three temperatures (Cook's Illustrated how-to 5818): by hand 5 °F, stand
  // mixer 20 °F, food processor 25 °F; 2 °F a minute of machine (pizzamaking.com 14506), which is
  // the 20 °F in ten minutes. The dough itself warms by a third of that.
  private static final double BY_HAND = WaterTemperature.warming(5 / 1.8, 3);
  private static final double BY_MIXER = WaterTemperature.warming(20 / 1.8, 3);
  private static final double BY_MIXER_MINUTE = WaterTemperature.warming(2 / 1.8, 3);
  private static final double BY_PROCESSOR = WaterTemperature.warming(25 / 1.8, 3);

  /** Longer kneading meets the cooling of bowl and air (our choice), °C. */
  private static final double MOST_WARMING = 9;

  // Sixty parts of liquid to a hundred of flour where the formula tells none (common practice).
  static final double USUAL_LIQUID = 60;

  static void work(BakeProcess process, ReadingList readings, Formula formula) {
    readings.measured("room", process.room());
    readings.measured("liquid temperature", process.temperatures().liquid());
    readings.measured("altitude", process.altitude());
    TemperatureWorkup mix = new TemperatureWorkup(process, readings, formula);
    if (process.mixing().doughTemperature().isPresent()) {
      readings.measured("dough temperature", process.mixing().doughTemperature());
    } else {
      mix.doughTemperature();
    }
    mix.liquidWanted();
  }

  private final BakeProcess process;
  private final ReadingList readings;
  private final Optional<Quantity> room;
  private final Optional<Quantity> liquid;
  private final Optional<Quantity> flour;
  private final double place;
  private final List<Part> others = new ArrayList<>();
  private final double liquidParts;
  private final double ice;

  private TemperatureWorkup(BakeProcess process, ReadingList readings, Formula formula) {
    this.process = process;
    this.readings = readings;
    this.room = process.room();
    this.liquid = process.temperatures().liquid();
    this.flour = process.temperatures().flour();
    this.place = room.map(Quantity::value).orElse(KITCHEN);
    double wet = Math.max(readings.get("hydration").map(Reading::value).orElse(USUAL_LIQUID), 20);
    double[] ahead = madeAhead(formula);
    others.add(Part.flour(100 - ahead[0], flour.map(Quantity::value).orElse(place)));
    if (ahead[0] + ahead[1] > 0) {
      double preferment = process.temperatures().preferment().map(Quantity::value).orElse(place);
      others.add(Part.preferment(ahead[0], ahead[1], preferment));
    }
    double poured = Math.max(wet - ahead[1], 5);
    this.ice =
        Math.min(
            Optional.ofNullable(formula.percentByIngredient().get(MixWarmth.ICE))
                .map(Level::value)
                .orElse(0.0),
            0.95 * poured);
    if (ice > 0) {
      others.add(Part.ice(ice));
    }
    this.liquidParts = poured - ice;
  }

  // Flour and water in preferments, percent of all flour; a scald or soaker is none.
  private static double[] madeAhead(Formula formula) {
    double all = formula.flourGrams().value();
    double dry = 0;
    double wet = 0;
    for (Formula.Part part : formula.parts()) {
      boolean fermented = part.kind().equals("levain") || part.kind().equals("yeasted");
      if (fermented && all > 0) {
        dry += part.flourGrams().value() / all * 100;
        wet += (part.grams().value() - part.flourGrams().value()) / all * 100;
      }
    }
    return new double[] {Math.min(dry, 95), Math.max(0, wet)};
  }

  private void doughTemperature() {
    if (room.isEmpty() && liquid.isEmpty() && flour.isEmpty() && ice <= 0) {
      return;
    }
    List<Part> all = new ArrayList<>(others);
    all.add(Part.water(liquidParts, liquid.map(Quantity::value).orElse(place)));
    double celsius = DoughTemperature.mixed(all, warming(process.mixing()));
    boolean told = liquid.isPresent() && (room.isPresent() || flour.isPresent());
    double spread = (told ? 2.5 : 4) + liquid.map(Quantity::spread).orElse(0.0) / 2;
    Known known = told ? Known.WORKED_OUT : Known.ASSUMED;
    readings.put(
        "dough temperature",
        celsius,
        celsius - spread,
        celsius + spread,
        DoughTemperature.covers(celsius) ? known : Known.EXTRAPOLATED);
  }

  // The liquid that would have brought the dough to what is usual for this bread.
  private void liquidWanted() {
    Optional<Double> usual =
        readings
            .style()
            .habits()
            .value("dough temperature")
            .or(() -> readings.style().range("dough temperature").map(Style.Range::middle));
    if (usual.isEmpty() || (room.isEmpty() && flour.isEmpty())) {
      return;
    }
    double celsius =
        WaterTemperature.byBalance(usual.get(), others, liquidParts, warming(process.mixing()));
    boolean possible = celsius > 0 && celsius < SCALDING;
    readings.put(
        "liquid wanted",
        celsius,
        celsius - 4,
        celsius + 4,
        possible ? Known.WORKED_OUT : Known.EXTRAPOLATED);
  }

  private static double warming(BakeProcess.Mixing mixing) {
    String method = MixingWorkup.words(mixing.method());
    if (method.contains("processor")) {
      return BY_PROCESSOR;
    }
    if (method.contains("mixer")) {
      return mixing
          .time()
          .map(time -> BY_MIXER_MINUTE * time.value() * MixingWorkup.speed(mixing))
          .map(warmed -> Math.min(MOST_WARMING, warmed))
          .orElse(BY_MIXER);
    }
    return method.contains("no-knead") || method.contains("no knead") ? 0 : BY_HAND;
  }
}
