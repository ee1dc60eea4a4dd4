package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.util.List;

/** A JSON Schema to hold values against. */
record ApiSchema(JsonSchema schema) {
  private static final JsonSchemaFactory FACTORY =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

  static ApiSchema of(JsonNode schema) {
    return new ApiSchema(FACTORY.getSchema(schema));
  }

  /** A schema of a description, which takes no key that it does not name. */
  static ApiSchema strict(JsonNode openApi, JsonNode schema) {
    ObjectNode root = schema.deepCopy();
    ObjectNode components = openApi.path("components").deepCopy();
    components
        .path("schemas")
        .forEach(
            one -> {
              if (one.has("properties") && !one.has("additionalProperties")) {
                ((ObjectNode) one).put("additionalProperties", false);
              }
            });
    root.set("components", components);
    return of(root);
  }

  /** What does not hold, in sentences; the first few. */
  List<String> faults(JsonNode value) {
    return schema.validate(value).stream().map(ValidationMessage::getMessage).limit(8).toList();
  }
}
