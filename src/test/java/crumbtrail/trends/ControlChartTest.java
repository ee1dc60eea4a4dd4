package crumbtrail.trends;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.trends.ControlChart.Kind;
import crumbtrail.trends.ControlChart.Signal;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Against the worked example of the NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2
 * (Individuals control charts): ten batches of a flow rate, centre 50.81, limits 45.8159 and
 * 55.8041. Values from memory; the sums were reckoned again.
 */
class ControlChartTest {
  private static final List<Double> FLOW =
      List.of(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);

  @Test
  void centre_and_limits_of_the_worked_example() {
    ControlChart chart = ControlChart.of(FLOW);

    assertThat(chart.centre()).isCloseTo(50.81, within(1e-9));
    assertThat(chart.upper()).isCloseTo(55.8041, within(1e-3));
    assertThat(chart.lower()).isCloseTo(45.8159, within(1e-3));
    assertThat(chart.signals()).isEmpty();
  }

  @Test
  void a_value_beyond_a_limit_stands_out() {
    List<Double> warm = Stream.concat(FLOW.stream(), Stream.of(71.0)).toList();

    assertThat(ControlChart.of(warm).signals()).contains(new Signal(10, Kind.ABOVE));
  }

  @Test
  void eight_in_a_row_on_one_side_stand_out_once() {
    List<Double> values =
        Stream.concat(Collections.nCopies(10, 24.0).stream(), Collections.nCopies(9, 26.0).stream())
            .toList();

    assertThat(ControlChart.of(values).signals())
        .filteredOn(one -> one.kind() == Kind.LONG_HIGH || one.kind() == Kind.LONG_LOW)
        .containsExactly(new Signal(7, Kind.LONG_LOW), new Signal(17, Kind.LONG_HIGH));
  }

  @Test
  void of_one_value_nothing_is_known() {
    ControlChart chart = ControlChart.of(List.of(25.0));

    assertThat(chart.lower()).isEqualTo(chart.upper()).isEqualTo(25);
    assertThat(chart.signals()).isEmpty();
    assertThat(ControlChart.of(List.of()).values()).isEmpty();
  }

  @Test
  void what_is_no_number_is_refused() {
    assertThatThrownBy(() -> ControlChart.of(List.of(Double.NaN)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
