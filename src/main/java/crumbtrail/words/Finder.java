package crumbtrail.words;

import crumbtrail.words.TermIndex.Place;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds all phrases in a row of words and keeps the most specific. */
final class Finder {
  private static final int GAP = 3;
  private static final int NEIGHBOURS = 3;
  // Of equals the one with more words of its own: "did not forget the salt" is about forgetting.
  private static final Comparator<Candidate> BEST =
      Comparator.comparingInt(Candidate::weight)
          .thenComparingInt(candidate -> -candidate.gap())
          .thenComparingInt(candidate -> candidate.phrase().terms().size())
          .reversed();

  private final TermIndex index;
  private final Map<Integer, List<Phrase>> byAnchor;
  private final Context context;

  /**
   * @param byAnchor phrases by the rarest of their terms, without which they cannot be there
   */
  Finder(TermIndex index, Map<Integer, List<Phrase>> byAnchor, Context context) {
    this.index = index;
    this.byAnchor = byAnchor;
    this.context = context;
  }

  /**
   * What was found.
   *
   * @param kept at most one candidate a key, in the order of the words
   * @param heard all words that any phrase made sense of
   */
  record Finds(List<Candidate> kept, BitSet heard) {}

  /**
   * @param bare whether phrases that must stand alone may be found
   */
  Finds find(List<Token> tokens, Denial denial, boolean bare) {
    Map<Integer, List<Place>> places = index.find(tokens);
    Map<String, Candidate> best = new HashMap<>();
    BitSet heard = new BitSet();
    for (Map.Entry<Integer, List<Place>> entry : places.entrySet()) {
      for (Phrase phrase : byAnchor.getOrDefault(entry.getKey(), List.of())) {
        if (phrase.alone() && !bare) {
          continue;
        }
        Candidate found = find(phrase, entry.getKey(), places, tokens, denial);
        if (found != null) {
          heard.or(found.words());
          best.merge(phrase.key(), found, (a, b) -> BEST.compare(a, b) <= 0 ? a : b);
        }
      }
    }
    return new Finds(kept(best), heard);
  }

  /** Drops what lies wholly inside the words of a more specific phrase. */
  private static List<Candidate> kept(Map<String, Candidate> best) {
    List<Candidate> ranked = new ArrayList<>(best.values());
    ranked.sort(BEST.thenComparing(c -> c.phrase().key()));
    List<Candidate> kept = new ArrayList<>();
    for (Candidate candidate : ranked) {
      if (kept.stream().noneMatch(k -> k.weight() > candidate.weight() && k.covers(candidate))) {
        kept.add(candidate);
      }
    }
    kept.sort(Comparator.comparingInt(Candidate::first).thenComparing(c -> c.phrase().key()));
    return kept;
  }

  private Candidate find(
      Phrase phrase,
      int anchor,
      Map<Integer, List<Place>> places,
      List<Token> tokens,
      Denial denial) {
    for (int term : phrase.terms()) {
      if (!places.containsKey(term)) {
        return null;
      }
    }
    int start = phrase.ordered() ? phrase.terms().get(0) : anchor;
    Candidate best = null;
    for (Place place : places.get(start)) {
      Candidate found = around(phrase, start, place, places, tokens, denial);
      if (found != null && (best == null || found.gap() < best.gap())) {
        best = found;
      }
    }
    return best;
  }

  private Candidate around(
      Phrase phrase,
      int start,
      Place place,
      Map<Integer, List<Place>> places,
      List<Token> tokens,
      Denial denial) {
    BitSet words = new BitSet();
    words.set(place.start(), place.end());
    for (int term : phrase.terms()) {
      if (term == start) {
        continue;
      }
      Place next =
          phrase.ordered()
              ? following(places.get(term), words.length())
              : nearest(places.get(term), place.start(), words);
      if (next == null) {
        return null;
      }
      words.set(next.start(), next.end());
    }
    return judged(phrase, words, tokens, denial);
  }

  private Candidate judged(Phrase phrase, BitSet words, List<Token> tokens, Denial denial) {
    int first = words.nextSetBit(0);
    int last = words.length() - 1;
    int gap = 0;
    for (int i = words.nextClearBit(first); i < last; i = words.nextClearBit(i + 1)) {
      gap += Grammar.STOP.contains(tokens.get(i).word()) ? 0 : 1;
    }
    if (gap > GAP + phrase.terms().size() || context.speaksOfOther(words, tokens)) {
      return null;
    }
    int denier = -1;
    if (phrase.denied()) {
      denier = denial.satisfying(words);
      if (denier < 0) {
        return null;
      }
      words.set(denier);
    }
    if (phrase.alone() && !context.alone(words, tokens)) {
      return null;
    }
    Candidate found = new Candidate(phrase, words, first, last, denier, gap);
    return context.praised(found, tokens) ? null : found;
  }

  private static Place following(List<Place> places, int from) {
    int at = firstFrom(places, from);
    return at < places.size() ? places.get(at) : null;
  }

  /** The place nearest to a word that uses none of the words taken already. */
  private static Place nearest(List<Place> places, int word, BitSet taken) {
    int at = firstFrom(places, word);
    Place best = null;
    int from = Math.max(0, at - NEIGHBOURS);
    int to = Math.min(places.size(), at + NEIGHBOURS);
    for (Place place : places.subList(from, to)) {
      boolean free = taken.get(place.start(), place.end()).isEmpty();
      if (free
          && (best == null || Math.abs(place.start() - word) < Math.abs(best.start() - word))) {
        best = place;
      }
    }
    return best;
  }

  private static int firstFrom(List<Place> places, int word) {
    int low = 0;
    int high = places.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (places.get(middle).start() < word) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
