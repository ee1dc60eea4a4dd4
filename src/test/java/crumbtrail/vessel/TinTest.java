package crumbtrail.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TinTest {

  @Test
  void shapes_agree_with_their_textbook_volumes() {
    assertThat(Tin.straight(200, 100, 50).volume()).isCloseTo(1000, within(1e-9));
    assertThat(Tin.round(200, 50).volume()).isCloseTo(Math.PI * 10 * 10 * 5, within(1e-9));
    // Frustum of a cone: pi h (R² + R r + r²) / 3.
    assertThat(Tin.cone(240, 200, 60).volume())
        .isCloseTo(Math.PI * 6 * (144 + 120 + 100) / 3, within(1e-9));
    assertThat(Tin.oval(300, 200, 50).volume()).isCloseTo(Math.PI * 15 * 10 * 5, within(1e-9));
    assertThat(Tin.ringVolume(200, 100, 50)).isCloseTo(Math.PI * 75 * 5, within(1e-9));
    assertThat(Tin.flared(200, 100, 50).volume()).isCloseTo(920, within(1e-6));
    assertThat(Tin.straight(330, 230, 25).rimArea()).isCloseTo(759, within(1e-9));
  }

  @Property
  void a_loaf_that_fills_more_stands_higher_and_the_rim_is_no_jump(
      @ForAll @DoubleRange(min = 0.05, max = 1.6) double filled) {
    Tin tin = Tin.flared(229, 127, 70);
    double volume = tin.volume() * filled;

    assertThat(tin.heightOf(volume * 1.02)).isGreaterThan(tin.heightOf(volume));
    if (filled <= 1) {
      assertThat(tin.volumeTo(tin.heightOf(volume))).isCloseTo(volume, within(1e-4));
    }
    assertThat(tin.heightOf(tin.volume() - 1e-6))
        .isCloseTo(tin.heightOf(tin.volume() + 1e-6), within(1e-6));
  }

  @Property
  void a_tin_between_base_and_rim_holds_between_their_boxes(
      @ForAll @DoubleRange(min = 100, max = 400) double length,
      @ForAll @DoubleRange(min = 0.6, max = 1) double slope) {
    Tin tin = Tin.tapered(length, 120, length * slope, 120 * slope, 70);

    assertThat(tin.volume())
        .isBetween(
            Tin.straight(length * slope, 120 * slope, 70).volume() - 1e-9,
            Tin.straight(length, 120, 70).volume() + 1e-9);
  }

  /** Eight hundred grams risen to four times its weight stands about an inch over a 9 x 5 rim. */
  @Test
  void a_home_loaf_domes_over_the_rim() {
    Tin tin = Tin.flared(229, 127, 70);

    assertThat(tin.heightOf(800 * 3.2) - 70).isBetween(20.0, 50.0);
    assertThat(tin.holdsUpright(800 * 3.2)).isTrue();
    assertThat(tin.holdsUpright(5000)).isFalse();
    assertThat(tin.heightOf(0)).isZero();
  }

  @Test
  void names_and_sizes_find_their_tins() {
    assertThat(CommonTins.named("a 2 lb tin"))
        .map(CommonTins.Named::name)
        .hasValue("2 lb loaf tin");
    assertThat(CommonTins.named("one-pound loaf tin").orElseThrow().volume()).isEqualTo(700);
    assertThat(CommonTins.named("12 lb of dough")).isEmpty();
    assertThat(CommonTins.named(228.6, 127).orElseThrow().volume()).isEqualTo(1900);
    assertThat(CommonTins.named(300, 200)).isEmpty();
  }

  @Test
  void a_dough_finds_a_tin_and_a_trough_finds_none() {
    assertThat(CommonTins.fitting(600, TinRoom.LIDDED.middle()).orElseThrow().name())
        .isEqualTo("9 x 4 x 4 in lidded tin");
    assertThat(CommonTins.fitting(850, TinRoom.DOMED.middle()).orElseThrow().name())
        .isEqualTo("9 x 5 in loaf tin");
    assertThat(CommonTins.fitting(20_000, 3)).isEmpty();
    assertThat(CommonTins.all())
        .isSortedAccordingTo((a, b) -> Double.compare(a.volume(), b.volume()));
  }

  @Test
  void rooms_and_lengths_that_cannot_be_are_refused() {
    assertThat(TinRoom.PEAKED.tinFor(400)).isCloseTo(1420, within(1e-9));
    assertThat(TinRoom.PEAKED.low()).isLessThan(TinRoom.PEAKED.high());
    assertThat(TinRoom.covers(2.2)).isTrue();
    assertThat(TinRoom.covers(20)).isFalse();
    assertThatThrownBy(() -> TinRoom.of(100, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Tin.straight(-1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Tin.ringVolume(100, 200, 50))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Tin.round(200, 50).heightOf(-1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
