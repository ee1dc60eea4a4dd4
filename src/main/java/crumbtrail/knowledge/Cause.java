package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonFormat;
import java.util.List;

/**
 * A cause of failure.
 *
 * @param key stable name, words joined by hyphens
 * @param name plain words
 * @param stage ingredients, formula, mixing, bulk, shaping, proof, baking, cooling or keeping
 * @param prior how often it happens to home bakers before anything is known
 * @param refines keys of the coarser causes of which this is a finer form or the root
 * @param aliases other keys under which published material lists the same cause
 * @param what one sentence: what went wrong
 * @param mechanism cause and effect
 * @param tell how to tell it from its neighbours
 * @param change what to do next time
 * @param sources ids of the bibliography, or "common practice"
 */
public record Cause(
    String key,
    String name,
    String stage,
    Prior prior,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> refines,
    List<String> aliases,
    String what,
    String mechanism,
    String tell,
    String change,
    List<String> sources) {

  public Cause {
    refines = refines == null ? List.of() : List.copyOf(refines);
    aliases = aliases == null ? List.of() : List.copyOf(aliases);
    sources = sources == null ? List.of() : List.copyOf(sources);
  }
}
