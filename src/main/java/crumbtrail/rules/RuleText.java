package crumbtrail.rules;

import java.util.List;
import java.util.Map;

/**
 * One rule as it stands in its file.
 *
 * @param file name of the file
 * @param line line of its name, from 1
 * @param name its name
 * @param metadata strand, source, lesson
 * @param conditions the sentences after "when"
 * @param consequences the sentences after "then"
 */
record RuleText(
    String file,
    int line,
    String name,
    Map<String, String> metadata,
    List<Sentence> conditions,
    List<Sentence> consequences) {

  RuleText {
    metadata = Map.copyOf(metadata);
    conditions = List.copyOf(conditions);
    consequences = List.copyOf(consequences);
  }

  /** One sentence and the line it stands on. */
  record Sentence(int line, String words) {}
}
