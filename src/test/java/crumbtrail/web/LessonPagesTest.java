package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages that teach, asked as a browser asks. */
class LessonPagesTest {
  private static WebFace face;
  private static Asker asker;

  @BeforeAll
  static void serve() {
    RuleBase rules = RuleBase.bundled();
    face =
        WebFace.start(
            new PostMortemTracer(new PostMortem(rules)),
            School.of(rules),
            LoafPictures.of(rules.catalogue()),
            "127.0.0.1",
            0);
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  @Test
  void a_knob_of_an_invented_bake_is_turned_by_address() {
    HttpResponse<String> page = asker.get("/vary?bake=healthy-tin-loaf&turn=salt&range=0..4%25");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body().replace("<script src=\"/assets/knob.js\" defer></script>", ""))
        .contains("Salt turned from 0 to 4 %")
        .contains("Too little salt no longer leads")
        .contains("<svg")
        .doesNotContain("<script");
  }

  @Test
  void a_knob_of_the_bakers_own_bake_is_turned_by_form() {
    HttpResponse<String> page =
        asker.post(
            "/vary",
            Asker.FORM,
            "recipe=500+g+bread+flour%0A340+g+water%0A10+g+salt%0A5+g+instant+yeast"
                + "&turn=salt&range=0..1%25");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("the sheet stands at 2 %")
        .contains("name=\"recipe\"")
        .contains("method=\"post\"");
  }

  @Test
  void a_whole_sheet_from_a_report_is_turned_and_it_is_said_whose_it_is() {
    HttpResponse<String> page =
        asker.post(
            "/vary",
            Asker.FORM,
            "sheet=%7B%22title%22%3A%22Mill+tin%22%2C%22formula%22%3A%5B%22500+g+bread+flour%22%2C"
                + "%22310+g+water%22%2C%2210+g+salt%22%5D%7D&turn=salt&range=0..4%25");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("Turning: Mill tin: 500 g bread flour, 310 g water, 10 g salt")
        .contains("the sheet stands at 2 %")
        .contains("name=\"sheet\"")
        .contains("placeholder=\"1..3%\"");
  }

  @Test
  void two_knobs_make_a_table() {
    assertThat(
            asker
                .get(
                    "/vary?bake=healthy-tin-loaf&turn=oven&range=160..240C&second=bake-time"
                        + "&secondRange=20..50")
                .body())
        .contains("The leading cause at each crossing")
        .contains("(the sheet)");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/vary?turn=sand",
        "/vary?turn=salt&range=much",
        "/vary?bake=no-such-bake",
        "/vary?bake=..%2F..%2Fetc"
      })
  void what_cannot_be_turned_is_refused_in_words(String address) {
    HttpResponse<String> page = asker.get(address);
    assertThat(page.statusCode()).isEqualTo(400);
    assertThat(page.body()).contains("Please look again");
  }

  @Test
  void a_mystery_keeps_its_state_in_its_address() {
    String start = "/mystery?level=easy&seed=3";
    assertThat(asker.get(start).body()).contains("The baker says").contains("Name the cause");
    assertThat(asker.get(start + "&asked=recipe&ask=vessel").body())
        .contains("What you asked")
        .contains("500 g bread flour")
        .contains("value=\"recipe,vessel\"");
    assertThat(asker.get(start + "&asked=recipe&named=pan-too-small").body())
        .contains("Right: too much dough for the tin.")
        .contains("good diagnostician");
    assertThat(asker.get(start + "&named=no-such-cause").body()).contains("Name the cause");
  }

  @Test
  void a_loaf_without_a_number_gets_one() {
    HttpResponse<String> page = asker.get("/mystery?level=hard");
    assertThat(page.statusCode()).isEqualTo(302);
    assertThat(page.headers().firstValue("Location").orElse(""))
        .matches(".*/mystery\\?level=hard&seed=\\d+");
  }

  @Test
  void the_course_is_listed_and_shown() {
    assertThat(asker.get("/lessons").body()).contains("Salt, the brake and the brace");
    assertThat(asker.get("/lessons/1").body())
        .contains("The cause: too little salt")
        .contains("range=0..4%25")
        .contains("The next lesson");
    assertThat(asker.get("/lessons/0").statusCode()).isEqualTo(404);
  }
}
