package crumbtrail.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The pairs that set weights are those of the published tables, no more and no fewer. */
class PublishedPairsTest {
  private static final Path TABLES = Path.of("src/test/resources/published-tables.json");

  @Test
  void the_pairs_of_the_rule_base_are_those_of_the_tables() throws IOException, FaultyKnowledge {
    Set<Published> expected = new HashSet<>();
    for (JsonNode table : new ObjectMapper().readTree(TABLES.toFile())) {
      for (JsonNode pair : table.path("pairs")) {
        expected.add(
            new Published(
                pair.path("symptomKey").asText(),
                pair.path("causeKey").asText(),
                table.path("id").asText()));
      }
    }

    assertThat(new HashSet<>(KnowledgeFolder.read(Path.of("rules")).published()))
        .hasSizeGreaterThan(700)
        .isEqualTo(expected);
  }
}
