package crumbtrail.accuracy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What one lineage of published tables names. Tables that copy one another are one.
 *
 * @param lineage its name
 * @param pairs signs and causes it names together
 */
record Table(String lineage, Set<Pair> pairs) {

  /** A sign and a cause named together. */
  record Pair(String sign, String cause) implements Comparable<Pair> {
    @Override
    public int compareTo(Pair other) {
      int bySign = sign.compareTo(other.sign);
      return bySign != 0 ? bySign : cause.compareTo(other.cause);
    }
  }

  /**
   * Reads the file of published tables.
   *
   * @throws IOException if it cannot be read
   */
  static List<Table> read(Judge judge, Path file) throws IOException {
    Map<String, Table> tables = new LinkedHashMap<>();
    for (JsonNode source : new ObjectMapper().readTree(file.toFile())) {
      Table table =
          tables.computeIfAbsent(
              source.path("lineage").asText(), name -> new Table(name, new TreeSet<>()));
      for (JsonNode pair : source.path("pairs")) {
        table.pairs.add(
            new Pair(
                pair.path("symptomKey").asText(), judge.canonical(pair.path("causeKey").asText())));
      }
    }
    return List.copyOf(tables.values());
  }
}
