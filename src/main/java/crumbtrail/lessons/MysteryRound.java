package crumbtrail.lessons;

import java.util.ArrayList;
import java.util.List;

/**
 * How far a learner has come with a mystery loaf. Immutable: every question makes a new round.
 *
 * @param loaf the loaf
 * @param asked keys of the clues that were asked, in order, each once
 */
public record MysteryRound(MysteryLoaf loaf, List<String> asked) {
  public MysteryRound {
    asked = List.copyOf(asked);
  }

  /** Nothing asked yet. */
  public static MysteryRound of(MysteryLoaf loaf) {
    return new MysteryRound(loaf, List.of());
  }

  /** One clue more; the same round if there is no such clue or it was asked before. */
  public MysteryRound ask(String clue) {
    if (asked.contains(clue) || loaf.clues().stream().noneMatch(one -> one.key().equals(clue))) {
      return this;
    }
    List<String> more = new ArrayList<>(asked);
    more.add(clue);
    return new MysteryRound(loaf, more);
  }

  /** What can still be asked. */
  public List<Clue> open() {
    return loaf.clues().stream().filter(one -> !asked.contains(one.key())).toList();
  }
}
