package crumbtrail.web;

import crumbtrail.api.Shelf;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds the language of every request and says in the answer which it is.
 *
 * @param names what the catalogues' English names are called in a language, by its key
 */
record Tongues(Function<String, Map<String, String>> names) {

  /** With the names of a shelf, or none. */
  static Tongues of(Optional<Shelf> shelf) {
    return new Tongues(key -> shelf.map(one -> one.catalogue().names(key)).orElse(Map.of()));
  }

  /** Before anything else: an error page has a language too. */
  void choose(Context ctx) {
    Language language = Language.of(ctx);
    Texts.of(language, names.apply(language.key()), Texts.address(ctx)).attend(ctx);
    Language.remember(ctx);
  }
}
