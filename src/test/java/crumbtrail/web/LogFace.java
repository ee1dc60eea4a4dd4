package crumbtrail.web;

import crumbtrail.api.Shelf;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.handbook.CauseCards;
import crumbtrail.handbook.Leaves;
import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** The server with a log behind it. */
final class LogFace {
  private static final String BOUNDARY = "tide-mill";

  private LogFace() {}

  /** A file for the log of one person. */
  static LogPlace file(Path folder) {
    return LogPlace.of(folder.resolve("bakes").toString(), Map.of());
  }

  /** The log of one person. */
  static WebFace start(LogPlace place) {
    return start(LogServing.own(new LogDoor(() -> SqlLogStore.open(place))));
  }

  /** Nothing behind the server but a log. */
  static WebFace bare(LogServing serving) {
    return WebFace.start(
        Samples.making(Samples.everywhere("plain words")),
        LoafPictures.none(),
        Optional.of(serving),
        "127.0.0.1",
        0);
  }

  /** A server without a log. */
  static WebFace without() {
    return WebFace.start(Samples.making(Samples.everywhere("plain words")), "127.0.0.1", 0);
  }

  static WebFace start(LogServing serving) {
    RuleBase rules = RuleBase.bundled();
    RuleBook book = RuleBook.bundled();
    return WebFace.start(
        new PostMortemTracer(new PostMortem(rules)),
        School.of(rules),
        new Shelf(book.catalogue(), new CauseCards(book), rules.version()),
        new Leaves(book),
        LoafPictures.of(rules.catalogue()),
        Optional.of(serving),
        Doorway.at("127.0.0.1", 0));
  }

  /** Sends a file as a browser does. */
  static HttpResponse<String> upload(
      URI address, Map<String, String> fields, byte[] file, String... headers)
      throws IOException, InterruptedException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (Map.Entry<String, String> field : fields.entrySet()) {
      write(body, "form-data; name=\"" + field.getKey() + "\"", "text/plain");
      body.write((field.getValue() + "\r\n").getBytes(StandardCharsets.UTF_8));
    }
    write(body, "form-data; name=\"photo\"; filename=\"../crumb.jpg\"", "image/jpeg");
    body.write(file);
    body.write(("\r\n--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
    HttpRequest.Builder request =
        HttpRequest.newBuilder(address)
            .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
            .POST(BodyPublishers.ofByteArray(body.toByteArray()));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofString());
  }

  private static void write(ByteArrayOutputStream body, String disposition, String type)
      throws IOException {
    body.write(
        ("--"
                + BOUNDARY
                + "\r\nContent-Disposition: "
                + disposition
                + "\r\nContent-Type: "
                + type
                + "\r\n\r\n")
            .getBytes(StandardCharsets.UTF_8));
  }
}
