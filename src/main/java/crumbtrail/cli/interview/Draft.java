package crumbtrail.cli.interview;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What has been answered so far. Immutable.
 *
 * @param answers lines by the key of their question
 */
record Draft(Map<String, List<String>> answers) {
  private static final String REMARKS = "process.remarks";
  private static final String PLACEHOLDER = "nothing seen yet";

  Draft {
    answers = new LinkedHashMap<>(answers);
  }

  static Draft empty() {
    return new Draft(Map.of());
  }

  /** With this answer; an empty one takes it away. */
  Draft with(Question question, List<String> lines) {
    Map<String, List<String>> more = new LinkedHashMap<>(answers);
    if (lines.isEmpty()) {
      more.remove(question.key());
    } else {
      more.put(question.key(), List.copyOf(lines));
    }
    return new Draft(more);
  }

  /** With one more remark. */
  Draft remarking(String words) {
    Map<String, List<String>> more = new LinkedHashMap<>(answers);
    List<String> old = more.getOrDefault(REMARKS, List.of());
    more.put(REMARKS, Stream.concat(old.stream(), Stream.of(words)).toList());
    return new Draft(more);
  }

  List<String> of(Question question) {
    return answers.getOrDefault(question.key(), List.of());
  }

  boolean isEmpty() {
    return answers.isEmpty();
  }

  /** As it is kept in a file: a bake sheet, or what may become one. */
  String text() {
    return sheet().map(SheetWriter::write).orElseGet(() -> node(answers).toPrettyString()) + "\n";
  }

  /** The sheet; empty while there is neither a formula nor anything seen. */
  Optional<BakeSheet> sheet() {
    return SheetReader.read(node(answers)).sheet();
  }

  /** What is wrong with an answer, as the reader of sheets would say it. */
  static List<Problem> problems(Question question, List<String> lines) {
    return read(question, lines).problems();
  }

  /** A sheet with this answer and nothing else that counts. */
  static Optional<BakeSheet> alone(Question question, List<String> lines) {
    return read(question, lines).sheet();
  }

  private static Reading read(Question question, List<String> lines) {
    ObjectNode node = node(Map.of(question.key(), lines));
    // A sheet must tell something that was seen, or a formula.
    if (!node.has("seen")) {
      node.putArray("seen").add(PLACEHOLDER);
    }
    return SheetReader.read(node);
  }

  private static ObjectNode node(Map<String, List<String>> answers) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    for (Question question : Questions.ALL) {
      List<String> lines = answers.getOrDefault(question.key(), List.of());
      if (!lines.isEmpty()) {
        put(root, question, lines);
      }
    }
    return root;
  }

  private static void put(ObjectNode root, Question question, List<String> lines) {
    String[] way = question.key().split("\\.", -1);
    ObjectNode at = root;
    for (int step = 0; step < way.length - 1; step++) {
      at = at.withObject("/" + way[step]);
    }
    String last = way[way.length - 1];
    switch (question.kind()) {
      case RECIPE -> at.put(last, String.join("\n", lines));
      case STAGES, WORDS -> {
        ArrayNode list = at.putArray(last);
        lines.forEach(list::add);
      }
      case YES_NO -> at.put(last, lines.get(0).startsWith("y") ? "yes" : "no");
      case LINE, STYLE -> at.put(last, lines.get(0));
    }
  }
}
