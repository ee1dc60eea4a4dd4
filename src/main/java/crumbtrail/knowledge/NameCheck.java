package crumbtrail.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Looks whether a book of names names only what there is. */
final class NameCheck {
  private final String file;
  private final List<String> lines;
  private final List<Fault> faults = new ArrayList<>();

  private NameCheck(String file, String text) {
    this.file = file;
    this.lines = text.lines().toList();
  }

  /**
   * @param file name of the file below the rules folder
   * @param text what it holds, for the lines of faults
   */
  static List<Fault> faults(NameBook book, Knowledge knowledge, String file, String text) {
    NameCheck check = new NameCheck(file, text);
    check.all(book, knowledge);
    return check.faults;
  }

  private void all(NameBook book, Knowledge knowledge) {
    if (book.language() == null || !book.language().matches("[a-z]{2,3}(-[A-Z]{2})?")) {
      faults.add(new Fault(file, 1, "the language is not told", "Write its tag: \"language: de\""));
    }
    Map<String, Map<String, String>> english = NameBook.english(knowledge);
    book.sections()
        .forEach(
            (section, names) ->
                names.forEach(
                    (key, name) -> name(section, key, name, english.get(section).keySet())));
    Set<String> sources = knowledge.sources().stream().map(Source::id).collect(Collectors.toSet());
    book.terms()
        .forEach(
            (term, source) -> {
              if (!source.equals(NameBook.OWN) && !sources.contains(source)) {
                fault(
                    "terms",
                    term,
                    "\"" + source + "\" is no source",
                    "Put it into rules/sources, or write \"" + NameBook.OWN + "\"");
              }
            });
  }

  private void name(String section, String key, String name, Set<String> known) {
    if (!known.contains(key)) {
      fault(
          section,
          key,
          "nothing among the " + section + " is called \"" + key + "\"",
          "Nearest: \"" + Nearest.of(key, known) + "\"");
    } else if (name.isBlank()) {
      fault(section, key, "\"" + key + "\" has an empty name", "Name it or take the line out");
    }
  }

  private void fault(String section, String key, String what, String remedy) {
    faults.add(new Fault(file, line(section, key), what, remedy));
  }

  private int line(String section, String key) {
    int from = lines.indexOf(section + ":");
    for (int at = Math.max(0, from); at < lines.size(); at++) {
      String line = lines.get(at).strip();
      if (line.startsWith(key + ":") || line.startsWith("\"" + key + "\":")) {
        return at + 1;
      }
    }
    return 0;
  }
}
