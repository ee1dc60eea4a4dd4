package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the archive holds of others: the bill of materials, the libraries, the page on licences. */
@Tag("packaged")
class LicencesIT {
  private static final Path BUILT =
      Path.of(System.getProperty("crumbtrail.jar", "target/crumbtrail.jar"))
          .toAbsolutePath()
          .getParent();
  private static final Path PAGE = Path.of("docs", "licences.md");

  /** Licences under which a library may be handed on beside a program under Apache-2.0. */
  private static final Set<String> GOOD =
      Set.of(
          "0BSD",
          "Apache-2.0",
          "BSD-2-Clause",
          "BSD-3-Clause",
          "EPL-2.0",
          "IU-Extreme-1.1.1",
          "MIT",
          "MPL-2.0",
          "Public Domain");

  /** Names that the bill has from authors, and what they are called elsewhere. */
  private static final Map<String, String> CALLED =
      Map.of(
          "BSD licence", "BSD-3-Clause",
          "Bouncy Castle Licence", "MIT",
          "EPL 1.0", "EPL-1.0",
          "GNU Lesser General Public License", "LGPL-3.0",
          "Indiana University Extreme! Lab Software License", "IU-Extreme-1.1.1");

  private record Part(String file, String name, List<String> licences) {}

  @Test
  void the_bill_of_materials_lists_the_libraries_of_the_archive_and_no_others() throws IOException {
    Set<String> listed = new TreeSet<>();
    parts().forEach(part -> listed.add(part.file()));
    try (Stream<Path> files = Files.list(BUILT.resolve("lib"))) {
      assertThat(files.map(file -> file.getFileName().toString()).toList())
          .containsExactlyInAnyOrderElementsOf(listed);
    }
  }

  @Test
  void every_library_has_a_licence_that_lets_it_be_handed_on() throws IOException {
    for (Part part : parts()) {
      assertThat(part.licences()).as(part.name()).isNotEmpty();
      assertThat(part.licences()).as(part.name()).anyMatch(GOOD::contains);
    }
  }

  @Test
  void the_page_lists_them_all() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf("| licence |");
    if (Boolean.getBoolean("crumbtrail.write")) {
      Files.writeString(PAGE, page.substring(0, from) + table());
    } else {
      assertThat(page.substring(from)).isEqualTo(table());
    }
  }

  private static String table() throws IOException {
    Map<String, Set<String>> by = new TreeMap<>();
    for (Part part : parts()) {
      by.computeIfAbsent(String.join(" or ", part.licences()), one -> new TreeSet<>())
          .add(part.name());
    }
    StringBuilder text = new StringBuilder("| licence | library |\n|---|---|\n");
    by.forEach(
        (licence, names) ->
            text.append("| ")
                .append(licence)
                .append(" | ")
                .append(String.join(", ", names))
                .append(" |\n"));
    return text.toString();
  }

  private static List<Part> parts() throws IOException {
    JsonNode bill = new ObjectMapper().readTree(BUILT.resolve("sbom.cdx.json").toFile());
    List<Part> parts = new ArrayList<>();
    for (JsonNode one : bill.path("components")) {
      Set<String> licences = new TreeSet<>();
      for (JsonNode choice : one.path("licenses")) {
        JsonNode licence = choice.path("license");
        String said = licence.path("id").asText(licence.path("name").asText());
        String expression = choice.path("expression").asText("");
        licences.add(expression.isEmpty() ? CALLED.getOrDefault(said, said) : expression);
      }
      String name = one.path("name").asText();
      parts.add(
          new Part(
              name + "-" + one.path("version").asText() + ".jar", name, List.copyOf(licences)));
    }
    assertThat(parts).hasSizeGreaterThan(50);
    return parts;
  }
}
