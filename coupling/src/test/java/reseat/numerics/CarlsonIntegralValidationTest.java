package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values computed with Python mpmath 1.3.0, elliprd(x, y, z), 30 digits. */
class CarlsonIntegralValidationTest {

  @ParameterizedTest
  @CsvSource({
    "0, 2, 1, 1.7972103521033883112",
    "2, 3, 4, 0.16510527294261053349",
    "0.25, 1, 1e-4, 585.76147095545904519",
    "1e-6, 1, 1e-6, 1499990.098631083705",
    "1, 1, 1e-6, 2995.2936039590230813",
    "5, 0.01, 300, 0.0013951337338721537006"
  })
  void agreesWithThirtyDigitValues(double x, double y, double z, double expected) {
    assertThat(CarlsonIntegral.rd(x, y, z)).isCloseTo(expected, within(3e-15 * expected));
    assertThat(CarlsonIntegral.rd(y, x, z)).isCloseTo(expected, within(3e-15 * expected));
  }

  @Test
  void scalesWithTheMinusThreeHalvesPower() {
    double once = CarlsonIntegral.rd(0.3, 2, 5);
    assertThat(CarlsonIntegral.rd(0.03, 0.2, 0.5))
        .isCloseTo(once * Math.pow(0.1, -1.5), within(1e-14 * once * 40));
    assertThat(CarlsonIntegral.rd(4, 4, 4)).isCloseTo(0.125, within(1e-16));
  }
}
