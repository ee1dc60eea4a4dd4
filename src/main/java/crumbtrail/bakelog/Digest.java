package crumbtrail.bakelog;

import crumbtrail.trends.Named;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The numbers of a report that many bakes are looked through for, without its words.
 *
 * @param readings value by name of reading, in the order of the report; units are the catalogue's
 * @param ranking likeliest first, the first few causes
 */
public record Digest(Map<String, Double> readings, List<Named> ranking) {

  /** Of a bake that was never traced. */
  public static final Digest NONE = new Digest(Map.of(), List.of());

  public Digest {
    readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
    ranking = List.copyOf(ranking);
  }

  /** Key of the likeliest cause. */
  public Optional<String> firstCause() {
    return ranking.stream().map(Named::cause).findFirst();
  }
}
