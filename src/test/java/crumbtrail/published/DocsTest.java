package crumbtrail.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the handbook to what it points to: files, headings, tests and checks. */
class DocsTest {
  private static final Pattern LINK = Pattern.compile("]\\(([^)#:\\s]*)(?:#([^)\\s]*))?\\)");
  private static final Pattern FENCE = Pattern.compile("(?ms)^```.*?^```");
  private static final Pattern TEST_CLASS = Pattern.compile("`((?:\\w+\\.)+[A-Z]\\w+)`");
  private static final Pattern CODE = Pattern.compile("`([a-z]\\w+)`");
  private static final Pattern EMPHASIS = Pattern.compile("\\*([^*]+)\\*");

  @Test
  void every_link_leads_to_a_file_and_a_heading() throws IOException {
    List<String> dead = new ArrayList<>();
    for (Path page : pages()) {
      for (MatchResult link : found(LINK, FENCE.matcher(read(page)).replaceAll(""))) {
        Path target = link.group(1).isEmpty() ? page : page.resolveSibling(link.group(1));
        String heading = link.group(2);
        if (!Files.exists(target) || (heading != null && !headings(target).contains(heading))) {
          dead.add(page + ": " + link.group());
        }
      }
    }
    assertThat(dead).isEmpty();
  }

  @Test
  void every_page_of_science_is_in_its_index() throws IOException {
    String index = read(Path.of("docs/science/README.md"));
    assertThat(pages())
        .filteredOn(page -> page.startsWith("docs/science") && !page.endsWith("README.md"))
        .allSatisfy(page -> assertThat(index).contains("](" + page.getFileName() + ")"));
  }

  @Test
  void every_reference_number_is_tested_where_the_page_says() throws IOException {
    String checks = read(Path.of("docs/science/checks.md"));
    List<String> rows =
        read(Path.of("docs/science/test-vectors.md"))
            .lines()
            .filter(line -> line.matches("\\| \\d.*"))
            .toList();
    assertThat(rows).hasSize(21);
    for (String row : rows) {
      String[] cells = row.split("\\|");
      String name = found(TEST_CLASS, cells[5]).get(0).group(1);
      Path file = Path.of("src/test/java/crumbtrail", name.replace('.', '/') + ".java");
      assertThat(file).as(row).exists();
      for (MatchResult method : found(CODE, cells[6])) {
        assertThat(read(file)).as(row).contains("void " + method.group(1) + "(");
      }
      for (MatchResult check : found(EMPHASIS, cells[6])) {
        assertThat(checks).as(row).contains("| " + check.group(1) + " |");
      }
      assertThat(found(CODE, cells[6]).size() + found(EMPHASIS, cells[6]).size()).isPositive();
    }
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      return Stream.concat(
              docs.filter(file -> file.toString().endsWith(".md")),
              Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")))
          .sorted()
          .toList();
    }
  }

  // Anchors as code hosts make them: lower case, hyphens for spaces, nothing but letters.
  private static Set<String> headings(Path page) {
    return read(page)
        .lines()
        .filter(line -> line.startsWith("#"))
        .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT))
        .map(line -> line.replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-'))
        .collect(Collectors.toSet());
  }

  private static List<MatchResult> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException fault) {
      throw new UncheckedIOException(file.toString(), fault);
    }
  }
}
