package crumbtrail.accuracy;

import crumbtrail.accuracy.LinkFit.Chance;
import crumbtrail.accuracy.LinkFit.Observation;
import crumbtrail.accuracy.Reliability.Claim;
import crumbtrail.findings.Finding;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Calibration;
import java.util.ArrayList;
import java.util.List;

/**
 * Chooses the few numbers that make weights of words and probabilities of sums. The shares are
 * tried on a grid, judged by what they give to tables that they never saw and to real failures; the
 * link is fitted to the bakes.
 */
final class Calibrator {
  private static final double[] PRIOR_SHARES = {0.5, 0.75, 1};
  private static final double[] TABLES_SHARES = {0, 0.2, 0.4, 0.6};
  private static final double[] SMOOTHINGS = {1, 2, 4};

  private static final double[] UNNAMED = {-14, -12, -10, -8, -6, -4, -2, 0};

  /** The share of the odds below which a right answer counts as no answer at all. */
  private static final double LEAST_SHARE = 1e-3;

  private final Judge judge;
  private final List<Bake> bakes;
  private final TableScore tables;

  Calibrator(Judge judge, List<Bake> bakes, TableScore tables) {
    this.judge = judge;
    this.bakes = bakes;
    this.tables = tables;
  }

  /**
   * One point of the grid.
   *
   * @param calibration its shares; the link is not fitted yet
   * @param unseen mean log of the share of odds that causes of left-out tables get, in bits
   * @param seen the same for causes given all their published signs, no table left out
   * @param real the same for real failures
   * @param own the same for our own cases
   */
  record Trial(Calibration calibration, double unseen, double seen, double real, double own) {
    /**
     * What is held against other points. Our own cases were written by those who wrote the rules,
     * so they do not choose; tables that set the weights they are asked about count a quarter.
     */
    double worth() {
      return unseen + seen / 4 + real;
    }
  }

  /** Every point of the grid. */
  List<Trial> trials() {
    List<Trial> trials = new ArrayList<>();
    for (double prior : PRIOR_SHARES) {
      for (double share : TABLES_SHARES) {
        for (double smoothing : SMOOTHINGS) {
          if (share > 0 || smoothing == SMOOTHINGS[0]) {
            trials.add(trial(new Calibration(prior, share, smoothing, -10, 0, Math.log(10), 0, 0)));
          }
        }
      }
    }
    return trials;
  }

  Trial trial(Calibration calibration) {
    Weights weights = Weights.of(judge.catalogue()).with(calibration);
    Ranking ranking = new Ranking(judge.catalogue(), weights);
    return new Trial(
        calibration,
        bits(tables.causesUnseen(weights)),
        bits(tables.causes(weights)),
        bits(ranking, true),
        bits(ranking, false));
  }

  private static double bits(List<TableScore.Question> questions) {
    return questions.stream().mapToDouble(question -> bits(question.odds())).average().orElse(0);
  }

  private double bits(Ranking ranking, boolean real) {
    return bakes.stream()
        .filter(bake -> bake.real() == real && !bake.healthy())
        .mapToDouble(
            bake -> {
              List<Finding> ranked = bake.judged().ranked(ranking).ranked();
              double all = ranked.stream().mapToDouble(TableScore::odds).sum();
              double right =
                  ranked.stream()
                      .filter(finding -> bake.causes().contains(finding.cause().key()))
                      .mapToDouble(TableScore::odds)
                      .sum();
              return bits(all == 0 ? 0 : right / all);
            })
        .average()
        .orElse(0);
  }

  private static double bits(double share) {
    return Math.log(Math.max(LEAST_SHARE, share)) / Math.log(2);
  }

  /**
   * The calibration with its link fitted to all bakes; the odds of the unnamed are those under
   * which bakes that the link did not see are told best.
   */
  Calibration linked(Calibration shares) {
    return linked(shares, Chance.FAILED).withAhead(linked(shares, Chance.AHEAD));
  }

  private Calibration linked(Calibration shares, Chance chance) {
    Calibration best = shares;
    double least = Double.POSITIVE_INFINITY;
    for (double unnamed : UNNAMED) {
      Calibration tried = shares.withLink(unnamed, 0, 0, 0, 0);
      double loss = loss(tried, chance);
      if (loss < least) {
        least = loss;
        best = tried;
      }
    }
    return LinkFit.fit(best, weighed(observations(best, chance), chance), chance);
  }

  /** Mean over the bakes of what each would have been told falsely, natural log. */
  private double loss(Calibration calibration, Chance chance) {
    return crossValidated(calibration, chance).stream()
        .mapToDouble(claims -> claims.stream().mapToDouble(Claim::logLoss).sum())
        .average()
        .orElse(0);
  }

  /**
   * What each bake would have been told by a link that never saw it: for each bake its claims,
   * likeliest cause first.
   */
  List<List<Claim>> crossValidated(Calibration shares, Chance chance) {
    List<Listed> all = observations(shares, chance);
    List<List<Claim>> claims = new ArrayList<>();
    for (int left = 0; left < all.size(); left++) {
      List<Listed> others = new ArrayList<>(all);
      List<Observation> here = others.remove(left).causes();
      Calibration fitted = LinkFit.fit(shares, weighed(others, chance), chance);
      claims.add(
          here.stream()
              .map(one -> new Claim(one.standing().probability(fitted), one.right()))
              .toList());
    }
    return claims;
  }

  // Sound bakes are rarer among those that were written down than among those that are asked about,
  // so each counts twice; of bakes that are still to come, as many go well as go wrong (our
  // choice).
  private static List<List<Observation>> weighed(List<Listed> all, Chance chance) {
    List<Listed> sound = all.stream().filter(Listed::sound).toList();
    int times =
        chance == Chance.FAILED
            ? 2
            : Math.max(1, (all.size() - sound.size()) / Math.max(1, sound.size()));
    List<Listed> weighed = new ArrayList<>(all);
    for (int time = 1; time < times; time++) {
      weighed.addAll(sound);
    }
    return weighed.stream().map(Listed::causes).toList();
  }

  /** What a bake lists, and whether it was a sound one. */
  private record Listed(boolean sound, List<Observation> causes) {}

  private List<Listed> observations(Calibration shares, Chance chance) {
    Ranking ranking = new Ranking(judge.catalogue(), Weights.of(judge.catalogue()).with(shares));
    return bakes.stream()
        .map(
            bake ->
                new Listed(
                    bake.healthy(), LinkFit.observations(bake, ranking, shares.unnamed(), chance)))
        .toList();
  }
}
