package crumbtrail.findings;

import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What was found on each cause lately, so that only causes of which the rules now say something
 * else need be looked at again. What the rules say is the same only if it is the very same list, as
 * {@link crumbtrail.rules.RuleRun} hands it out.
 *
 * <p>Used by one thread.
 */
final class Ledger {
  /** One what-if after another goes out from the same bake and comes back to it. */
  private static final int KEPT = 3;

  private static final double[] NEVER = {};
  private static final List<Evidence> NOTHING = List.of();

  private final UnaryOperator<Evidence> weigh;
  private final Find find;
  private final List<Page> pages = new ArrayList<>();
  private final Map<String, Words> words = new HashMap<>();
  private Set<String> tags = Set.of();
  private double[] priors = {};
  private double[] foundFor = NEVER;
  private Finding[] found = {};

  /**
   * What is kept of one cause.
   *
   * @param words what is said of the cause itself, then of those that it refines
   * @param entries what was found last comes first
   */
  private record Page(List<Words> words, Deque<Entry> entries) {}

  /**
   * What is said of one cause now, what was said lately at its weight, the last first, and on which
   * pages it counts.
   */
  private static final class Words {
    private final String cause;
    private final List<Integer> pages = new ArrayList<>();
    private final Deque<Weighed> weighed = new ArrayDeque<>(KEPT);
    private List<Evidence> now = NOTHING;

    Words(String cause) {
      this.cause = cause;
    }
  }

  /** What rules said of a cause, and the same at its weight. */
  private record Weighed(List<Evidence> said, List<Evidence> weighed) {}

  /** Finds out what is to be found on a cause. */
  @FunctionalInterface
  interface Find {
    /**
     * What is found.
     *
     * @param cause its place among all causes
     * @param prior its log-odds before anything is known, decibans
     * @param weighed what rules say of it and of each cause that it refines
     */
    Finding on(int cause, double prior, List<List<Evidence>> weighed);
  }

  private record Entry(double prior, List<List<Evidence>> said, Finding finding) {
    boolean stands(double otherPrior, List<Words> words) {
      if (prior != otherPrior) {
        return false;
      }
      for (int one = 0; one < said.size(); one++) {
        if (!same(said.get(one), words.get(one).now)) {
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
   * An empty one.
   *
   * @param causes on which something is to be found
   * @param coarser finds the causes that a cause refines, near or far
   * @param weigh gives a word its calibrated weight
   * @param find finds it out
   */
  Ledger(
      List<Cause> causes,
      Function<Cause, Collection<String>> coarser,
      UnaryOperator<Evidence> weigh,
      Find find) {
    this.weigh = weigh;
    this.find = find;
    causes.forEach(cause -> pages.add(page(cause, coarser.apply(cause))));
    for (int place = 0; place < pages.size(); place++) {
      for (Words one : pages.get(place).words()) {
        one.pages.add(place);
      }
    }
  }

  private Page page(Cause cause, Collection<String> coarser) {
    List<Words> all = new ArrayList<>();
    all.add(words.computeIfAbsent(cause.key(), Words::new));
    coarser.forEach(key -> all.add(words.computeIfAbsent(key, Words::new)));
    return new Page(all, new ArrayDeque<>(KEPT));
  }

  /**
   * What is found on all causes.
   *
   * @param priors log-odds of each before anything is known, decibans
   * @param heard what rules say, by cause
   */
  Finding[] findings(double[] priors, Map<String, List<Evidence>> heard) {
    BitSet touched = new BitSet(pages.size());
    for (Words one : words.values()) {
      List<Evidence> now = heard.getOrDefault(one.cause, NOTHING);
      if (!same(now, one.now)) {
        one.now = now;
        one.pages.forEach(touched::set);
      }
    }
    if (!Arrays.equals(priors, foundFor)) {
      touched.set(0, pages.size());
    }
    // Should this break off, all is looked at the next time.
    foundFor = NEVER;
    found = again(priors, found, touched);
    foundFor = priors.clone();
    return found.clone();
  }

  /**
   * What is found where rules say something else of a few causes than they said last.
   *
   * @param last what was found last
   * @param changes what rules say of these causes, for this once
   */
  Finding[] findings(double[] priors, Finding[] last, Map<String, List<Evidence>> changes) {
    List<Words> changed = new ArrayList<>(changes.size());
    List<List<Evidence>> before = new ArrayList<>(changes.size());
    BitSet touched = new BitSet(last.length);
    changes.forEach(
        (cause, said) -> {
          Words one = words.get(cause);
          if (one != null) {
            changed.add(one);
            before.add(one.now);
            one.now = said;
            one.pages.forEach(touched::set);
          }
        });
    try {
      return again(priors, last, touched);
    } finally {
      for (int one = 0; one < changed.size(); one++) {
        changed.get(one).now = before.get(one);
      }
    }
  }

  private Finding[] again(double[] priors, Finding[] last, BitSet touched) {
    Finding[] findings = Arrays.copyOf(last, pages.size());
    for (int cause = touched.nextSetBit(0); cause >= 0; cause = touched.nextSetBit(cause + 1)) {
      findings[cause] = finding(cause, priors[cause]);
    }
    return findings;
  }

  private Finding finding(int cause, double prior) {
    Page page = pages.get(cause);
    for (Entry entry : page.entries()) {
      if (entry.stands(prior, page.words())) {
        first(page.entries(), entry);
        return entry.finding();
      }
    }
    List<List<Evidence>> said = new ArrayList<>(page.words().size());
    List<List<Evidence>> weights = new ArrayList<>(page.words().size());
    for (Words one : page.words()) {
      said.add(one.now);
      weights.add(weighed(one));
    }
    Entry entry = new Entry(prior, said, find.on(cause, prior, weights));
    keep(page.entries(), entry);
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

  private List<Evidence> weighed(Words words) {
    for (Weighed known : words.weighed) {
      if (same(known.said(), words.now)) {
        first(words.weighed, known);
        return known.weighed();
      }
    }
    Weighed fresh = new Weighed(words.now, weighed(words.now, words.weighed.peekFirst()));
    keep(words.weighed, fresh);
    return fresh.weighed();
  }

  // What rules say comes in a fixed order, so that words said before are met again in one walk.
  @SuppressWarnings("ReferenceEquality") // a word that was said before is the very same one
  private List<Evidence> weighed(List<Evidence> said, @Nullable Weighed before) {
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

  @SuppressWarnings("ReferenceEquality") // the very same one, which was found in there
  private static <T> void first(Deque<T> kept, T met) {
    if (kept.peekFirst() != met) {
      kept.removeIf(one -> one == met);
      kept.addFirst(met);
    }
  }

  private static <T> void keep(Deque<T> kept, T fresh) {
    if (kept.size() >= KEPT) {
      kept.removeLast();
    }
    kept.addFirst(fresh);
  }
}
