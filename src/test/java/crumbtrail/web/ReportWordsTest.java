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
}
