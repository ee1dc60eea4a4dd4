package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.SignKind;
import crumbtrail.rules.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The handbook leaf by leaf, for those who turn its pages one at a time. The leaves are those that
 * {@link Handbook} writes into files. Safe for use by many threads.
 */
public final class Leaves {
  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Overviews overviews;
  private final Matrix matrix;
  private final CausePages causes;
  private final SignPages signs;

  /**
   * @param book the rules
   */
  public Leaves(RuleBook book) {
    this.catalogue = book.catalogue();
    this.witnesses = new Witnesses(book, new Strengths(catalogue));
    this.overviews = new Overviews(catalogue, witnesses);
    this.matrix = new Matrix(catalogue, witnesses, overviews);
    this.causes = new CausePages(catalogue, witnesses);
    this.signs = new SignPages(book, witnesses);
  }

  /** Where all the others are named. */
  public Leaf front() {
    return overviews.front();
  }

  /** Signs against causes. */
  public Leaf matrix() {
    return matrix.page();
  }

  /** The same as one sheet of comma-separated values. */
  public String matrixSheet() {
    return matrix.csv();
  }

  /** Every cause in a line, stage by stage. */
  public Leaf causes() {
    List<Leaf.Part> parts = new ArrayList<>();
    for (String stage : Overviews.STAGES) {
      parts.add(new Leaf.Heading(Plain.upper(stage)));
      overviews.stage(stage).parts().stream()
          .filter(Leaf.Table.class::isInstance)
          .forEach(parts::add);
    }
    return new Leaf("Causes, stage by stage", parts);
  }

  /** The causes of a stage; empty if there is no such stage. */
  public Optional<Leaf> stage(String stage) {
    return Overviews.STAGES.contains(stage)
        ? Optional.of(overviews.stage(stage))
        : Optional.empty();
  }

  /** A cause, by key; empty if there is none. */
  public Optional<Leaf> cause(String key) {
    return catalogue.cause(key).map(causes::page);
  }

  /** The signs that speak for a cause by themselves, the most telling first. */
  public List<SignKind> signsOf(String cause) {
    return witnesses.signsOf(cause).entrySet().stream()
        .filter(sign -> sign.getValue().decibans() > 0)
        .sorted(Map.Entry.comparingByValue(Witnesses.STRONGEST_FIRST))
        .flatMap(sign -> catalogue.sign(sign.getKey()).stream())
        .toList();
  }

  /** A sign, by key; empty if there is none. */
  public Optional<Leaf> sign(String key) {
    return catalogue.sign(key).map(signs::page);
  }
}
