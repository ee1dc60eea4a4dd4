package crumbtrail.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.Locale;

/** Words for what stands in a JSON text. */
final class Nodes {

  private Nodes() {}

  static JsonNode emptyObject() {
    return JsonNodeFactory.instance.objectNode();
  }

  static String path(String where, String key) {
    return where.isEmpty() ? key : where + "." + key;
  }

  /** "A number", "a list": what a value is, for a sentence. */
  static String described(JsonNode value) {
    return switch (value.getNodeType()) {
      case ARRAY -> "a list";
      case BOOLEAN -> "true or false";
      case NUMBER -> "the number " + shown(value.asText());
      case STRING -> "the text " + Problems.quoted(value.textValue());
      case OBJECT, POJO -> "an object";
      case NULL, MISSING, BINARY -> value.getNodeType().name().toLowerCase(Locale.ROOT);
    };
  }

  static String shown120(String text) {
    String line = text.replaceAll("\\s+", " ");
    return line.length() <= 120 ? line : line.substring(0, 117) + "…";
  }

  static String shown(String text) {
    return text.length() <= 40 ? text : text.substring(0, 37) + "…";
  }
}
