package crumbtrail.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;

/**
 * A language in which the pages can be read. Which there are is told by {@code
 * texts/languages.properties}, so that another one takes text files alone.
 *
 * @param key the word for it in addresses and in the cookie: "de"
 * @param name its own name for itself: "Deutsch"
 */
public record Language(String key, String name) {

  /** Name of the cookie and of the query parameter. */
  static final String NAME = "lang";

  /** The language in which the texts are written first and to which all others fall back. */
  public static final Language ENGLISH = new Language("en", "English");

  private static final int A_YEAR = 365 * 24 * 3600;
  private static final List<Language> ALL = read();

  /** Every language of the pages, English first. */
  public static List<Language> all() {
    return ALL;
  }

  /** Whether it is the one that everything else is written in. */
  public boolean english() {
    return equals(ENGLISH);
  }

  /** How numbers are written in it. */
  Locale locale() {
    return Locale.forLanguageTag(key);
  }

  /** The language of this key; empty if there is none. */
  static Optional<Language> of(String key) {
    return ALL.stream().filter(one -> one.key.equals(key)).findFirst();
  }

  /**
   * What this request asks for, or what was chosen before, or the first that the browser prefers;
   * English where none of them is spoken here.
   */
  static Language of(Context ctx) {
    return of(ctx.queryParam(NAME))
        .or(() -> of(ctx.cookie(NAME)))
        .or(() -> preferred(ctx.header("Accept-Language")))
        .orElse(ENGLISH);
  }

  /** Remembers a choice that comes with the address. */
  static void remember(Context ctx) {
    of(ctx.queryParam(NAME))
        .ifPresent(
            chosen ->
                ctx.cookie(
                    new Cookie(NAME, chosen.key, "/", A_YEAR, false, true, "", SameSite.LAX)));
  }

  /** The first language of a header "de-CH, en;q=0.5" that is spoken here. */
  static Optional<Language> preferred(String header) {
    if (header == null || header.isBlank()) {
      return Optional.empty();
    }
    try {
      Locale found =
          Locale.lookup(
              Locale.LanguageRange.parse(header), ALL.stream().map(Language::locale).toList());
      return found == null ? Optional.empty() : of(found.toLanguageTag());
    } catch (IllegalArgumentException malformed) {
      return Optional.empty();
    }
  }

  private static List<Language> read() {
    Properties file = new Properties();
    try (InputStream in =
        Language.class.getResourceAsStream("/crumbtrail/texts/languages.properties")) {
      file.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
    List<Language> all = new ArrayList<>();
    file.stringPropertyNames().forEach(key -> all.add(new Language(key, file.getProperty(key))));
    all.sort(
        Comparator.comparing((Language one) -> !one.equals(ENGLISH)).thenComparing(Language::key));
    return List.copyOf(all);
  }
}
