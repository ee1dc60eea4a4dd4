package crumbtrail.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for every text and every quantity. */
class QuantitiesPropertyTest {

  @Property(tries = 1500)
  void noTextMakesAReaderThrow(@ForAll String text, @ForAll Dimension dimension) {
    checkReading(text, dimension);
  }

  @Property(tries = 3000)
  void noPileOfBakersWordsMakesAReaderThrow(
      @ForAll("bakersWords") String text, @ForAll Dimension dimension) {
    checkReading(text, dimension);
  }

  private static void checkReading(String text, Dimension dimension) {
    QuantityReading reading = Quantities.explain(text, dimension);
    assertThat(reading.quantity().isPresent()).isEqualTo(reading.what().isEmpty());
    reading
        .quantity()
        .ifPresent(
            q -> {
              assertThat(q.dimension()).isEqualTo(dimension);
              assertThat(q.low()).isFinite();
              assertThat(q.high()).isFinite();
            });
    String plain = PlainText.of(text);
    for (int i = 0; i < Math.min(plain.length(), 40); i++) {
      int from = i;
      Quantities.scan(plain, i, EnumSet.allOf(Dimension.class))
          .ifPresent(scan -> assertThat(scan.end()).isBetween(from + 1, plain.length()));
    }
  }

  @Property(tries = 1000)
  void whatIsWrittenReadsTheSame(
      @ForAll Unit unit,
      @ForAll @DoubleRange(min = 0, max = 40) double low,
      @ForAll @DoubleRange(min = 0, max = 20) double width) {
    // Gas marks run from 1 to 10; nobody bakes near absolute zero.
    double shift = unit == Unit.KELVIN ? 250 : unit == Unit.GAS_MARK ? 1 : 0;
    double scale = unit == Unit.GAS_MARK ? 0.1 : unit == Unit.KILOMETRE ? 0.1 : 1;
    scale = unit == Unit.MONTH ? 0.3 : scale;
    double a = unit.toBase(shift + scale * low);
    double b = unit.toBase(shift + scale * (low + width));
    Quantity quantity = new Quantity("", unit, a, a + (b - a) / 2, b);
    // What nobody can mean is refused, which WrongSheetsTest tries.
    Assume.that(Quantities.believable(quantity));
    String written = Quantities.write(quantity);
    Quantity again = Quantities.read(written, unit.dimension()).orElseThrow();
    double room = 1e-9 * Math.max(1, Math.abs(b));
    assertThat(again.unit()).isEqualTo(unit);
    assertThat(again.low()).isCloseTo(quantity.low(), within(room));
    assertThat(again.value()).isCloseTo(quantity.value(), within(room));
    assertThat(again.high()).isCloseTo(quantity.high(), within(room));
  }

  @Property(tries = 500)
  void readingTwiceIsReadingOnce(@ForAll("bakersWords") String text, @ForAll Dimension dimension) {
    Quantities.read(text, dimension)
        .ifPresent(q -> assertThat(Quantities.read(q.written(), dimension)).contains(q));
  }

  @Provide
  Arbitrary<String> bakersWords() {
    return Arbitraries.of(
            "1",
            "2",
            "0",
            "1/2",
            "½",
            "1.5",
            "2,5",
            "1,000",
            "-",
            "–",
            "to",
            "or",
            "and",
            "a",
            "an",
            "half",
            "quarter",
            "three",
            "twenty",
            "dozen",
            "about",
            "~",
            "at least",
            "up to",
            "between",
            "overnight",
            "gas mark",
            "g",
            "kg",
            "cups",
            "T",
            "oz.",
            "fl",
            "lb",
            "min",
            "h",
            ":",
            "°",
            "C",
            "F",
            "degrees",
            "%",
            "±",
            "+",
            "/",
            "(",
            ")",
            ".",
            "x",
            "in",
            "'",
            "\"",
            "99999999999999999999",
            "plus",
            "of",
            "scant",
            "heaped",
            "or so",
            "\u00a0",
            "\n")
        .list()
        .ofMaxSize(12)
        .map(words -> String.join(" ", words))
        .flatMap(text -> Arbitraries.of(text, text.replace(" ", "")));
  }
}
