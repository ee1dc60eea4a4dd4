package crumbtrail.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Asks a server for a long time and prints each minute how it does. Arguments: its port, how many
 * minutes, a bake sheet.
 */
public final class Soak {
  private static final int CLIENTS = 4;
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private Soak() {}

  @SuppressWarnings("SystemOut") // for a person at a terminal
  public static void main(String[] arguments) throws Exception {
    URI server = URI.create("http://127.0.0.1:" + arguments[0] + "/");
    String sheet = Files.readString(Path.of(arguments[2]));
    AtomicBoolean on = new AtomicBoolean(true);
    AtomicInteger failed = new AtomicInteger();
    ConcurrentLinkedQueue<Long> millis = new ConcurrentLinkedQueue<>();
    for (int nth = 0; nth < CLIENTS; nth++) {
      Thread client = new Thread(() -> ask(server, sheet, on, millis, failed));
      client.setDaemon(true);
      client.start();
    }
    System.out.println("minute  answered  failed  median ms  slowest ms  resident MB  heap MB");
    for (int minute = 1; minute <= Integer.parseInt(arguments[1]); minute++) {
      TimeUnit.MINUTES.sleep(1);
      List<Long> took = millis.stream().sorted().toList();
      millis.clear();
      String measures = measures(server);
      System.out.printf(
          "%6d  %8d  %6d  %9d  %10d  %11.0f  %7.0f%n",
          minute,
          took.size(),
          failed.getAndSet(0),
          took.isEmpty() ? 0 : took.get(took.size() / 2),
          took.isEmpty() ? 0 : took.get(took.size() - 1),
          megabytes(measures, "process_resident_memory_bytes"),
          megabytes(measures, "jvm_memory_used_bytes\\{area=\"heap\"\\}"));
    }
    on.set(false);
  }

  private static void ask(
      URI server,
      String sheet,
      AtomicBoolean on,
      ConcurrentLinkedQueue<Long> millis,
      AtomicInteger failed) {
    HttpRequest request =
        HttpRequest.newBuilder(server.resolve("/api/trace?only=causes"))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(sheet))
            .build();
    while (on.get()) {
      long from = System.nanoTime();
      try {
        if (CLIENT.send(request, BodyHandlers.ofString()).statusCode() == 200) {
          millis.add(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from));
        } else {
          failed.incrementAndGet();
        }
      } catch (IOException fault) {
        failed.incrementAndGet();
      } catch (InterruptedException stopped) {
        return;
      }
    }
  }

  private static String measures(URI server) throws IOException, InterruptedException {
    return CLIENT
        .send(HttpRequest.newBuilder(server.resolve("/metrics")).build(), BodyHandlers.ofString())
        .body();
  }

  private static double megabytes(String measures, String name) {
    Matcher found = Pattern.compile("(?m)^" + name + " (\\S+)$").matcher(measures);
    return found.find() ? Double.parseDouble(found.group(1)) / 1e6 : Double.NaN;
  }
}
