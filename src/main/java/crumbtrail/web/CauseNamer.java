package crumbtrail.web;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Causes by their names in the reader's language.
 *
 * @param catalogue empty where the server knows none; then a cause is called by its key
 */
public record CauseNamer(Optional<Supplier<Catalogue>> catalogue) {

  /** A cause and its name. */
  public record Named(String key, String name) {}

  /** The name of a cause. */
  String name(String key, Texts t) {
    return catalogue
        .flatMap(all -> all.get().cause(key))
        .map(one -> t.name(one.name()))
        .orElse(key);
  }

  /** Whether there is such a cause. */
  boolean known(String key) {
    return catalogue.flatMap(all -> all.get().cause(key)).isPresent();
  }

  /** All causes, in the order of their names. */
  List<Named> all(Texts t) {
    return catalogue.stream()
        .flatMap(one -> one.get().knowledge().causes().stream())
        .map((Cause cause) -> new Named(cause.key(), t.name(cause.name())))
        .sorted(Comparator.comparing(named -> named.name().toLowerCase(Locale.ROOT)))
        .toList();
  }
}
