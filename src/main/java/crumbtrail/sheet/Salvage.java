package crumbtrail.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What of a sheet can be used, for a baker who is still typing: everything with a problem is left
 * out, and the rest is read.
 *
 * @param sheet empty if nothing is left
 * @param problems all that were found; they name places in the sheet as it came
 */
public record Salvage(Optional<BakeSheet> sheet, List<Problem> problems) {
  private static final Pattern LINE = Pattern.compile("(\\S+) line (\\d+)");
  private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[(\\d+)]");

  /** One problem can hide another, though seldom for long. */
  private static final int ROUNDS = 3;

  public Salvage {
    problems = List.copyOf(problems);
  }

  /** Reads a sheet that may still be faulty; never throws for what it says. */
  public static Salvage of(JsonNode sheet) {
    Reading first = SheetReader.read(sheet);
    Reading reading = first;
    JsonNode rest = sheet.deepCopy();
    for (int round = 0; round < ROUNDS && reading.sheet().isEmpty(); round++) {
      reading.problems().forEach(problem -> leaveOut(rest, problem.where()));
      reading = SheetReader.read(rest);
    }
    return new Salvage(reading.sheet(), first.problems());
  }

  private static void leaveOut(JsonNode sheet, String where) {
    Matcher line = LINE.matcher(where);
    boolean inText = line.matches();
    Matcher step = STEP.matcher(inText ? line.group(1) : where);
    JsonNode parent = sheet;
    JsonNode at = sheet;
    String last = "";
    while (step.find()) {
      parent = at;
      last = step.group(1) == null ? step.group(2) : step.group(1);
      at = step.group(1) == null ? at.path(Integer.parseInt(last)) : at.path(last);
    }
    JsonNode left =
        inText && at.isTextual()
            ? without(at.textValue(), Integer.parseInt(line.group(2)))
            : NullNode.getInstance();
    if (parent instanceof ArrayNode list && !at.isMissingNode()) {
      list.set(Integer.parseInt(last), left);
    } else if (!last.isEmpty() && parent instanceof ObjectNode object && !at.isMissingNode()) {
      if (left.isNull()) {
        object.remove(last);
      } else {
        object.set(last, left);
      }
    }
  }

  // An empty line keeps the numbers of those below it.
  private static JsonNode without(String text, int number) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (number > lines.size()) {
      return NullNode.getInstance();
    }
    lines.set(number - 1, "");
    return TextNode.valueOf(String.join("\n", lines));
  }
}
