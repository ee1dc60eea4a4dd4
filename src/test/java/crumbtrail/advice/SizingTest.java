package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** A dough made larger or smaller. Sums by hand: 840 g of dough, 2.7 l of tin are 3.2 ml a gram. */
class SizingTest extends AdviceKitchen {
  private static final String LOAF =
      """
      {"style": "%s",
       "formula": ["500 g bread flour", "310 g water", "5 g instant yeast", "10 g salt",
                   "15 g butter"],
       "process": {"shaping": {%s},
         "vessel": {%s},
         "baking": {"stages": [{"time": "38 min", "oven": "210 C"}]}}}
      """;

  private static final String TIN = "\"kind\": \"loaf tin\", \"size\": \"2.7 l\"";

  private final Sizing sizing = new Sizing(REASONING, RULES.catalogue(), RULES.pantry());

  @Test
  void nothing_is_sized_that_nobody_wished() {
    BakeSheet loaf = loaf("", TIN);
    assertThat(sizing.sized(loaf, Wish.PLAIN)).isSameAs(loaf);
    assertThat(sizing.notes()).isEmpty();
  }

  @Test
  void loaves_are_as_heavy_as_before_and_bake_as_long() {
    BakeSheet two = sizing.sized(loaf("", TIN), loaves(2));
    assertThat(flour(two)).isCloseTo(1000, within(0.5));
    assertThat(two.process().shaping().pieces()).contains(2);
    assertThat(two.process().shaping().pieceWeight()).isEmpty();
    assertThat(minutes(two)).isEqualTo(38);
    assertThat(sizing.notes()).containsExactly("2 pieces of 840 g, 1680 g in all.");
  }

  @Test
  void a_single_piece_is_not_counted_where_nobody_counted() {
    BakeSheet half = sizing.sized(loaf("", TIN), grams(420));
    assertThat(flour(half)).isCloseTo(250, within(0.5));
    assertThat(half.process().shaping().pieces()).isEmpty();
    assertThat(sizing.notes().get(0)).isEqualTo("One piece of 420 g.");
  }

  @Test
  void a_weight_told_for_the_piece_is_told_anew() {
    BakeSheet rolls = loaf("\"pieces\": 12, \"pieceWeight\": \"70 g\"", "");
    BakeSheet fewer = sizing.sized(rolls, loaves(6));
    assertThat(fewer.process().shaping().pieces()).contains(6);
    assertThat(fewer.process().shaping().pieceWeight().orElseThrow().value()).isEqualTo(70);
    assertThat(flour(fewer)).isCloseTo(250, within(0.5));

    BakeSheet larger = sizing.sized(rolls, grams(1680));
    assertThat(larger.process().shaping().pieces()).contains(12);
    assertThat(larger.process().shaping().pieceWeight().orElseThrow().value()).isEqualTo(140);
  }

  @Test
  void a_tin_is_filled_as_the_one_before_if_that_was_usual() {
    BakeSheet small = sizing.sized(loaf("", TIN), tin("1.35 l"));
    assertThat(flour(small)).isCloseTo(250, within(0.5));
    assertThat(small.process().vessel().kind()).contains("loaf tin");
    assertThat(sizing.notes())
        .startsWith(
            "The tin holds 1350 ml; this bread wants 3.2 cm³/g of room.", "One piece of 420 g.");
  }

  @Test
  void a_tin_is_filled_as_is_usual_if_the_one_before_was_not_or_there_was_none() {
    // 2.0 to 4.4 ml a gram are usual for this bread, 3.2 in the middle.
    for (String vessel :
        List.of("\"kind\": \"tin\", \"size\": \"1.2 l\"", "\"kind\": \"tin\"", "")) {
      BakeSheet filled = sizing.sized(loaf("", vessel), tin("2.7 l"));
      assertThat(flour(filled)).as(vessel).isCloseTo(500, within(2.0));
      assertThat(filled.process().vessel().kind()).as(vessel).contains("tin");
    }
  }

