package crumbtrail.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;

/** Answers and bodies as JSON text. */
final class ApiJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private ApiJson() {}

  static String text(Object answer) {
    try {
      return JSON.writeValueAsString(answer);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("an answer of plain values can be written", impossible);
    }
  }

  /** What a text stands for; missing where it is no JSON. */
  static JsonNode tree(String text) {
    try {
      JsonNode node = JSON.readTree(text);
      return node == null ? MissingNode.getInstance() : node;
    } catch (JsonProcessingException noJson) {
      return MissingNode.getInstance();
    }
  }
}
