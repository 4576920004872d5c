package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;
import reseat.material.ElasticConstants;

class RootFixingTest {

  private static final ElasticConstants STEEL = new ElasticConstants(200e9, 0.3);

  /** {@code Int Jn(x)²/x² dx} from 0 to a far end, plus the mean of the tail, 1/(2 pi X²). */
  private static double besselSquare(int order) {
    BesselJ bessel = new BesselJ(order);
    double far = 400;
    IterativeLegendreGaussIntegrator quadrature =
        new IterativeLegendreGaussIntegrator(24, 1e-11, 1e-14);
    double sum = 0;
    for (double from = 1e-9; from < far; from += 10) {
      sum +=
          quadrature.integrate(1_000_000, x -> Math.pow(bessel.value(x) / x, 2), from, from + 10);
    }
    return sum + 1 / (2 * Math.PI * far * far);
  }

  @Test
  void upperBoundsAreTheEnergyOfBeamStressOnAHalfSpace() {
    // Energy of a pressure on a disc: with Hankel transform P(k) the half-space gives
    // 2 (1-nu²)/E P/k. Uniform pressure: P = a J1(ka)/k; linear: P = a² J2(ka)/k.
    double uniform = 4 / Math.PI * besselSquare(1);
    assertThat(uniform).isCloseTo(16 / (3 * Math.PI * Math.PI), within(1e-6));
    double linear = 32 / Math.PI * besselSquare(2);
    assertThat(linear).isCloseTo(128 / (15 * Math.PI * Math.PI), within(1e-6));
  }

  @Test
  void theUsedValueLiesBetweenRigidDiscAndBeamStress() {
    double a = 3e-3;
    RootFixing foot = RootFixing.ofHalfSpace(2 * a, STEEL);
    double plane = (1 - 0.09) / 200e9;
    assertThat(foot.axial() * a / plane).isBetween(0.5, 0.5404);
    assertThat(foot.tilt() * a * a * a / plane).isBetween(0.75, 0.8647);
    double g = STEEL.shearModulus();
    assertThat(foot.torsion() * g * a * a * a).isBetween(0.1875, 0.2162);
    assertThat(foot.lateral() * 8 * g * a / 1.7).isBetween(1.0, 1.0808);
  }

  @Test
  void aRigidDiscTiltsAsTwoHalfSpacesOfTheStickingContact() {
    // The lateral compliance of a rigid disc, (2-nu)/(8 G a), is one body's share of the sticking
    // circular contact, whose stiffness is 8 G* a (Mindlin, recalled from memory).
    double a = 3e-3;
    RootFixing foot = RootFixing.ofHalfSpace(2 * a, STEEL);
    double gStar = STEEL.shearModulus() / (2 * 1.7);
    double oneBody = 0.5 / (8 * gStar * a);
    assertThat(foot.lateral()).isCloseTo(1.0404 * oneBody, within(1e-4 * foot.lateral()));
  }
}
