package crumbtrail.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import crumbtrail.api.Endpoint.Example;

/** Examples as values. */
final class Examples {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Examples() {}

  /** The body of an example: JSON as what it stands for, other text as text. */
  static JsonNode value(Example example) {
    if (!example.type().equals("application/json")) {
      return TextNode.valueOf(example.body());
    }
    try {
      return JSON.readTree(example.body());
    } catch (JsonProcessingException fault) {
      throw new IllegalStateException("an example is no JSON: " + example.body(), fault);
    }
  }
}
