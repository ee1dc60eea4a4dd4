package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.api.Shelf;
import crumbtrail.handbook.CauseCards;
import crumbtrail.handbook.Leaves;
import crumbtrail.lessons.School;
import crumbtrail.people.Rate;
import crumbtrail.picture.LoafPictures;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How much one address may send to a server that others can reach. */
class AddressRateTest {
  private static final String SHEET = "{\"formula\": [\"500 g flour\"]}";

  @Test
  void so_much_at_once_and_again_as_time_passes() {
    AtomicLong now = new AtomicLong(1_000_000);
    AddressRate rate =
        new AddressRate(new Rate(3, Duration.ofMinutes(1)), new Proxy(false), now::get);
    assertThat(rate.take("a")).isZero();
    assertThat(rate.take("a")).isZero();
    assertThat(rate.take("a")).isZero();
    assertThat(rate.take("a")).isEqualTo(20_000);
    assertThat(rate.take("b")).as("another address").isZero();
    now.addAndGet(19_999);
    assertThat(rate.take("a")).isEqualTo(1);
    now.addAndGet(1);
    assertThat(rate.take("a")).isZero();
    assertThat(rate.take("a")).isPositive();
  }

  @Test
  void many_addresses_take_no_more_memory_than_some() {
    AtomicLong now = new AtomicLong();
    AddressRate rate =
        new AddressRate(new Rate(1, Duration.ofMinutes(1)), new Proxy(false), now::get);
    rate.take("first");
    for (int i = 0; i < AddressRate.MOST; i++) {
      assertThat(rate.take("10." + i)).isZero();
    }
    assertThat(rate.remembered()).isEqualTo(AddressRate.MOST);
    assertThat(rate.take("10." + (AddressRate.MOST - 1))).isPositive();
    assertThat(rate.take("first")).as("forgotten").isZero();
  }

  private static WebFace start(Visits visits) {
    RuleBase rules = RuleBase.bundled();
    RuleBook book = RuleBook.bundled();
    return WebFace.start(
        Samples.making(Samples.everywhere("plain words")),
        School.of(rules),
        new Shelf(book.catalogue(), new CauseCards(book), rules.version()),
        new Leaves(book),
        LoafPictures.none(),
        Optional.empty(),
        Doorway.at("127.0.0.1", 0).visitedAs(visits));
  }

  private static HttpResponse<String> post(Asker asker, String path, String from) {
    return path.startsWith("/api/")
        ? asker.post(path, Asker.JSON, SHEET, "X-Forwarded-For", from)
        : asker.post(path, Asker.FORM, "sheet=", "Accept", "text/html", "X-Forwarded-For", from);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/trace",
        "/precheck",
        "/next",
        "/api/trace",
        "/api/precheck",
        "/api/next",
        "/api/layout",
        "/api/vary"
      })
  void one_address_is_told_to_wait_and_another_is_not(String path) {
    try (WebFace face = start(new Visits(true, 2))) {
      Asker asker = new Asker(face.address());
      for (int i = 0; i < 2; i++) {
        assertThat(post(asker, path, "192.0.2.1").statusCode()).isNotEqualTo(429);
      }
      HttpResponse<String> refused = post(asker, path, "192.0.2.1");

      assertThat(refused.statusCode()).isEqualTo(429);
      assertThat(refused.headers().firstValue("Retry-After").orElseThrow()).matches("[1-9]\\d?");
      assertThat(refused.headers().firstValue("Content-Type").orElseThrow())
          .startsWith(path.startsWith("/api/") ? "application/problem+json" : "text/html");
      assertThat(refused.body()).contains("So much at once is not taken from one address.");
      StoodIn.assertGuarded(refused);
      assertThat(post(asker, path, "192.0.2.2").statusCode()).isNotEqualTo(429);
      assertThat(asker.get("/about").statusCode()).as("reading goes on").isEqualTo(200);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"/vary?turn=salt", "/mystery", "/trace?sheet=x", "/api/mystery"})
  void what_is_worked_out_for_whoever_looks_is_counted_too(String path) {
    try (WebFace face = start(new Visits(true, 2))) {
      Asker asker = new Asker(face.address());
      for (int i = 0; i < 2; i++) {
        assertThat(asker.get(path, "X-Forwarded-For", "192.0.2.1").statusCode()).isNotEqualTo(429);
      }
      assertThat(asker.get(path, "X-Forwarded-For", "192.0.2.1").statusCode()).isEqualTo(429);
      assertThat(asker.get("/about").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void whoever_uses_their_own_machine_is_not_limited() {
    try (WebFace face = start(new Visits(false, 2))) {
      Asker asker = new Asker(face.address());
      for (int i = 0; i < 9; i++) {
        assertThat(post(asker, "/api/layout", "192.0.2.1").statusCode()).isEqualTo(200);
      }
    }
  }

  @Test
  void nought_is_no_limit() {
    assertThat(new Visits(true, 0).limit("127.0.0.1")).isEmpty();
    assertThat(new Visits(false, 2).limit("127.0.0.1")).isEmpty();
    assertThat(new Visits(false, 2).limit("0.0.0.0")).isPresent();
    assertThat(new Visits(true, 2).limit("127.0.0.1")).isPresent();
  }
}
