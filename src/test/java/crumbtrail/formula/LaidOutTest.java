package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.sheet.BakeSheet;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Lines as written beside what they weigh, and lines whose weight is open. */
class LaidOutTest {
  private static final BakeSheet POOLISH =
      Doughs.sheet(
          List.of(
              Doughs.part("soaker", "50 g rolled oats", "50 g water"),
              Doughs.part("poolish", "100 g bread flour", "100 % water", "0.1 g instant yeast")),
          List.of(),
          "400 g bread flour",
          "1 cup water",
          "50 g dilithium",
          "2 % salt",
          "20 g butter, for the tin",
          "3 to 4 g instant yeast");

  private static List<LaidOut> laidOut(BakeSheet sheet) {
    return LaidOut.of(sheet, FormulaWorker.work(sheet, Doughs.PANTRY), Doughs.PANTRY);
  }

  @Test
  void every_line_is_there_in_its_order_with_its_part() {
    assertThat(laidOut(POOLISH))
        .extracting(one -> one.part() + ":" + one.line().written())
        .containsExactly(
            ":400 g bread flour",
            ":1 cup water",
            ":50 g dilithium",
            ":2 % salt",
            ":20 g butter, for the tin",
            ":3 to 4 g instant yeast",
            "soaker:50 g rolled oats",
            "soaker:50 g water",
            "poolish:100 g bread flour",
            "poolish:100 % water",
            "poolish:0.1 g instant yeast");
  }

  /** By hand: all the flour is 500 g; the poolish's own is 100 g. */
  @Test
  void percentages_are_on_all_the_flour_and_a_part_stands_on_its_own() {
    List<LaidOut> all = laidOut(POOLISH);

    assertThat(all.get(0).percent().orElseThrow()).isCloseTo(80, within(1e-9));
    assertThat(all.get(2).percent().orElseThrow()).isCloseTo(10, within(1e-9));
    assertThat(all.get(3).grams().orElseThrow().value()).isCloseTo(10, within(1e-9));
    assertThat(all.get(9).grams().orElseThrow().value()).isCloseTo(100, within(1e-9));
    assertThat(all.get(9).percent().orElseThrow()).isCloseTo(20, within(1e-9));
  }

  @Test
  void butter_for_the_tin_weighs_something_but_has_no_share() {
    LaidOut butter = laidOut(POOLISH).get(4);

    assertThat(butter.inDough()).isFalse();
    assertThat(butter.percent()).isEmpty();
    assertThat(butter.grams().orElseThrow().value()).isEqualTo(20);
  }

  @Test
  void what_it_was_taken_for_and_what_it_fills() {
    List<LaidOut> all = laidOut(POOLISH);

    assertThat(all.get(0).ingredient()).contains("bread flour");
    assertThat(all.get(1).millilitres().orElseThrow()).isCloseTo(236.6, within(0.5));
    assertThat(all.get(2).ingredient()).isEmpty();
    assertThat(all.get(2).millilitres()).isEqualTo(OptionalDouble.empty());
  }

  @Test
  void percentages_alone_weigh_nothing() {
    BakeSheet percents = Doughs.sheet(List.of(), List.of(), "100 % bread flour", "65 % water");

    assertThat(laidOut(percents)).allSatisfy(one -> assertThat(one.grams()).isEmpty());
    assertThat(laidOut(percents).get(1).percent().orElseThrow()).isCloseTo(65, within(1e-9));
    assertThat(laidOut(percents).get(1).millilitres()).isEmpty();
  }

  @Test
  void without_flour_there_are_no_percentages() {
    BakeSheet none = Doughs.sheet(List.of(), List.of(), "300 g water");
    assertThat(laidOut(none).get(0).percent()).isEmpty();
    assertThat(laidOut(none).get(0).grams().orElseThrow().value()).isEqualTo(300);
  }

  @Test
  void open_weights_are_found_in_every_part_and_firm_ones_are_not() {
    BakeSheet sheet =
        Doughs.sheet(
            List.of(Doughs.part("poolish", "1 cup bread flour", "100 g water")),
            List.of(),
            "400 g bread flour",
            "about 200 g water",
            "flour for dusting, 1 cup",
            "2 eggs");

    assertThat(VagueLines.of(sheet, Doughs.PANTRY))
        .extracting(one -> one.line().written() + " " + one.measured())
        .containsExactly("about 200 g water false", "2 eggs true", "1 cup bread flour true");
  }

  @Test
  void the_only_flour_of_unknown_strength() {
    assertThat(unknown(List.of(), "500 g bread flour", "300 g water")).isEqualTo("bread flour");
    assertThat(unknown(List.of(), "500 g bread flour, 12.5 % protein", "300 g water")).isEmpty();
    assertThat(unknown(List.of(), "400 g bread flour", "100 g rye flour")).isEmpty();
    assertThat(unknown(List.of(), "300 g water")).isEmpty();
    assertThat(unknown(List.of(Doughs.part("poolish", "9 g flour")), "500 g flour")).isEmpty();
  }

  private static String unknown(List<BakeSheet.Preferment> parts, String... lines) {
    return VagueLines.flourOfUnknownStrength(Doughs.sheet(parts, List.of(), lines), Doughs.PANTRY)
        .map(line -> line.ingredient())
        .orElse("");
  }

  /** One weight of several that a line may stand for, as it is tried out. */
  @Test
  void a_line_weighs_what_it_is_given_and_keeps_how_it_was_measured() {
    BakeSheet sheet =
        Doughs.sheet(List.of(), List.of(), "2 cups bread flour", "about 200 g water", "salt");
    var cups = VagueLines.weighing(sheet.formula().get(0), 250);
    var grams = VagueLines.weighing(sheet.formula().get(1), 210);

    assertThat(cups.amount()).isEqualTo(sheet.formula().get(0).amount());
    assertThat(cups.alsoGiven().orElseThrow().value()).isEqualTo(250);
    assertThat(grams.amount().orElseThrow().value()).isEqualTo(210);
    assertThat(grams.alsoGiven()).isEmpty();
    Formula tried =
        FormulaWorker.work(
            Doughs.sheetOf(List.of(), List.of(), List.of(cups, grams)), Doughs.PANTRY);
    assertThat(tried.flourGrams().value()).isEqualTo(250);
    assertThat(tried.doughGrams().value()).isEqualTo(460);
    assertThat(tried.circumstances()).contains("flour-by-volume");
    assertThat(VagueLines.withProtein(cups, 13).protein()).hasValue(13);
  }
}
