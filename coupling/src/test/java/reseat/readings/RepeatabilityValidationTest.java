package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Repeatability and the bounds of the true scatter against published figures and figures computed
 * independently.
 *
 * <p>Sources. NIST/SEMATECH e-Handbook of Statistical Methods (gear data: recalled from memory,
 * confirmed by computation; chi-square 0.01 quantile with 42 degrees of freedom: read in a worked
 * copy of section 7.2.6.3). SAS Example 4.9, 75 heights: mean, its printed interval and s read.
 * Larsen Ex. 16, washers: s read. Formulas of ISO 230-2: recalled from memory; the figures were
 * computed independently from the stated formulas.
 */
class RepeatabilityValidationTest {

  private static final double SIX_DIGITS = 1e-6;

  @Test
  void bidirectionalFormsOfThreePositionsMatchTheFormulasOfIso230() {
    // Computed independently from the stated formulas.
    BidirectionalRepeatability r =
        new BidirectionalRepeatability(
            List.of(
                position(
                    new double[] {-1.2, -0.8, -1.0, -0.9, -1.1},
                    new double[] {-0.4, -0.1, -0.3, -0.2, 0}),
                position(
                    new double[] {0.4, 0.1, 0.3, 0.2, 0.5}, new double[] {1.0, 1.3, 1.2, 1.1, 0.9}),
                position(
                    new double[] {1.9, 2.2, 2.0, 2.1, 1.8},
                    new double[] {2.4, 2.7, 2.6, 2.8, 2.5})));
    for (BidirectionalRepeatability.Position p : r.positions()) {
      assertThat(p.up().s()).isCloseTo(0.1581138830, within(1e-10));
      assertThat(p.down().s()).isCloseTo(0.1581138830, within(1e-10));
      assertThat(p.up().iso230()).isCloseTo(0.6324555320, within(1e-10));
    }
    assertThat(r.positions().get(0).repeatability()).isCloseTo(1.432455532, within(1e-9));
    assertThat(r.positions().get(2).repeatability()).isCloseTo(1.232455532, within(1e-9));
    assertThat(r.repeatability()).isCloseTo(1.432455532, within(1e-9));
    assertThat(r.unidirectional()).isCloseTo(0.6324555320, within(1e-9));
    assertThat(r.systematic()).isCloseTo(3.6, within(1e-12));
    assertThat(r.meanDeviation()).isCloseTo(2.9, within(1e-12));
    assertThat(r.accuracy()).isCloseTo(4.232455532, within(1e-9));
    assertThat(r.meanReversal()).isCloseTo(-0.7333333333, within(1e-10));
  }

  private static BidirectionalRepeatability.Position position(double[] up, double[] down) {
    return BidirectionalRepeatability.Position.of(up, down);
  }

  @ParameterizedTest
  @CsvSource({
    "5, 0.599133, 2.873556, 2.372356, 0.9399856, 2.776445",
    "10, 0.687835, 1.825610, 1.645198, 0.9726593, 2.262157",
    "20, 0.760490, 1.460572, 1.370410, 0.9869343, 2.093024",
    "30, 0.796407, 1.344315, 1.279705, 0.9914181, 2.045230"
  })
  void boundsOfSigmaMatchIndependentlyComputedFactors(
      int n, double low, double high, double upper, double c4, double t) {
    // Computed independently from s sqrt((n - 1) / chi-square) and the gamma function.
    ScatterBounds b = ScatterBounds.of(1, n, 0.95);
    assertThat(b.lower()).isCloseTo(low, within(SIX_DIGITS));
    assertThat(b.upper()).isCloseTo(high, within(SIX_DIGITS));
    assertThat(b.upperOneSided()).isCloseTo(upper, within(SIX_DIGITS));
    assertThat(ScatterBounds.meanOfS(n)).isCloseTo(c4, within(1e-7));
    assertThat(ScatterBounds.studentFactor(0.95, n - 1)).isCloseTo(t, within(SIX_DIGITS));
  }

  @ParameterizedTest
  @CsvSource({
    "0.025, 9, 2.700389",
    "0.975, 9, 19.022768",
    "0.025, 99, 73.361080",
    "0.975, 99, 128.421989",
    "0.01, 42, 23.650095" // printed in a worked copy of NIST 7.2.6.3, and computed
  })
  void chiSquareQuantilesMatch(double probability, double freedom, double expected) {
    assertThat(ScatterBounds.chiSquareQuantile(probability, freedom))
        .isCloseTo(expected, within(SIX_DIGITS));
  }

  @Test
  void gearDataGiveTheIntervalOfSigma() {
    // NIST gear data, recalled from memory; s and interval confirmed by computation.
    Repeatability r = Repeatability.of(HandbookData.GEAR.toArray());
    assertThat(r.n()).isEqualTo(100);
    assertThat(r.mean()).isCloseTo(0.99764, within(1e-12));
    assertThat(r.s()).isCloseTo(0.006278908, within(5e-9));
    assertThat(r.bounds(0.95).lower()).isCloseTo(0.005512924, within(1e-8));
    assertThat(r.bounds(0.95).upper()).isCloseTo(0.007294052, within(1e-8));
    assertThat(99 * Math.pow(r.s() / 0.1, 2)).isCloseTo(0.3903044, within(1e-6));
  }

  @Test
  void washersGiveTheIntervalOfSigma() {
    ScatterBounds b = ScatterBounds.of(0.005124172, 15, 0.95);
    assertThat(b.lower()).isCloseTo(0.003751543, within(2e-9));
    assertThat(b.upper()).isCloseTo(0.008081327, within(2e-9));
    assertThat(ScatterBounds.chiSquareQuantile(0.975, 14)).isCloseTo(26.118948, within(1e-6));
  }

  @Test
  void heightsGiveThePrintedIntervalOfTheMeanAndOfSigma() {
    double half = ScatterBounds.halfWidthOfMean(2.188997878, 75, 0.95);
    assertThat(64.5666667 - half).isCloseTo(64.06302, within(1e-5)); // printed 64.06
    assertThat(64.5666667 + half).isCloseTo(65.07031, within(1e-5)); // printed 65.07
    ScatterBounds b = ScatterBounds.of(2.188997878, 75, 0.95);
    assertThat(b.lower()).isCloseTo(1.886082922, within(1e-7));
    assertThat(b.upper()).isCloseTo(2.608738500, within(1e-7));
  }
}
