package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.fuzz.Corpus;
import crumbtrail.fuzz.Fuzz;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whatever comes over the wire is answered or refused; nothing is a fault of the program. */
class WebFuzzTest {

  @Test
  void links_that_carry_a_sheet() throws IOException {
    List<String> links =
        Corpus.bakes().stream().flatMap(bake -> SheetLink.pack(bake).stream()).toList();
    Fuzz.of(
        "link",
        0.05,
        links,
        text -> {
          try {
            return !SheetLink.unpack(text).isEmpty();
          } catch (Refusal refused) {
            assertThat(refused.getMessage()).isNotBlank();
            return false;
          }
        });
  }

  @Test
  void bodies_of_forms() throws IOException {
    Fuzz.of(
        "form",
        0.05,
        forms(),
        text -> FormBody.read(text.getBytes(StandardCharsets.UTF_8)).isPresent());
  }

  /** The first line says where a body goes to; the rest is the body. */
  @Test
  void requests() throws IOException {
    List<String> seeds = new ArrayList<>();
    List<String> bakes = Corpus.bakes().subList(0, 8);
    for (String bake : bakes) {
      seeds.add("/api/trace\n" + bake);
      seeds.add("/api/precheck\n" + bake);
      seeds.add("/api/next?loaves=3&dough=900+g&start=07:30\n" + bake);
      seeds.add("/api/vary\n{\"sheet\":" + bake + ",\"turn\":{\"salt\":\"0..4%\"},\"steps\":2}");
      seeds.add("/api/compare\n{\"before\":" + bake + ",\"after\":" + bake + "}");
    }
    for (String form : forms()) {
      seeds.add("/trace\n" + form);
      seeds.add("/layout\n" + form);
      seeds.add("/next\n" + form);
    }
    try (WebFace face = WholeFace.start()) {
      Asker asker = new Asker(face.address());
      Fuzz.of("request", 0.01, seeds, text -> answered(asker, text));
      Fuzz.of("address", 0.02, addresses(), text -> raw(asker, text));
    }
  }

  private static boolean answered(Asker asker, String text) {
    int end = text.indexOf('\n');
    String to = end < 0 ? "/api/trace" : text.substring(0, end);
    // An address that is spoilt is tried raw, below.
    String path = to.matches("/(?!/)[\\w/?=&+:]*") ? to : "/api/trace";
    String type = path.startsWith("/api") ? Asker.JSON : Asker.FORM;
    HttpResponse<String> answer = asker.post(path, type, text.substring(end + 1));
    assertThat(answer.statusCode()).as(path).isBetween(200, 499);
    return answer.statusCode() < 400;
  }

  private static List<String> addresses() {
    String link = SheetLink.pack(Corpus.bakes().get(0)).orElseThrow();
    return List.of(
        "GET / HTTP/1.1",
        "GET /trace?sheet=" + link + " HTTP/1.1",
        "GET /api/causes/over-proofed HTTP/1.1",
        "GET /handbook/signs/dense-crumb?lang=de HTTP/1.1",
        "GET /lessons/1?step=2 HTTP/1.1",
        "GET /mystery?seed=7&level=2 HTTP/1.1",
        "HEAD /assets/sheet.js HTTP/1.1",
        "GET /api/signs?q=crumb&n=5 HTTP/1.1",
        "OPTIONS /api/trace HTTP/1.1");
  }

  // What the server's own reader of HTTP makes of it is not ours; a fault of the program would be.
  private static boolean raw(Asker asker, String line) throws IOException {
    String answer =
        asker.raw(
            line.replace("\n", "%0A").replace("\r", "%0D")
                + "\r\nHost: "
                + asker.base().getAuthority()
                + "\r\nConnection: close\r\n\r\n");
    assertThat(answer).doesNotStartWith("HTTP/1.1 500").doesNotContain("java.lang", "incident");
    return answer.startsWith("HTTP/1.1 2") || answer.startsWith("HTTP/1.1 3");
  }

  private static List<String> forms() {
    List<String> forms = new ArrayList<>();
    for (String bake : Corpus.bakes().subList(0, 8)) {
      forms.add("sheet=" + URLEncoder.encode(bake, StandardCharsets.UTF_8) + "&loaves=2");
    }
    forms.add("recipe=500+g+flour%0A300+g+water&seen=dense+crumb&title=T%C3%BCr&one=on");
    return forms;
  }
}
