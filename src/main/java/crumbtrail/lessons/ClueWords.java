package crumbtrail.lessons;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.SignKind;
import crumbtrail.sheet.BakeSheet.SeenSign;
import crumbtrail.sheet.SheetWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The answers to a learner's questions, in lines. */
final class ClueWords {
  private final Catalogue catalogue;

  ClueWords(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** What a clue brings to light. */
  List<String> answer(MysteryLoaf loaf, String clue) {
    ObjectNode whole = SheetWriter.node(loaf.whole());
    List<String> lines = new ArrayList<>();
    if (clue.equals(Clues.RECIPE)) {
      whole.path("formula").forEach(line -> lines.add(line.asText()));
      whole.path("preferments").forEach(part -> lines.add(part(part)));
    }
    ObjectNode process = whole.withObjectProperty("process");
    for (String field : Clues.fields(clue)) {
      if (process.has(field)) {
        told(field, process.get(field), lines);
      }
    }
    loaf.signs().getOrDefault(clue, List.of()).forEach(sign -> lines.add(said(sign)));
    loaf.absent()
        .getOrDefault(clue, List.of())
        .forEach(sign -> lines.add("not seen: " + signName(sign)));
    return lines.isEmpty() ? List.of("Nothing unusual.") : lines;
  }

  /** A sign in the baker's words, or by its name where they are a key of the catalogue. */
  String said(SeenSign sign) {
    String degree = sign.degree().map(one -> one.name().toLowerCase(Locale.ROOT)).orElse("");
    return signName(sign.words())
        + (degree.isEmpty() || degree.equals("plain") ? "" : " (" + degree + ")");
  }

  private String signName(String words) {
    return catalogue.sign(words).map(SignKind::name).orElse(words);
  }

  private static String part(JsonNode preferment) {
    List<String> lines = new ArrayList<>();
    preferment.path("formula").forEach(line -> lines.add(line.asText()));
    String stages =
        stream(preferment.path("stages")).map(ClueWords::fields).collect(Collectors.joining("; "));
    return preferment.path("name").asText("preferment")
        + ": "
        + String.join(", ", lines)
        + (stages.isEmpty() ? "" : "; stood " + stages);
  }

  private static void told(String field, JsonNode value, List<String> lines) {
    if (field.equals("remarks")) {
      value.forEach(remark -> lines.add("“" + remark.asText() + "”"));
    } else if (value.isArray()) {
      value.forEach(stage -> lines.add(fields(stage)));
    } else if (value.isObject() && value.has("stages")) {
      value.get("stages").forEach(stage -> lines.add(fields(stage)));
      ObjectNode rest = ((ObjectNode) value).deepCopy();
      rest.remove("stages");
      if (!rest.isEmpty()) {
        lines.add(fields(rest));
      }
    } else if (value.isObject()) {
      lines.add((field.equals("storage") ? "kept: " : "") + fields(value));
    } else {
      lines.add(spoken(field) + " " + value.asText());
    }
  }

  // "time 90 min, temperature 24 C, covered yes"
  private static String fields(JsonNode object) {
    return object.properties().stream()
        .map(entry -> spoken(entry.getKey()) + " " + plain(entry.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String plain(JsonNode value) {
    if (value.isBoolean()) {
      return value.booleanValue() ? "yes" : "no";
    }
    return value.asText();
  }

  private static String spoken(String key) {
    return key.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  private static java.util.stream.Stream<JsonNode> stream(JsonNode list) {
    List<JsonNode> all = new ArrayList<>();
    list.forEach(all::add);
    return all.stream();
  }
}
