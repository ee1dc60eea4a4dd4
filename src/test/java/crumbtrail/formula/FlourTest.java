package crumbtrail.formula;

import static crumbtrail.formula.Doughs.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.sheet.IngredientLine;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlourTest {

  @Property
  void gluten_added_or_swapped_brings_the_protein_that_was_wanted(
      @ForAll @DoubleRange(min = 8, max = 12) double protein,
      @ForAll @DoubleRange(min = 12, max = 15) double target) {
    GlutenNeed need = GlutenNeed.of(500, protein, target, GlutenNeed.USUAL_GLUTEN);
    double add = need.addGrams();
    double swap = need.swapGrams();

    assertThat((500 * protein + add * GlutenNeed.USUAL_GLUTEN) / (500 + add))
        .isCloseTo(target, within(1e-9));
    assertThat(((500 - swap) * protein + swap * GlutenNeed.USUAL_GLUTEN) / 500)
        .isCloseTo(target, within(1e-9));
    assertThat(need.swapWaterGrams()).isLessThanOrEqualTo(need.addWaterGrams());
  }

  @Test
  void strong_flour_needs_no_gluten_and_poor_gluten_cannot_help() {
    GlutenNeed none = GlutenNeed.of(500, 14, 13, 75);
    assertThat(none.addGrams()).isZero();
    assertThat(none.covered()).isTrue();
    assertThat(GlutenNeed.of(500, 5, 14, 75).covered()).isFalse();
    assertThatThrownBy(() -> GlutenNeed.of(0, 10, 12, 75))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> GlutenNeed.of(500, 10, 12, 11))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property
  void more_malt_always_lowers_the_falling_number(
      @ForAll @DoubleRange(min = 150, max = 500) double base,
      @ForAll @DoubleRange(min = 0, max = 1) double malt) {
    double before = Enzymes.malted(base, malt);

    assertThat(Enzymes.malted(base, malt + 0.1)).isLessThan(before);
    assertThat(Enzymes.fallingNumber(Enzymes.liquefaction(base))).isCloseTo(base, within(1e-9));
    assertThat(Enzymes.shareOfNormal(before)).isPositive();
  }

  @Test
  void bands_follow_the_published_ones() {
    assertThat(Enzymes.activity(62)).isEqualTo(Enzymes.Activity.EXCESSIVE);
    assertThat(Enzymes.activity(180)).isEqualTo(Enzymes.Activity.HIGH);
    assertThat(Enzymes.activity(250)).isEqualTo(Enzymes.Activity.NORMAL);
    assertThat(Enzymes.activity(350)).isEqualTo(Enzymes.Activity.LOW);
    assertThat(Enzymes.activity(450)).isEqualTo(Enzymes.Activity.VERY_LOW);
    assertThat(Enzymes.shareOfNormal(250)).isCloseTo(100, within(1e-9));
    assertThat(Enzymes.covers(40)).isFalse();
    assertThatThrownBy(() -> Enzymes.fallingNumber(0)).isInstanceOf(IllegalArgumentException.class);
    assertThat(Absorption.white(12).covered()).isTrue();
    assertThat(Absorption.white(47).covered()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "500 g bread flour, falling number 62 | 62 | bread flour",
        "500 g bread flour, 12.5 % protein, falling number of 250 s | 250 | bread flour",
        "500 g bread flour (FN 300-320) | 310 | bread flour",
        "1 kg wholemeal flour with a falling number of about 180 seconds | 180 | wholemeal flour",
      })
  void a_falling_number_is_read_from_the_line(String line, double seconds, String name) {
    var read = IngredientLine.read("formula[0]", line).orElseThrow();

    assertThat(read.fallingNumber()).hasValue(seconds);
    assertThat(read.ingredient()).isEqualTo(name);
  }

  @Test
  void the_reading_is_there_only_where_something_tells_it() {
    String water = "300 g water";
    assertThat(Doughs.of("500 g bread flour", water).reading("falling number")).isEmpty();
    assertThat(value(Doughs.of("500 g bread flour, falling number 62", water), "falling number"))
        .isCloseTo(62, within(0.01));
    // Equal parts of 400 and 220 s: 279, not 310.
    assertThat(
            value(
                Doughs.of(
                    "250 g bread flour, falling number 400",
                    "250 g bread flour, falling number 220",
                    water),
                "falling number"))
        .isCloseTo(279, within(0.5));
    Level malted =
        Doughs.of("500 g bread flour", water, "5 g diastatic malt powder")
            .reading("falling number")
            .orElseThrow();
    assertThat(malted.value()).isBetween(110.0, 160.0);
    assertThat(malted.high() - malted.low()).isGreaterThan(50);
  }
}
