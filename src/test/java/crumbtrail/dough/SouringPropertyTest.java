package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.dough.Acidity.Flour;
import crumbtrail.dough.Acidity.Sourness;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SouringPropertyTest {
  private static final Flour FLOUR = new Flour(10, 0, 2);

  @Property(tries = 200)
  void time_only_ripens(
      @ForAll @DoubleRange(min = 0.01, max = 1) double dose,
      @ForAll @DoubleRange(min = 0, max = 3000) double minutes,
      @ForAll @DoubleRange(min = 0, max = 3000) double more,
      @ForAll @DoubleRange(min = 0, max = 40) double celsius) {
    List<Stretch> shorter = List.of(new Stretch(minutes, celsius));
    List<Stretch> longer = List.of(new Stretch(minutes + more, celsius));
    assertThat(PrefermentRipeness.starter(dose, longer))
        .isGreaterThanOrEqualTo(PrefermentRipeness.starter(dose, shorter) - 1e-9);
    assertThat(PrefermentRipeness.yeasted(dose, 70, 0, longer))
        .isGreaterThanOrEqualTo(PrefermentRipeness.yeasted(dose, 70, 0, shorter) - 1e-9);
  }

  @Property(tries = 200)
  void a_larger_dose_is_never_later(
      @ForAll @DoubleRange(min = 0, max = 1) double one,
      @ForAll @DoubleRange(min = 0, max = 1) double other,
      @ForAll @DoubleRange(min = 0, max = 2000) double minutes,
      @ForAll @DoubleRange(min = 0, max = 40) double celsius) {
    List<Stretch> schedule = List.of(new Stretch(minutes, celsius));
    double small = Math.min(one, other);
    double large = Math.max(one, other);
    assertThat(PrefermentRipeness.starter(large, schedule))
        .isGreaterThanOrEqualTo(PrefermentRipeness.starter(small, schedule) - 1e-9);
    assertThat(PrefermentRipeness.yeasted(large, 70, 0, schedule))
        .isGreaterThanOrEqualTo(PrefermentRipeness.yeasted(small, 70, 0, schedule) - 1e-9);
  }

  @Property(tries = 200)
  void up_to_27_degrees_warmer_is_never_later(
      @ForAll @DoubleRange(min = 0, max = 27) double one,
      @ForAll @DoubleRange(min = 0, max = 27) double other,
      @ForAll @DoubleRange(min = 0, max = 2000) double minutes) {
    List<Stretch> cool = List.of(new Stretch(minutes, Math.min(one, other)));
    List<Stretch> warm = List.of(new Stretch(minutes, Math.max(one, other)));
    assertThat(PrefermentRipeness.starter(0.1, warm))
        .isGreaterThanOrEqualTo(PrefermentRipeness.starter(0.1, cool) - 1e-9);
    assertThat(PrefermentRipeness.yeasted(0.1, 70, 0, warm))
        .isGreaterThanOrEqualTo(PrefermentRipeness.yeasted(0.1, 70, 0, cool) - 1e-9);
  }

  @Property(tries = 200)
  void a_schedule_cut_in_two_gives_what_the_whole_gives(
      @ForAll @DoubleRange(min = 0.01, max = 1) double dose,
      @ForAll @DoubleRange(min = 0, max = 1500) double first,
      @ForAll @DoubleRange(min = 0, max = 1500) double second,
      @ForAll @DoubleRange(min = 4, max = 38) double celsius) {
    List<Stretch> whole = List.of(new Stretch(first + second, celsius));
    List<Stretch> cut = List.of(new Stretch(first, celsius), new Stretch(second, celsius));
    assertThat(PrefermentRipeness.starter(dose, cut))
        .isCloseTo(PrefermentRipeness.starter(dose, whole), within(1e-7));
    assertThat(PrefermentRipeness.yeasted(dose, 70, 0, cut))
        .isCloseTo(PrefermentRipeness.yeasted(dose, 70, 0, whole), within(1e-7));
    Sourness start = Acidity.mixed(100 * dose, 4.2, FLOUR);
    assertThat(Acidity.after(start, FLOUR, cut).acid())
        .isCloseTo(Acidity.after(start, FLOUR, whole).acid(), within(1e-3));
  }

  @Property(tries = 200)
  void acid_and_acidity_are_one_another_s_inverse(
      @ForAll @DoubleRange(min = 2.6, max = 6.2) double pH,
      @ForAll @DoubleRange(min = 0, max = 100) double wholeGrain,
      @ForAll @DoubleRange(min = 0, max = 100) double rye) {
    Flour flour = new Flour(wholeGrain, rye, 2);
    assertThat(Acidity.pH(Acidity.acid(pH, flour), flour)).isCloseTo(pH, within(2e-4));
  }

  @Property(tries = 200)
  void a_dough_only_grows_more_sour_and_not_below_the_limit(
      @ForAll @DoubleRange(min = 0, max = 60) double prefermented,
      @ForAll @DoubleRange(min = 0, max = 4000) double minutes,
      @ForAll @DoubleRange(min = -5, max = 45) double celsius) {
    Sourness start = Acidity.mixed(prefermented, 4.2, FLOUR);
    Sourness end = Acidity.after(start, FLOUR, List.of(new Stretch(minutes, celsius)));
    assertThat(end.acid()).isGreaterThanOrEqualTo(start.acid() - 1e-6);
    assertThat(end.bacteria()).isGreaterThanOrEqualTo(start.bacteria() - 1e-9);
    assertThat(Acidity.pH(end.acid(), FLOUR))
        .isBetween(Acidity.LEAST - 0.01, Acidity.UNSOURED + 0.01);
  }

  @Property
  void whole_grain_holds_more_acid(
      @ForAll @DoubleRange(min = 3, max = 6) double pH,
      @ForAll @DoubleRange(min = 0, max = 99) double wholeGrain) {
    assertThat(Acidity.acid(pH, new Flour(wholeGrain + 1, 0, 2)))
        .isGreaterThan(Acidity.acid(pH, new Flour(wholeGrain, 0, 2)));
  }
}
