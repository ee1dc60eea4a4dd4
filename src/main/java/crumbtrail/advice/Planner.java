package crumbtrail.advice;

import crumbtrail.advice.Correction.Verdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Puts corrections together, cause by cause, each worked out on the sheet that the ones before it
 * left. A change that would raise another risk is taken only together with one that brings that
 * risk down again: salt that was forgotten slows the dough, so it also wants its time.
 */
final class Planner {
  /** How many corrections may follow one to make good what it moves. */
  private static final int FOLLOWERS = 3;

  private final Corrections corrections;
  private final Trial start;
  private final List<Correction> taken = new ArrayList<>();
  private final Set<String> conflicts = new LinkedHashSet<>();
  private Trial now;

  Planner(Corrections corrections, Trial start) {
    this.corrections = corrections;
    this.start = start;
    this.now = start;
  }

  /** What has been taken, in order. */
  List<Correction> taken() {
    return taken;
  }

  /** What was left out because of something taken before, in sentences. */
  List<String> conflicts() {
    return List.copyOf(conflicts);
  }

  /** The bake with all that has been taken. */
  Trial now() {
    return now;
  }

  /**
   * Mends one cause, if it can be mended without harm.
   *
   * @return every correction for it, each tried alone on the sheet as it came
   */
  List<Correction> mend(String cause) {
    List<Correction> alone = corrections.of(start, cause);
    for (Correction one : taken.isEmpty() ? alone : corrections.of(now, cause)) {
      Trial after = corrections.trial(one.altered());
      if (after.eases(now, cause) && free(one, taken)) {
        Optional<List<Correction>> chain = chain(one, after, cause);
        if (chain.isPresent()) {
          taken.addAll(chain.get());
          now = corrections.trial(last(chain.get()).altered());
          return alone;
        }
      }
    }
    return alone;
  }

  // The change, and what must follow so that no other risk is left higher than it was.
  private Optional<List<Correction>> chain(Correction first, Trial after, String cause) {
    List<Correction> chain = new ArrayList<>(List.of(first));
    Trial reached = after;
    for (int follower = 0; follower < FOLLOWERS; follower++) {
      List<String> raised = reached.raised(now, cause);
      if (raised.isEmpty()) {
        return reached.eases(now, cause) ? Optional.of(chain) : Optional.empty();
      }
      Optional<Correction> next = follower(raised, reached, chain);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      chain.add(next.get());
      reached = corrections.trial(next.get().altered());
    }
    boolean mended = reached.raised(now, cause).isEmpty() && reached.eases(now, cause);
    return mended ? Optional.of(chain) : Optional.empty();
  }

  private Optional<Correction> follower(
      List<String> raised, Trial reached, List<Correction> chain) {
    List<Correction> all = new ArrayList<>(taken);
    all.addAll(chain);
    return raised.stream()
        .flatMap(cause -> corrections.of(reached, cause).stream())
        .filter(one -> one.riskAfter() < one.riskBefore() && one.verdict() != Verdict.NOT_SEEN)
        .filter(one -> free(one, all))
        .findFirst();
  }

  // Nothing is turned twice: the second would undo the first.
  private boolean free(Correction one, List<Correction> before) {
    Set<String> turned = new HashSet<>();
    before.forEach(other -> turned.add(other.knob()));
    boolean free = one.knob().isEmpty() || !turned.contains(one.knob());
    if (!free) {
      conflicts.add(
          one.change()
              + " ("
              + one.to()
              + ") is left out, since another correction has set the same to "
              + one.from()
              + ".");
    }
    return free;
  }

  private static Correction last(List<Correction> chain) {
    return chain.get(chain.size() - 1);
  }
}
