package crumbtrail.words;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;

/** Which words of a sentence deny, and what they reach. */
final class Denial {
  private static final int REACH = 4;
  private static final int REACH_BACK = 2;
  private static final Set<String> FAILED = Set.of("to", "the", "my", "a", "its");

  private final List<Token> tokens;
  private final List<Integer> deniers = new ArrayList<>();
  private final List<Integer> withholders = new ArrayList<>();
  private final List<Integer> replacers = new ArrayList<>();
  private final BitSet softened = new BitSet();

  Denial(List<Token> tokens) {
    this.tokens = tokens;
    for (int i = 0; i < tokens.size(); i++) {
      String word = tokens.get(i).word();
      if (tokens.get(i).compound() && !word.equals("non")) {
        continue;
      }
      if (Grammar.DENIERS.contains(word) && denies(i)) {
        deniers.add(i);
      } else if (replaces(i)) {
        replacers.add(i);
      } else if (Grammar.WITHHOLDERS.contains(word) && !word(i - 1).equals("a") && withholds(i)) {
        withholders.add(i);
      } else if (word.equals("yet") && word(i + 1).equals("to")) {
        withholders.add(i);
      }
    }
  }

  private String word(int i) {
    return i >= 0 && i < tokens.size() ? tokens.get(i).word() : "";
  }

  private boolean denies(int i) {
    String word = word(i);
    String next = word(i + 1);
    if (Grammar.UNDENIED.contains(next) || word(i - 1).equals("or")) {
      return false;
    }
    if (word.equals("nothing") && (next.equals("but") || next.equals("more"))) {
      return false;
    }
    if (word.equals("free")) {
      return next.equals("of") || next.equals("from");
    }
    if (word.equals("not") && Grammar.SOFTENED.contains(next)) {
      softened.set(i);
    }
    return !Grammar.FAILING.contains(word) || FAILED.contains(next);
  }

  /** "instead of", "rather than", "in place of" deny what follows closely. */
  private boolean replaces(int i) {
    return switch (word(i)) {
      case "instead", "lieu" -> word(i + 1).equals("of");
      case "place" -> word(i - 1).equals("in") && word(i + 1).equals("of");
      case "rather" -> word(i + 1).equals("than");
      default -> false;
    };
  }

  private boolean withholds(int i) {
    return !Grammar.FAILING.contains(word(i)) || FAILED.contains(word(i + 1));
  }

  /**
   * The word that satisfies {@code not} for a phrase whose own words are given, or -1.
   *
   * @param own its own words
   */
  int satisfying(BitSet own) {
    int best = -1;
    for (List<Integer> words : List.of(deniers, withholders)) {
      for (int denier : words) {
        if (!own.get(denier)
            && !excused(denier)
            && reach(denier, own) >= 0
            && closer(denier, best, own)) {
          best = denier;
        }
      }
    }
    int last = own.length() - 1;
    for (int i = last + 1; i < tokens.size() && best < 0; i++) {
      if (Grammar.AFTER_DENIERS.contains(word(i)) && telling(last + 1, i) < REACH_BACK) {
        best = i;
      }
    }
    return best;
  }

  /** "nothing wrong with", "no problem with": nothing is missing. */
  private boolean excused(int denier) {
    return Grammar.BLAME.contains(word(denier + 1));
  }

  private boolean closer(int denier, int best, BitSet own) {
    return best < 0 || reach(denier, own) < reach(best, own);
  }

  /**
   * Whether a phrase without {@code not} is denied by a word that no phrase about other words has
   * used up.
   */
  boolean denied(Candidate candidate, List<Candidate> all) {
    for (int replacer : replacers) {
      int reach = reach(replacer, candidate.words());
      if (!candidate.words().get(replacer) && reach >= 0 && reach < REACH_BACK) {
        return true;
      }
    }
    for (int denier : deniers) {
      if (!candidate.words().get(denier)
          && all.stream().noneMatch(other -> usesUp(other, denier, candidate))
          && !softened.get(denier)
          && reach(denier, candidate.words()) >= 0) {
        return true;
      }
    }
    return false;
  }

  private static boolean usesUp(Candidate other, int denier, Candidate candidate) {
    return other.denier() == denier && !other.words().intersects(candidate.words());
  }

  /** Whether it is said to be so only a little: "not very sour". */
  boolean softened(Candidate candidate) {
    for (int i = softened.nextSetBit(0); i >= 0; i = softened.nextSetBit(i + 1)) {
      if (!candidate.words().get(i) && reach(i, candidate.words()) >= 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * How many telling words stand between a denier and the first word after it that it could deny;
   * -1 if it reaches none.
   */
  private int reach(int denier, BitSet own) {
    int target = own.nextSetBit(denier + 1);
    if (target < 0) {
      return -1;
    }
    for (int i = denier + 1; i < target; i++) {
      if (wall(i)) {
        return -1;
      }
    }
    int between = telling(denier + 1, target);
    return between <= REACH ? between : -1;
  }

  private boolean wall(int i) {
    String word = word(i);
    if (word.equals("with")) {
      return !Grammar.BLAME.contains(word(i - 1));
    }
    if (word.equals("so") || word.equals("as")) {
      return !word(i - 1).equals("not");
    }
    return Grammar.WALLS.contains(word);
  }

  private int telling(int from, int to) {
    int count = 0;
    for (int i = from; i < to; i++) {
      if (!Grammar.STOP.contains(word(i))) {
        count++;
      }
    }
    return count;
  }
}
