package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.LogStore;
import crumbtrail.people.Tokens;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Somebody before a shared log, with the cookie that their browser has.
 *
 * @param asker the server
 * @param token of the log-in, empty for nobody
 */
record Member(Asker asker, String token) {

  static Member nobody(Asker asker) {
    return new Member(asker, "");
  }

  /** Somebody who is logged in, without a password. */
  static Member in(Asker asker, LogStore store, long person) {
    String token = Tokens.fresh();
    store.people().begin(Tokens.hash(token), person, Instant.now());
    return new Member(asker, token);
  }

  /** Logs in as a browser does. */
  static Member in(Asker asker, String name, String password) {
    HttpResponse<String> answer =
        asker.postForm("/log/in", Map.of("name", name, "password", password));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
    return new Member(asker, cookie(answer));
  }

  /** The token that an answer gives to the browser. */
  static String cookie(HttpResponse<String> answer) {
    Matcher cookie =
        Pattern.compile("crumbtrail=([^;]+)")
            .matcher(String.join("\n", answer.headers().allValues("Set-Cookie")));
    assertThat(cookie.find()).isTrue();
    return cookie.group(1);
  }

  HttpResponse<String> get(String path) {
    return token.isEmpty()
        ? asker.get(path, "Accept", "text/html")
        : asker.get(path, "Accept", "text/html", "Cookie", "crumbtrail=" + token);
  }

  /** Posts a form of a page that was made for them. */
  HttpResponse<String> post(String path, Map<String, String> fields) {
    Map<String, String> sealed = new LinkedHashMap<>(fields);
    sealed.put("seal", Tokens.seal(token));
    return postUnsealed(path, sealed);
  }

  /** Posts a form as it is. */
  HttpResponse<String> postUnsealed(String path, Map<String, String> fields) {
    String body =
        fields.entrySet().stream()
            .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
            .collect(Collectors.joining("&"));
    return token.isEmpty()
        ? asker.post(path, Asker.FORM, body, "Accept", "text/html")
        : asker.post(
            path, Asker.FORM, body, "Accept", "text/html", "Cookie", "crumbtrail=" + token);
  }

  private static String encoded(String text) {
    return java.net.URLEncoder.encode(text, java.nio.charset.StandardCharsets.UTF_8);
  }

  static String location(HttpResponse<String> answer) {
    return answer.headers().firstValue("Location").orElse("");
  }
}
