package crumbtrail.workup;

import crumbtrail.knowledge.Style;
import crumbtrail.oven.Bake;
import crumbtrail.oven.BakeCourse;
import crumbtrail.oven.Boiling;
import crumbtrail.oven.Cooling;
import crumbtrail.oven.Loaf;
import crumbtrail.oven.OvenStage;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What the loaf went through in the oven and until it was cut. */
final class BakeWorkup {
  private static final double USUAL_GRAMS = 900;
  private static final double PROOFED_DOUGH = 25;
  private static final double USUAL_WATER = 62;
  private static final double BELOW_BOILING = 2;
  private static final double USUAL_CORE = 94;

  // Degrees and points either way: between the model's errors against the two measured bakes, 1.5
  // and 7.4 °C (docs/science/oven.md), and where the weight of the piece or the oven had to be
  // assumed.
  private static final double CORE_ERROR = 5;
  private static final double LOSS_ERROR = 2;
  private static final double GUESSED = 2;

  // Pieces that hardly differ are one bake: of the hundreds of what-ifs of a sheet with cups and
  // eggs each has a piece of its own by a gram or two. Half a step of all three at once moves the
  // middle of a loaf by less than a degree, where the model is good to five (BakeGridTest).
  static final double WEIGHT_STEP = 0.005;
  static final double WATER_STEP = 0.5;
  static final double WARMTH_STEP = 0.25;

  private final BakeProcess process;
  private final ReadingList readings;
  private final Set<String> told;
  private final Care care;

  private BakeWorkup(BakeProcess process, ReadingList readings, Set<String> told, Care care) {
    this.process = process;
    this.readings = readings;
    this.told = told;
    this.care = care;
  }

  /**
   * Puts the readings.
   *
   * @param told keys of what the baker said
   * @param care what is wanted of them; the oven's model is by far the dearest
   * @return the curve, if time and oven are told and it is drawn
   */
  static Optional<BakeCurve> work(
      BakeProcess process, ReadingList readings, Set<String> told, Care care) {
    List<OvenStage> stages = stages(process, readings.style());
    boolean wanted = care.wants("core reached", "bake loss", "set after", "core at the cut");
    if (stages.isEmpty() || !wanted) {
      return Optional.empty();
    }
    return new BakeWorkup(process, readings, told, care).bake(stages);
  }

  private Optional<BakeCurve> bake(List<OvenStage> stages) {
    Style style = readings.style();
    Optional<Reading> piece = readings.get("piece weight").filter(p -> p.value() >= 20);
    double grams =
        piece
            .map(Reading::value)
            .or(() -> style.habits().value("piece weight"))
            .orElse(USUAL_GRAMS);
    double water = readings.get("total water").map(Reading::value).orElse(USUAL_WATER);
    Loaf loaf =
        LoafShape.of(process, style)
            .apply(Math.min(inSteps(grams), 20_000))
            .withWater(Math.max(30, near(water, care.grid() * WATER_STEP)));
    double start = readings.get("dough at oven").map(Reading::value).orElse(PROOFED_DOUGH);
    double metres = Height.metres(process);
    BakeCourse course =
        Bake.of(loaf, near(bounded(start, 0, 45), care.grid() * WARMTH_STEP), stages, metres);
    boolean guessed = piece.map(p -> p.known() == Known.ASSUMED).orElse(true);
    Known known =
        guessed ? Known.ASSUMED : course.extrapolated() ? Known.EXTRAPOLATED : Known.WORKED_OUT;
    put(course, stages, known);
    cut(course, known);
    return care.drawsCourses() ? Optional.of(curve(course, metres, known)) : Optional.empty();
  }

  private BakeCurve curve(BakeCourse course, double metres, Known known) {
    double wanted =
        Math.min(
            readings.style().range("core temperature").map(Style.Range::low).orElse(USUAL_CORE),
            Boiling.at(metres) - BELOW_BOILING);
    return new BakeCurve(
        course.points().stream()
            .map(p -> new BakeCurve.Point(p.minute(), p.core(), p.surface(), p.oven()))
            .toList(),
        wanted,
        Boiling.at(metres),
        course.setAtMinute(),
        readings.get("core temperature").map(Reading::value),
        known == Known.ASSUMED);
  }

  private void put(BakeCourse course, List<OvenStage> stages, Known known) {
    double wide = known == Known.WORKED_OUT ? 1 : GUESSED;
    double minutes = stages.stream().mapToDouble(OvenStage::minutes).sum();
    double vague = readings.get("bake time").map(t -> (t.high() - t.low()) / 2).orElse(0.0);
    readings.put(
        "core reached",
        course.core(),
        course.coreAt(Math.max(0, minutes - vague)) - CORE_ERROR * wide,
        course.core() + CORE_ERROR * wide,
        known);
    readings.put(
        "bake loss",
        course.lossPercent(),
        Math.max(0, course.lossAt(Math.max(0, minutes - vague)) - LOSS_ERROR * wide),
        course.lossPercent() + LOSS_ERROR * wide,
        known);
    OptionalDouble set = course.setAtMinute();
    if (set.isPresent()) {
      double late = 3 * wide;
      readings.put(
          "set after",
          set.getAsDouble(),
          Math.max(0, set.getAsDouble() - late),
          set.getAsDouble() + late,
          known);
    }
  }

  // A loaf that is cut within the day: how hot its middle still is.
  private void cut(BakeCourse course, Known known) {
    Optional<Quantity> time = process.cooling().time();
    if (time.isEmpty() || time.get().value() > 24 * 60) {
      return;
    }
    double room = process.room().map(Quantity::value).orElse(TemperatureWorkup.KITCHEN);
    Cooling.Lying lying =
        process.cooling().wrapped().orElse(false)
            ? Cooling.Lying.WRAPPED
            : told.contains("cooled-in-tin") ? Cooling.Lying.TIN : Cooling.Lying.RACK;
    double air = near(bounded(room, 5, 40), WARMTH_STEP);
    double core = Cooling.coreAfter(course.end(), time.get().value(), air, lying);
    double error = CORE_ERROR + 0.05 * Math.max(0, core - room);
    readings.put("core at the cut", core, core - error, core + error, known);
  }

  private static List<OvenStage> stages(BakeProcess process, Style style) {
    List<OvenStage> stages = new ArrayList<>();
    BakeProcess.Baking baking = process.baking();
    String kind = process.vessel().kind().orElse("").toLowerCase(Locale.ROOT);
    boolean pot = LoafShape.pot(kind) || style.tags().contains("pot-baked");
    boolean lid = process.vessel().lid().orElse(pot);
    List<BakeProcess.OvenStage> told =
        baking.stages().stream()
            .filter(stage -> stage.time().isPresent() && stage.oven().isPresent())
            .filter(stage -> stage.time().get().value() <= 600)
            .toList();
    for (int i = 0; i < told.size(); i++) {
      // The lid of a pot comes off for the last part of the bake; that of a tin stays on.
      boolean covered = lid && (!pot || told.size() == 1 || i < told.size() - 1);
      stages.add(
          new OvenStage(
              told.get(i).time().get().value(),
              bounded(told.get(i).oven().get().value(), 20, 550),
              baking.fan().orElse(false),
              covered));
    }
    return stages;
  }

  private double inSteps(double grams) {
    return Math.exp(near(Math.log(grams), care.grid() * WEIGHT_STEP));
  }

  private static double near(double value, double step) {
    return Math.rint(value / step) * step;
  }

  private static double bounded(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
