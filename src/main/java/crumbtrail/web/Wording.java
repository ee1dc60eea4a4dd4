package crumbtrail.web;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The texts of one language, each taken apart once: a page asks for some hundred. A text that the
 * language lacks is the English one. Safe for use by many threads.
 */
final class Wording {
  private static final String BUNDLE = "crumbtrail.texts.pages";
  private static final Object[] NOTHING = {};
  private static final Map<Language, Wording> ALL = new ConcurrentHashMap<>();

  private final Locale locale;
  private final ResourceBundle bundle;
  private final Map<String, MessageFormat> formats = new ConcurrentHashMap<>();
  private final Map<String, String> plain = new ConcurrentHashMap<>();

  private Wording(Language language) {
    this.locale = language.locale();
    // Without a fallback to the language of the machine, which nobody asked for.
    this.bundle =
        ResourceBundle.getBundle(
            BUNDLE, locale, Control.getNoFallbackControl(Control.FORMAT_PROPERTIES));
  }

  /** The texts of a language. */
  static Wording of(Language language) {
    return ALL.computeIfAbsent(language, Wording::new);
  }

  /** Whether there is a text. */
  boolean has(String key) {
    return bundle.containsKey(key);
  }

  /** A text as it stands in the file, doubled quotation marks and all. */
  String written(String key) {
    return bundle.getString(key);
  }

  /** A text with nothing put in. */
  String text(String key) {
    return plain.computeIfAbsent(key, one -> format(one).format(NOTHING));
  }

  /** A text with something put in. */
  String text(String key, Object... values) {
    // A format is not for many threads at once; a copy costs less than to take the text apart.
    return ((MessageFormat) formats.computeIfAbsent(key, this::format).clone()).format(values);
  }

  private MessageFormat format(String key) {
    return new MessageFormat(bundle.getString(key), locale);
  }
}
