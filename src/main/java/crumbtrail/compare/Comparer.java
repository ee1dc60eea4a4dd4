package crumbtrail.compare;

import crumbtrail.compare.Comparison.Explained;
import crumbtrail.compare.Comparison.Moved;
import crumbtrail.findings.Beforehand;
import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.SignKind;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Amounts;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Holds a bake against another one. Each thing that was done otherwise is carried over from one
 * sheet to the other, in both directions, and the altered sheet goes through the whole pipeline as
 * a bake still to come; what this does to the risks is what the difference can explain. The causes
 * are those suspected of the bake in question, by how much they are suspected.
 *
 * <p>Used by one thread, as the reasoning is.
 */
public final class Comparer {
  /** Causes less likely than this are not asked for. Our choice. */
  private static final double LEAST = 0.05;

  private static final int CAUSES = 8;

  /** Readings that differ by less than this part of them are alike. Our choice. */
  private static final double ALIKE = 0.03;

  /** Risks that move by less than this are not told. Our choice. */
  private static final double TELLING = 0.02;

  private final Reasoning reasoning;
  private final Catalogue catalogue;
  private final Pantry pantry;

  /**
   * @param reasoning the pipeline
   */
  public Comparer(Reasoning reasoning, Catalogue catalogue, Pantry pantry) {
    this.reasoning = reasoning;
    this.catalogue = catalogue;
    this.pantry = pantry;
  }

  /**
   * Compares two bakes.
   *
   * @param before the bake that is held against, as a rule the one that came out better
   * @param after the bake in question
   */
  public Comparison of(BakeSheet before, BakeSheet after) {
    Workup was = reasoning.work(before);
    Workup is = reasoning.work(after);
    Map<String, Double> suspicion = suspicion(reasoning.judge(is));
    Scale scale =
        new Scale(
            Beforehand.sheet(reasoning, before), Beforehand.sheet(reasoning, after), suspicion);
    List<Explained> explained = new ArrayList<>();
    for (Step step : steps(scale)) {
      explained.add(scale.explained(step));
    }
    explained.sort(
        Comparator.comparingDouble((Explained one) -> -one.power())
            .thenComparing(one -> one.difference().what()));
    Set<String> seenBefore = seen(was);
    Set<String> seenAfter = seen(is);
    return new Comparison(
        explained,
        names(seenAfter, seenBefore),
        names(seenBefore, seenAfter),
        readings(was, is),
        scale.together());
  }

  private List<Step> steps(Scale scale) {
    List<Step> steps = new ArrayList<>(FormulaSteps.of(pantry, scale.before, scale.after));
    steps.addAll(ProcessSteps.of(catalogue, scale.before, scale.after));
    return steps;
  }

  private static Map<String, Double> suspicion(Findings findings) {
    Map<String, Double> suspicion = new LinkedHashMap<>();
    for (Finding one : findings.ranked()) {
      if (suspicion.size() < CAUSES && one.probability() >= LEAST) {
        suspicion.put(one.cause().key(), one.probability());
      }
    }
    return suspicion;
  }

  private List<String> names(Set<String> here, Set<String> there) {
    return here.stream()
        .filter(sign -> !there.contains(sign))
        .map(sign -> catalogue.sign(sign).map(SignKind::name).orElse(sign))
        .sorted()
        .toList();
  }

  private static Set<String> seen(Workup workup) {
    return workup.heard().signs().stream()
        .filter(Heard.Sign::seen)
        .map(Heard.Sign::key)
        .collect(Collectors.toSet());
  }

  // Beyond what either may be off by.
  private List<Difference> readings(Workup was, Workup is) {
    Map<String, Reading> old =
        was.readings().stream()
            .collect(Collectors.toMap(Reading::name, one -> one, (one, other) -> one));
    List<Difference> differences = new ArrayList<>();
    for (Reading now : is.readings()) {
      Reading then = old.get(now.name());
      if (then != null && apart(then, now)) {
        differences.add(new Difference(now.name(), shown(then), shown(now)));
      }
    }
    return differences;
  }

  private static boolean apart(Reading then, Reading now) {
    double size = Math.max(Math.abs(then.value()), Math.abs(now.value()));
    return (now.low() > then.high() || now.high() < then.low())
        && Math.abs(now.value() - then.value()) > ALIKE * size;
  }

  private String shown(Reading reading) {
    return catalogue
        .reading(reading.name())
        .map(
            kind ->
                Amounts.quantity(Amounts.rounded(reading.value(), kind.decimals()), kind.unit()))
        .orElseGet(() -> Amounts.number(reading.value()));
  }

  /** Both sheets as bakes still to come, and what is suspected of the second. */
  private final class Scale {
    private final BakeSheet before;
    private final BakeSheet after;
    private final Map<String, Double> suspicion;
    private final Findings risksBefore;
    private final Findings risksAfter;

    Scale(BakeSheet before, BakeSheet after, Map<String, Double> suspicion) {
      this.before = before;
      this.after = after;
      this.suspicion = suspicion;
      this.risksBefore = risks(before);
      this.risksAfter = risks(after);
    }

    private Findings risks(BakeSheet sheet) {
      return reasoning.prospect(reasoning.work(sheet));
    }

    /** Share of the suspicion that goes if all is done as it was before. */
    double together() {
      double all = suspicion.values().stream().mapToDouble(Double::doubleValue).sum();
      double gone = 0;
      for (Map.Entry<String, Double> cause : suspicion.entrySet()) {
        double risk = risksAfter.probability(cause.getKey());
        double fall = risk - risksBefore.probability(cause.getKey());
        gone += risk > 0 ? cause.getValue() * Math.max(0, fall / risk) : 0;
      }
      return all > 0 ? gone / all : 0;
    }

    // Where two differences only hurt together, neither taken back nor put in alone shows its part;
    // the mean of both directions gives each half.
    Explained explained(Step step) {
      Optional<Findings> back = step.carried(before, after).map(this::risks);
      Optional<Findings> put = step.carried(after, before).map(this::risks);
      double power = 0;
      List<Moved> moved = new ArrayList<>();
      for (Map.Entry<String, Double> cause : suspicion.entrySet()) {
        String key = cause.getKey();
        double risk = risksAfter.probability(key);
        double without = back.map(risks -> risks.probability(key)).orElse(risk);
        double base = risksBefore.probability(key);
        double with = put.map(risks -> risks.probability(key)).orElse(base);
        power += cause.getValue() * ((risk - without) + (with - base)) / 2;
        if (Math.abs(risk - without) >= TELLING) {
          moved.add(new Moved(key, without, risk));
        }
      }
      moved.sort(
          Comparator.comparingDouble((Moved one) -> -Math.abs(one.after() - one.before()))
              .thenComparing(Moved::cause));
      return new Explained(step.difference(), power, moved);
    }
  }
}
