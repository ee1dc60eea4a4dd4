package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class BeliefsPropertyTest {
  private static final double[] YES_NO = {0.1, 0.9};

  @Property
  void an_answer_teaches_no_less_than_nothing_and_no_more_than_itself(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double now,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double other,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double yes,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double no) {
    Beliefs beliefs = Beliefs.of(now, other);
    List<Beliefs> answers = List.of(Beliefs.of(yes, other), Beliefs.of(no, yes));

    double[] expected = beliefs.expected(YES_NO, answers);

    assertThat(expected[0] + expected[1]).isCloseTo(1, within(1e-9));
    assertThat(beliefs.bits(YES_NO, answers)).isBetween(0.0, Beliefs.entropy(expected[0]) + 1e-9);
  }

  @Property
  void an_answer_that_changes_nothing_teaches_nothing(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double now) {
    Beliefs beliefs = Beliefs.of(now);

    assertThat(beliefs.bits(YES_NO, List.of(beliefs, beliefs))).isZero();
    assertThat(beliefs.expected(YES_NO, List.of(beliefs, beliefs))[0]).isCloseTo(0.1, within(1e-9));
  }

  /**
   * A sign that nine in ten loaves with the cause have and one in ten without it, the cause being
   * as likely as not: by hand, Bayes gives 0.9 after yes and 0.1 after no, yes half the time, and 1
   * - H(0.9) = 0.531 bits.
   */
  @Example
  void a_textbook_test_teaches_what_the_textbook_says() {
    Beliefs beliefs = Beliefs.of(0.5);
    List<Beliefs> answers = List.of(Beliefs.of(0.9), Beliefs.of(0.1));

    assertThat(beliefs.expected(YES_NO, answers)[0]).isCloseTo(0.5, within(1e-9));
    assertThat(beliefs.bits(YES_NO, answers)).isCloseTo(0.531, within(0.0005));
  }

  @Example
  void what_is_all_but_certain_has_little_left_to_learn() {
    double doubtful = Beliefs.of(0.5).bits(YES_NO, List.of(Beliefs.of(0.8), Beliefs.of(0.3)));
    double certain = Beliefs.of(0.99).bits(YES_NO, List.of(Beliefs.of(0.997), Beliefs.of(0.977)));

    assertThat(certain).isLessThan(doubtful / 4);
  }
}