  @Test
  void a_basket_gives_way_to_the_tin() {
    BakeSheet filled = sizing.sized(loaf("", "\"kind\": \"stone\""), tin("2.7 l"));
    assertThat(filled.process().vessel().kind()).contains("tin");
    assertThat(reading(filled, "tin room")).isCloseTo(3.2, within(0.02));
  }

  @Test
  void a_tin_of_which_nothing_can_be_told_leaves_the_dough_alone_and_that_is_said() {
    BakeSheet same = sizing.sized(loaf("", "\"kind\": \"tin\""), tin("the blue one"));
    assertThat(flour(same)).isCloseTo(500, within(0.5));
    assertThat(sizing.notes().get(0)).startsWith("How much this tin holds cannot be told.");
  }

  @Test
  void a_bread_that_is_usually_baked_without_a_tin_gets_the_room_of_an_open_one() {
    BakeSheet filled =
        sizing.sized(
            SheetReader.read(LOAF.formatted("baguette", "", "")).sheet().orElseThrow(), tin("2 l"));
    assertThat(Knob.usual(REASONING.work(filled), "tin room")).isEmpty();
    assertThat(reading(filled, "tin room"))
        .isCloseTo(crumbtrail.workup.Workup.OPEN_TIN_ROOM, within(0.02));
  }

  @Test
  void only_a_piece_that_is_much_lighter_or_heavier_bakes_for_another_time() {
    assertThat(minutes(sizing.sized(loaf("", TIN), grams(840 * 1.04)))).isEqualTo(38);
    assertThat(minutes(sizing.sized(loaf("", TIN), grams(840 * 0.96)))).isEqualTo(38);
    assertThat(sizing.notes()).noneMatch(note -> note.contains("bakes"));

    assertThat(minutes(sizing.sized(loaf("", TIN), grams(1680)))).isGreaterThan(42);
    assertThat(minutes(sizing.sized(loaf("", TIN), grams(420)))).isLessThan(34);
    assertThat(sizing.notes())
        .filteredOn(note -> note.contains("bakes"))
        .hasSize(2)
        .allMatch(
            note ->
                note.matches(
                    "A piece of this weight bakes \\d+ min, where it was 38 min; go by the"
                        + " warmth of the middle\\."));
  }

  @Test
  void a_larger_piece_bakes_for_the_share_of_the_time_that_it_did() {
    BakeSheet loaf = loaf("", TIN);
    double before = reading(loaf, "bake share");
    BakeSheet large = sizing.sized(loaf, grams(1300));
    assertThat(reading(large, "bake share")).isCloseTo(before, within(before * 0.03));
  }

  @Test
  void a_bake_whose_time_nobody_told_is_left_so() {
    BakeSheet silent =
        SheetReader.read(
                "{\"style\": \"white tin loaf\", \"formula\": [\"500 g bread flour\","
                    + " \"310 g water\", \"5 g instant yeast\", \"10 g salt\"]}")
            .sheet()
            .orElseThrow();
    BakeSheet twice = sizing.sized(silent, grams(1650));
    assertThat(twice.process().baking().stages()).isEmpty();
    assertThat(sizing.notes()).hasSize(1);
  }

  private static BakeSheet loaf(String shaping, String vessel) {
    return SheetReader.read(LOAF.formatted("white tin loaf", shaping, vessel))
        .sheet()
        .orElseThrow();
  }

  private static double flour(BakeSheet sheet) {
    return REASONING.work(sheet).formula().flourGrams().value();
  }

  private static double minutes(BakeSheet sheet) {
    return reading(sheet, "bake time");
  }

  private static Wish loaves(int loaves) {
    return wish(OptionalInt.of(loaves), Optional.empty(), OptionalDouble.empty());
  }

  private static Wish tin(String size) {
    return wish(OptionalInt.empty(), Optional.of(size), OptionalDouble.empty());
  }

  private static Wish grams(double grams) {
    return wish(OptionalInt.empty(), Optional.empty(), OptionalDouble.of(grams));
  }

  private static Wish wish(OptionalInt loaves, Optional<String> tin, OptionalDouble grams) {
    return new Wish(
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        grams,
        loaves,
        tin,
        List.of(),
        false);
  }
}
