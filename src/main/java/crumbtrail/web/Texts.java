package crumbtrail.web;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The fixed texts of the pages in the reader's language, and how numbers and names are written in
 * it. The texts are in {@code texts/pages*.properties}; a text that a language lacks is shown in
 * English. Immutable.
 */
public final class Texts {
  private static final String TEXTS = "texts";
  private static final Texts ENGLISH = new Texts(Language.ENGLISH, Map.of(), "");

  private final Language language;
  private final Wording wording;
  private final LocalNumbers numbers;
  private final Map<String, String> names;
  private final String address;

  private Texts(Language language, Map<String, String> names, String address) {
    this.language = language;
    this.names = names;
    this.address = address;
    this.wording = Wording.of(language);
    this.numbers = new LocalNumbers(language, wording::written);
  }

  /** English, for pages that no server answers. */
  public static Texts english() {
    return ENGLISH;
  }

  /**
   * A language.
   *
   * @param names what the catalogues' English names are called in it
   * @param address of the page with what it was asked, or empty where no server answers
   */
  static Texts of(Language language, Map<String, String> names, String address) {
    return new Texts(language, Map.copyOf(names), address);
  }

  /** The texts that belong to a request; the server puts them there before anything else. */
  static Texts of(Context ctx) {
    Texts known = ctx.attribute(TEXTS);
    return known == null ? ENGLISH : known;
  }

  /** Hands the texts of a request to whatever answers it. */
  void attend(Context ctx) {
    ctx.attribute(TEXTS, this);
  }

  /** The language of these texts. */
  public Language language() {
    return language;
  }

  /** A text; English where it is missing. */
  public String of(String key) {
    return wording.text(key);
  }

  /** A text with something put in: {0}, {1} …, and a choice of words by number. */
  public String of(String key, Object... values) {
    return wording.text(key, values);
  }

  /** What stands before and after the one thing that is put into a text. */
  public List<String> around(String key) {
    return List.of(of(key, "\n").split("\n", 2));
  }

  /** A text that need not be there, or else another. */
  public String orElse(String key, String other) {
    return wording.has(key) ? of(key) : other;
  }

  /**
   * The language of a passage that there is in English only; null where that goes without saying.
   */
  public String inEnglish() {
    return language.english() ? null : Language.ENGLISH.key();
  }

  /** A name out of the catalogues, of a cause, a sign, a reading … */
  public String name(String english) {
    return english == null ? "" : names.getOrDefault(english, english);
  }

  /** Names, parted as in a sentence. */
  public String names(List<String> english, String between) {
    return english.stream().map(this::name).collect(Collectors.joining(between));
  }

  /** A probability in words. */
  public String likelihood(double probability) {
    return of("likely." + ReportWords.likelihood(probability).replace(' ', '-'));
  }

  /** An amount as readers of this language write it. */
  public String number(String amount) {
    return numbers.write(amount);
  }

  /** A text that begins a line. */
  String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The same page in every language; empty where no server answers. */
  public List<Switch> switches() {
    return address.isEmpty()
        ? List.of()
        : Language.all().stream()
            .map(
                one ->
                    new Switch(
                        one.key(),
                        one.name(),
                        address
                            + (address.contains("?") ? "&" : "?")
                            + Language.NAME
                            + "="
                            + one.key(),
                        one.equals(language)))
            .toList();
  }

  /** A link to the same page in another language. */
  public record Switch(String key, String name, String address, boolean here) {}

  /** The address of a page, without the choice of a language. What was sent to it stays behind. */
  static String address(Context ctx) {
    if (!ctx.method().name().equals("GET")) {
      return "/";
    }
    // An address that begins with two slashes would lead to another server.
    String path = ctx.path().matches("/(?!/)[A-Za-z0-9._/-]*") ? ctx.path() : "/";
    String asked =
        ctx.queryParamMap().entrySet().stream()
            .filter(one -> !one.getKey().equals(Language.NAME))
            .flatMap(
                one ->
                    one.getValue().stream().map(value -> coded(one.getKey()) + "=" + coded(value)))
            .collect(Collectors.joining("&"));
    return path + (asked.isEmpty() ? "" : "?" + asked);
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
