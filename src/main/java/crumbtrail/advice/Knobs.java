package crumbtrail.advice;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.pantry.Pantry;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All knobs, as {@code rules/knobs.yaml} lists them. Immutable. */
public final class Knobs {
  private final Map<String, Knob> knobs = new LinkedHashMap<>();

  /**
   * @param catalogue lists them
   * @param pantry what ingredients are
   */
  public Knobs(Catalogue catalogue, Pantry pantry) {
    catalogue.knowledge().knobs().forEach(kind -> knobs.put(kind.key(), new Knob(kind, pantry)));
  }

  /** In the order of the file. */
  public List<Knob> all() {
    return List.copyOf(knobs.values());
  }

  /** The knob of this key. */
  public Optional<Knob> named(String key) {
    return Optional.ofNullable(knobs.get(key));
  }
}
