package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.store.SqlLogStore;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a server tells whoever watches over it. */
class WatchingTest {
  @RegisterExtension static final StoodIn face = new StoodIn();

  @TempDir Path folder;

  @Test
  void measures_name_routes_by_template_and_nothing_that_was_sent() {
    assertThat(face.asker().post("/api/trace", Asker.JSON, "{}").statusCode()).isEqualTo(200);
    face.asker().get("/pictures/secret-word.svg");
    face.asker().get("/log/secret-word/findings?secret=word");
    face.asker().method("SECRETWORD", "/");
    face.asker().get("/assets/crumbtrail.css");

    HttpResponse<String> told = face.asker().get("/metrics", "Accept", "text/plain;version=0.0.4");

    assertThat(told.statusCode()).isEqualTo(200);
    assertThat(told.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/plain");
    assertThat(told.body())
        .containsPattern(
            "crumbtrail_http_requests_total\\{method=\"POST\",route=\"/api/trace\",status=\"200\"\\}"
                + " [1-9]")
        .containsPattern("route=\"/pictures/[{<]\\w+[}>].svg\",status=\"404\"|/pictures/")
        .contains("route=\"/assets\",status=\"200\"")
        .contains("route=\"none\",status=\"404\"")
        .containsPattern(
            "crumbtrail_http_request_seconds_bucket\\{route=\"/api/trace\",le=\"0.25\"\\}")
        .containsPattern("crumbtrail_sheets_total\\{outcome=\"made\",work=\"trace\"\\} [1-9]")
        .contains("jvm_memory_used_bytes{area=\"heap\"}")
        .doesNotContainIgnoringCase("secret");
  }

  @ParameterizedTest
  @ValueSource(strings = {"X-Forwarded-For", "Forwarded"})
  void measures_are_not_told_to_others_through_a_proxy_on_this_machine(String header)
      throws Exception {
    StoodIn.problem(face.asker().get("/metrics", header, "198.51.100.7"), 403);
    try (WebFace open = started(Watchers.ANYWHERE);
        WebFace none = started(Watchers.NOBODY)) {
      assertThat(new Asker(open.address()).get("/metrics", header, "198.51.100.7").statusCode())
          .isEqualTo(200);
      StoodIn.problem(new Asker(none.address()).get("/metrics"), 404);
    }
  }

  private static WebFace started(Watchers watchers) {
    return WebFace.start(face.tracer(), Doorway.at("127.0.0.1", 0).watchedBy(watchers));
  }

  @Test
  void it_is_ready_when_the_rules_are_laid_out_and_alive_before() throws Exception {
    AtomicBoolean laid = new AtomicBoolean();
    face.readyWhen(laid::get);
    StoodIn.problem(face.asker().get("/ready"), 503);
    assertThat(face.asker().get("/health").statusCode()).isEqualTo(200);
    laid.set(true);
    assertThat(face.asker().get("/ready").body()).contains("\"ready\"");
  }

  @Test
  void it_is_ready_when_the_log_answers_and_not_before() throws Exception {
    Path file = folder.resolve("bakes");
    Path held = Files.writeString(folder.resolve("bakes.mv.db"), "no log at all");
    LogPlace place = LogPlace.of(file.toString(), Map.of());
    try (WebFace server =
        LogFace.bare(LogServing.own(new LogDoor(() -> SqlLogStore.open(place))))) {
      Asker asker = new Asker(server.address());
      HttpResponse<String> refused = asker.get("/ready");
      StoodIn.problem(refused, 503);
      assertThat(refused.body()).doesNotContain(folder.toString());
      Files.delete(held);
      Thread.sleep(1100);
      assertThat(asker.get("/ready").statusCode()).isEqualTo(200);
    }
  }
}
