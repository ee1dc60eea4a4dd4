package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.store.Postgres;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands of the bake log as typed. */
class LogCommandsTest {
  private static final String CASE = Path.of("cases", "over-proofed-tin-loaf.json").toString();

  private final InputStream usualIn = System.in;
  private final PrintStream usualOut = System.out;
  private final PrintStream usualErr = System.err;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  private String log;

  @BeforeEach
  void listen() {
    log = folder.resolve("bakes").toString();
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void stop_listening() {
    System.setIn(usualIn);
    System.setOut(usualOut);
    System.setErr(usualErr);
  }

  @Test
  void a_bake_is_traced_kept_found_and_judged() throws IOException {
    assertThat(run("add", CASE, "--when", "2026-03-03T14:30", "--outcome", "failed")).isZero();
    assertThat(out()).startsWith("1  ").contains("(over-proofed, 9");

    assertThat(run("list", "--cause", "final proof too long")).isZero();
    assertThat(out()).contains("     1  2026-03-03  failed  ").contains("over-proofed?");

    assertThat(run("confirm", "1", "over-proofed", "--not", "salt-too-low")).isZero();
    assertThat(out()).contains("confirmed: over-proofed; ruled out: salt-too-low");
    assertThat(run("list")).isZero();
    assertThat(out()).contains("over-proofed\n").doesNotContain("?");

    assertThat(run("note", "1", "the", "clock", "stood")).isZero();
    assertThat(run("note", "1", "and the cat slept on the tin")).isZero();
    assertThat(run("list", "--search", "cat clock")).isZero();
    assertThat(out()).contains("     1  2026-03-03");
    assertThat(run("show", "1")).isZero();
    assertThat(out())
        .contains("confirmed  over-proofed")
        .contains("likely     over-proofed, 9")
        .contains("the clock stood\n\nand the cat slept");

    assertThat(run("edit", "1", "--label", "Tin loaf, warm", "--when", "2026-03-04")).isZero();
    assertThat(out()).isEqualTo("1  Tin loaf, warm  changed\n");
    assertThat(run("list", "--search", "warm")).isZero();
    assertThat(out()).contains("     1  2026-03-04");
    assertThat(run("show", "1")).isZero();
    assertThat(out()).contains("the clock stood", "confirmed  over-proofed");

    assertThat(run("show", "1", "--format", "sheet")).isZero();
    assertThat(out()).isEqualTo(Files.readString(Path.of(CASE)));
    assertThat(run("show", "1", "--format", "report")).isZero();
    assertThat(json().path("causes").path(0).path("key").asText()).isEqualTo("over-proofed");
    assertThat(run("retrace")).isZero();
    assertThat(err()).startsWith("0 bake(s) traced, 1 were up to date");
  }

  @Test
  void what_was_not_traced_is_traced_later() {
    assertThat(run("add", "demo", "--no-trace", "--label", "Later")).isZero();
    assertThat(out()).isEqualTo("1  Later\n");
    assertThat(run("show", "1", "--format", "report")).isEqualTo(2);
    assertThat(err()).contains("crumbtrail log retrace");

    assertThat(run("retrace")).isZero();
    assertThat(err()).startsWith("1 bake(s) traced, 0 were up to date");
    assertThat(run("list")).isZero();
    assertThat(out()).contains("over-proofed?");
  }

  @Test
  void outcome_photos_and_deletion() throws IOException {
    Path photo = folder.resolve("crumb.png");
    Files.write(photo, SomeBakes.picture(8, 6, "png"));
    assertThat(run("add", "demo", "--no-trace", "--photo", photo.toString())).isZero();
    assertThat(run("outcome", "1", "fair")).isZero();
    assertThat(run("photo", "1", photo.toString())).isZero();
    assertThat(out()).isEqualTo("1  photo 2\n");
    assertThat(run("photo", "1", "--save", folder.resolve("saved").toString())).isZero();
    assertThat(out().lines()).hasSize(2).allMatch(line -> Files.isReadable(Path.of(line)));
    assertThat(run("photo", "1", "--delete", "2")).isZero();
    assertThat(run("photo", "1", "--delete", "2")).isEqualTo(2);
    assertThat(run("list", "--format", "json")).isZero();
    JsonNode bake = json().path("bakes").path(0);
    assertThat(bake.path("photos").asInt()).isEqualTo(1);
    assertThat(bake.path("outcome").asText()).isEqualTo("fair");

    assertThat(run("delete", "1")).isEqualTo(2);
    assertThat(err()).contains("1 photo(s)").contains("Nothing was deleted");
    assertThat(run("delete", "1", "--yes")).isZero();
    assertThat(run("list")).isZero();
    assertThat(err()).contains("No bake is like that");
  }

  @Test
  void a_log_is_backed_up_and_put_back_on_a_server() throws IOException {
    Path sheets = folder.resolve("sheets.jsonl");
    Files.writeString(
        sheets, "{\"seen\": [\"dense\"]}\n{\"seen\": [\"flat\"], \"title\": \"Two\"}\n");
    String backup = folder.resolve("bakes.zip").toString();
    assertThat(run("import", sheets.toString(), "--when", "2026-03-01")).isZero();
    assertThat(err()).startsWith("2 bake(s) added, 0 known already, 0 line(s)");
    assertThat(run("export")).isZero();
    String before = out();
    assertThat(before.lines()).hasSize(2);
    assertThat(run("backup", backup)).isZero();
    assertThat(run("backup", backup)).isEqualTo(2);
    assertThat(err()).contains("is there already");

    log = Postgres.emptyDatabase();
    assertThat(run("restore", backup)).isZero();
    assertThat(out()).startsWith("2 bake(s) put back, 0 known already");
    assertThat(run("export")).isZero();
    assertThat(out()).isEqualTo(before);
    assertThat(run("export", "--to", folder.resolve("written").toString())).isZero();
    assertThat(Files.readString(folder.resolve("written/bakes.jsonl"))).isEqualTo(before);
  }

  @Test
  void lines_that_cannot_be_used_are_named_and_the_rest_are_taken() {
    System.setIn(
        new ByteArrayInputStream(
            "{\"sene\": []}\n{\"seen\": [\"dense\"]}\n".getBytes(StandardCharsets.UTF_8)));

    assertThat(run("import", "-")).isEqualTo(2);

    assertThat(err())
        .contains("line 1, sene: ")
        .contains("1 bake(s) added, 0 known already, 1 line");
  }

  @Test
  void a_fault_in_one_sheet_keeps_all_of_them_out() throws IOException {
    Path bad = folder.resolve("bad.json");
    Files.writeString(bad, "{\"process\": {\"room\": 21}}");

    assertThat(run("add", "demo", bad.toString(), "--no-trace")).isEqualTo(2);
    assertThat(err()).contains("process.room");
    assertThat(run("list")).isZero();
    assertThat(out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "add",
        "add nowhere.json",
        "add demo --when yesterday",
        "add demo --outcome great",
        "add demo --photo nowhere.jpg --no-trace",
        "add demo demo --photo pom.xml",
        "add demo --photo pom.xml",
        "list --cause hunger",
        "list --since march",
        "list --most 0",
        "show 7",
        "show seven",
        "confirm 7 over-proofed",
        "confirm 7",
        "confirm 7 over-proofed --not over-proofed",
        "note 7 x",
        "note 7",
        "outcome 7 good",
        "edit 7 --label x",
        "edit 7",
        "edit 7 --when soon",
        "photo 7",
        "photo 7 --delete 1",
        "delete 7",
        "import nowhere.csv",
        "import pom.xml",
        "export --to nowhere/there",
        "backup nowhere/there.zip",
        "restore nowhere.zip",
        "restore pom.xml",
        "restore cases"
      })
  void what_cannot_be_done_is_said_and_ends_with_two(String command) {
    assertThat(run(command.isEmpty() ? new String[0] : command.split(" "))).isEqualTo(2);
    assertThat(out()).isEmpty();
    assertThat(err().strip()).isNotEmpty().doesNotContain("Exception").doesNotContain("\tat ");
    assertThat(err()).doesNotContain("null").doesNotContain("fault of its own");
    assertThat(err().lines()).hasSizeLessThan(25);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jdbc:mysql://db/x", "jdbc:postgresql://127.0.0.1:1/x?password=hush"})
  void a_log_that_cannot_be_reached_is_named_without_its_password(String place) {
    log = place;
    assertThat(run("list")).isEqualTo(2);
    assertThat(err()).contains("The bake log jdbc:").doesNotContain("hush");
    assertThat(err().lines()).hasSize(2);
  }

  private int run(String... arguments) {
    out.reset();
    err.reset();
    List<String> all = new ArrayList<>(List.of("log"));
    all.addAll(List.of(arguments));
    if (arguments.length > 0) {
      all.addAll(List.of("--log", log));
    }
    return Main.run(all.toArray(String[]::new));
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out());
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
