package crumbtrail.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * How long a server takes for the page of findings, one bake after the other: every case round by
 * round, the rounds to warm up left out. Arguments: its port, rounds to warm up, rounds to measure.
 */
public final class FindingsTime {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private FindingsTime() {}

  @SuppressWarnings("SystemOut") // for a person at a terminal
  public static void main(String[] arguments) throws Exception {
    List<URI> pages = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
        pages.add(
            URI.create(
                "http://127.0.0.1:"
                    + arguments[0]
                    + "/trace?sheet="
                    + packed(Files.readString(file))));
      }
    }
    rounds(pages, Integer.parseInt(arguments[1]));
    List<Double> took = rounds(pages, Integer.parseInt(arguments[2])).stream().sorted().toList();
    System.out.println("pages  median ms  90 % ms  95 % ms  slowest ms");
    System.out.printf(
        "%5d  %9.0f  %7.0f  %7.0f  %10.0f%n",
        took.size(), at(took, 0.5), at(took, 0.9), at(took, 0.95), at(took, 1));
  }

  private static List<Double> rounds(List<URI> pages, int rounds)
      throws IOException, InterruptedException {
    List<Double> millis = new ArrayList<>();
    for (int round = 0; round < rounds; round++) {
      for (URI page : pages) {
        long from = System.nanoTime();
        HttpResponse<byte[]> answer =
            CLIENT.send(HttpRequest.newBuilder(page).build(), BodyHandlers.ofByteArray());
        millis.add((System.nanoTime() - from) / 1e6);
        if (answer.statusCode() != 200) {
          throw new IllegalStateException(answer.statusCode() + " from " + page);
        }
      }
    }
    return millis;
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.get((int) Math.min(sorted.size() - 1, share * sorted.size()));
  }

  // As a link carries it.
  private static String packed(String sheet) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (DeflaterOutputStream out =
        new DeflaterOutputStream(packed, new Deflater(Deflater.BEST_COMPRESSION, true))) {
      out.write(sheet.getBytes(StandardCharsets.UTF_8));
    }
    return Base64.getUrlEncoder().withoutPadding().encodeToString(packed.toByteArray());
  }
}
