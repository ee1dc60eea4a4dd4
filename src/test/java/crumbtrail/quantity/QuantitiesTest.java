package crumbtrail.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities as bakers write them, against values worked out by hand in the base unit. */
class QuantitiesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "60-75 min                 | 60   | 67.5 | 75",
        "60 to 75 minutes          | 60   | 67.5 | 75",
        "2–3 h                     | 120  | 150  | 180",
        "45 min - 1 h              | 45   | 52.5 | 60",
        "between 60 and 75 min     | 60   | 67.5 | 75",
        "75 ± 5 min                | 70   | 75   | 80",
        "18-24h                    | 1080 | 1260 | 1440",
        "overnight                 | 480  | 600  | 720",
        "overnight (10 h)          | 600  | 600  | 600",
        "an hour and a half        | 90   | 90   | 90",
        "1 h 30 min                | 90   | 90   | 90",
        "1 hour and 30 minutes     | 90   | 90   | 90",
        "1h30                      | 90   | 90   | 90",
        "1:30 h                    | 90   | 90   | 90",
        "1 1/2 hours               | 90   | 90   | 90",
        "1½ h                      | 90   | 90   | 90",
        "1,5 h                     | 90   | 90   | 90",
        "two and a half hours      | 150  | 150  | 150",
        "half an hour              | 30   | 30   | 30",
        "three quarters of an hour | 45   | 45   | 45",
        "forty-five minutes        | 45   | 45   | 45",
        "a couple of days          | 2880 | 2880 | 2880",
        "2 d                       | 2880 | 2880 | 2880",
        "90 sec                    | 1.5  | 1.5  | 1.5",
        "about 2 hours             | 108  | 120  | 132",
        "~ 2 h                     | 108  | 120  | 132",
        "10 minutes or so          | 9    | 10   | 11",
        "at least 8 h              | 480  | 480  | 576",
        "up to 12 hours            | 576  | 720  | 720",
        "twelve hours              | 720  | 720  | 720",
      })
  void readsTimesInMinutes(String written, double low, double value, double high) {
    check(written, Dimension.TIME, low, value, high);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "26 C           | 26      | 26      | 26",
        "26,5 °C        | 26.5    | 26.5    | 26.5",
        "78F            | 25.5556 | 25.5556 | 25.5556",
        "78 °F          | 25.5556 | 25.5556 | 25.5556",
        "450 degrees F  | 232.222 | 232.222 | 232.222",
        "26 ºC          | 26      | 26      | 26",
        "about 26 C     | 24      | 26      | 28",
        "ca. 24 °C      | 22      | 24      | 26",
        "24-26 C        | 24      | 25      | 26",
        "20°-22°C       | 20      | 21      | 22",
        "-18 C          | -18     | -18     | -18",
        "230 C (446 F)  | 230     | 230     | 230",
        "gas mark 7     | 218.333 | 218.333 | 218.333",
        "300 K          | 26.85   | 26.85   | 26.85",
      })
  void readsTemperaturesInCelsius(String written, double low, double value, double high) {
    check(written, Dimension.TEMPERATURE, low, value, high);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 lb 2 oz              | MASS    | 510.291",
        "0,125 kg               | MASS    | 125",
        "12\u00a0500 g               | MASS    | 12500",
        "500 mg                 | MASS    | 0.5",
        "2 cups plus 1 tbsp     | VOLUME  | 487.963",
        "⅔ cup                  | VOLUME  | 157.725",
        "1-1/2 cups             | VOLUME  | 354.882",
        "8 fl. oz.              | VOLUME  | 236.588",
        "1 pint                 | VOLUME  | 473.176",
        "1 quart                | VOLUME  | 946.353",
        "2 dl                   | VOLUME  | 200",
        "3 T                    | VOLUME  | 44.3603",
        "3 t                    | VOLUME  | 14.7868",
        "2                      | COUNT   | 2",
        "2 packets              | COUNT   | 2",
        "a dozen                | COUNT   | 12",
        "1600 m                 | LENGTH  | 1600000",
        "1,600 m                | LENGTH  | 1600000",
        "5300 ft                | LENGTH  | 1615440",
        "2.75 in                | LENGTH  | 69.85",
        "80 %                   | PERCENT | 80",
        "80 per cent            | PERCENT | 80",
      })
  void readsOtherKinds(String written, Dimension dimension, double value) {
    check(written, dimension, value, value, value);
  }

  private static void check(
      String written, Dimension dimension, double low, double value, double high) {
    Quantity quantity = Quantities.read(written, dimension).orElseThrow();
    double room = 1e-5 * Math.max(1, Math.abs(value));
    assertThat(quantity.value()).isCloseTo(value, within(room));
    assertThat(quantity.low()).isCloseTo(low, within(room));
    assertThat(quantity.high()).isCloseTo(high, within(room));
    assertThat(quantity.written()).isEqualTo(written.strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "75               | TIME        | has no unit",
        "26               | TEMPERATURE | has no unit",
        "450 degrees      | TEMPERATURE | Celsius or Fahrenheit",
        "500 g            | TIME        | is a weight",
        "60 min           | MASS        | is a time",
        "until doubled    | TIME        | cannot be read",
        "-5 min           | TIME        | is negative",
        "-5 g             | MASS        | is negative",
        "1000000000 g     | MASS        | far more than any bake",
        "9999999999999999999999 h | TIME | too large",
        "1e9 g            | MASS        | cannot be read",
        "NaN g            | MASS        | cannot be read",
        "900 C            | TEMPERATURE | hotter than any oven",
        "-90 C            | TEMPERATURE | colder than any freezer",
        "230 C / 350 F    | TEMPERATURE | do not agree",
        "60 min 3 cats    | TIME        | holds more than",
        "''               | TIME        | nothing is written",
      })
  void saysWhatIsWrongAndWhatWouldDo(String written, Dimension dimension, String part) {
    QuantityReading reading = Quantities.explain(written, dimension);
    assertThat(reading.quantity()).isEmpty();
    assertThat(reading.what()).contains(part);
    assertThat(reading.remedy()).startsWith("write ");
  }

  @Test
  void keepsTheUnitThatWasWritten() {
    assertThat(Quantities.read("1 h 30 min", Dimension.TIME).orElseThrow().unit())
        .isEqualTo(Unit.HOUR);
    assertThat(Quantities.read("78 F", Dimension.TEMPERATURE).orElseThrow().unit())
        .isEqualTo(Unit.FAHRENHEIT);
  }

  @ParameterizedTest
  @CsvSource({"60-75 min,TIME,60 to 75 min", "90 min,TIME,90 min", "1 1/2 h,TIME,1.5 h"})
  void writesInTheUnitThatWasWritten(String written, Dimension dimension, String again) {
    Quantity quantity = Quantities.read(written, dimension).orElseThrow();
    assertThat(Quantities.write(quantity)).isEqualTo(again);
  }

  @Test
  void readsTheSameUnderEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(Quantities.read("12 MIN", Dimension.TIME)).isPresent();
      assertThat(Quantities.read("9 IN", Dimension.LENGTH)).isPresent();
    } finally {
      Locale.setDefault(before);
    }
  }
}
