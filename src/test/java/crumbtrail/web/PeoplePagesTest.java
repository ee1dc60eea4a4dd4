package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.people.Account;
import crumbtrail.people.Passwords;
import crumbtrail.people.Person;
import crumbtrail.people.Rate;
import crumbtrail.people.Role;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Logging in, joining a class, looking after accounts. */
class PeoplePagesTest {
  private static final String PASSWORD = "rye and salt and patience";
  private static final String SECRET = Passwords.hash(PASSWORD);
  private static final String HOSTILE = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>";
  private static final String[] HTTPS = {"X-Forwarded-Proto", "https"};

  @TempDir static Path folder;

  private static LogPlace place;
  private static WebFace face;
  private static WebFace proxied;
  private static Asker asker;

  private LogStore store;
  private long ida;
  private long una;
  private long jon;

  @BeforeAll
  static void serve() {
    place = LogFace.file(folder);
    face = LogFace.bare(new LogServing(new LogDoor(() -> SqlLogStore.open(place)), true, false));
    proxied = LogFace.bare(new LogServing(new LogDoor(() -> SqlLogStore.open(place)), true, true));
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
    proxied.close();
  }

  @BeforeEach
  void school() {
    store = SqlLogStore.open(place);
    for (Person one : store.people().everybody(99, 0)) {
      store.people().role(one.id(), Role.BAKER);
      store.people().delete(one.id());
    }
    store.people().everybody(99, 0).forEach(one -> store.people().delete(one.id()));
    ida = store.people().add("Ida", Role.KEEPER, SECRET).orElseThrow().id();
    una = store.people().add("Una", Role.TEACHER, SECRET).orElseThrow().id();
    jon = store.people().add("Jon", Role.BAKER, SECRET).orElseThrow().id();
    store.people().forgive("log-in from 127.0.0.1");
    store.people().forgive("log-in of ida");
    store.people().forgive("log-in of jon");
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void whoever_has_the_password_is_let_in_with_a_cookie_that_scripts_cannot_read() {
    HttpResponse<String> answer =
        asker.postForm(
            "/log/in", Map.of("name", " jON", "password", PASSWORD, "to", "/log?words=a"));
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(Member.location(answer)).isEqualTo("/log?words=a");
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    assertThat(cookie)
        .matches("crumbtrail=[\\w-]{43}; ?Path=/; ?HttpOnly; ?SameSite=Lax.*")
        .doesNotContain("Secure", "Max-Age", "Expires", "Domain");
    Member member = new Member(asker, Member.cookie(answer));
    assertThat(member.get("/log").body()).contains("Logged in as Jon").doesNotContain("Classes");

    assertThat(member.post("/log/out", Map.of()).headers().firstValue("Set-Cookie").orElseThrow())
        .contains("crumbtrail=;", "Expires=Thu, 01 Jan 1970");
    assertThat(member.get("/log").statusCode()).isEqualTo(303);
  }

  @Test
  void a_wrong_name_and_a_wrong_password_are_told_alike() {
    HttpResponse<String> wrong =
        asker.postForm("/log/in", Map.of("name", "Jon", "password", "not this one"));
    HttpResponse<String> nobody =
        asker.postForm("/log/in", Map.of("name", "Noj", "password", "not this one"));
    assertThat(wrong.statusCode()).isEqualTo(401);
    assertThat(nobody.statusCode()).isEqualTo(401);
    assertThat(wrong.body()).contains("Name and password do not belong together.", "value=\"Jon\"");
    assertThat(wrong.body().replace("Jon", "Noj")).isEqualTo(nobody.body());
    assertThat(wrong.headers().firstValue("Set-Cookie")).isEmpty();
  }

  @Test
  void an_account_is_tried_so_often_and_no_oftener() {
    int tries = 0;
    long from = System.nanoTime();
    HttpResponse<String> answer;
    do {
      answer = asker.postForm("/log/in", Map.of("name", "Jon", "password", "guess " + tries));
      tries++;
    } while (answer.statusCode() == 401 && tries < 40);
    assertThat(answer.statusCode()).isEqualTo(429);
    // One more is allowed with time, which passes on a busy machine.
    Duration passed = Duration.ofNanos(System.nanoTime() - from);
    assertThat(tries).isBetween(21, 21 + (int) (passed.toMillis() / Rate.ACCOUNT.interval()));
    assertThat(answer.headers().firstValue("Retry-After").orElseThrow()).matches("\\d{1,2}");
    assertThat(answer.body()).contains("Too many tries");
    assertThat(asker.postForm("/log/in", Map.of("name", "JON ", "password", PASSWORD)).statusCode())
        .as("the right password is no better")
        .isEqualTo(429);
    assertThat(Member.in(asker, "Ida", PASSWORD).get("/log").statusCode()).isEqualTo(200);
  }

  @Test
  void behind_a_proxy_the_cookie_is_for_cipher_only_and_addresses_are_told_apart() {
    Asker through = new Asker(proxied.address());
    HttpResponse<String> answer =
        through.post(
            "/log/in",
            Asker.FORM,
            "name=Jon&password=" + PASSWORD.replace(' ', '+'),
            "X-Forwarded-Proto",
            "https",
            "X-Forwarded-For",
            "198.51.100.7, 203.0.113.9");
    assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow())
        .startsWith("__Host-crumbtrail=")
        .contains("Secure", "HttpOnly", "SameSite=Lax", "Path=/");
    String cookie = "__Host-crumbtrail=" + Member.cookie(answer);
    assertThat(
            through
                .get("/log", "Cookie", cookie, HTTPS[0], HTTPS[1], "Host-Unused", "x")
                .statusCode())
        .isEqualTo(200);
    assertThat(through.get("/log", "Cookie", cookie.replace("__Host-", ""), HTTPS[0], HTTPS[1]))
        .matches(other -> other.statusCode() == 303, "a cookie that was sent in clear");

    // The address is the one that the proxy saw; what stands before it anybody can write.
    assertThat(store.people().take("log-in from 203.0.113.9", oneInAnHour(), now())).isPresent();
    assertThat(store.people().take("log-in from 198.51.100.7", oneInAnHour(), now())).isEmpty();
  }

