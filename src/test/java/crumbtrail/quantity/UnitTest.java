package crumbtrail.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

  /** US customary measures hang together: 3 tsp, 16 tbsp, 8 fl oz, 2 cups, 2 pints, 4 quarts. */
  @Test
  void customaryMeasuresAreMultiplesOfEachOther() {
    assertThat(3 * Unit.TEASPOON.factor()).isCloseTo(Unit.TABLESPOON.factor(), within(1e-9));
    assertThat(16 * Unit.TABLESPOON.factor()).isCloseTo(Unit.CUP.factor(), within(1e-9));
    assertThat(8 * Unit.FLUID_OUNCE.factor()).isCloseTo(Unit.CUP.factor(), within(1e-9));
    assertThat(2 * Unit.CUP.factor()).isCloseTo(Unit.PINT.factor(), within(1e-9));
    assertThat(2 * Unit.PINT.factor()).isCloseTo(Unit.QUART.factor(), within(1e-9));
    assertThat(4 * Unit.QUART.factor()).isCloseTo(Unit.GALLON.factor(), within(1e-9));
    assertThat(16 * Unit.OUNCE.factor()).isCloseTo(Unit.POUND.factor(), within(1e-9));
    assertThat(12 * Unit.INCH.factor()).isCloseTo(Unit.FOOT.factor(), within(1e-9));
    // NIST SP 811, appendix B.8: 1 gallon (US) = 231 cubic inches.
    assertThat(231 * Math.pow(2.54, 3)).isCloseTo(Unit.GALLON.factor(), within(1e-6));
  }

  @Test
  void temperaturesMeetAtKnownPoints() {
    assertThat(Unit.FAHRENHEIT.toBase(32)).isCloseTo(0, within(1e-9));
    assertThat(Unit.FAHRENHEIT.toBase(212)).isCloseTo(100, within(1e-9));
    assertThat(Unit.KELVIN.toBase(273.15)).isCloseTo(0, within(1e-9));
    assertThat(Unit.GAS_MARK.toBase(1)).isCloseTo(Unit.FAHRENHEIT.toBase(275), within(1e-9));
    assertThat(Unit.GAS_MARK.toBase(7)).isCloseTo(Unit.FAHRENHEIT.toBase(425), within(1e-9));
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void goesToTheBaseUnitAndBack(Unit unit) {
    assertThat(unit.fromBase(unit.toBase(7.25))).isCloseTo(7.25, within(1e-9));
  }
}
