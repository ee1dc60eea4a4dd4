package crumbtrail.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Spoils texts that are good: cuts, doubles, swaps, splices two of them, puts in what readers are
 * known to trip over. Most of what comes out is nearly right, which is where faults live.
 */
final class Spoiler {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> SPLINTERS =
      List.of(
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          ";",
          "\\",
          "\\u12",
          "null",
          "true",
          "1e999",
          "-1",
          "-0",
          "0",
          "00",
          "NaN",
          "1/0",
          "½",
          "1⁄3",
          "99999999999999999999",
          "1e-320",
          "0.1e400",
          "%",
          "% % %",
          "\u0000",
          "\ud800",
          "\udc00",
          "\ufeff",
          "\u202e",
          "\u0301",
          "İ",
          "ß",
          "ﬁ",
          "\uD83C\uDF5E",
          "\r",
          "\n",
          "\n\n",
          "\t",
          "\u2028",
          "\u00a0",
          " ",
          "'",
          "''",
          "`",
          "<b>",
          "&amp;",
          "${x}",
          "{{",
          "#",
          "- ",
          "---",
          "|",
          ">",
          "*",
          "&a",
          "*a",
          "!!",
          "? ",
          "~",
          "about ",
          "at least ",
          " to ",
          "–",
          "..",
          "...",
          "x",
          "9 x 5 in",
          " g",
          " kg",
          " cups",
          " C",
          " F",
          " h",
          " min",
          " d",
          "overnight",
          "for dusting",
          "plus more",
          "half of the ",
          "and",
          "not",
          "no ",
          "didn't ",
          "very ",
          "flour",
          "water",
          "poolish",
          "starter",
          "hydration",
          "(",
          ")",
          "((",
          "[[[[[[[[",
          "{\"a\":",
          "{\"a\":{\"a\":{\"a\":",
          "\"x\":1,",
          "=",
          "==",
          "%zz",
          "%C0%80",
          "+",
          "\u001b[2J",
          "\uffff",
          "१२",
          "五",
          "IV",
          "1.234.567,8");

  private final SplittableRandom chance;
  private final List<String> seeds;
  private final List<String> texts = Corpus.texts();

  Spoiler(List<String> seeds, long seed) {
    this.seeds = List.copyOf(seeds);
    this.chance = new SplittableRandom(seed);
  }

  String next() {
    return spoiled(any(seeds));
  }

  private String spoiled(String seed) {
    String text = seed;
    // One spoilt place in most, a heap of them in a few.
    int places = 1 + (chance.nextInt(4) == 0 ? chance.nextInt(12) : chance.nextInt(2));
    for (int i = 0; i < places; i++) {
      text = spoilt(text);
    }
    return text;
  }

  /** A sheet that stays JSON: some of its texts are spoilt, or another's stands in their place. */
  String nextTree() {
    try {
      JsonNode tree = JSON.readTree(any(seeds));
      List<Place> places = new ArrayList<>();
      gather(tree, places);
      for (int i = 1 + chance.nextInt(4); i > 0 && !places.isEmpty(); i--) {
        Place place = places.get(chance.nextInt(places.size()));
        place.put(
            switch (chance.nextInt(6)) {
              case 0 -> JSON.getNodeFactory().textNode(any(texts));
              case 1, 2 -> JSON.getNodeFactory().textNode(number(place.text(), 0));
              case 3 -> JSON.getNodeFactory().nullNode();
              default -> JSON.getNodeFactory().textNode(spoiled(place.text()));
            });
      }
      return tree.toString();
    } catch (JsonProcessingException fault) {
      throw new IllegalStateException(fault);
    }
  }

  private record Place(JsonNode in, String key, int index) {
    String text() {
      return (in.isObject() ? in.path(key) : in.path(index)).asText();
    }

    void put(JsonNode value) {
      if (in instanceof ObjectNode object) {
        object.set(key, value);
      } else if (in instanceof ArrayNode list) {
        list.set(index, value);
      }
    }
  }

  private static void gather(JsonNode node, List<Place> places) {
    node.properties()
        .forEach(
            entry -> {
              if (entry.getValue().isValueNode()) {
                places.add(new Place(node, entry.getKey(), 0));
              }
              gather(entry.getValue(), places);
            });
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      if (node.get(i).isValueNode()) {
        places.add(new Place(node, "", i));
      }
      gather(node.get(i), places);
    }
  }

  private String spoilt(String text) {
    int from = chance.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + chance.nextInt(1 + (chance.nextInt(5) == 0 ? 200 : 8)));
    String head = text.substring(0, from);
    String piece = text.substring(from, to);
    String tail = text.substring(to);
    return switch (chance.nextInt(9)) {
      case 0 -> head + tail;
      case 1 -> head + piece + piece + tail;
      case 2 -> head + any(SPLINTERS) + tail;
      case 3 -> head + any(SPLINTERS) + piece + tail;
      case 4 -> head + (char) chance.nextInt(chance.nextBoolean() ? 128 : 0x10000) + tail;
      case 5 -> number(text, from);
      case 6 -> spliced(head, tail);
      case 7 -> head + swapped(piece) + tail;
      default -> head + any(SPLINTERS).repeat(1 + chance.nextInt(40)) + tail;
    };
  }

  private String spliced(String head, String tail) {
    String other = any(seeds);
    int from = chance.nextInt(other.length() + 1);
    int to = Math.min(other.length(), from + chance.nextInt(80));
    return head + other.substring(from, to) + tail;
  }

  /** The next number after a place is another one, which no syntax minds. */
  private String number(String text, int from) {
    int start = from;
    while (start < text.length() && !Character.isDigit(text.charAt(start))) {
      start++;
    }
    int end = start;
    while (end < text.length() && Character.isDigit(text.charAt(end))) {
      end++;
    }
    String other =
        switch (chance.nextInt(5)) {
          case 0 -> "0";
          case 1 -> "-" + chance.nextInt(1000);
          case 2 -> String.valueOf(chance.nextInt(100_000));
          case 3 -> "1" + "0".repeat(chance.nextInt(330));
          default -> "0." + "0".repeat(chance.nextInt(330)) + "1";
        };
    return text.substring(0, start) + other + text.substring(end);
  }

  private String swapped(String piece) {
    return chance.nextBoolean()
        ? new StringBuilder(piece).reverse().toString()
        : piece.toUpperCase(java.util.Locale.ROOT);
  }

  private String any(List<String> from) {
    return from.get(chance.nextInt(from.size()));
  }
}
