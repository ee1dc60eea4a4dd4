package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Lines that change are written anew, and all others stay as the baker wrote them. */
class FormulaEditTest {

  private static final BakeSheet WEIGHED =
      sheet(
          "400 g bread flour", "100 g rye flour", "300 g water", "2 tsp salt", "flour for dusting");
  private static final BakeSheet PERCENTS =
      sheet("80 % bread flour", "20 % rye flour", "60 % water", "2 % salt");

  @Test
  void lines_of_one_kind_change_in_proportion() {
    Edited edit = edit(edit(WEIGHED).to(FormulaEditTest::flour, 1000, ""));

    assertThat(edit.grams(FormulaEditTest::flour)).isCloseTo(1000, within(0.5));
    assertThat(edit.grams(one -> one.has("rye"))).isCloseTo(200, within(0.5));
    assertThat(edit.sheet("300 g water")).isTrue();
  }

  @Test
  void the_flour_for_the_bench_is_no_flour_of_the_dough() {
    assertThat(edit(WEIGHED).grams(FormulaEditTest::flour)).isEqualTo(500);
    assertThat(edit(WEIGHED).names(FormulaEditTest::flour))
        .containsExactly("bread flour", "medium rye flour");
  }

  @Test
  void nothing_of_it_takes_the_lines_out() {
    BakeSheet none = edit(WEIGHED).to(FormulaEditTest::salt, 0, "");

    assertThat(none.formula()).hasSize(WEIGHED.formula().size() - 1);
    assertThat(edit(none).has(FormulaEditTest::salt)).isFalse();
    assertThat(edit(WEIGHED).has(FormulaEditTest::salt)).isTrue();
  }

  @Test
  void what_is_not_there_is_put_in_by_weight_or_by_percentage() {
    BakeSheet weighed = edit(WEIGHED).to(FormulaEditTest::yeast, 5, "instant yeast");
    BakeSheet percents = edit(PERCENTS).to(FormulaEditTest::yeast, 10, "instant yeast");

    assertThat(last(weighed).written()).isEqualTo("5 g instant yeast");
    // Percentages without a weight stand on 1 kg of flour.
    assertThat(last(percents).written()).isEqualTo("1 % instant yeast");
    assertThat(edit(WEIGHED).to(FormulaEditTest::yeast, 0, "instant yeast")).isEqualTo(WEIGHED);
    assertThat(weighed.formula()).extracting(FormulaLine::where).doesNotHaveDuplicates();
  }

  @Test
  void a_line_put_in_after_one_was_taken_out_has_a_place_of_its_own() {
    BakeSheet shorter = edit(WEIGHED).to(one -> one.kind() == Kind.WATER, 0, "");
    BakeSheet longer = edit(shorter).to(FormulaEditTest::yeast, 5, "instant yeast");

    assertThat(longer.formula()).extracting(FormulaLine::where).doesNotHaveDuplicates();
    assertThat(edit(longer).grams(FormulaEditTest::yeast)).isCloseTo(5, within(1e-9));
  }

  @Test
  void percentages_change_as_percentages() {
    BakeSheet saltier = edit(PERCENTS).to(FormulaEditTest::salt, 25, "");

    assertThat(last(saltier).written()).isEqualTo("2.5 % salt");
    assertThat(edit(saltier).grams(FormulaEditTest::salt)).isCloseTo(25, within(1e-9));
  }

  @Test
  void amounts_that_nobody_told_share_what_is_wanted() {
    BakeSheet open = sheet("500 g bread flour", "salt", "coarse salt");

    BakeSheet told = edit(open).to(FormulaEditTest::salt, 10, "");

    assertThat(told.formula())
        .extracting(line -> line.amount().map(amount -> amount.value()).orElse(0.0))
        .containsExactly(500.0, 5.0, 5.0);
  }

  @Test
  void another_size_keeps_every_share_and_percentages_have_no_size() {
    BakeSheet twice = edit(WEIGHED).scaled(2);

    assertThat(edit(twice).grams(FormulaEditTest::flour)).isCloseTo(1000, within(0.5));
    assertThat(edit(twice).grams(FormulaEditTest::salt))
        .isCloseTo(2 * edit(WEIGHED).grams(FormulaEditTest::salt), within(0.2));
    assertThat(edit(PERCENTS).scaled(2)).isEqualTo(PERCENTS);
  }

  @Test
  void what_is_made_ahead_is_changed_where_the_dough_has_none_of_it() {
    BakeSheet poolish =
        Doughs.sheet(
            List.of(Doughs.part("poolish", "100 g flour", "100 g water", "1 g instant yeast")),
            List.of(),
            "400 g bread flour",
            "200 g water");

    BakeSheet more = edit(poolish).to(FormulaEditTest::yeast, 2, "");
    BakeSheet wetter = edit(poolish).to(one -> one.kind() == Kind.WATER, 250, "");

    assertThat(more.preferments().get(0).formula().get(2).written()).isEqualTo("2 g instant yeast");
    assertThat(more.formula()).isEqualTo(poolish.formula());
    assertThat(wetter.preferments()).isEqualTo(poolish.preferments());
    assertThat(wetter.formula().get(1).amount().orElseThrow().value()).isEqualTo(250);
  }

  private static boolean flour(Ingredient one) {
    return one.kind() == Kind.FLOUR;
  }

  private static boolean salt(Ingredient one) {
    return one.kind() == Kind.SALT;
  }

  private static boolean yeast(Ingredient one) {
    return one.kind() == Kind.YEAST;
  }

  private record Edited(BakeSheet text, FormulaEdit edit) {
    double grams(Predicate<Ingredient> chosen) {
      return edit.grams(chosen);
    }

    boolean has(Predicate<Ingredient> chosen) {
      return edit.has(chosen);
    }

    List<String> names(Predicate<Ingredient> chosen) {
      return edit.names(chosen);
    }

    BakeSheet to(Predicate<Ingredient> chosen, double grams, String added) {
      return edit.to(chosen, grams, added);
    }

    BakeSheet scaled(double factor) {
      return edit.scaled(factor);
    }

    boolean sheet(String line) {
      return text.formula().stream().anyMatch(one -> one.written().equals(line));
    }
  }

  private static Edited edit(BakeSheet sheet) {
    return new Edited(sheet, FormulaEdit.of(sheet, Doughs.PANTRY));
  }

  private static BakeSheet sheet(String... lines) {
    return Doughs.sheet(List.of(), List.of(), lines);
  }

  private static FormulaLine last(BakeSheet sheet) {
    return sheet.formula().get(sheet.formula().size() - 1);
  }
}
