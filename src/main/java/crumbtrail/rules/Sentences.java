package crumbtrail.rules;

import crumbtrail.knowledge.Fault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * The sentences that rules may use, read from the sentence file. The engine expands them itself;
 * this reading of the same file serves to check rules and to say what a mistaken sentence should
 * have been.
 */
final class Sentences {
  private static final Pattern MAPPING = Pattern.compile("\\[(when|then)](.+?)=(.+)");
  private static final Pattern SLOT = Pattern.compile("\\{(\\w+)(?::([^}]+))?}");

  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");
  private static final JaroWinklerSimilarity LIKENESS = new JaroWinklerSimilarity();
  private static final double GAP = 0.2;

  private final List<Fault> faults = new ArrayList<>();
  private final List<Form> conditions = new ArrayList<>();
  private final List<Form> consequences = new ArrayList<>();

  /**
   * @param text the sentence file
   */
  Sentences(String text) {
    String[] lines = text.split("\n");
    for (int line = 0; line < lines.length; line++) {
      Matcher mapping = MAPPING.matcher(lines[line].strip());
      if (mapping.matches()) {
        try {
          Form form = Form.of(mapping.group(2), mapping.group(3));
          (mapping.group(1).equals("when") ? conditions : consequences).add(form);
        } catch (PatternSyntaxException fault) {
          faults.add(
              new Fault(
                  RuleFolder.SENTENCES,
                  line + 1,
                  "what a gap may hold is no pattern: " + fault.getDescription(),
                  "Write it as in {x:[0-9.]+}, or leave it out"));
        }
      }
    }
  }

  /** What is wrong with the file itself. */
  List<Fault> faults() {
    return List.copyOf(faults);
  }

  /** What a condition says in its slots, by slot name; empty if it is no known sentence. */
  Optional<Map<String, String>> condition(String sentence) {
    return read(conditions, sentence);
  }

  /** What a consequence says in its slots, by slot name; empty if it is no known sentence. */
  Optional<Map<String, String>> consequence(String sentence) {
    return read(consequences, sentence);
  }

  /**
   * What a condition means to the engine, in its own language; empty if it is no known sentence.
   */
  Optional<String> meaning(String condition) {
    return meaning(conditions, condition);
  }

  /** What a consequence means to the engine; empty if it is no known sentence. */
  Optional<String> doing(String consequence) {
    return meaning(consequences, consequence);
  }

  private static Optional<String> meaning(List<Form> forms, String sentence) {
    return forms.stream().map(form -> form.meaning(sentence)).flatMap(Optional::stream).findFirst();
  }

  /** The known sentence that takes the least rewording. */
  String nearest(String sentence, boolean condition) {
    return (condition ? conditions : consequences)
        .stream()
            .map(Form::shown)
            .min(Comparator.comparingDouble((String shown) -> rewording(sentence, shown)))
            .orElse("");
  }

  // Edit distance in words: a word put in or left out costs 1, a changed word costs as much as it
  // is unlike the other, and a gap takes any word at little cost.
  private static double rewording(String sentence, String shown) {
    String[] said = QUOTED.matcher(sentence).replaceAll("\"…\"").split(" ");
    String[] known = shown.split(" ");
    double[] above = new double[known.length + 1];
    for (int column = 0; column <= known.length; column++) {
      above[column] = column;
    }
    for (String word : said) {
      double[] row = new double[known.length + 1];
      row[0] = above[0] + 1;
      for (int column = 1; column <= known.length; column++) {
        double changed = above[column - 1] + unlike(word, known[column - 1]);
        row[column] = Math.min(changed, 1 + Math.min(above[column], row[column - 1]));
      }
      above = row;
    }
    return above[known.length];
  }

  private static double unlike(String word, String known) {
    return known.equals("…") ? GAP : 1 - LIKENESS.apply(word, known);
  }

  private static Optional<Map<String, String>> read(List<Form> forms, String sentence) {
    for (Form form : forms) {
      Matcher matcher = form.pattern().matcher(sentence);
      if (matcher.matches()) {
        Map<String, String> slots = new LinkedHashMap<>();
        for (int slot = 0; slot < form.slots().size(); slot++) {
          slots.put(form.slots().get(slot), matcher.group(slot + 1));
        }
        return Optional.of(slots);
      }
    }
    return Optional.empty();
  }

  private record Form(String shown, Pattern pattern, List<String> slots, String drl) {
    Optional<String> meaning(String sentence) {
      Matcher matcher = pattern.matcher(sentence);
      if (!matcher.matches()) {
        return Optional.empty();
      }
      String meaning = drl;
      for (int slot = 0; slot < slots.size(); slot++) {
        meaning = meaning.replace("{" + slots.get(slot) + "}", matcher.group(slot + 1));
      }
      return Optional.of(meaning);
    }

    static Form of(String sentence, String drl) {
      StringBuilder pattern = new StringBuilder();
      List<String> slots = new ArrayList<>();
      Matcher slot = SLOT.matcher(sentence);
      int from = 0;
      while (slot.find()) {
        pattern.append(Pattern.quote(sentence.substring(from, slot.start())));
        pattern.append('(').append(slot.group(2) == null ? "[^\"]+?" : slot.group(2)).append(')');
        slots.add(slot.group(1));
        from = slot.end();
      }
      pattern.append(Pattern.quote(sentence.substring(from)));
      return new Form(
          slot.replaceAll("…"), Pattern.compile(pattern.toString()), List.copyOf(slots), drl);
    }
  }
}
