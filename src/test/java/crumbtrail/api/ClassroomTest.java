package crumbtrail.api;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.lessons.Board;
import crumbtrail.lessons.Clue;
import crumbtrail.lessons.School;
import crumbtrail.lessons.Variation;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lessons, mystery loaves and knobs, as programs ask for them. */
class ClassroomTest {
  private static final Classroom ROOM = new Classroom(School.of(RuleBase.bundled()));

  @Test
  void one_quantity_makes_a_variation_and_two_make_a_board() {
    Object one =
        ROOM.vary("{\"bake\":\"healthy-tin-loaf\",\"turn\":{\"salt\":\"0..4%\"},\"steps\":3}")
            .answer()
            .orElseThrow();
    assertThat(one)
        .isInstanceOfSatisfying(
            Variation.class,
            variation ->
                assertThat(variation.points())
                    .extracting(Variation.Point::at)
                    .contains(0.0, 2.0, 4.0));
    Object two =
        ROOM.vary(
                "{\"bake\":\"healthy-tin-loaf\",\"steps\":2,"
                    + "\"turn\":{\"salt\":\"0..4%\",\"water\":\"50..80%\"}}")
            .answer()
            .orElseThrow();
    assertThat(two)
        .isInstanceOfSatisfying(
            Board.class,
            board -> {
              assertThat(board.across().key()).isEqualTo("salt");
              assertThat(board.cells()).hasSize(2);
            });
  }

  @Test
  void a_sheet_of_ones_own_is_turned_too() {
    Outcome<Object> outcome =
        ROOM.vary(
            "{\"sheet\":{\"formula\":[\"500 g bread flour\",\"310 g water\",\"5 g instant yeast\","
                + "\"10 g salt\"]},\"turn\":{\"salt\":\"0..3%\"},\"steps\":4}");
    assertThat(((Variation) outcome.answer().orElseThrow()).dial().own()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "[];''",
        "{\"turn\":{\"salt\":\"0..4%\"}};sheet",
        "{\"sheet\":{},\"bake\":\"healthy-rye\",\"turn\":{\"salt\":\"0..4%\"}};sheet",
        "{\"bake\":\"../secret\",\"turn\":{\"salt\":\"0..4%\"}};bake",
        "{\"bake\":\"healthy-rye\"};turn",
        "{\"bake\":\"healthy-rye\",\"turn\":{\"moon\":\"0..4%\"}};turn.moon",
        "{\"bake\":\"healthy-rye\",\"turn\":{\"salt\":\"much\"}};turn.salt",
        "{\"bake\":\"healthy-rye\",\"turn\":{\"salt\":\"0..4%\"},\"steps\":1};steps",
        "{\"bake\":\"healthy-rye\",\"turn\":{\"salt\":\"0..4%\"},\"colour\":1};colour",
        "{\"sheet\":{\"formula\":[7]},\"turn\":{\"salt\":\"0..4%\"}};sheet.formula[0]"
      })
  void what_cannot_be_turned_is_told_with_its_place(String request, String where) {
    Outcome<Object> outcome = ROOM.vary(request);
    assertThat(outcome.answer()).isEmpty();
    assertThat(outcome.problems())
        .extracting(Problem::where)
        .containsExactly(where.replace("'", ""));
  }

  @Test
  void a_mystery_loaf_is_brought_again_by_its_name_and_told_as_far_as_it_was_asked() {
    Mystery start = ROOM.mystery(7, "easy", "", "").answer().orElseThrow();
    assertThat(start.end()).isNull();
    assertThat(start.told()).isEmpty();
    assertThat(start.complaint()).isNotEmpty();

    List<String> clues = start.open().stream().limit(2).map(Clue::key).toList();
    Mystery asked = ROOM.mystery(7, "easy", String.join(",", clues), "").answer().orElseThrow();
    assertThat(asked.complaint()).isEqualTo(start.complaint());
    assertThat(asked.told()).extracting(Mystery.Told::clue).isEqualTo(clues);
    assertThat(asked.open()).hasSize(start.open().size() - 2);

    Mystery over =
        ROOM.mystery(7, "easy", String.join(",", clues), Classroom.GIVE_UP).answer().orElseThrow();
    assertThat(over.end().outcome()).isEqualTo("gave up");
    String cause = over.end().cause().key();
    assertThat(ROOM.mystery(7, "easy", "", cause).answer().orElseThrow().end().outcome())
        .isEqualTo("right");
    String other =
        start.nameable().stream()
            .map(Variation.Named::key)
            .filter(key -> !key.equals(cause))
            .findFirst()
            .orElseThrow();
    assertThat(ROOM.mystery(7, "easy", "", other).answer().orElseThrow().end().outcome())
        .isNotEqualTo("right");
  }

  @ParameterizedTest
  @CsvSource({"mad, '', '', level", "easy, moon, '', asked", "easy, '', moon, named"})
  void what_cannot_be_asked_of_a_loaf_is_told(
      String level, String asked, String named, String where) {
    assertThat(ROOM.mystery(7, level, asked, named).problems())
        .extracting(Problem::where)
        .containsExactly(where);
  }

  @Test
  void lessons_are_numbered_and_each_turns_its_knob() {
    List<Classroom.LessonLine> all = ROOM.lessons();
    assertThat(all).hasSizeGreaterThan(11);
    Classroom.Lesson last = ROOM.lesson(String.valueOf(all.size())).orElseThrow();
    assertThat(last.lesson()).isEqualTo(all.get(all.size() - 1));
    assertThat(last.last()).isEqualTo(all.size());
    assertThat(last.variation().dial().key()).isEqualTo(last.lesson().turn());
    assertThat(ROOM.lesson(String.valueOf(all.size() + 1))).isEmpty();
    assertThat(ROOM.lesson("one")).isEmpty();
  }
}
