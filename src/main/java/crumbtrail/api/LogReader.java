package crumbtrail.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.Problem;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Reads what is sent to the log, and notes everything that is wrong with it. */
public final class LogReader {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> OUTCOMES = List.of("good", "fair", "failed");
  private static final int NOON = 12;
  private static final int EARLIEST = 1900;
  private static final int LATEST = 2200;
  private static final int MOST = 50;

  private final JsonNode request;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * @param keys all that may stand in it
   */
  public LogReader(String json, List<String> keys) {
    this.request = parsed(json);
    if (!request.isObject()) {
      add("", "this is no JSON object", "write {\"" + keys.get(0) + "\": …}");
      return;
    }
    request
        .properties()
        .forEach(
            one -> {
              if (!keys.contains(one.getKey())) {
                add(
                    one.getKey().length() <= 40 ? one.getKey() : one.getKey().substring(0, 40),
                    "this key is not known here",
                    "write one of: " + String.join(", ", keys));
              }
            });
  }

  /** The text as JSON; a missing node where it is none. */
  static JsonNode parsed(String json) {
    try {
      JsonNode node = JSON.readTree(json);
      return node == null ? JSON.missingNode() : node;
    } catch (JsonProcessingException fault) {
      return JSON.missingNode();
    }
  }

  /** All that is wrong so far. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Notes that something is wrong. */
  public void add(String where, String what, String remedy) {
    problems.add(new Problem(where, what, remedy));
  }

  /** Notes what is wrong with a part of it. */
  public void addAll(String where, List<Problem> faults) {
    faults.forEach(
        one ->
            add(
                one.where().isEmpty() ? where : where + "." + one.where(),
                one.what(),
                one.remedy()));
  }

  /** What stands under a key, as JSON; empty where nothing does. */
  public Optional<JsonNode> tree(String key) {
    return Optional.of(request.path(key)).filter(node -> !node.isMissingNode() && !node.isNull());
  }

  /** A text of at most so many characters. */
  public Optional<String> text(String key, int longest) {
    return tree(key)
        .filter(
            node -> {
              boolean good = node.isTextual() && node.textValue().length() <= longest;
              if (!good) {
                add(
                    key,
                    "this is no text, or too long",
                    "write at most " + longest + " characters");
              }
              return good;
            })
        .map(JsonNode::textValue);
  }

  /** How it came out; an empty text where that is to be forgotten. */
  public Optional<String> outcome(boolean forget) {
    return tree("outcome")
        .map(JsonNode::asText)
        .filter(
            said -> {
              boolean good = OUTCOMES.contains(said) || (forget && said.isEmpty());
              if (!good) {
                add("outcome", "this is no outcome", "write good, fair or failed");
              }
              return good;
            });
  }

  /** When it was baked. */
  public Optional<LocalDateTime> baked() {
    return tree("baked").flatMap(node -> time(node.asText()));
  }

  private Optional<LocalDateTime> time(String said) {
    try {
      LocalDateTime time =
          said.length() > "2026-03-01".length()
              ? LocalDateTime.parse(said.replace(' ', 'T'))
              : LocalDate.parse(said).atTime(NOON, 0);
      if (time.getYear() >= EARLIEST && time.getYear() < LATEST) {
        return Optional.of(time);
      }
    } catch (DateTimeException fault) {
      // Said below.
    }
    add("baked", "this is no day", "write it as 2026-03-01, or as 2026-03-01T14:30");
    return Optional.empty();
  }

  /** A whole number. */
  public Optional<Long> number(String key) {
    return tree(key)
        .filter(
            node -> {
              if (!node.isIntegralNumber()) {
                add(key, "this is no number", "write a whole number, such as 7");
              }
              return node.isIntegralNumber();
            })
        .map(JsonNode::longValue);
  }

  /** Keys of causes. */
  public Optional<List<String>> causes(String key, Predicate<String> known) {
    return tree(key)
        .map(
            node -> {
              List<String> causes = new ArrayList<>();
              if (!node.isArray() || node.size() > MOST) {
                add(key, "this is no list of causes", "write [\"over-proofed\"]");
              }
              for (JsonNode one : node) {
                if (!known.test(one.asText())) {
                  add(
                      key + "[" + causes.size() + "]",
                      "there is no such cause",
                      "all causes: GET /api/causes");
                }
                causes.add(one.asText());
              }
              return causes;
            });
  }
}
