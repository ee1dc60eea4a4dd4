package crumbtrail.accuracy;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Link;
import crumbtrail.findings.Ranking;
import crumbtrail.knowledge.Calibration;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/**
 * Fits the link from sums to probabilities by logistic regression (Newton's steps on the
 * log-likelihood), every cause that a bake lists being one observation and every bake weighing the
 * same whether it lists few causes or many of them far down.
 */
final class LinkFit {
  /** A little pull towards nought, so that few bakes give no wild slopes. */
  private static final double RIDGE = 0.1;

  private static final int STEPS = 30;

  /** Base, sum, lead, first. */
  private static final int LINK = 4;

  private static final int LEAD = 2;
  private static final int FIRST = 3;

  private LinkFit() {}

  /** Whether a bake is judged after it failed, or before anybody saw the loaf. */
  enum Chance {
    FAILED,
    AHEAD
  }

  /** A cause as one bake lists it. */
  record Observation(Link.Standing standing, boolean right) {}

  /** What each cause that is listed for a bake looks like to the link. */
  static List<Observation> observations(Bake bake, Ranking ranking, double unnamed, Chance chance) {
    Judged judged = chance == Chance.FAILED ? bake.judged() : bake.ahead();
    List<Finding> ranked = judged.ranked(ranking).ranked();
    Link.Standing[] standings =
        Link.standings(unnamed, ranked.stream().mapToDouble(Finding::decibans).toArray());
    List<Observation> observations = new ArrayList<>();
    for (int place = 0; place < standings.length; place++) {
      observations.add(
          new Observation(
              standings[place], bake.causes().contains(ranked.get(place).cause().key())));
    }
    return observations;
  }

  /** The calibration with the link fitted to these bakes, all of them failed. */
  static Calibration fit(Calibration start, List<List<Observation>> bakes) {
    return fit(start, bakes, Chance.FAILED);
  }

  /** The calibration with the link fitted to these bakes. */
  static Calibration fit(Calibration start, List<List<Observation>> bakes, Chance chance) {
    double[] link = new double[LINK];
    for (int step = 0; step < STEPS; step++) {
      link = newton(link, bakes);
      if (chance == Chance.AHEAD) {
        // Nothing has to be explained yet, so causes take nothing from each other.
        link[LEAD] = 0;
        link[FIRST] = 0;
      }
    }
    return start.withLink(start.unnamed(), link);
  }

  private static double[] newton(double[] link, List<List<Observation>> bakes) {
    double[] slope = new double[LINK];
    double[][] curvature = new double[LINK][LINK];
    for (int one = 1; one < LINK; one++) {
      slope[one] = -RIDGE * link[one];
      curvature[one][one] = RIDGE;
    }
    curvature[0][0] = 1e-9;
    for (List<Observation> bake : bakes) {
      for (Observation seen : bake) {
        Link.Standing at = seen.standing();
        double[] x = {1, at.sum(), at.lead(), at.first() ? 1 : 0};
        double logOdds = 0;
        for (int one = 0; one < LINK; one++) {
          logOdds += link[one] * x[one];
        }
        double stated = 1 / (1 + Math.exp(-logOdds));
        double off = (seen.right() ? 1 : 0) - stated;
        for (int row = 0; row < LINK; row++) {
          slope[row] += off * x[row];
          for (int column = 0; column < LINK; column++) {
            curvature[row][column] += stated * (1 - stated) * x[row] * x[column];
          }
        }
      }
    }
    double[] step =
        new LUDecomposition(new Array2DRowRealMatrix(curvature))
            .getSolver()
            .solve(new ArrayRealVector(slope))
            .toArray();
    double[] next = new double[LINK];
    for (int one = 0; one < LINK; one++) {
      // Short steps keep the first ones from overshooting.
      next[one] = link[one] + Math.max(-1, Math.min(1, step[one]));
    }
    // A higher sum must never mean a smaller probability.
    for (int one = 1; one < LINK; one++) {
      next[one] = Math.max(0, next[one]);
    }
    return next;
  }
}
