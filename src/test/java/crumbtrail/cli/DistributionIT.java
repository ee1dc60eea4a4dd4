package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive as it is unpacked and started, on systems that have a shell. */
@Tag("packaged")
class DistributionIT {
  private static final long LONGEST_MINUTES = 5;

  @TempDir static Path folder;

  private static Path home;

  private record Ended(int status, String out, String err) {}

  @BeforeAll
  static void unpack() throws IOException {
    assumeThat(System.getProperty("os.name")).doesNotContain("Windows");
    Path built = Path.of(System.getProperty("crumbtrail.jar", "target/crumbtrail.jar")).getParent();
    Path archive;
    try (Stream<Path> files = Files.list(built)) {
      archive = files.filter(one -> one.toString().endsWith("-dist.zip")).findFirst().orElseThrow();
    }
    Path target = folder.resolve("a folder with blanks");
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(archive))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        write(target.resolve(entry.getName()), entry, zip);
      }
    }
    try (Stream<Path> unpacked = Files.list(target)) {
      home = unpacked.findFirst().orElseThrow();
    }
    assertThat(home.resolve("bin/crumbtrail").toFile().setExecutable(true)).isTrue();
  }

  private static void write(Path file, ZipEntry entry, InputStream content) throws IOException {
    if (entry.isDirectory()) {
      Files.createDirectories(file);
    } else {
      Files.createDirectories(file.getParent());
      Files.copy(content, file);
    }
  }

  @Test
  void it_starts_from_any_folder_by_a_link_too() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("ct"), home.resolve("bin/crumbtrail"));

    Ended ended = run(link, Map.of(), "--version");

    assertThat(ended.status()).isZero();
    assertThat(ended.out())
        .matches("(?s)crumbtrail \\d+\\.\\d+\\.\\d+\\Rrules 1\\.\\d+, [0-9a-f]{16}\\RJava .*");
  }

  @Test
  void the_first_start_keeps_the_classes_and_the_second_says_the_same() throws Exception {
    Path cache = folder.resolve("cache");
    Map<String, String> kept = Map.of("XDG_CACHE_HOME", cache.toString());
    String sheet = home.resolve("cases/over-proofed-tin-loaf.json").toString();

    Ended first = run(home.resolve("bin/crumbtrail"), kept, "trace", sheet);
    List<Path> classes = files(cache);
    Ended second = run(home.resolve("bin/crumbtrail"), kept, "trace", sheet);

    assertThat(first.status()).as(first.err()).isZero();
    assertThat(first.out()).contains("1. final proof too long");
    assertThat(classes).singleElement().asString().endsWith(".jsa");
    assertThat(second.out()).isEqualTo(first.out());
    assertThat(second.err()).isEqualTo(first.err());
  }

  @Test
  void it_works_where_no_classes_can_be_kept_and_hands_the_status_on() throws Exception {
    Path file = Files.writeString(folder.resolve("no-folder"), "");

    Ended ended =
        run(
            home.resolve("bin/crumbtrail"),
            Map.of("XDG_CACHE_HOME", file.toString()),
            "trace",
            "nowhere.json");

    assertThat(ended.status()).isEqualTo(2);
    assertThat(ended.err()).contains("nowhere.json").doesNotContain("no-folder");
  }

  @Test
  void without_java_it_says_what_to_do() throws Exception {
    Ended ended =
        run(home.resolve("bin/crumbtrail"), Map.of("PATH", path(), "JAVA_HOME", ""), "--version");

    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("there is no Java here", "CRUMBTRAIL_JAVA");
  }

  // A path with the tools that the launcher needs and no Java.
  private static String path() throws IOException {
    Path tools = Files.createDirectories(folder.resolve("tools"));
    for (String tool : List.of("sh", "dirname", "readlink", "env")) {
      for (String place : List.of("/bin", "/usr/bin")) {
        Path found = Path.of(place, tool);
        if (Files.exists(found) && !Files.exists(tools.resolve(tool))) {
          Files.createSymbolicLink(tools.resolve(tool), found);
        }
      }
    }
    return tools.toString();
  }

  private static List<Path> files(Path under) throws IOException {
    try (Stream<Path> all = Files.walk(under)) {
      return all.filter(Files::isRegularFile).toList();
    } catch (UncheckedIOException gone) {
      throw gone.getCause();
    }
  }

  private static Ended run(Path launcher, Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    command.addAll(List.of(arguments));
    Path out = Files.createTempFile(folder, "out", ".txt");
    Path err = Files.createTempFile(folder, "err", ".txt");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    assertThat(process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES)).isTrue();
    return new Ended(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }
}
