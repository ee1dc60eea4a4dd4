package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReportWordsTest {

  @ParameterizedTest
  @CsvSource({
    "0.999, almost certain, over 99 %",
    "0.93, very likely, 93 %",
    "0.83, likely, 83 %",
    "0.5, quite possible, 50 %",
    "0.2, less likely, 20 %",
    "0.05, unlikely, 5 %",
    "0.001, very unlikely, under 1 %"
  })
  void saysHowLikely(double probability, String words, String percent) {
    assertThat(ReportWords.likelihood(probability)).isEqualTo(words);
    assertThat(ReportWords.percent(probability)).isEqualTo(percent);
  }

  @ParameterizedTest
  @CsvSource({"3, faint", "-6, plain", "10, firm", "-20, decisive"})
  void usesTheWordsOfTheRules(double decibans, String words) {
    assertThat(ReportWords.weight(decibans)).isEqualTo(words);
  }

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
    assertThat(ReportWords.number(value)).isEqualTo(text);
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
    assertThat(ReportWords.quantity(value, unit)).isEqualTo(text);
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
    assertThat(ReportWords.range(low, high, unit)).isEqualTo(text);
  }
}
