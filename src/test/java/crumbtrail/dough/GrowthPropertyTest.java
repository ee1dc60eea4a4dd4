package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class GrowthPropertyTest {
  private static final List<DoubleUnaryOperator> CURVES =
      List.of(SourdoughGrowth::yeast, SourdoughGrowth::bacteria, CardinalGrowth::at);

  @Property
  void growth_is_never_negative_nor_out_of_bounds(
      @ForAll @DoubleRange(min = -30, max = 120) double celsius) {
    assertThat(CURVES)
        .allSatisfy(curve -> assertThat(curve.applyAsDouble(celsius)).isBetween(0.0, 1.0));
  }

  @Property
  void growth_makes_no_jump(@ForAll @DoubleRange(min = -5, max = 60) double celsius) {
    assertThat(CURVES)
        .allSatisfy(
            curve ->
                assertThat(
                        Math.abs(
                            curve.applyAsDouble(celsius + 1e-4) - curve.applyAsDouble(celsius)))
                    .isLessThan(1e-3));
  }

  @Property
  void below_its_best_warmer_is_never_slower(
      @ForAll @DoubleRange(min = 0, max = 27) double one,
      @ForAll @DoubleRange(min = 0, max = 27) double other) {
    assertThat(CURVES)
        .allSatisfy(
            curve ->
                assertThat(curve.applyAsDouble(Math.max(one, other)))
                    .isGreaterThanOrEqualTo(curve.applyAsDouble(Math.min(one, other))));
  }

  @Property
  void salt_and_acid_only_take_away(
      @ForAll @DoubleRange(min = 0, max = 12) double brine,
      @ForAll @DoubleRange(min = 2, max = 9) double pH) {
    assertThat(SourdoughGrowth.bacteriaInSalt(brine)).isBetween(0.0, 1.0);
    assertThat(SourdoughGrowth.yeastInSalt(brine))
        .isBetween(SourdoughGrowth.bacteriaInSalt(brine), 1.0);
    assertThat(SourdoughGrowth.bacteriaAtAcidity(pH)).isBetween(0.0, 1.0);
  }
}
