package crumbtrail.workup;

import crumbtrail.dough.DoughBody;
import crumbtrail.dough.Fermentation.Stay;
import crumbtrail.dough.Surroundings;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The way of a dough from mixing to the oven, stay by stay.
 *
 * @param bulk first rise
 * @param proof rest on the bench and final proof
 * @param knockedBack whether the dough was knocked back and rose again before it was shaped
 */
record RisePlan(List<Step> bulk, List<Step> proof, boolean knockedBack) {
  /** A place of which nothing is said, °C (common practice). */
  static final double ROOM_RISE = 24;

  // A kitchen that the baker calls cold or hot, °C (common practice).
  private static final double COOL_KITCHEN = 17;
  private static final double HOT_KITCHEN = 29;

  // Share of its gas that a dough keeps (common practice in direction, our choice in size).
  private static final double FOLDED = 0.85;
  private static final double PUNCHED = 0.3;
  private static final double SHAPED_TIGHT = 0.2;
  private static final double SHAPED = 0.5;
  private static final double SHAPED_GENTLY = 0.7;

  /**
   * One stay.
   *
   * @param name of the stage
   * @param body the dough, in one bowl or in pieces
   * @param place time and place
   * @param keeps share of the gas that stays when it is handled at the end
   * @param timeSpread how uncertain the time is, minutes
   * @param guessed whether the place's temperature had to be assumed
   */
  record Step(
      String name,
      DoughBody body,
      Surroundings place,
      double keeps,
      double timeSpread,
      boolean guessed) {

    Stay stay() {
      return stay(place);
    }

    Stay stay(Surroundings other) {
      return new Stay(other.minutes(), other.celsius(), body.timeConstant(other.transfer()));
    }
  }

  static RisePlan of(
      BakeProcess process, Style style, Set<String> told, double bulkGrams, double grams) {
    boolean punched = told.contains("knocked-back-hard");
    DoughBody bowl = DoughBody.inBowl(bulkGrams);
    DoughBody piece = shapedBody(process.vessel(), style, grams);
    List<Step> bulk = new ArrayList<>();
    for (Stage stage : process.bulk()) {
      add(bulk, "bulk", stage, place(process, told, style.habits().bulk()), bowl);
    }
    List<Step> proof = new ArrayList<>();
    Optional<Quantity> bench = process.shaping().benchRest();
    if (bench.isPresent() && !process.proof().isEmpty()) {
      Stage rest =
          new Stage(bench, process.room(), Optional.empty(), Optional.empty(), Optional.empty());
      add(proof, "bench", rest, place(process, told, style.habits().proof()), piece);
    }
    for (Stage stage : process.proof()) {
      add(proof, "proof", stage, place(process, told, style.habits().proof()), piece);
    }
    if (!bulk.isEmpty()) {
      Step last = bulk.remove(bulk.size() - 1);
      double keeps = punched ? Math.min(PUNCHED, shaped(style, told)) : shaped(style, told);
      bulk.add(
          new Step(
              last.name(), last.body(), last.place(), keeps, last.timeSpread(), last.guessed()));
    }
    return new RisePlan(List.copyOf(bulk), List.copyOf(proof), punched);
  }

  /**
   * The temperature that is assumed for a place where the dough rose for a time that is told.
   *
   * @param stages the rise
   * @param habit what is usual for the bread, null if nothing is
   * @return empty where nothing is assumed
   */
  static Optional<Double> assumed(
      BakeProcess process, Set<String> told, List<Stage> stages, Style.Spell habit) {
    Place place = place(process, told, habit);
    boolean open =
        stages.stream()
            .anyMatch(stage -> stage.time().isPresent() && stage.temperature().isEmpty());
    return open && place.guessed() ? Optional.of(place.celsius()) : Optional.empty();
  }

  /** A place of which the sheet says no temperature. */
  private record Place(double celsius, boolean guessed) {}

  private static Place place(BakeProcess process, Set<String> told, Style.Spell habit) {
    if (process.room().isPresent()) {
      return new Place(process.room().get().value(), false);
    }
    if (told.contains("kitchen-cold") || told.contains("rising-place-cool")) {
      return new Place(COOL_KITCHEN, true);
    }
    if (told.contains("kitchen-hot") || told.contains("hot-humid-weather")) {
      return new Place(HOT_KITCHEN, true);
    }
    return new Place(habit == null ? ROOM_RISE : habit.celsius(), true);
  }

  // A dough that is folded so many times is folded at even distances.
  private static void add(
      List<Step> steps, String name, Stage stage, Place otherwise, DoughBody body) {
    if (stage.time().isEmpty()) {
      return;
    }
    Quantity time = stage.time().get();
    double celsius = stage.temperature().map(Quantity::value).orElse(otherwise.celsius());
    boolean guessed = stage.temperature().isEmpty() && otherwise.guessed();
    int parts = 1 + Math.min(12, Math.max(0, stage.folds().orElse(0)));
    for (int part = 1; part <= parts; part++) {
      steps.add(
          new Step(
              celsius < Stage.COLD ? "fridge" : name,
              body,
              new Surroundings(time.value() / parts, celsius, transfer(stage, celsius)),
              part < parts ? FOLDED : 1,
              time.spread() / parts,
              guessed));
    }
  }

  private static double transfer(Stage stage, double celsius) {
    if (celsius < Stage.COLD) {
      return Surroundings.FRIDGE;
    }
    // Whoever states the humidity has a cabinet.
    return stage.humidity().isPresent() ? Surroundings.PROOFER : Surroundings.STILL_AIR;
  }

  private static DoughBody shapedBody(BakeProcess.Vessel vessel, Style style, double grams) {
    String kind = vessel.kind().orElse("").toLowerCase(Locale.ROOT);
    if (VesselWorkup.holds(kind) || style.tags().contains("tin")) {
      return new DoughBody(grams, DoughBody.Form.LOAF, DoughBody.Holder.TIN, true);
    }
    if (style.tags().contains("flat")) {
      return new DoughBody(grams, DoughBody.Form.SHEET, DoughBody.Holder.TRAY, true);
    }
    boolean basket = style.tags().contains("sourdough");
    return new DoughBody(
        grams,
        DoughBody.Form.BALL,
        basket ? DoughBody.Holder.BASKET : DoughBody.Holder.BOARD,
        true);
  }

  private static double shaped(Style style, Set<String> told) {
    if (told.contains("degassed-in-shaping")) {
      return SHAPED_TIGHT / 2;
    }
    if (style.tags().contains("tin") || style.tags().contains("small")) {
      return SHAPED_TIGHT;
    }
    return style.tags().contains("sourdough") ? SHAPED_GENTLY : SHAPED;
  }

  /** Every step from mixing to the oven. */
  List<Step> all() {
    List<Step> all = new ArrayList<>(bulk);
    all.addAll(proof);
    return all;
  }
}
