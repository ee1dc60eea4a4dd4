package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * A cause of failure.
 *
 * @param key stable name, words joined by hyphens
 * @param name plain words
 * @param stage ingredients, formula, mixing, bulk, shaping, proof, baking, cooling or keeping
 * @param prior how often it happens to home bakers before anything is known
 * @param priorIn how often it happens in breads of a tag, where that differs
 * @param refines keys of the coarser causes of which this is a finer form or the root
 * @param aliases other keys under which published material lists the same cause
 * @param what one sentence: what went wrong
 * @param mechanism cause and effect
 * @param tell how to tell it from its neighbours
 * @param change what to do next time
 * @param noReading why no number that a sheet can hold speaks for it; null where one does
 * @param noBake why it is not to be tried in a small bake, or cannot be, and what to do instead;
 *     null where a small bake shows it
 * @param sources ids of the bibliography, or "common practice"
 */
public record Cause(
    String key,
    String name,
    String stage,
    Prior prior,
    @JsonProperty("prior in") Map<String, Prior> priorIn,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> refines,
    List<String> aliases,
    String what,
    String mechanism,
    String tell,
    String change,
    @JsonProperty("no reading") String noReading,
    @JsonProperty("no bake") String noBake,
    List<String> sources) {

  public Cause {
    priorIn = priorIn == null ? Map.of() : Map.copyOf(priorIn);
    refines = refines == null ? List.of() : List.copyOf(refines);
    aliases = aliases == null ? List.of() : List.copyOf(aliases);
    sources = sources == null ? List.of() : List.copyOf(sources);
  }

  /** A cause that is as common in one bread as in another, with a number to speak for it. */
  public Cause(
      String key,
      String name,
      String stage,
      Prior prior,
      List<String> refines,
      List<String> aliases,
      String what,
      String mechanism,
      String tell,
      String change,
      List<String> sources) {
    this(
        key, name, stage, prior, Map.of(), refines, aliases, what, mechanism, tell, change, null,
        null, sources);
  }

  /**
   * How often it happens in a bread.
   *
   * @param tags tags of the bread's style; of several that say something the commonest counts
   */
  public Prior prior(Collection<String> tags) {
    return tags.stream()
        .filter(priorIn::containsKey)
        .map(priorIn::get)
        .max(Comparator.comparingDouble(Prior::decibans))
        .orElse(prior);
  }
}
