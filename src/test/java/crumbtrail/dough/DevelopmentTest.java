package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.dough.Development.Flour;
import crumbtrail.dough.Development.Kneading;
import crumbtrail.dough.Development.Moment;
import crumbtrail.dough.Development.Tool;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DevelopmentTest {
  private static final Flour BREAD = new Flour(12, 0, 0);

  @Property
  void more_kneading_rest_or_time_never_lowers_development(
      @ForAll Tool tool,
      @ForAll Moment fat,
      @ForAll @DoubleRange(min = 0, max = 40) double minutes,
      @ForAll @DoubleRange(min = 0, max = 60) double rest,
      @ForAll @DoubleRange(min = 0, max = 24) double hours) {
    double before = Development.percent(kneading(tool, minutes, rest, hours, fat, 20));

    assertThat(Development.percent(kneading(tool, minutes + 1, rest, hours, fat, 20)))
        .isGreaterThanOrEqualTo(before);
    assertThat(Development.percent(kneading(tool, minutes, rest + 5, hours, fat, 20)))
        .isGreaterThanOrEqualTo(before);
    assertThat(Development.percent(kneading(tool, minutes, rest, hours + 1, fat, 20)))
        .isGreaterThanOrEqualTo(before);
  }

  @Property
  void early_fat_slows_from_a_tenth_on_and_without_a_jump(
      @ForAll @DoubleRange(min = 0, max = 60) double fat) {
    double early = Development.percent(kneading(Tool.MIXER, 10, 0, 0, Moment.START, fat));
    double late = Development.percent(kneading(Tool.MIXER, 10, 0, 0, Moment.LATE, fat));
    double more = Development.percent(kneading(Tool.MIXER, 10, 0, 0, Moment.START, fat + 1e-6));

    assertThat(early).isLessThanOrEqualTo(late).isCloseTo(more, within(1e-3));
    if (fat <= 10) {
      assertThat(early).isCloseTo(late, within(1e-9));
    }
  }

  @Test
  void weak_flour_bran_heat_and_blades_bring_a_dough_nearer_to_breaking_down() {
    Kneading ten = kneading(Tool.MIXER, 10, 0, 0, Moment.UNKNOWN, 3);
    double plain = Development.overwork(ten, BREAD, 25);

    assertThat(plain).isBetween(20.0, 60.0);
    assertThat(Development.overwork(ten, new Flour(9, 0, 0), 25)).isGreaterThan(plain);
    assertThat(Development.overwork(ten, new Flour(12, 1, 0), 25)).isGreaterThan(plain);
    assertThat(Development.overwork(ten, new Flour(12, 0, 1), 25)).isGreaterThan(plain);
    assertThat(Development.overwork(ten, BREAD, 32)).isGreaterThan(plain);
    Kneading blades = kneading(Tool.PROCESSOR, 3, 0, 0, Moment.UNKNOWN, 3);
    assertThat(Development.overwork(blades, BREAD, 25)).isGreaterThan(100);
    Kneading hands = kneading(Tool.HAND, 20, 0, 0, Moment.UNKNOWN, 3);
    assertThat(Development.overwork(hands, BREAD, 25)).isLessThan(plain);
  }

  @Test
  void kneading_that_cannot_be_is_refused_and_an_hour_is_the_limit() {
    assertThatThrownBy(() -> kneading(Tool.MIXER, -1, 0, 0, Moment.LATE, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(Development.covers(kneading(Tool.MIXER, 20, 0, 0, Moment.LATE, 0))).isTrue();
    assertThat(Development.covers(kneading(Tool.MIXER, 90, 0, 0, Moment.LATE, 0))).isFalse();
  }

  private static Kneading kneading(
      Tool tool, double minutes, double rest, double hours, Moment fatWent, double fat) {
    return new Kneading(tool, minutes, 1, rest, 0, hours, fatWent, Moment.UNKNOWN, fat, 0, 10);
  }
}
