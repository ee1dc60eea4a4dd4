package crumbtrail.bakelog.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Traced;
import crumbtrail.bakelog.Verdict;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A bake as one line of JSON. Sheet and report are texts within it, not objects, since a log gives
 * back what was written to the last blank.
 */
public final class BakeJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private BakeJson() {}

  /** The line, without a break at its end. */
  public static String line(Bake bake) {
    ObjectNode line = JSON.createObjectNode();
    line.put("id", bake.id());
    line.put("uid", bake.uid().toString());
    line.put("owner", bake.owner());
    if (bake.schoolClass() != null) {
      line.put("class", bake.schoolClass());
    }
    line.put("baked", bake.baked().toString());
    line.put("noted", bake.noted().toString());
    line.put("label", bake.label());
    line.put("recipe", bake.recipe());
    line.put("note", bake.note());
    if (bake.outcome() != null) {
      line.put("outcome", bake.outcome().name().toLowerCase(Locale.ROOT));
    }
    ArrayNode confirmed = line.putArray("confirmed");
    bake.judged(Verdict.CONFIRMED).forEach(confirmed::add);
    ArrayNode ruledOut = line.putArray("ruledOut");
    bake.judged(Verdict.RULED_OUT).forEach(ruledOut::add);
    ArrayNode photos = line.putArray("photos");
    for (PhotoNote photo : bake.photos()) {
      photos
          .addObject()
          .put("uid", photo.uid().toString())
          .put("file", photo.file())
          .put("kind", photo.kind())
          .put("width", photo.width())
          .put("height", photo.height())
          .put("bytes", photo.bytes());
    }
    line.put("sheet", bake.sheet());
    Traced traced = bake.traced();
    if (traced != null) {
      line.put("ruleBase", traced.ruleBase());
      line.put("report", traced.report());
    }
    return line.toString();
  }

  /**
   * The bake of a line that {@link #line} wrote.
   *
   * @throws BadLine if it is none
   */
  public static Bake read(JsonNode line) throws BadLine {
    try {
      return new Bake(
          line.path("id").asLong(0),
          UUID.fromString(text(line, "uid")),
          line.path("owner").asLong(Bake.ONLY_BAKER),
          line.path("class").isIntegralNumber() ? line.path("class").asLong() : null,
          LocalDateTime.parse(text(line, "baked")),
          Instant.parse(text(line, "noted")),
          line.path("label").asText(""),
          line.path("recipe").asText(""),
          line.path("note").asText(""),
          outcome(line.path("outcome").asText("")),
          verdicts(line),
          text(line, "sheet"),
          line.path("report").isTextual()
              ? new Traced(line.path("report").asText(), line.path("ruleBase").asText(""))
              : null,
          photos(line));
    } catch (DateTimeException | IllegalArgumentException fault) {
      throw new BadLine(
          "", String.valueOf(fault.getMessage()), "take the line as it was written out");
    }
  }

  static JsonNode tree(String line) throws BadLine {
    try {
      JsonNode read = JSON.readTree(line);
      if (read == null || !read.isObject()) {
        throw new BadLine("", "this is no JSON object", "write one bake a line, as {…}");
      }
      return read;
    } catch (JsonProcessingException fault) {
      throw new BadLine(
          "",
          "this is not JSON (column " + fault.getLocation().getColumnNr() + ")",
          "write one bake a line, as {…}");
    }
  }

  static @Nullable Outcome outcome(String word) {
    return word.isBlank() ? null : Outcome.valueOf(word.strip().toUpperCase(Locale.ROOT));
  }

  private static String text(JsonNode line, String key) {
    if (!line.path(key).isTextual()) {
      throw new IllegalArgumentException("\"" + key + "\" is missing");
    }
    return line.path(key).asText();
  }

  private static Map<String, Verdict> verdicts(JsonNode line) {
    Map<String, Verdict> verdicts = new TreeMap<>();
    line.path("ruledOut").forEach(cause -> verdicts.put(cause.asText(), Verdict.RULED_OUT));
    line.path("confirmed").forEach(cause -> verdicts.put(cause.asText(), Verdict.CONFIRMED));
    return verdicts;
  }

  private static List<PhotoNote> photos(JsonNode line) {
    List<PhotoNote> photos = new ArrayList<>();
    for (JsonNode photo : line.path("photos")) {
      photos.add(
          new PhotoNote(
              0,
              UUID.fromString(text(photo, "uid")),
              text(photo, "kind"),
              photo.path("width").asInt(),
              photo.path("height").asInt(),
              photo.path("bytes").asInt()));
    }
    return photos;
  }
}
