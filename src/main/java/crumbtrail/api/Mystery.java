package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.knowledge.Cause;
import crumbtrail.lessons.Clue;
import crumbtrail.lessons.Variation.Named;
import crumbtrail.lessons.Verdict.Observation;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A mystery loaf as far as it is known. All its state is in the request, which brings it again.
 *
 * @param seed which loaf of the level
 * @param level easy, middling or hard
 * @param bread what kind of bread it was
 * @param complaint what the baker says first
 * @param told what was asked, in order, and answered
 * @param open what can still be asked
 * @param nameable the causes that may be named
 * @param end what became of it; missing as long as no cause was named
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Mystery(
    long seed,
    String level,
    String bread,
    List<String> complaint,
    List<Told> told,
    List<Clue> open,
    List<Named> nameable,
    @Nullable Ending end) {

  /**
   * An answer and what it taught.
   *
   * @param clue key of what was asked
   * @param lines the answer
   * @param before bits unknown before it
   * @param after bits unknown after it
   */
  public record Told(String clue, List<String> lines, double before, double after) {
    static Told of(Observation one) {
      return new Told(one.clue().key(), one.lines(), one.before(), one.after());
    }
  }

  /**
   * How it ended.
   *
   * @param outcome right, also at work, near, wrong or gave up
   * @param named key of the cause that was named, empty where none was
   * @param cause the cause that it was
   * @param others further causes that were at work
   * @param shareNamed how likely the named cause was by what was known, 0 to 1
   * @param shareTrue how likely the true cause was by what was known, 0 to 1
   * @param bitsAtStart bits unknown before anything was asked
   * @param asked what was asked, with the likeliest causes after each answer
   * @param better what a good diagnostician would have asked
   */
  public record Ending(
      String outcome,
      String named,
      CauseTold cause,
      List<Named> others,
      double shareNamed,
      double shareTrue,
      double bitsAtStart,
      List<Observation> asked,
      List<Observation> better) {}

  /**
   * A cause as a lesson tells it.
   *
   * @param key stable key
   * @param name plain words
   * @param what what went wrong, one sentence
   * @param mechanism cause and effect
   * @param tell how to tell it from its neighbours
   * @param change what to do next time
   */
  public record CauseTold(
      String key, String name, String what, String mechanism, String tell, String change) {
    static CauseTold of(Cause cause) {
      return new CauseTold(
          cause.key(), cause.name(), cause.what(), cause.mechanism(), cause.tell(), cause.change());
    }
  }
}
