package crumbtrail.workup;

import crumbtrail.dough.DoughBody;
import crumbtrail.dough.DoughState;
import crumbtrail.dough.Fermentation;
import crumbtrail.dough.Readiness;
import crumbtrail.knowledge.Style;
import crumbtrail.oven.Boiling;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How ripe the dough was at the end of bulk and of proof, and what it had become. */
final class RiseWorkup {
  /** Yeast dies at 55 to 60 °C (Figoni 2003; Hamelman 2004). */
  private static final double SCALDING = 55;

  private static final double USUAL_DOUGH_GRAMS = 900;
  private static final double USUAL_START = 25;

  private final BakeProcess process;
  private final ReadingList readings;
  private final Dose dose;
  private final Care care;
  private final RisePlan plan;
  private final Fermentation fermentation;
  private final RiseSpread spread;
  private final double start;
  private final double thinAir;

  private RiseWorkup(
      BakeProcess process, ReadingList readings, Dose dose, Set<String> circumstances, Care care) {
    this.process = process;
    this.readings = readings;
    this.dose = dose;
    this.care = care;
    double bulkGrams = grams("dough weight", "piece weight");
    double pieceGrams = grams("piece weight", "dough weight");
    this.plan = RisePlan.of(process, readings.style(), circumstances, bulkGrams, pieceGrams);
    this.thinAir = thinAir(process);
    this.fermentation = new Fermentation(dose.mix(), thinAir);
    Optional<Reading> dough = readings.get("dough temperature");
    this.start =
        dough
            .map(Reading::value)
            .or(() -> readings.style().range("dough temperature").map(Style.Range::middle))
            .orElse(USUAL_START);
    this.spread = new RiseSpread(dose, dough);
  }

  /**
   * Puts the readings of both rises.
   *
   * @param circumstances keys of what the baker said
   * @param care what is wanted of it
   * @return the course of the rise, if there is one to draw
   */
  static Optional<RiseCourse> work(
      BakeProcess process, ReadingList readings, Dose dose, Set<String> circumstances, Care care) {
    RiseTimes.work(process, readings);
    if (!dose.mix().leaven().raises() || scalding(process)) {
      return Optional.empty();
    }
    return new RiseWorkup(process, readings, dose, circumstances, care).rises();
  }

  // Hot liquid may have killed the yeast; how ripe the dough was can then not be reckoned from the
  // dose.
  private static boolean scalding(BakeProcess process) {
    return process.temperatures().liquid().filter(liquid -> liquid.value() >= SCALDING).isPresent();
  }

  private Optional<RiseCourse> rises() {
    boolean sourdough = fermentation.mostlyStarter();
    DoughState begin = fermentation.start(start);
    double bulkGas = Readiness.bulkGas(dose.mix(), wantedBulk(sourdough), plan.knockedBack());
    boolean bulkReady = care.wants("bulk ready after");
    Optional<Rising> bulk = follow(fermentation, begin, plan.bulk(), bulkGas, bulkReady);
    DoughState shaped = bulk.map(Rising::handled).orElse(begin);
    double proofGas = Readiness.proofGas(dose.mix(), shaped, wantedProof(sourdough));
    boolean proofReady = care.wants("proof ready after") || HeightWorkup.overRunWanted(care);
    Optional<Rising> proof = follow(fermentation, shaped, plan.proof(), proofGas, proofReady);
    bulk.ifPresent(rising -> put("bulk", rising, plan.bulk(), false));
    // A proof told without its bulk begins with a dough of which nothing is known.
    proof.ifPresent(rising -> put("proof", rising, plan.proof(), bulk.isEmpty()));
    double made = bulk.map(Rising::made).orElse(0.0) + proof.map(Rising::made).orElse(0.0);
    if (RiseReasons.wanted(care)) {
      new RiseReasons(readings, dose, plan, thinAir, spread).put(start, bulkGas, proofGas, made);
    }
    if (bulk.isPresent() && proof.isPresent()) {
      Known known = spread.known(plan.all());
      readings.put("whole rise", made / (bulkGas + proofGas), spread.of(plan.all()), known);
      loaf(proof.get(), known);
      new HeightWorkup(process, readings, fermentation)
          .put(proof.get(), plan.proof(), spread.of(plan.proof()), known);
      if (sourdough && SourWorkup.wanted(care)) {
        List<List<DoughState>> steps = new ArrayList<>(bulk.get().steps());
        steps.addAll(proof.get().steps());
        SourWorkup.work(readings, dose, steps, known);
      }
    }
    return care.drawsCourses()
        ? RiseDrawing.of(dose.mix(), plan, bulk, proof, spread.known(plan.all()))
        : Optional.empty();
  }

