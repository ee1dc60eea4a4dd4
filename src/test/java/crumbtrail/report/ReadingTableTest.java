package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.report.ReadingTable.Group;
import crumbtrail.report.ReadingTable.Row;
import crumbtrail.report.Report.WorkedReading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ReadingTableTest {

  @Test
  void rows_that_say_nothing_are_left_out() {
    Map<String, WorkedReading> workup = new LinkedHashMap<>();
    workup.put("hydration", reading(62, "%", "worked out", 59.0, 66.0));
    workup.put("total water", reading(62, "%", "worked out", 59.0, 68.0));
    workup.put("malt", reading(0, "%", "worked out", null, null));
    assertThat(names(workup)).containsExactly("hydration");
  }

  @Test
  void nought_and_repeats_stay_where_they_are_out_of_the_ordinary_or_measured() {
    Map<String, WorkedReading> workup = new LinkedHashMap<>();
    workup.put("hydration", reading(62, "%", "worked out", 59.0, 66.0));
    workup.put("total water", reading(62, "%", "worked out", 64.0, 68.0));
    workup.put("sugar", reading(0, "%", "worked out", 1.0, 8.0));
    workup.put("room", reading(0, "C", "measured", null, null));
    assertThat(names(workup)).containsExactly("hydration", "total water", "sugar", "room");
  }

  @Test
  void a_row_tells_value_spread_and_where_it_lies() {
    Row row =
        ReadingTable.of(
                Map.of("proof ripeness", reading(2.65, "times ready", "worked out", 0.8, 1.25)))
            .get(0)
            .rows()
            .get(0);
    assertThat(row.value()).isEqualTo("2.65 times ready");
    assertThat(row.spread()).isEqualTo("2.55–2.75");
    assertThat(row.usual()).isEqualTo("0.8–1.25 times ready");
    assertThat(row.lies()).isEqualTo("above");
    assertThat(row.what()).isEqualTo("Meaning.");
  }

  private static List<String> names(Map<String, WorkedReading> workup) {
    return ReadingTable.of(workup).stream()
        .map(Group::rows)
        .flatMap(List::stream)
        .map(Row::name)
        .toList();
  }

  private static WorkedReading reading(
      double value, String unit, String known, Double usualLow, Double usualHigh) {
    double spread = value == 2.65 ? 0.1 : 0;
    return new WorkedReading(
        value,
        unit,
        value - spread,
        value + spread,
        known,
        usualLow,
        usualHigh,
        "",
        "rise",
        "Meaning.");
  }
}
