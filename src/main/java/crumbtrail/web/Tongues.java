package crumbtrail.web;

import crumbtrail.knowledge.Catalogue;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Finds the language of every request and says in the answer which it is.
 *
 * @param catalogue knows what its English names are called in other languages; empty for none
 */
record Tongues(Optional<Supplier<Catalogue>> catalogue) {

  /** Before anything else: an error page has a language too. */
  void choose(Context ctx) {
    Language language = Language.of(ctx);
    Texts.of(language, names(language), Texts.address(ctx)).attend(ctx);
    Language.remember(ctx);
  }

  // The catalogue's own language needs no names, and does not wait for the catalogue.
  private Map<String, String> names(Language language) {
    return language.english()
        ? Map.of()
        : catalogue.map(one -> one.get().names(language.key())).orElse(Map.of());
  }
}
