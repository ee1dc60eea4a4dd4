package crumbtrail.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.quantity.Quantity;
import java.util.function.Function;

/**
 * Parts of the process that are told in words where an object could stand: "35 min at 210 C" for
 * the baking, "9 x 5 in loaf tin" for the vessel. Anything else is left as it is.
 */
final class PartInWords {
  private static final String NEXT = "\\s*(?:;|,? then|,? and then)\\s+";

  private PartInWords() {}

  /** The stages, of which there may be several: "15 min at 230 C, then 20 min at 200 C". */
  static JsonNode baking(JsonNode told) {
    if (told.isArray()) {
      return object().set("stages", told);
    }
    return of(
        told,
        words -> {
          ObjectNode baking = object();
          for (String stage : words.split(NEXT, -1)) {
            baking.withArray("stages").add(stage);
          }
          return baking;
        });
  }

  /** How long, and the rest of it as the way it was done: "8 min by hand". */
  static JsonNode mixing(JsonNode told) {
    return of(
        told,
        words -> {
          ObjectNode mixing = object().put("method", words);
          StageText.of(words).time().map(Quantity::written).ifPresent(t -> mixing.put("time", t));
          return mixing;
        });
  }

  static JsonNode vessel(JsonNode told) {
    return of(
        told,
        words -> {
          ObjectNode vessel = object().put("kind", words);
          return VesselSizes.read(words).isPresent() ? vessel.put("size", words) : vessel;
        });
  }

  static JsonNode cooling(JsonNode told) {
    return of(told, words -> object().put("time", words));
  }

  static JsonNode storage(JsonNode told) {
    return of(told, words -> object().put("place", words));
  }

  private static JsonNode of(JsonNode told, Function<String, ObjectNode> part) {
    return told.isTextual() && !told.textValue().isBlank() ? part.apply(told.textValue()) : told;
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }
}
