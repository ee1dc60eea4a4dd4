package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AxisTest {

  @Test
  void aRangeIsWidenedToRoundTicks() {
    assertThat(Axis.round(0.9, 2.13, 200, 0, 5).ticks())
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
        .containsExactly(0.5, 1.0, 1.5, 2.0, 2.5);
    assertThat(Axis.round(0, 240, 0, 1, 6).ticks())
        .containsExactly(0.0, 50.0, 100.0, 150.0, 200.0, 250.0);
    assertThat(Axis.round(-18, 24, 0, 1, 3).ticks()).containsExactly(-20.0, 0.0, 20.0, 40.0);
  }

  @Test
  void timeEndsWithTheDataAndTicksAsClocksDo() {
    assertThat(Axis.time(35, 0, 1, 9).ticks())
        .containsExactly(0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0);
    assertThat(Axis.time(200, 0, 1, 5).ticks()).containsExactly(0.0, 60.0, 120.0, 180.0);
    assertThat(Axis.time(200, 0, 1, 5).high()).isEqualTo(200);
    assertThat(Axis.time(3 * 1440, 0, 1, 5).ticks()).containsExactly(0.0, 1440.0, 2880.0, 4320.0);
  }

  @Test
  void aSingleValueStillHasAnAxis() {
    Axis axis = Axis.round(24, 24, 100, 0, 4);
    assertThat(axis.low()).isLessThanOrEqualTo(24);
    assertThat(axis.high()).isGreaterThan(24);
    assertThat(Axis.time(0, 0, 100, 5).at(0)).isZero();
  }

  @Test
  void whatIsBeyondLandsOnTheEnd() {
    Axis axis = Axis.time(100, 20, 220, 5);
    assertThat(axis.at(50)).isEqualTo(120);
    assertThat(axis.at(-5)).isEqualTo(20);
    assertThat(axis.at(1e6)).isEqualTo(220);
    assertThat(axis.text(33.33)).isEqualTo("86.7");
  }

  @Property
  void ticksCoverTheRangeAndStayFew(
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double one,
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double other,
      @ForAll @IntRange(min = 1, max = 12) int most) {
    Axis axis = Axis.round(one, other, 0, 300, most);
    double size = axis.high() - axis.low();
    assertThat(axis.low()).isLessThanOrEqualTo(Math.min(one, other) + 1e-6 * size);
    assertThat(axis.high()).isGreaterThanOrEqualTo(Math.max(one, other) - 1e-6 * size);
    // Both ends are rounded outwards, so that there may be one gap more than asked for.
    assertThat(axis.ticks()).hasSizeBetween(2, most + 2);
    assertThat(axis.ticks().get(axis.ticks().size() - 1))
        .isCloseTo(axis.high(), within(1e-6 * size));
    assertThat(axis.at(one)).isBetween(-1e-6, 300.000001);
  }
}
