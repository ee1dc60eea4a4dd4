package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.ActingTogether;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Prior;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The chosen set against every set there is, tried one by one. */
class CoverPropertyTest {

  @Property(tries = 600)
  void no_set_of_all_costs_less(
      @ForAll @IntRange(min = 1, max = 10) int causes,
      @ForAll @IntRange(min = 1, max = 12) int signs,
      @ForAll long seed) {
    Trial trial = Trial.of(causes, signs, new Random(seed));

    List<Finding> chosen = Cover.of(trial.ranked, trial.signs, trial.pairs);

    assertThat(trial.covers(chosen)).isTrue();
    assertThat(trial.redundant(chosen)).isFalse();
    List<Finding> cheapest = trial.cheapest();
    assertThat(trial.cost(chosen)).isCloseTo(trial.cost(cheapest), within(1e-6));
    assertThat(chosen).hasSameSizeAs(cheapest);
    assertThat(trial.sum(chosen)).isCloseTo(trial.sum(cheapest), within(1e-6));
  }

  @Property(tries = 100)
  void more_signs_than_can_be_tried_are_all_accounted_for(
      @ForAll @IntRange(min = 14, max = 30) int signs, @ForAll long seed) {
    Trial trial = Trial.of(25, signs, new Random(seed));

    assertThat(trial.covers(Cover.of(trial.ranked, trial.signs, trial.pairs))).isTrue();
  }

  /** Causes, likeliest first, each of which explains some signs; every sign has one at least. */
  private record Trial(List<Finding> ranked, Set<String> signs, List<ActingTogether> pairs) {

    static Trial of(int causes, int signs, Random random) {
      List<Finding> ranked = new ArrayList<>();
      Set<String> reached = new LinkedHashSet<>();
      for (int cause = 0; cause < causes; cause++) {
        List<String> explains = new ArrayList<>();
        for (int sign = 0; sign < signs; sign++) {
          if (random.nextInt(3) == 0) {
            explains.add("sign-" + sign);
          }
        }
        reached.addAll(explains);
        // A cause may refine one that stands before or behind it.
        List<String> refines =
            random.nextInt(4) == 0 ? List.of("cause-" + random.nextInt(causes)) : List.of();
        double decibans = random.nextInt(50) - 25 + (random.nextBoolean() ? 0 : 0.37);
        ranked.add(finding("cause-" + cause, decibans, refines, explains));
      }
      ranked.sort(Comparator.comparingDouble(Finding::decibans).reversed());
      List<ActingTogether> pairs = new ArrayList<>();
      for (int pair = 0; pair < causes / 2; pair++) {
        pairs.add(
            new ActingTogether(
                "pair",
                List.of("cause-" + random.nextInt(causes), "cause-" + random.nextInt(causes)),
                "Why.",
                "common practice"));
      }
      if (reached.isEmpty()) {
        reached.add("sign-0");
        Finding first = ranked.get(0);
        ranked.set(0, finding(first.cause().key(), first.decibans(), List.of(), List.of("sign-0")));
      }
      pairs.removeIf(pair -> pair.causes().get(0).equals(pair.causes().get(1)));
      return new Trial(ranked, reached, pairs);
    }

    Set<String> explained(Finding finding, Set<String> met) {
      Set<String> all = new HashSet<>();
      if (met.add(finding.cause().key())) {
        all.addAll(finding.explains());
        for (String coarser : finding.cause().refines()) {
          ranked.stream()
              .filter(one -> one.cause().key().equals(coarser))
              .forEach(one -> all.addAll(explained(one, met)));
        }
      }
      return all;
    }

    boolean covers(List<Finding> set) {
      Set<String> all = new HashSet<>();
      set.forEach(one -> all.addAll(explained(one, new HashSet<>())));
      return all.containsAll(signs);
    }

    boolean redundant(List<Finding> set) {
      return set.stream()
          .anyMatch(one -> covers(set.stream().filter(other -> !other.equals(one)).toList()));
    }

    double cost(List<Finding> set) {
      double cost = 0;
      for (Finding one : set) {
        boolean partner =
            set.stream()
                .filter(other -> !other.equals(one))
                .anyMatch(
                    other ->
                        pairs.stream()
                            .anyMatch(
                                pair ->
                                    pair.causes().contains(one.cause().key())
                                        && pair.causes().contains(other.cause().key())));
        cost += Math.max(6, 12 - one.decibans()) - (partner ? 1.5 : 0);
      }
      return cost;
    }

    double sum(List<Finding> set) {
      return set.stream().mapToDouble(Finding::decibans).sum();
    }

    List<Finding> cheapest() {
      List<Finding> best = null;
      for (int subset = 1; subset < 1 << ranked.size(); subset++) {
        List<Finding> set = new ArrayList<>();
        for (int cause = 0; cause < ranked.size(); cause++) {
          if ((subset >> cause & 1) == 1) {
            set.add(ranked.get(cause));
          }
        }
        if (covers(set) && !redundant(set) && (best == null || better(set, best))) {
          best = set;
        }
      }
      return best;
    }

    private boolean better(List<Finding> one, List<Finding> other) {
      double difference = cost(one) - cost(other);
      if (Math.abs(difference) > 1e-7) {
        return difference < 0;
      }
      return one.size() == other.size() ? sum(one) > sum(other) : one.size() < other.size();
    }

    private static Finding finding(
        String key, double decibans, List<String> refines, List<String> explains) {
      Cause cause =
          new Cause(
              key, key, "proof", Prior.COMMON, refines, List.of(), "", "", "", "", List.of("x"));
      return new Finding(cause, decibans, List.of(), explains);
    }
  }
}
