package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a command need not wait for. */
class StartUpTest {
  @TempDir Path folder;

  @Test
  void serving_loads_them_when_somebody_asks_for_the_log() throws Exception {
    Path classes = folder.resolve("classes.txt");
    Path out = folder.resolve("out.txt");
    Process process =
        started(classes, out, "serve", "--port", "0", "--log", folder.resolve("log").toString());
    try {
      String address = "";
      while (address.isEmpty() && process.isAlive()) {
        address = Files.readString(out).replaceAll("(?s).*listens on (\\S+).*|.*", "$1");
        Thread.sleep(20);
      }
      get(address);
      assertThat(Files.readAllLines(classes)).noneMatch(StartUpTest::ofDatabases);
      assertThat(get(address + "log")).contains("Bake log");
      assertThat(Files.readAllLines(classes)).anyMatch(StartUpTest::ofDatabases);
    } finally {
      process.destroy();
      process.waitFor();
    }
  }

  private static String get(String address) throws Exception {
    return HttpClient.newHttpClient()
        .send(HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofString())
        .body();
  }

  @Test
  void a_trace_loads_nothing_of_the_databases() throws Exception {
    Path classes = folder.resolve("classes.txt");
    Process process = started(classes, folder.resolve("out.txt"), "trace", "demo");

    assertThat(process.waitFor()).isZero();
    List<String> loaded = Files.readAllLines(classes);
    assertThat(loaded).anyMatch(line -> line.contains("crumbtrail.report.Report "));
    assertThat(loaded).noneMatch(StartUpTest::ofDatabases);
  }

  private static boolean ofDatabases(String line) {
    return line.contains(" org.h2.")
        || line.contains(" org.jdbi.")
        || line.contains(" org.flywaydb.")
        || line.contains(" com.zaxxer.")
        || line.contains(" org.postgresql.")
        || line.contains(" crumbtrail.bakelog.store.");
  }

  private static Process started(Path classes, Path out, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xlog:class+load:file=" + classes);
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-cp");
    command.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    command.add("crumbtrail.cli.Main");
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(out.toFile())
        .start();
  }
}
