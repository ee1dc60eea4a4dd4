package crumbtrail.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountsTest {

  @ParameterizedTest
  @CsvSource({
    "500, 500",
    "822.4, 822",
    "62.04, 62",
    "63.14, 63.1",
    "1.2, 1.2",
    "0.1, 0.1",
    "0.0625, 0.063",
    "0, 0",
    "-2.5, -2.5"
  })
  void roundsAsBakersNeed(double value, String text) {
    assertThat(Amounts.number(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "75, min, 75 min",
    "840, min, 14 h",
    "150, min, 2 h 30 min",
    "24, C, 24 °C",
    "2.2, cm3/g, 2.2 cm³/g",
    "3, '', 3"
  })
  void writesUnitsAsPeopleDo(double value, String unit, String text) {
    assertThat(Amounts.quantity(value, unit)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "45, 70, min, 45–70 min",
    "60, 960, min, 60 min to 16 h",
    "-7, 4, points, -7 to 4 points",
    "1.8, 2.2, %, 1.8–2.2 %",
    "62.01, 62.02, %, 62 %"
  })
  void writesRangesThatCanBeRead(double low, double high, String unit, String text) {
    assertThat(Amounts.range(low, high, unit)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "61.8, 72.2, min, 62–72",
    "1.66, 3.18, times ready, 1.7–3.2",
    "100, 180, min, 100 min to 3 h",
    "-2.62, 1.38, points, -2.6 to 1.4",
    "62, 62, %, ''"
  })
  void showsNoMoreDecimalsThanTheSpreadBears(double low, double high, String unit, String text) {
    assertThat(Amounts.spread(low, high, unit)).isEqualTo(text);
  }
}
