package crumbtrail.workup;

import crumbtrail.formula.Formula;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Style;
import crumbtrail.words.Match;
import crumbtrail.words.PhraseBook;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the style of bread that a baker means. Immutable; safe for use by many threads. */
public final class StyleFinder {
  /** The style of which nothing is known but that yeast raises it. */
  public static final String ANY_BREAD = "any-bread";

  private static final String SOURDOUGH = "sourdough-loaf";

  private final Catalogue catalogue;
  private final PhraseBook names;

  /**
   * @param catalogue must hold the style {@value #ANY_BREAD}
   */
  public StyleFinder(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.names =
        PhraseBook.of(
            catalogue.knowledge().styles().stream()
                .collect(Collectors.toMap(Style::key, Style::phrases)),
            catalogue.knowledge().words());
  }

  /** The style that these words name: by key, by name, or by the longest phrase in them. */
  public Optional<Style> named(String words) {
    String key = words.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    Optional<Style> exact = catalogue.style(key);
    if (exact.isPresent() || words.isBlank()) {
      return exact;
    }
    return names.match(words).stream()
        .filter(match -> !match.negated())
        .max(Comparator.comparingInt(Match::terms))
        .flatMap(match -> catalogue.style(match.key()));
  }

  /**
   * The style that a formula alone suggests: a sourdough loaf if starter raises it, else any yeast
   * bread.
   */
  public Style guessed(Formula formula) {
    boolean starter = formula.reading("starter").filter(level -> level.value() > 0).isPresent();
    boolean yeast = formula.reading("yeast").filter(level -> level.value() > 0.02).isPresent();
    return style(starter && !yeast ? SOURDOUGH : ANY_BREAD);
  }

  private Style style(String key) {
    return catalogue
        .style(key)
        .orElseThrow(() -> new IllegalStateException("rules/styles must hold " + key));
  }
}
