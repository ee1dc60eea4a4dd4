package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TextsTest {
  private static final Path FOLDER = Path.of("src/main/resources/crumbtrail/texts");
  private static final Path TEMPLATES = Path.of("src/main/jte");
  private static final Path PAGES = Path.of("src/main/java/crumbtrail/web");

  /** Beginnings of keys that the program puts together. */
  private static final List<String> MADE =
      List.of(
          "field.",
          "stage.",
          "pick-",
          "error.",
          "wish.",
          "unit.",
          "lies.",
          "kind.",
          "likely.",
          "weight.",
          "vary.bake.",
          "mystery.level.",
          "mystery.outcome.",
          "time.",
          "keep.",
          "log.outcome.",
          "log.done.",
          "people.role.");

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)");

  static List<String> others() {
    return Language.all().stream().filter(one -> !one.english()).map(Language::key).toList();
  }

  @Test
  void english_comes_first_and_german_is_there() {
    assertThat(Language.all()).extracting(Language::key).startsWith("en").contains("de");
  }

  @ParameterizedTest
  @MethodSource("others")
  void every_language_has_the_same_texts(String key) throws IOException {
    assertThat(file(key).stringPropertyNames())
        .containsExactlyInAnyOrderElementsOf(file("").stringPropertyNames());
  }

  @ParameterizedTest
  @MethodSource("others")
  void every_language_puts_in_the_same_things(String key) throws IOException {
    Properties english = file("");
    Properties other = file(key);
    List<String> unlike = new ArrayList<>();
    for (String name : english.stringPropertyNames()) {
      if (!places(english.getProperty(name)).equals(places(other.getProperty(name, "")))) {
        unlike.add(name);
      }
    }
    assertThat(unlike).isEmpty();
  }

  @Test
  void every_text_can_be_written() throws IOException {
    for (String key : Stream.concat(Stream.of(""), others().stream()).toList()) {
      Properties file = file(key);
      for (String name : file.stringPropertyNames()) {
        String text = file.getProperty(name);
        assertThat(text).as(name).doesNotContain("'");
        assertThat(new MessageFormat(text).format(new Object[] {2, "b", "c", "d"}))
            .as("%s %s", key, name)
            .doesNotContain("{");
      }
    }
  }

  @Test
  void no_text_is_idle() throws IOException {
    String program = all(TEMPLATES, ".jte") + all(PAGES, ".java");
    List<String> idle =
        file("").stringPropertyNames().stream()
            .filter(name -> MADE.stream().noneMatch(name::startsWith))
            .filter(name -> !program.contains("\"" + name + "\""))
            .sorted()
            .toList();
    assertThat(idle).isEmpty();
  }

  @Test
  void no_text_is_asked_for_that_is_not_there() throws IOException {
    Set<String> known = file("").stringPropertyNames();
    Matcher asked =
        Pattern.compile("(?<![A-Za-z])t\\.of\\(\\s*\"([a-z.-]+[a-z])\"\\s*[,)]")
            .matcher(all(TEMPLATES, ".jte") + all(PAGES, ".java"));
    Set<String> missing = new TreeSet<>();
    while (asked.find()) {
      if (!known.contains(asked.group(1))) {
        missing.add(asked.group(1));
      }
    }
    assertThat(missing).isEmpty();
  }

  // The description of the interface for programs is in English by choice, and says so to readers.
  @Test
  void templates_hold_no_words_of_their_own() throws IOException {
    List<String> words = new ArrayList<>();
    for (Path file : files(TEMPLATES, ".jte")) {
      if (!file.endsWith("apidocs.jte")) {
        Matcher letters = Pattern.compile("\\p{L}{2,}").matcher(bare(Files.readString(file)));
        while (letters.find()) {
          words.add(file.getFileName() + ": " + letters.group());
        }
      }
    }
    assertThat(words).containsOnly("page.jte: Crumbtrail");
  }

  @Test
  void numbers_of_things_choose_their_words() {
    Texts german = Texts.of(Language.of("de").orElseThrow(), java.util.Map.of(), "");
    assertThat(german.of("report.further", 1)).isEqualTo("Eine weitere Ursache");
    assertThat(german.of("report.further", 3)).isEqualTo("3 weitere Ursachen");
    assertThat(Texts.english().of("report.further", 3)).isEqualTo("3 further causes");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12.5 %|12,5\u202f%",
        "1.2 % (1.1–1.3)|1,2\u202f% (1,1–1,3)",
        "500 g|500\u202fg",
        "-5 °C|−5\u202f°C",
        "2 h 30 min|2\u202fh 30\u202fmin",
        "75 min to 2 h|75\u202fmin bis 2\u202fh",
        "1½ cups|1½ Tassen",
        "2 lb 3 oz|2\u202flb 3\u202foz",
        "12500 g|12\u202f500\u202fg",
        "over 99 %|über 99\u202f%",
        "under 1 %|unter 1\u202f%",
        "4.1 cm³/g|4,1\u202fcm³/g"
      })
  void numbers_are_written_as_germans_do(String english, String german) {
    assertThat(Texts.of(Language.of("de").orElseThrow(), java.util.Map.of(), "").number(english))
        .isEqualTo(german);
    assertThat(Texts.english().number(english)).isEqualTo(english);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de|de",
        "de-CH,en;q=0.5|de",
        "fr,de;q=0.8,en;q=0.5|de",
        "en-GB,de;q=0.9|en",
        "fr|none",
        "*|none",
        ";;q=|none",
        "de;q=0.1,en;q=0.2|en"
      })
  void the_browser_says_what_it_prefers(String header, String key) {
    assertThat(Language.preferred(header).map(Language::key).orElse("none")).isEqualTo(key);
  }

  @Test
  void only_known_languages_can_be_chosen() {
    assertThat(Language.of("de")).isPresent();
    assertThat(Language.of("de\r\nSet-Cookie: x")).isEmpty();
    assertThat(Language.of((String) null)).isEmpty();
  }

  // What a reader sees: without orders to the engine, without markup, without what is put in.
  private static String bare(String template) {
    String text =
        template
            .replaceAll("(?m)^@(import|param).*$", "")
            .replaceAll("(?s)<%--.*?--%>", "")
            .replaceAll("(?m)!\\{var .*?;\\}", "");
    text = text.replaceAll("\\$unsafe\\{[^}]*\\}", "");
    text = withoutNested(text, "${", '{', '}');
    for (String order : List.of("@template", "@if", "@elseif", "@for")) {
      text = withoutNested(text, order, '(', ')');
    }
    text = text.replaceAll("@(else|endif|endfor)", "");
    return text.replaceAll("(?s)<[^>]*>", "").replaceAll("`\\)|@`|,\\s*content\\s*=", "");
  }

  private static String withoutNested(String text, String start, char open, char close) {
    StringBuilder rest = new StringBuilder();
    int at = 0;
    for (int next = text.indexOf(start); next >= 0; next = text.indexOf(start, at)) {
      rest.append(text, at, next);
      int depth = 0;
      boolean content = false;
      int end = text.indexOf(open, next);
      do {
        char letter = text.charAt(end);
        depth += letter == open ? 1 : letter == close ? -1 : 0;
        content = letter == '`';
        end++;
      } while (depth > 0 && !content);
      at = end;
    }
    return rest.append(text.substring(at)).toString();
  }

  private static Set<String> places(String text) {
    Set<String> places = new TreeSet<>();
    Matcher place = PLACE.matcher(text);
    while (place.find()) {
      places.add(place.group(1));
    }
    return places;
  }

  private static Properties file(String key) throws IOException {
    Properties file = new Properties();
    String name = "pages" + (key.isEmpty() ? "" : "_" + key) + ".properties";
    try (Reader in = Files.newBufferedReader(FOLDER.resolve(name))) {
      file.load(in);
    }
    return file;
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(one -> one.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static String all(Path folder, String ending) throws IOException {
    return files(folder, ending).stream().map(TextsTest::text).collect(Collectors.joining("\n"));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException fault) {
      throw new java.io.UncheckedIOException(fault);
    }
  }
}