  private void put(String name, Rising rising, List<RisePlan.Step> steps, boolean blind) {
    double relative = spread.of(steps);
    Known known = blind ? Known.ASSUMED : spread.known(steps);
    double ripeness = rising.ripeness();
    readings.put(name + " ripeness", ripeness, relative, known);
    double rise = rising.end().rise(dose.mix()) / rising.begin().rise(dose.mix());
    double gained = Math.abs(rise - 1) * relative;
    readings.put(name + " rise", rise, rise - gained, rise + gained, known);
    rising
        .readyAfter()
        .ifPresent(minutes -> readings.put(name + " ready after", minutes, relative, known));
  }

  private void loaf(Rising proof, Known known) {
    DoughState end = proof.end();
    double gas = fermentation.baked(end);
    DoughBody.Pair halves = halves();
    readings.put(
        "dough at oven",
        end.celsius(),
        Math.min(halves.core(), halves.rim()) - 1,
        Math.max(halves.core(), halves.rim()) + 1,
        known);
    readings.put("sugar left", end.sugar(), 0.4, Known.ASSUMED);
    readings.put("loaf volume", gas / (dose.mix().total() * 0.9), 0.2, known);
  }

  // A large or a cold dough is not of one temperature: its core lags behind its rim.
  private DoughBody.Pair halves() {
    DoughBody.Pair halves = DoughBody.Pair.even(start);
    for (RisePlan.Step step : plan.bulk()) {
      halves = step.body().after(halves, step.place());
    }
    // Shaping mixes them.
    halves = DoughBody.Pair.even(halves.mean());
    for (RisePlan.Step step : plan.proof()) {
      halves = step.body().after(halves, step.place());
    }
    return halves;
  }

  private double wantedBulk(boolean sourdough) {
    return readings
        .style()
        .habits()
        .value("rise wanted")
        .orElse(sourdough ? Readiness.sourdoughRise(dose.mix()) : Readiness.DOUBLED);
  }

  private double wantedProof(boolean sourdough) {
    return readings.style().habits().value("proof wanted").orElse(usualProof(sourdough));
  }

  private double usualProof(boolean sourdough) {
    if (sourdough) {
      return Readiness.PROOFED_SOURDOUGH;
    }
    List<String> tags = readings.style().tags();
    if (tags.contains("tin")) {
      return Readiness.PROOFED_TIN;
    }
    boolean hearth = tags.contains("hearth") && !tags.contains("enriched");
    return !hearth && (tags.contains("small") || tags.contains("enriched"))
        ? Readiness.PROOFED
        : Readiness.PROOFED_HEARTH;
  }

  private static Optional<Rising> follow(
      Fermentation fermentation,
      DoughState begin,
      List<RisePlan.Step> steps,
      double gas,
      boolean ready) {
    return steps.isEmpty()
        ? Optional.empty()
        : Optional.of(Rising.follow(fermentation, begin, steps, gas, ready));
  }

  private static double thinAir(BakeProcess process) {
    return Boiling.pressure(0) / Boiling.pressure(Height.metres(process));
  }

  private double grams(String first, String second) {
    return readings
        .get(first)
        .or(() -> readings.get(second))
        .map(Reading::value)
        .filter(grams -> grams >= 1)
        .orElse(USUAL_DOUGH_GRAMS);
  }
}
