package crumbtrail.web;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/** Asks a running server, as a browser or a program would. */
record Asker(URI base) {

  static final String FORM = "application/x-www-form-urlencoded";
  static final String JSON = "application/json";

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  HttpResponse<String> get(String path, String... headers) {
    return send(request(path, headers).GET());
  }

  HttpResponse<String> method(String method, String path, String... headers) {
    return send(request(path, headers).method(method, BodyPublishers.noBody()));
  }

  HttpResponse<String> post(String path, String type, String body, String... headers) {
    HttpResponse<String> answer =
        send(
            request(path, headers)
                .header("Content-Type", type)
                .POST(BodyPublishers.ofString(body)));
    // As a browser does: findings stand under an address of their own.
    return answer
        .headers()
        .firstValue("Location")
        .filter(to -> to.contains("?sheet="))
        .map(to -> get(to, headers))
        .orElse(answer);
  }

  HttpResponse<String> send(
      String method, String path, String type, String body, String... headers) {
    return send(
        request(path, headers)
            .header("Content-Type", type)
            .method(method, BodyPublishers.ofString(body)));
  }

  /** Posts a body whose length is not announced. */
  HttpResponse<String> postInChunks(String path, String type, String body) {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    return send(
        request(path)
            .header("Content-Type", type)
            .POST(BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(bytes))));
  }

  HttpResponse<String> postForm(Map<String, String> fields) {
    return postForm("/trace", fields);
  }

  HttpResponse<String> postForm(String path, Map<String, String> fields) {
    String body =
        fields.entrySet().stream()
            .map(e -> encode(e.getKey()) + "=" + encode(e.getValue()))
            .collect(Collectors.joining("&"));
    return post(path, FORM, body, "Accept", "text/html");
  }

  /** Sends bytes that no well-behaved client would send, and returns all that comes back. */
  String raw(String request) throws IOException {
    try (Socket socket = new Socket(base.getHost(), base.getPort())) {
      // Less than an idle connection is given, so that one which is left open is noticed.
      socket.setSoTimeout(25_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private HttpRequest.Builder request(String path, String... headers) {
    HttpRequest.Builder builder = HttpRequest.newBuilder(base.resolve(path));
    return headers.length == 0 ? builder : builder.headers(headers);
  }

  private static HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return CLIENT.send(request.build(), BodyHandlers.ofString());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String encode(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
