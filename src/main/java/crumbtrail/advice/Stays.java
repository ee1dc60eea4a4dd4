package crumbtrail.advice;

import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading;
import crumbtrail.workup.RiseCourse;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** The stays of a dough in first rise or final proof, in the warm or in the refrigerator. */
final class Stays {
  private static final double ROOM = 24;

  private final BakeSheet sheet;
  private final boolean proof;

  private Stays(BakeSheet sheet, boolean proof) {
    this.sheet = sheet;
    this.proof = proof;
  }

  /**
   * @param at "bulk" or "proof"
   */
  static Stays of(BakeSheet sheet, String at) {
    return new Stays(sheet, at.equals("proof"));
  }

  boolean none() {
    return stages().isEmpty();
  }

  /** Minutes in the warm, empty where none are told. */
  Optional<Double> warmMinutes() {
    return minutes(stages(), Stays::warm);
  }

  /** Degrees of the warm stays, told or assumed. */
  Optional<Double> warmCelsius(Workup workup) {
    return stages().stream()
        .filter(Stays::warm)
        .flatMap(stage -> stage.temperature().stream())
        .map(Quantity::value)
        .max(Double::compare)
        .or(
            () ->
                workup.readings().stream()
                    .filter(
                        reading ->
                            reading.name().equals(proof ? "proof temperature" : "bulk temperature"))
                    .map(Reading::value)
                    .findFirst())
        .or(() -> sheet.process().room().map(Quantity::value))
        .or(() -> reckoned(workup))
        .or(() -> none() ? Optional.empty() : Optional.of(ROOM));
  }

  // Where the sheet leaves it open, the place that the course was reckoned with.
  private Optional<Double> reckoned(Workup workup) {
    return workup.rise().stream()
        .flatMap(course -> course.spans().stream())
        .filter(span -> span.name().equals(proof ? "proof" : "bulk"))
        .map(RiseCourse.Span::place)
        .max(Double::compare);
  }

  /**
   * The sheet whose warm stays last so long in all, in proportion; one is added if there is none.
   */
  BakeSheet lasting(double minutes) {
    double now = warmMinutes().orElse(0.0);
    List<Stage> stages = new ArrayList<>(stages());
    if (stages.stream().noneMatch(Stays::warm)) {
      stages.add(
          0,
          new Stage(
              Heat.minutes(minutes),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));
      return with(stages);
    }
    long warm = stages.stream().filter(Stays::warm).count();
    return with(
        each(
            stages,
            Stays::warm,
            stage ->
                time(
                    stage,
                    now > 0
                        ? stage.time().map(Quantity::value).orElse(0.0) * minutes / now
                        : minutes / warm)));
  }

  /** The sheet whose warm stays are all this warm. */
  BakeSheet at(double celsius) {
    return with(each(stages(), Stays::warm, stage -> temperature(stage, celsius)));
  }

  /** The sheet whose dough is covered, or not, at every stay. */
  BakeSheet covered(boolean covered) {
    return with(
        stages().stream()
            .map(
                old ->
                    new Stage(
                        old.time(),
                        old.temperature(),
                        old.folds(),
                        Optional.of(covered),
                        old.humidity()))
            .toList());
  }

  static Optional<Double> coldMinutes(BakeSheet sheet) {
    List<Stage> all = new ArrayList<>(sheet.process().bulk());
    all.addAll(sheet.process().proof());
    return minutes(all, Stage::isCold);
  }

  static Optional<Double> coldCelsius(BakeSheet sheet) {
    List<Stage> all = new ArrayList<>(sheet.process().bulk());
    all.addAll(sheet.process().proof());
    return all.stream()
        .filter(Stage::isCold)
        .flatMap(stage -> stage.temperature().stream())
        .map(Quantity::value)
        .max(Double::compare);
  }

  static BakeSheet coldLasting(BakeSheet sheet, double minutes) {
    double now = coldMinutes(sheet).orElse(0.0);
    return now > 0
        ? cold(
            sheet,
            stage -> time(stage, stage.time().map(Quantity::value).orElse(0.0) * minutes / now))
        : sheet;
  }

  static BakeSheet coldAt(BakeSheet sheet, double celsius) {
    return cold(sheet, stage -> temperature(stage, celsius));
  }

  static Optional<Double> aheadMinutes(BakeSheet sheet) {
    return minutes(ahead(sheet), any -> true);
  }

  static Optional<Double> aheadCelsius(BakeSheet sheet) {
    return ahead(sheet).stream()
        .flatMap(stage -> stage.temperature().stream())
        .map(Quantity::value)
        .max(Double::compare);
  }

  static BakeSheet aheadLasting(BakeSheet sheet, double minutes) {
    double now = aheadMinutes(sheet).orElse(0.0);
    return now > 0
        ? ahead(
            sheet,
            stage -> time(stage, stage.time().map(Quantity::value).orElse(0.0) * minutes / now))
        : sheet;
  }

  static BakeSheet aheadAt(BakeSheet sheet, double celsius) {
    return ahead(sheet, stage -> temperature(stage, celsius));
  }

  private static List<Stage> ahead(BakeSheet sheet) {
    return sheet.preferments().stream().flatMap(one -> one.stages().stream()).toList();
  }

  private static BakeSheet ahead(BakeSheet sheet, UnaryOperator<Stage> change) {
    return sheet.with(
        sheet.formula(),
        sheet.preferments().stream()
            .map(
                one ->
                    new BakeSheet.Preferment(
                        one.name(), one.formula(), one.stages().stream().map(change).toList()))
            .toList());
  }

  private static BakeSheet cold(BakeSheet sheet, UnaryOperator<Stage> change) {
    BakeProcess old = sheet.process();
    Predicate<Stage> cold = Stage::isCold;
    return sheet.with(
        old.withBulk(each(old.bulk(), cold, change)).withProof(each(old.proof(), cold, change)));
  }

  private static Optional<Double> minutes(List<Stage> stages, Predicate<Stage> which) {
    List<Double> told =
        stages.stream()
            .filter(which)
            .flatMap(stage -> stage.time().stream())
            .map(Quantity::value)
            .toList();
    return told.isEmpty()
        ? Optional.empty()
        : Optional.of(told.stream().mapToDouble(Double::doubleValue).sum());
  }

  private static boolean warm(Stage stage) {
    return !stage.isCold();
  }

  private static List<Stage> each(
      List<Stage> stages, Predicate<Stage> which, UnaryOperator<Stage> change) {
    return stages.stream().map(stage -> which.test(stage) ? change.apply(stage) : stage).toList();
  }

  private static Stage time(Stage old, double minutes) {
    return new Stage(
        Heat.minutes(minutes), old.temperature(), old.folds(), old.covered(), old.humidity());
  }

  private static Stage temperature(Stage old, double celsius) {
    return new Stage(
        old.time(), Optional.of(Heat.celsius(celsius)), old.folds(), old.covered(), old.humidity());
  }

  private List<Stage> stages() {
    return proof ? sheet.process().proof() : sheet.process().bulk();
  }

  private BakeSheet with(List<Stage> stages) {
    BakeProcess old = sheet.process();
    return sheet.with(proof ? old.withProof(stages) : old.withBulk(stages));
  }
}
