package crumbtrail.workup;

import crumbtrail.dough.Ripening;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Bulk and proof: times, temperatures, and how ripe the dough was at the end of each. */
final class RiseWorkup {
  /** Below this temperature a stage counts as cold, °C. */
  private static final double COLD = 12;

  /** Yeast dies at 55 to 60 °C (Figoni 2003; Hamelman 2004). */
  private static final double SCALDING = 55;

  private static final double ROOM_RISE = 24;
  private static final double USUAL_DOUGH_GRAMS = 900;

  // A proof wants a fifth more than a bulk of an hour: it is as long and slightly warmer (common
  // practice). Sourdough is
  // proofed for about a quarter of its bulk, much of it in the refrigerator (common practice).
  private static final double PROOF_WANTED = 1.2;
  private static final double SOURDOUGH_PROOF_WANTED = 0.25;

  private final BakeProcess process;
  private final ReadingList readings;
  private final Dose dose;
  private final Style style;
  private boolean guessed;
  private double spread;

  private RiseWorkup(BakeProcess process, ReadingList readings, Dose dose) {
    this.process = process;
    this.readings = readings;
    this.dose = dose;
    this.style = readings.style();
  }

  static void work(BakeProcess process, ReadingList readings, Dose dose) {
    RiseWorkup rise = new RiseWorkup(process, readings, dose);
    rise.timesAndTemperatures();
    if (dose.leaven().raises() && !scalding(process)) {
      rise.ripeness();
    }
  }

  // Hot liquid may have killed the yeast; how ripe the dough was can then not be reckoned from the
  // dose.
  private static boolean scalding(BakeProcess process) {
    return process.temperatures().liquid().filter(liquid -> liquid.value() >= SCALDING).isPresent();
  }

  private void timesAndTemperatures() {
    total("bulk time", process.bulk());
    total("proof time", process.proof());
    warmest(process.bulk())
        .flatMap(Stage::temperature)
        .ifPresent(t -> measured("bulk temperature", t));
    warmest(process.proof())
        .flatMap(Stage::temperature)
        .ifPresent(t -> measured("proof temperature", t));
    process.proof().stream()
        .flatMap(stage -> stage.humidity().stream())
        .findFirst()
        .ifPresent(humidity -> measured("proof humidity", humidity));
    readings.measured("bench rest", process.shaping().benchRest());
    List<Stage> cold = new ArrayList<>(process.bulk());
    cold.addAll(process.proof());
    cold.removeIf(stage -> stage.temperature().map(t -> t.value() >= COLD).orElse(true));
    double hours =
        cold.stream().flatMap(s -> s.time().stream()).mapToDouble(Quantity::value).sum() / 60;
    if (hours > 0) {
      readings.put("fridge time", hours, 0, Known.MEASURED);
      cold.get(0).temperature().ifPresent(t -> measured("fridge temperature", t));
    }
  }

  private void ripeness() {
    double grams =
        readings
            .get("piece weight")
            .or(() -> readings.get("dough weight"))
            .map(Reading::value)
            .orElse(USUAL_DOUGH_GRAMS);
    double bulkGrams = readings.get("dough weight").map(Reading::value).orElse(grams);
    Optional<Reading> dough = readings.get("dough temperature");
    double start =
        dough
            .map(Reading::value)
            .orElse(style.range("dough temperature").map(Style.Range::middle).orElse(25.0));
    guessed = dose.assumed();
    spread = dough.isEmpty() || dough.get().known() == Known.ASSUMED ? 0.15 : 0.05;
    Optional<Ripening.End> bulk = through(process.bulk(), start, bulkGrams, style.habits().bulk());
    boolean bulkGuessed = guessed;
    double bulkWanted = style.habits().value("rise wanted").orElse(1.0);
    double usual = Dose.usual(style).ratePerMinute() / dose.leaven().ratePerMinute();
    bulk.ifPresent(
        end -> {
          put("bulk ripeness", end.ripeness() / bulkWanted);
          put("bulk schedule", end.ripeness() / bulkWanted * usual);
        });

    double proofStart = bulk.map(Ripening.End::celsius).orElse(start);
    Optional<Ripening.End> proof =
        through(withBenchRest(), proofStart, grams, style.habits().proof());
    double proofWanted =
        style
            .habits()
            .value("proof wanted")
            .orElse(dose.leaven().isSourdough() ? SOURDOUGH_PROOF_WANTED : PROOF_WANTED);
    proof.ifPresent(
        end -> {
          put("proof ripeness", end.ripeness() / proofWanted);
          put("proof schedule", end.ripeness() / proofWanted * usual);
        });
    guessed |= bulkGuessed;
    if (bulk.isPresent() && proof.isPresent()) {
      put(
          "whole rise",
          (bulk.get().ripeness() + proof.get().ripeness()) / (bulkWanted + proofWanted));
    }
  }

  // The rest on the bench raises the dough as the proof does; where no proof is told, neither is a
  // rest.
  private List<Stage> withBenchRest() {
    if (process.proof().isEmpty() || process.shaping().benchRest().isEmpty()) {
      return process.proof();
    }
    List<Stage> stages = new ArrayList<>();
    stages.add(
        new Stage(
            process.shaping().benchRest(),
            process.room(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
    stages.addAll(process.proof());
    return stages;
  }

  private Optional<Ripening.End> through(
      List<Stage> stages, double start, double grams, Style.Spell habit) {
    List<Ripening.Spell> spells = new ArrayList<>();
    for (Stage stage : stages) {
      if (stage.time().isPresent()) {
        Quantity time = stage.time().get();
        spells.add(new Ripening.Spell(time.value(), celsius(stage, habit)));
        spread = Math.hypot(spread, time.value() > 0 ? time.spread() / time.value() : 0);
      }
    }
    return spells.isEmpty()
        ? Optional.empty()
        : Optional.of(Ripening.through(dose.leaven(), start, grams, spells));
  }

  private double celsius(Stage stage, Style.Spell habit) {
    if (stage.temperature().isPresent()) {
      return stage.temperature().get().value();
    }
    if (process.room().isPresent()) {
      return process.room().get().value();
    }
    guessed = true;
    return habit == null ? ROOM_RISE : habit.celsius();
  }

  private void put(String name, double value) {
    readings.put(name, value, spread, guessed ? Known.ASSUMED : Known.WORKED_OUT);
  }

  private void measured(String name, Quantity quantity) {
    readings.measured(name, Optional.of(quantity));
  }

  private void total(String name, List<Stage> stages) {
    List<Quantity> times = stages.stream().flatMap(stage -> stage.time().stream()).toList();
    if (!times.isEmpty()) {
      readings.put(
          name,
          times.stream().mapToDouble(Quantity::value).sum(),
          times.stream().mapToDouble(Quantity::low).sum(),
          times.stream().mapToDouble(Quantity::high).sum(),
          Known.MEASURED);
    }
  }

  private static Optional<Stage> warmest(List<Stage> stages) {
    return stages.stream()
        .filter(stage -> stage.temperature().isPresent())
        .max(Comparator.comparingDouble(stage -> stage.temperature().get().value()));
  }
}
