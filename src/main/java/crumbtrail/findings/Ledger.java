package crumbtrail.findings;

import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What was found on each cause the last time, so that only causes of which the rules now say
 * something else need be looked at again. What the rules say is the same only if it is the very
 * same list, as {@link crumbtrail.rules.RuleRun} hands it out.
 *
 * <p>Used by one thread.
 */
final class Ledger {
  private static final List<Evidence> NOTHING = List.of();

  private final Map<String, Entry> entries = new HashMap<>();
  private final Map<String, Weighed> weighed = new HashMap<>();
  private final Map<String, List<String>> keys = new HashMap<>();
  private Set<String> tags = Set.of();
  private double[] priors = {};

  /** What rules said of a cause when they were last asked, and the same at its weight. */
  private record Weighed(List<Evidence> said, List<Evidence> weighed) {}

  private record Entry(double prior, List<List<Evidence>> said, Finding finding) {
    boolean stands(double otherPrior, Map<String, List<Evidence>> heard, List<String> keys) {
      if (prior != otherPrior) {
        return false;
      }
      for (int one = 0; one < keys.size(); one++) {
        if (!same(said.get(one), heard.getOrDefault(keys.get(one), NOTHING))) {
          return false;
        }
      }
      return true;
    }
  }

  @SuppressWarnings("ReferenceEquality") // a look into both lists would cost what is to be saved
  private static boolean same(List<Evidence> one, List<Evidence> other) {
    return one == other;
  }

  /**
   * What is found on a cause.
   *
   * @param prior its log-odds before anything is known, decibans
   * @param heard what rules say, by cause
   * @param coarser finds the causes that it refines, near or far
   * @param weigh gives a word its calibrated weight
   * @param find finds it out from what rules say of it and of each cause that it refines, weighed
   */
  Finding finding(
      Cause cause,
      double prior,
      Map<String, List<Evidence>> heard,
      Function<Cause, Collection<String>> coarser,
      UnaryOperator<Evidence> weigh,
      Function<List<List<Evidence>>, Finding> find) {
    List<String> keys = keys(cause, coarser);
    Entry entry = entries.get(cause.key());
    if (entry == null || !entry.stands(prior, heard, keys)) {
      List<List<Evidence>> said = new ArrayList<>(keys.size());
      List<List<Evidence>> weights = new ArrayList<>(keys.size());
      for (String key : keys) {
        List<Evidence> words = heard.getOrDefault(key, NOTHING);
        said.add(words);
        weights.add(weighed(key, words, weigh));
      }
      entry = new Entry(prior, said, find.apply(weights));
      entries.put(cause.key(), entry);
    }
    return entry.finding();
  }

  /**
   * The log-odds of all causes before anything is known, decibans, in the order of the catalogue.
   *
   * @param of tags of the bread's style; seldom others than the last time
   * @param find finds them out
   */
  double[] priors(Collection<String> of, Supplier<double[]> find) {
    Set<String> wanted = Set.copyOf(of);
    if (priors.length == 0 || !tags.equals(wanted)) {
      tags = wanted;
      priors = find.get();
    }
    return priors;
  }

  private List<Evidence> weighed(String key, List<Evidence> said, UnaryOperator<Evidence> weigh) {
    Weighed known = weighed.get(key);
    if (known == null || !same(known.said(), said)) {
      known = new Weighed(said, weighed(said, known, weigh));
      weighed.put(key, known);
    }
    return known.weighed();
  }

  // What rules say comes in a fixed order, so that words said before are met again in one walk.
  @SuppressWarnings("ReferenceEquality") // a word that was said before is the very same one
  private static List<Evidence> weighed(
      List<Evidence> said, Weighed before, UnaryOperator<Evidence> weigh) {
    List<Evidence> words = new ArrayList<>(said.size());
    int at = 0;
    for (Evidence word : said) {
      int there = at;
      while (before != null && there < before.said().size() && before.said().get(there) != word) {
        there++;
      }
      if (before != null && there < before.said().size()) {
        words.add(before.weighed().get(there));
        at = there + 1;
      } else {
        words.add(weigh.apply(word));
      }
    }
    return words;
  }

  // Of the cause itself, then of those that it refines.
  private List<String> keys(Cause cause, Function<Cause, Collection<String>> coarser) {
    List<String> known = keys.get(cause.key());
    if (known == null) {
      known = new ArrayList<>(List.of(cause.key()));
      known.addAll(coarser.apply(cause));
      keys.put(cause.key(), known);
    }
    return known;
  }
}
