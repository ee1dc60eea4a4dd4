package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.LogPlace;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page on the interface for programs, and each of its examples against a server. */
class ApiPageTest {
  private static final Path PAGE = Path.of("docs", "api.md");
  private static final Pattern EXAMPLE =
      Pattern.compile("(?s)```sh\\n(.*?)\\n```\\n\\n```json\\n(.*?)\\n```");
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path folder;

  private static WebFace face;
  private static LogPlace place;
  private static WebFace school;

  @BeforeAll
  static void serve() {
    face = ApiServer.start();
    place = LogFace.file(folder);
    school = ApiServer.school(place);
  }

  @AfterAll
  static void stop() {
    face.close();
    school.close();
  }

  /** A request for a shell, and what is shown of its answer. */
  record Shell(String command, String shown) {}

  static Stream<Shell> examples() throws IOException {
    return EXAMPLE
        .matcher(Files.readString(PAGE))
        .results()
        .map(match -> new Shell(match.group(1), match.group(2)));
  }

  @Test
  void the_page_says_what_the_descriptions_say() throws IOException {
    String written = ApiPage.write();
    if (Boolean.getBoolean("crumbtrail.write")) {
      Files.writeString(PAGE, written);
    }
    assertThat(Files.readString(PAGE))
        .as(
            "docs/api.md is out of date; write it anew: mvn test -Dtest=ApiPageTest"
                + " -Dcrumbtrail.write=true")
        .isEqualTo(written);
  }

  @Test
  void every_fenced_request_is_one_of_the_examples() throws IOException {
    List<Shell> examples = examples().toList();
    long fences = Files.readAllLines(PAGE).stream().filter("```sh"::equals).count();
    assertThat(examples).hasSize((int) fences).hasSizeGreaterThan(18);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void an_example_is_answered_as_it_is_shown(Shell example) throws Exception {
    JsonNode shown = JSON.readTree(example.shown());
    boolean people = example.command().matches("(?s).*/api/log/(session|account|classes|people).*");
    WebFace asked = people ? school : face;
    String address = asked.address().toString().replaceFirst("/$", "");
    String command = example.command().replace(ApiPage.SERVER, address) + " -w '\\n%{http_code}'";
    ProcessBuilder shell = new ProcessBuilder("sh", "-c", command);
    shell.environment().put("TOKEN", people ? ApiServer.token(place) : "");
    Process process = shell.start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as("curl must be there").isZero();
    int end = out.lastIndexOf('\n');
    // Only a problem shows a status of its own.
    assertThat(out.substring(end + 1))
        .as(out)
        .isEqualTo(
            String.valueOf(shown.path("type").isTextual() ? shown.path("status").asInt() : 200));
    assertThat(Shown.missing(shown, JSON.readTree(out.substring(0, end)))).isEmpty();
  }
}