  @Test
  void without_a_proxy_nobody_believes_its_headers() {
    HttpResponse<String> answer =
        asker.post(
            "/log/in",
            Asker.FORM,
            "name=Jon&password=" + PASSWORD.replace(' ', '+'),
            "X-Forwarded-Proto",
            "https",
            "X-Forwarded-For",
            "203.0.113.77");
    assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow()).startsWith("crumbtrail=");
    assertThat(store.people().take("log-in from 203.0.113.77", oneInAnHour(), now())).isEmpty();
  }

  private static crumbtrail.people.Rate oneInAnHour() {
    return new crumbtrail.people.Rate(1, java.time.Duration.ofHours(1));
  }

  private static java.time.Instant now() {
    return java.time.Instant.now();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://evil.example/",
        "//evil.example",
        "/\\evil.example",
        "/trace",
        "/log/../trace\r\nSet-Cookie: x=y",
        "/log/in",
        "javascript:alert(1)"
      })
  void nobody_is_led_astray_after_a_log_in(String to) {
    HttpResponse<String> answer =
        asker.postForm("/log/in", Map.of("name", "Jon", "password", PASSWORD, "to", to));
    assertThat(Member.location(answer)).isEqualTo("/log");
  }

  @Test
  void what_is_sent_without_being_logged_in_is_not_lost() {
    HttpResponse<String> turned =
        Member.nobody(asker)
            .postUnsealed(
                "/log",
                Map.of(
                    "sheet", Tour.SHEET,
                    "label", "Tuesday & <b>",
                    "baked", "2026-03-03",
                    "note", "ö\nsecond line"));
    assertThat(turned.statusCode()).isEqualTo(401);
    assertThat(turned.body()).contains("What you sent is not lost.");
    Map<String, String> form =
        Map.of(
            "name",
            "Jon",
            "password",
            "a wrong one at first",
            "to",
            hidden(turned.body(), "to"),
            "carried",
            hidden(turned.body(), "carried"));
    HttpResponse<String> wrong = asker.postForm("/log/in", form);
    assertThat(hidden(wrong.body(), "carried")).isEqualTo(form.get("carried"));

    HttpResponse<String> in =
        asker.postForm(
            "/log/in",
            Map.of(
                "name",
                "Jon",
                "password",
                PASSWORD,
                "to",
                hidden(wrong.body(), "to"),
                "carried",
                hidden(wrong.body(), "carried")));
    assertThat(in.statusCode()).isEqualTo(200);
    assertThat(in.body()).contains("You are logged in", "action=\"/log\"", "Tuesday &amp; &lt;b>");
    Member member = new Member(asker, Member.cookie(in));
    HttpResponse<String> kept =
        member.postUnsealed(
            "/log",
            Map.of(
                "seal", hidden(in.body(), "seal"),
                "sheet", hidden(in.body(), "sheet"),
                "label", hidden(in.body(), "label"),
                "baked", hidden(in.body(), "baked"),
                "note", hidden(in.body(), "note")));

    assertThat(kept.statusCode()).isEqualTo(303);
    Bake bake = store.of(Scope.baker(jon)).bakes(0).findFirst().orElseThrow();
    assertThat(bake.label()).isEqualTo("Tuesday & <b>");
    assertThat(bake.note()).isEqualTo("ö\nsecond line");
    assertThat(bake.sheet()).isEqualTo(Tour.SHEET);
  }

  @Test
  void a_class_is_made_joined_and_its_bakes_are_seen_by_the_teacher() {
    Member teacher = Member.in(asker, store, una);
    assertThat(teacher.post("/log/classes", Map.of("name", "Tuesday")).statusCode()).isEqualTo(303);
    Matcher code =
        Pattern.compile("class=\"code\">([A-Z2-9-]{11})<")
            .matcher(teacher.get("/log/classes").body());
    assertThat(code.find()).isTrue();

    HttpResponse<String> joined =
        asker.postForm(
            "/log/join",
            Map.of(
                "code",
                " " + code.group(1).toLowerCase(java.util.Locale.ROOT),
                "name",
                "Eva O’Neil",
                "password",
                PASSWORD,
                "again",
                PASSWORD));
    assertThat(Member.location(joined)).isEqualTo("/log/account?done=joined");
    Member eva = new Member(asker, Member.cookie(joined));
    assertThat(eva.get("/log/account?done=joined").body())
        .contains("You belong to the class now.", "Tuesday");
    String schoolClass = "" + store.people().taughtBy(una).get(0).id();
    eva.post(
        "/log",
        Map.of("sheet", Tour.SHEET, "label", "Eva’s", "baked", "2026-03-03", "class", schoolClass));

    String list = teacher.get("/log?of=" + schoolClass).body();
    assertThat(list).contains("Eva’s");
    Matcher bake = Pattern.compile("href=\"(/log/\\d+)\"").matcher(list);
    assertThat(bake.find()).isTrue();
    assertThat(teacher.get(bake.group(1)).body())
        .contains("Baked by Eva O’Neil.")
        .doesNotContain("/causes\"", "Delete this bake", "Add the photo");

    teacher.post("/log/classes/" + schoolClass + "/close", Map.of());
    HttpResponse<String> late =
        asker.postForm(
            "/log/join",
            Map.of("code", code.group(1), "name", "Late", "password", PASSWORD, "again", PASSWORD));
    assertThat(late.statusCode()).isEqualTo(400);
    assertThat(late.body()).contains("No class is joined with this code.", "value=\"Late\"");
    assertThat(store.people().account("Late")).isEmpty();

    eva.post("/log/account/leave", Map.of("class", schoolClass));
    assertThat(teacher.get(bake.group(1)).statusCode()).isEqualTo(404);
  }

  @Test
  void another_password_ends_all_other_log_ins() {
    Member here = Member.in(asker, "Jon", PASSWORD);
    Member there = Member.in(asker, "Jon", PASSWORD);
    Map<String, String> form =
        Map.of("old", PASSWORD, "password", "quite another one", "again", "quite another one");
    assertThat(here.post("/log/account/password", Map.of("old", "wrong", "password", "x")).body())
        .contains("The present password is another.");
    assertThat(
            here.post(
                    "/log/account/password",
                    Map.of("old", PASSWORD, "password", "short", "again", "short"))
                .body())
        .contains("Take at least 10 characters.");

    assertThat(here.post("/log/account/password", form).statusCode()).isEqualTo(303);

    assertThat(here.get("/log").statusCode()).isEqualTo(200);
    assertThat(there.get("/log").statusCode()).isEqualTo(303);
    assertThat(asker.postForm("/log/in", Map.of("name", "Jon", "password", PASSWORD)).statusCode())
        .isEqualTo(401);
    assertThat(store.people().account("jon").map(Account::secret).orElseThrow())
        .startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
    assertThat(here.post("/log/out/everywhere", Map.of()).statusCode()).isEqualTo(303);
    assertThat(here.get("/log").statusCode()).isEqualTo(303);
  }

  @Test
  void whoever_deletes_their_account_is_gone_with_all_they_kept() {
    store.of(Scope.baker(jon)).add(SomeBakes.traced(1).of(jon, null));
    Member member = Member.in(asker, "Jon", PASSWORD);
    assertThat(member.get("/log/account/delete").body()).contains("Delete your account for good?");
    assertThat(member.post("/log/account/delete", Map.of("old", "wrong")).statusCode())
        .isEqualTo(400);

    assertThat(member.post("/log/account/delete", Map.of("old", PASSWORD)).statusCode())
        .isEqualTo(303);

    assertThat(member.get("/log").statusCode()).isEqualTo(303);
    assertThat(store.people().account("Jon")).isEmpty();
    assertThat(store.of(Scope.EVERYTHING).count()).isZero();
    Member keeper = Member.in(asker, store, ida);
    assertThat(keeper.post("/log/account/delete", Map.of("old", PASSWORD)).body())
        .contains("The log would be without a keeper.");
  }

  @Test
  void a_keeper_looks_after_accounts() {
    Member keeper = Member.in(asker, store, ida);
    Map<String, String> ove = Map.of("name", "Ove", "role", "teacher", "password", PASSWORD);
    assertThat(keeper.post("/log/people", ove).statusCode()).isEqualTo(303);
    assertThat(keeper.post("/log/people", ove).body())
        .contains("Somebody has this name already.", "value=\"Ove\"");
    long number = store.people().account("Ove").orElseThrow().person().id();
    Member teacher = Member.in(asker, "Ove", PASSWORD);
    assertThat(teacher.get("/log/classes").statusCode()).isEqualTo(200);

    keeper.post("/log/people/" + number + "/role", Map.of("role", "baker"));
    assertThat(teacher.get("/log/classes").statusCode()).as("at once").isEqualTo(403);
    keeper.post("/log/people/" + number + "/password", Map.of("password", "something else then"));
    assertThat(teacher.get("/log").statusCode()).as("out at once").isEqualTo(303);
    assertThat(keeper.post("/log/people/" + number + "/delete", Map.of("name", "Eva")).body())
        .contains("Nothing was deleted.");
    keeper.post("/log/people/" + number + "/delete", Map.of("name", "ove"));
    assertThat(store.people().account("Ove")).isEmpty();
    assertThat(keeper.post("/log/people/" + ida + "/role", Map.of("role", "baker")).body())
        .contains("The log would be without a keeper.");
  }

  @Test
  void hostile_text_in_every_field_stays_text() {
    Member keeper = Member.in(asker, store, ida);
    Map<String, String> all =
        Map.of(
            "name",
            HOSTILE,
            "password",
            HOSTILE,
            "again",
            HOSTILE,
            "code",
            HOSTILE,
            "old",
            HOSTILE,
            "role",
            HOSTILE,
            "to",
            HOSTILE,
            "carried",
            HOSTILE);
    for (HttpResponse<String> answer :
        List.of(
            asker.postForm("/log/in", all),
            asker.postForm("/log/join", all),
            asker.get("/log/join?code=%22%27%3E%3Cscript%3E", "Accept", "text/html"),
            asker.get("/log/in?to=%22%27%3E%3Cscript%3E", "Accept", "text/html"),
            keeper.post("/log/people", all),
            keeper.post("/log/classes", all),
            keeper.post("/log/account/password", all),
            keeper.post("/log/account/delete", all))) {
      assertThat(answer.statusCode()).isIn(200, 400, 401);
      assertThat(answer.body()).doesNotContain("<script>", "<img src=x", "\"'>");
      StoodIn.assertGuarded(answer);
    }
  }

  @Test
  void a_shared_log_that_cannot_be_used_does_not_say_where_it_is() {
    LogPlace nowhere =
        LogPlace.of("jdbc:postgresql://127.0.0.1:1/secret?user=mill&password=hush", Map.of());
    try (WebFace broken =
        LogFace.bare(new LogServing(new LogDoor(() -> SqlLogStore.open(nowhere)), true, false))) {
      Asker late = new Asker(broken.address());
      HttpResponse<String> answer =
          late.get("/log", "Accept", "text/html", "Cookie", "crumbtrail=abc");
      assertThat(answer.statusCode()).isEqualTo(503);
      assertThat(answer.body())
          .contains("What was acknowledged is safe.")
          .doesNotContain("127.0.0.1", "secret", "hush", "mill");
      assertThat(late.postForm(Tour.tinLoaf()).statusCode()).isEqualTo(200);
    }
  }

  private static String hidden(String page, String name) {
    Matcher field =
        Pattern.compile("<input type=\"hidden\" name=\"" + name + "\" value=\"([^\"]*)\"")
            .matcher(page);
    assertThat(field.find()).as(name).isTrue();
    return field
        .group(1)
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&lt;", "<")
        .replace("&amp;", "&");
  }
}
