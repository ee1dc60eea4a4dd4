package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.fuzz.Fuzz;
import crumbtrail.knowledge.FaultyKnowledge;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rules folder with anything in one of its files is read, or its faults are told. */
class RulesFuzzTest {
  @TempDir Path folder;

  @Test
  void files_of_a_rules_folder() throws IOException {
    TinyRules.write(folder);
    List<Path> files = files();
    List<String> seeds = new ArrayList<>();
    for (Path file : files) {
      String text = Files.readString(file);
      if (text.length() < 20_000) {
        seeds.add(folder.relativize(file) + "\n" + text);
      }
    }
    seeds.add("calibration.yaml\n" + Files.readString(Path.of("rules", "calibration.yaml")));
    Fuzz.of("rules", 0.005, seeds, text -> read(text, seeds));
  }

  /** The first line names the file; where it is spoilt itself, the first file is meant. */
  private boolean read(String text, List<String> seeds) throws IOException {
    int end = text.indexOf('\n');
    String name = end < 0 ? "" : text.substring(0, end);
    String known =
        seeds.stream()
            .map(seed -> seed.substring(0, seed.indexOf('\n')))
            .filter(name::equals)
            .findFirst()
            .orElse("calibration.yaml");
    Path file = folder.resolve(known);
    byte[] good = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    Files.write(file, text.substring(end + 1).getBytes(StandardCharsets.UTF_8));
    try {
      RuleFolder.read(folder);
      return true;
    } catch (FaultyKnowledge faulty) {
      assertThat(faulty.faults())
          .isNotEmpty()
          .allSatisfy(fault -> assertThat(fault.toString()).isNotBlank());
      return false;
    } finally {
      if (good.length == 0) {
        Files.delete(file);
      } else {
        Files.write(file, good);
      }
    }
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
