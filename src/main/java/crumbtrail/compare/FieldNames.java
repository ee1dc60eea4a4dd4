package crumbtrail.compare;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.StreamSupport;

/** Fields of a sheet in the words of a baker. */
final class FieldNames {
  private static final Map<String, String> PARTS =
      Map.of(
          "bulk", "first rise",
          "proof", "final proof",
          "baking", "bake",
          "room", "temperature of the kitchen",
          "altitude", "height above the sea");

  private static final Map<String, String> FIELDS =
      Map.ofEntries(
          Map.entry("mixing/time", "kneading time"),
          Map.entry("mixing/speed", "kneading speed"),
          Map.entry("mixing/method", "way of mixing"),
          Map.entry("mixing/rest", "rest before kneading"),
          Map.entry("mixing/fat", "when the fat went in"),
          Map.entry("mixing/doughTemperature", "temperature of the dough after mixing"),
          Map.entry("temperatures/flour", "temperature of the flour"),
          Map.entry("temperatures/liquid", "temperature of the liquid"),
          Map.entry("temperatures/preferment", "temperature of the preferment"),
          Map.entry("shaping/pieces", "number of pieces"),
          Map.entry("shaping/pieceWeight", "weight of a piece"),
          Map.entry("shaping/benchRest", "rest on the bench"),
          Map.entry("shaping/tension", "tension of the shaping"),
          Map.entry("shaping/dustingFlour", "dusting flour"),
          Map.entry("vessel/kind", "tin or vessel"),
          Map.entry("vessel/size", "size of the tin"),
          Map.entry("vessel/lid", "lid"),
          Map.entry("baking/preheated", "oven preheated"),
          Map.entry("baking/steam", "steam"),
          Map.entry("baking/fan", "fan of the oven"),
          Map.entry("baking/scored", "scored"),
          Map.entry("baking/coreTemperature", "temperature in the middle of the loaf"),
          Map.entry("cooling/time", "cooling before the cut"),
          Map.entry("cooling/wrapped", "wrapped while warm"),
          Map.entry("storage/place", "place of keeping"),
          Map.entry("storage/time", "time of keeping"));

  private FieldNames() {}

  /**
   * A field in words.
   *
   * @param at its place below the process, as "/proof/0/time"
   * @param several whether there are several stages, so that they are to be counted
   */
  static String of(String at, boolean several) {
    String plain = at.substring(1);
    String known = FIELDS.get(plain);
    if (known != null) {
      return known;
    }
    List<String> words = new ArrayList<>();
    for (String part : plain.split("/")) {
      if (part.matches("\\d+")) {
        if (several) {
          words.add("stage " + (Integer.parseInt(part) + 1));
        }
      } else if (!part.equals("stages")) {
        words.add(PARTS.getOrDefault(part, spaced(part)));
      }
    }
    return String.join(", ", words);
  }

  private static String spaced(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  /** A value as a baker reads it; a list of stages in one line. */
  static String value(JsonNode node) {
    if (node.isArray()) {
      return String.join(
          ", then ",
          StreamSupport.stream(node.spliterator(), false).map(FieldNames::value).toList());
    }
    if (node.isObject()) {
      return String.join(
          " at ", StreamSupport.stream(node.spliterator(), false).map(FieldNames::value).toList());
    }
    if (node.isBoolean()) {
      return node.asBoolean() ? "yes" : "no";
    }
    return node.asText();
  }
}
