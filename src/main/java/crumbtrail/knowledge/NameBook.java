package crumbtrail.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the catalogues' names are called in another language. Whatever is missing is called as in
 * English.
 *
 * @param language its tag: "de"
 * @param terms trade terms that the names are built of, each with the source that uses it so, or
 *     {@link #OWN}
 * @param causes names by key
 * @param signs names by key
 * @param styles names by key
 * @param readings names by the reading's English name
 * @param knobs names by key
 * @param stages stages at which causes arise, by their English word
 * @param steps steps of a day, by their English name
 * @param groups headings of readings, by their English words
 * @param words further words of the program, by the English ones
 */
public record NameBook(
    String language,
    Map<String, String> terms,
    Map<String, String> causes,
    Map<String, String> signs,
    Map<String, String> styles,
    Map<String, String> readings,
    Map<String, String> knobs,
    Map<String, String> stages,
    Map<String, String> steps,
    Map<String, String> groups,
    Map<String, String> words) {

  /** Stands for a source where a term was written down without one. */
  public static final String OWN = "own knowledge";

  /** The words that can be named under {@code words}. */
  public static final Set<String> WORDS =
      Set.of(
          "measured",
          "worked out",
          "assumed",
          "beyond the model's range",
          "fridge",
          "bench",
          "ready to shape",
          "ready to bake",
          "flour",
          "water",
          "other");

  public NameBook {
    terms = copy(terms);
    causes = copy(causes);
    signs = copy(signs);
    styles = copy(styles);
    readings = copy(readings);
    knobs = copy(knobs);
    stages = copy(stages);
    steps = copy(steps);
    groups = copy(groups);
    words = copy(words);
  }

  private static Map<String, String> copy(Map<String, String> names) {
    return names == null ? Map.of() : Map.copyOf(names);
  }

  /** Every section that names something, in the order of the file. */
  Map<String, Map<String, String>> sections() {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    all.put("causes", causes);
    all.put("signs", signs);
    all.put("styles", styles);
    all.put("readings", readings);
    all.put("knobs", knobs);
    all.put("stages", stages);
    all.put("steps", steps);
    all.put("groups", groups);
    all.put("words", words);
    return all;
  }

  /** The English names by what a section calls things, as the catalogues have them. */
  static Map<String, Map<String, String>> english(Knowledge knowledge) {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    List.of("causes", "signs", "styles", "readings", "knobs", "stages", "steps", "groups", "words")
        .forEach(section -> all.put(section, new LinkedHashMap<>()));
    knowledge.causes().forEach(one -> all.get("causes").put(one.key(), one.name()));
    knowledge.causes().forEach(one -> all.get("stages").put(one.stage(), one.stage()));
    knowledge.signs().forEach(one -> all.get("signs").put(one.key(), one.name()));
    knowledge.styles().forEach(one -> all.get("styles").put(one.key(), one.name()));
    knowledge.readings().forEach(one -> all.get("readings").put(one.name(), one.name()));
    knowledge.readings().forEach(one -> all.get("groups").put(one.group(), one.group()));
    knowledge.knobs().forEach(one -> all.get("knobs").put(one.key(), one.name()));
    knowledge.timetable().forEach(one -> all.get("steps").put(one.name(), one.name()));
    WORDS.forEach(one -> all.get("words").put(one, one));
    return all;
  }

  /** What English names are called in this language. */
  Map<String, String> dictionary(Knowledge knowledge) {
    Map<String, String> dictionary = new LinkedHashMap<>();
    Map<String, Map<String, String>> english = english(knowledge);
    sections()
        .forEach(
            (section, names) ->
                names.forEach(
                    (key, name) -> {
                      String known = english.get(section).get(key);
                      if (known != null) {
                        dictionary.putIfAbsent(known, name);
                        // Reports write the name of a reading without its hyphens.
                        dictionary.putIfAbsent(known.replace('-', ' '), name);
                      }
                    }));
    return dictionary;
  }
}
