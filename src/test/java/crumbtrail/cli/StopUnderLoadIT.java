package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The packaged server is told to stop while it is asked. */
@Tag("packaged")
@Timeout(300)
class StopUnderLoadIT {
  private static final Path JAR =
      Path.of(System.getProperty("crumbtrail.jar", "target/crumbtrail.jar")).toAbsolutePath();
  private static final Pattern LISTENS = Pattern.compile("listens on (\\S+)");
  private static final Pattern ID = Pattern.compile("\"id\"\\s*:\\s*(\\d+)");
  private static final int CLIENTS = 4;

  @TempDir Path folder;

  private record Running(Process process, URI address) {}

  @Test
  void what_was_begun_gets_a_whole_answer_and_the_process_ends() throws Exception {
    assumeThat(System.getProperty("os.name")).doesNotContain("Windows");
    String sheet = Files.readString(Path.of("cases", "over-proofed-tin-loaf.json"));
    Running server = start("--no-log");
    URI trace = server.address().resolve("/api/trace?only=causes");
    AtomicInteger whole = new AtomicInteger();
    ConcurrentLinkedQueue<String> broken = new ConcurrentLinkedQueue<>();
    ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
    AtomicBoolean told = new AtomicBoolean();
    for (int nth = 0; nth < CLIENTS; nth++) {
      clients.execute(() -> askUntilGone(trace, sheet, told, whole, broken));
    }
    while (whole.get() < 40) {
      TimeUnit.MILLISECONDS.sleep(20);
    }
    told.set(true);
    server.process().destroy();

    assertThat(server.process().waitFor(20, TimeUnit.SECONDS)).isTrue();
    clients.shutdown();
    assertThat(clients.awaitTermination(20, TimeUnit.SECONDS)).isTrue();
    assertThat(server.process().exitValue()).isIn(0, 143);
    assertThat(broken).isEmpty();
  }

  // Each request has a connection of its own: one that is refused was never begun.
  private static void askUntilGone(
      URI address,
      String sheet,
      AtomicBoolean told,
      AtomicInteger whole,
      ConcurrentLinkedQueue<String> broken) {
    while (true) {
      try {
        HttpResponse<String> answer = post(address, sheet);
        if (answer.statusCode() == 200 && answer.body().strip().endsWith("}")) {
          whole.incrementAndGet();
        } else if (answer.statusCode() != 503 || !told.get()) {
          broken.add(answer.statusCode() + " " + answer.body());
        }
      } catch (ConnectException refused) {
        return;
      } catch (IOException fault) {
        // A connection that still lay in the queue of the system is reset; nothing of it was read.
        if (!told.get() || !String.valueOf(fault.getMessage()).contains("reset")) {
          broken.add(String.valueOf(fault));
        }
        return;
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  @Test
  void what_the_log_acknowledged_is_there_after_restarts_under_load() throws Exception {
    assumeThat(System.getProperty("os.name")).doesNotContain("Windows");
    String keep =
        "{\"sheet\": {\"formula\": [\"500 g bread flour\", \"310 g water\"], \"seen\": [\"flat\"]}}";
    Set<Integer> acknowledged = new ConcurrentSkipListSet<>();
    for (int round = 0; round < 3; round++) {
      Running server = start("--log", folder.resolve("bakes").toString());
      URI bakes = server.address().resolve("/api/log/bakes");
      int before = acknowledged.size();
      ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
      for (int nth = 0; nth < CLIENTS; nth++) {
        clients.execute(() -> keepUntilGone(bakes, keep, acknowledged));
      }
      while (acknowledged.size() < before + 15) {
        TimeUnit.MILLISECONDS.sleep(20);
      }
      // Once asked to stop, twice killed.
      if (round == 0) {
        server.process().destroy();
      } else {
        server.process().destroyForcibly();
      }
      assertThat(server.process().waitFor(20, TimeUnit.SECONDS)).isTrue();
      clients.shutdown();
      assertThat(clients.awaitTermination(20, TimeUnit.SECONDS)).isTrue();
    }
    Running last = start("--log", folder.resolve("bakes").toString());
    try {
      Set<Integer> missing = new TreeSet<>();
      for (int id : acknowledged) {
        if (get(last.address().resolve("/api/log/bakes/" + id)) != 200) {
          missing.add(id);
        }
      }
      assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(45);
      assertThat(missing).isEmpty();
    } finally {
      last.process().destroy();
      last.process().waitFor();
    }
  }

  private static void keepUntilGone(URI bakes, String keep, Set<Integer> acknowledged) {
    while (true) {
      try {
        HttpResponse<String> answer = post(bakes, keep);
        Matcher id = ID.matcher(answer.body());
        if (answer.statusCode() < 300 && id.find()) {
          acknowledged.add(Integer.parseInt(id.group(1)));
        }
      } catch (IOException gone) {
        return;
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  private static HttpResponse<String> post(URI address, String body)
      throws IOException, InterruptedException {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(address)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body))
                .build(),
            BodyHandlers.ofString());
  }

  private static int get(URI address) throws IOException, InterruptedException {
    return HttpClient.newHttpClient()
        .send(HttpRequest.newBuilder(address).build(), BodyHandlers.discarding())
        .statusCode();
  }

  private Running start(String... more) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                JAR.toString(),
                "serve",
                "--port",
                "0"));
    command.addAll(List.of(more));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      Matcher found = LISTENS.matcher(line);
      if (found.find()) {
        return new Running(process, URI.create(found.group(1)));
      }
    }
    throw new IllegalStateException("The server ended without saying where it listens");
  }
}
