package crumbtrail.rules;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import crumbtrail.knowledge.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The number that people give a rules folder, as its hash is the one that its content gives it. */
final class Edition {
  static final String FILE = "edition.yaml";

  private static final String REMEDY = "Write edition: \"1.0\", or leave the file away";

  private Edition() {}

  /** What the folder says; empty where it has no such file. */
  static String of(Path folder, List<Fault> faults) {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return "";
    }
    try {
      JsonNode said = new YAMLMapper().readTree(Files.readString(file));
      String edition = said.path("edition").asText("");
      if (said.size() == 1 && edition.matches("\\d{1,4}\\.\\d{1,4}")) {
        return edition;
      }
      faults.add(new Fault(FILE, 0, "the edition is no pair of numbers", REMEDY));
    } catch (JsonProcessingException fault) {
      faults.add(new Fault(FILE, 0, "this is no YAML: " + fault.getOriginalMessage(), REMEDY));
    } catch (IOException fault) {
      faults.add(new Fault(FILE, 0, "cannot be read: " + fault.getMessage(), REMEDY));
    }
    return "";
  }
}
