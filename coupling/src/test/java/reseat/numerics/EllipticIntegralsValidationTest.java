package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against 20-digit values; how they were made stands at the head of the resource file. */
class EllipticIntegralsValidationTest {

  private static final double FEW_ULP = 1.5e-15;

  /** K, by the sum that defines B and D. */
  private static double first(double mc) {
    return EllipticIntegrals.completeB(mc) + EllipticIntegrals.completeD(mc);
  }

  /** E. */
  private static double second(double mc) {
    return EllipticIntegrals.completeB(mc) + mc * EllipticIntegrals.completeD(mc);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "elliptic-integrals.csv")
  void integralsAgreeWithTwentyDigitValuesFromCircleToLine(
      double mc, double k, double e, double b, double d, double c) {
    assertThat(first(mc)).isCloseTo(k, within(FEW_ULP * k));
    assertThat(second(mc)).isCloseTo(e, within(FEW_ULP * e));
    assertThat(EllipticIntegrals.completeB(mc)).isCloseTo(b, within(FEW_ULP * b));
    assertThat(EllipticIntegrals.completeD(mc)).isCloseTo(d, within(FEW_ULP * d));
    // C is a quotient with at most 1/0.05 of loss, or a series without any
    assertThat(EllipticIntegrals.completeC(mc)).isCloseTo(c, within(30 * FEW_ULP * c));
  }

  /** Computed independently with mpmath: K and E at parameter m = 0.25 (not modulus 0.25). */
  @Test
  void argumentIsTheComplementaryParameterAndNotTheModulus() {
    assertThat(first(0.75)).isCloseTo(1.685750354812596, within(1e-14));
    assertThat(second(0.75)).isCloseTo(1.467462209339427, within(1e-14));
  }

  @Test
  void legendreRelationHolds() {
    for (double mc : new double[] {1e-8, 0.003, 0.2, 0.5, 0.71}) {
      double k = first(mc);
      double e = second(mc);
      double kc = first(1 - mc);
      double ec = second(1 - mc);
      assertThat(e * kc + ec * k - k * kc).isCloseTo(Math.PI / 2, within(2e-13));
    }
  }

  @Test
  void thirdKindAgreesWithItsElementaryCase() {
    // at kc = 1 the integral is elementary: int 1/(cos^2 + p sin^2) = pi/(2 sqrt p)
    assertThat(EllipticIntegrals.cel(1, 4, 1, 1)).isCloseTo(Math.PI / 4, within(1e-15));
  }

  @Test
  void argumentsOutsideTheRangeAreRefused() {
    assertThatThrownBy(() -> EllipticIntegrals.completeB(0)).hasMessageContaining("found 0.0");
    assertThatThrownBy(() -> EllipticIntegrals.completeD(1.1)).hasMessageContaining("found 1.1");
    assertThatThrownBy(() -> EllipticIntegrals.completeB(Double.NaN))
        .hasMessageContaining("found NaN");
  }
}
