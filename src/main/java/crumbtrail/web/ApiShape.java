package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * The shape of a body or an answer as a table.
 *
 * @param name its name
 * @param about what it is
 * @param keys its keys
 */
public record ApiShape(String name, String about, List<Key> keys) {

  /**
   * A key.
   *
   * @param type what stands under it, in words
   * @param shape name of the shape that stands there, empty where none does
   * @param always whether it is always there
   * @param about what it means
   */
  public record Key(String name, String type, String shape, boolean always, String about) {}

  /** All shapes of a description, in its order. */
  static List<ApiShape> all(JsonNode schemas) {
    List<ApiShape> shapes = new ArrayList<>();
    schemas.properties().forEach(one -> shapes.add(shape(one.getKey(), one.getValue())));
    return shapes;
  }

  private static ApiShape shape(String name, JsonNode schema) {
    List<String> always = new ArrayList<>();
    schema.path("required").forEach(key -> always.add(key.asText()));
    List<Key> keys = new ArrayList<>();
    schema
        .path("properties")
        .properties()
        .forEach(
            one -> {
              String type = type(one.getValue());
              keys.add(
                  new Key(
                      one.getKey(),
                      type,
                      named(one.getValue()),
                      always.contains(one.getKey()),
                      one.getValue().path("description").asText("")));
            });
    return new ApiShape(name, schema.path("description").asText(""), keys);
  }

  private static String type(JsonNode schema) {
    if (schema.path("type").isTextual()) {
      String type = schema.path("type").asText();
      if (type.equals("array")) {
        String of = type(schema.path("items"));
        return of.isEmpty() ? "list of" : "list of " + of;
      }
      JsonNode values = schema.path("additionalProperties");
      return values.isObject() ? "object of " + type(values) : type;
    }
    if (schema.path("type").isArray()) {
      List<String> types = new ArrayList<>();
      schema.path("type").forEach(one -> types.add(one.asText()));
      types.remove("null");
      return String.join(" or ", types);
    }
    if (schema.path("anyOf").isArray()) {
      List<String> types = new ArrayList<>();
      schema.path("anyOf").forEach(one -> types.add(type(one)));
      return String.join(" or ", types.stream().filter(one -> !one.isEmpty()).distinct().toList());
    }
    return "";
  }

  private static String named(JsonNode schema) {
    for (JsonNode one :
        List.of(
            schema,
            schema.path("items"),
            schema.path("items").path("items"),
            schema.path("additionalProperties"))) {
      for (JsonNode part : List.of(one, one.path("allOf").path(0), one.path("anyOf").path(0))) {
        String reference = part.path("$ref").asText("");
        if (!reference.isEmpty()) {
          return reference.substring(reference.lastIndexOf('/') + 1);
        }
      }
    }
    return "";
  }
}
