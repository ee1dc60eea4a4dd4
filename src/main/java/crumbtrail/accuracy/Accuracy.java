package crumbtrail.accuracy;

import crumbtrail.accuracy.Reliability.Claim;
import crumbtrail.accuracy.TableScore.Question;
import crumbtrail.findings.Finding;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Calibration;
import crumbtrail.rules.RuleBase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;

/**
 * How often the ranking is right, measured on labelled bakes and published tables. What a figure
 * means is said on the page that {@link AccuracyPage} writes.
 */
public final class Accuracy {
  private final Judge judge;
  private final List<Bake> bakes;
  private final TableScore tables;
  private final Calibration calibration;
  private final Ranking ranking;
  private final Weights weights;

  private Accuracy(Judge judge, List<Bake> bakes, TableScore tables) {
    this.judge = judge;
    this.bakes = List.copyOf(bakes);
    this.tables = tables;
    this.calibration = judge.catalogue().knowledge().calibration();
    this.weights = Weights.of(judge.catalogue());
    this.ranking = new Ranking(judge.catalogue(), weights);
  }

  /**
   * Reads what there is to measure against and runs the rules over it.
   *
   * @param own folder of our own cases, with {@code knownCauses}
   * @param real folder of real failures
   * @param tables file of published tables
   * @throws IOException if one of them cannot be read
   */
  public static Accuracy of(RuleBase rules, Path own, Path real, Path tables) throws IOException {
    return of(rules, own, real, tables, done -> {});
  }

  /**
   * The same, telling how far it is.
   *
   * @param progress told how many bakes are done, after each
   */
  public static Accuracy of(RuleBase rules, Path own, Path real, Path tables, LongConsumer progress)
      throws IOException {
    Judge judge = new Judge(rules);
    List<Bake> bakes = new ArrayList<>();
    Bake.read(judge, real, true, bakes, progress);
    Bake.read(judge, own, false, bakes, progress);
    return new Accuracy(judge, bakes, new TableScore(judge, Table.read(judge, tables)));
  }

  /** The page docs/accuracy.md. */
  public String page() {
    return new AccuracyPage(this).write();
  }

  /** Fits the calibration anew. */
  public FittedCalibration calibrate() {
    return FittedCalibration.of(calibrator(), bakes);
  }

  Calibration calibration() {
    return calibration;
  }

  Calibrator calibrator() {
    return new Calibrator(judge, bakes, tables);
  }

  List<Bake> failures(boolean real) {
    return bakes.stream().filter(bake -> bake.real() == real && !bake.healthy()).toList();
  }

  List<Bake> healthy() {
    return bakes.stream().filter(Bake::healthy).toList();
  }

  List<Bake> all(boolean real) {
    return bakes.stream().filter(bake -> bake.real() == real).toList();
  }

  List<Finding> ranked(Bake bake) {
    return bake.judged().ranked(ranking).ranked();
  }

  int place(Bake bake) {
    return Judged.place(ranked(bake), bake.causes());
  }

  List<Question> signs(int lineages) {
    return tables.signs(weights, lineages);
  }

  List<Question> causes() {
    return tables.causes(weights);
  }

  List<Question> signsUnseen(int others) {
    return tables.signsUnseen(weights, others);
  }

  List<Question> causesUnseen() {
    return tables.causesUnseen(weights);
  }

  /** For each bake what it would have been told by a link that never saw it. */
  List<List<Claim>> crossValidated() {
    return calibrator().crossValidated(calibration, LinkFit.Chance.FAILED);
  }
}
