package crumbtrail.bakelog;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.trends.Named;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Takes the numbers out of a report, and writes them as short JSON. */
public final class Digests {
  /** Causes further down the ranking are not told apart by their odds. */
  private static final int CAUSES = 8;

  private static final ObjectMapper JSON = new ObjectMapper();

  private Digests() {}

  /** The numbers of a report; none of what is no report. */
  public static Digest ofReport(String report) {
    JsonNode read = tree(report);
    Map<String, Double> readings = new LinkedHashMap<>();
    read.path("workup")
        .properties()
        .forEach(
            entry -> {
              if (entry.getValue().path("value").isNumber()) {
                readings.put(entry.getKey(), entry.getValue().path("value").asDouble());
              }
            });
    List<Named> ranking = new ArrayList<>();
    for (JsonNode cause : read.path("causes")) {
      if (ranking.size() < CAUSES && cause.path("key").isTextual()) {
        ranking.add(new Named(cause.path("key").asText(), cause.path("probability").asDouble()));
      }
    }
    return new Digest(readings, ranking);
  }

  /** As short JSON, for a store. */
  public static String write(Digest digest) {
    ObjectNode written = JSON.createObjectNode();
    ObjectNode readings = written.putObject("readings");
    digest.readings().forEach(readings::put);
    ArrayNode ranking = written.putArray("ranking");
    digest.ranking().forEach(one -> ranking.addArray().add(one.cause()).add(one.probability()));
    return written.toString();
  }

  /** What {@link #write} wrote. */
  public static Digest read(String text) {
    JsonNode read = tree(text);
    Map<String, Double> readings = new LinkedHashMap<>();
    read.path("readings")
        .properties()
        .forEach(entry -> readings.put(entry.getKey(), entry.getValue().asDouble()));
    List<Named> ranking = new ArrayList<>();
    read.path("ranking")
        .forEach(one -> ranking.add(new Named(one.get(0).asText(), one.get(1).asDouble())));
    return new Digest(readings, ranking);
  }

  private static JsonNode tree(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException fault) {
      throw new IllegalArgumentException("this is no JSON: " + fault.getOriginalMessage(), fault);
    }
  }
}
