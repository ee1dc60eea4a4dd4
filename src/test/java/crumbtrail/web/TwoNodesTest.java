package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.store.Postgres;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.people.Passwords;
import crumbtrail.people.Role;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Two servers, each a program of its own, on one PostgreSQL: neither keeps anything that the other
 * would miss.
 */
class TwoNodesTest {
  private static final String PASSWORD = "rye and salt and patience";

  private static LogPlace place;
  private static LogStore store;
  private static Node first;
  private static Node second;

  private record Node(Process process, Asker asker) {
    static Node start() throws IOException {
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty(
                      "surefire.test.class.path", System.getProperty("java.class.path")),
                  "crumbtrail.cli.Main",
                  "serve",
                  "--port",
                  "0",
                  "--people",
                  "--log",
                  place.url())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
      String line = String.valueOf(out.readLine());
      return new Node(
          process, new Asker(URI.create(line.replaceFirst("Crumbtrail listens on ", ""))));
    }
  }

  @BeforeAll
  static void serve() throws IOException {
    place = LogPlace.of(Postgres.emptyDatabase(), Map.of());
    store = SqlLogStore.open(place);
    String secret = Passwords.hash(PASSWORD);
    store.people().add("Ida", Role.KEEPER, secret);
    store.people().add("Jon", Role.BAKER, secret);
    store.people().add("Eva", Role.BAKER, secret);
    first = Node.start();
    second = Node.start();
  }

  @AfterAll
  static void stop() throws InterruptedException {
    for (Node node : new Node[] {first, second}) {
      node.process().destroyForcibly().waitFor();
    }
    store.close();
  }

  @Test
  void whoever_logs_in_at_one_works_at_the_other_and_goes_on_when_one_is_killed()
      throws InterruptedException {
    Member here = Member.in(first.asker(), "Jon", PASSWORD);
    Member there = new Member(second.asker(), here.token());
    HttpResponse<String> kept =
        there.post(
            "/log", Map.of("sheet", Tour.SHEET, "label", "On the second", "baked", "2026-03-03"));
    assertThat(kept.statusCode()).as(kept.body()).isEqualTo(303);
    assertThat(here.get("/log").body()).contains("On the second");

    // Tries at either are counted together.
    int tried = 0;
    HttpResponse<String> wrong;
    do {
      Node node = tried % 2 == 0 ? first : second;
      wrong = node.asker().postForm("/log/in", Map.of("name", "Eva", "password", "guess " + tried));
      tried++;
    } while (wrong.statusCode() == 401 && tried < 60);
    assertThat(wrong.statusCode()).isEqualTo(429);
    assertThat(tried).isBetween(21, 23);

    first.process().destroyForcibly();
    assertThat(first.process().waitFor(20, TimeUnit.SECONDS)).isTrue();

    assertThat(there.get("/log").body()).contains("On the second");
    assertThat(there.post("/log/out", Map.of()).statusCode()).isEqualTo(303);
    assertThat(there.get("/log").statusCode()).isEqualTo(303);
    Member again = Member.in(second.asker(), "Jon", PASSWORD);
    again.post("/log", Map.of("sheet", Tour.SHEET, "label", "Later", "baked", "2026-03-04"));
    assertThat(again.get("/log").body()).contains("On the second", "Later");
    long jon = store.people().account("Jon").orElseThrow().person().id();
    assertThat(store.of(Scope.baker(jon)).count()).isEqualTo(2);
  }
}
