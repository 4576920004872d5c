package reseat.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;

class TangentialContactValidationTest {

  private static final ElasticConstants STEEL = new ElasticConstants(206e9, 0.3);
  private static final ElasticConstants CARBIDE = new ElasticConstants(630e9, 0.22);

  /**
   * Torsional stiffness of one body over G a^3. Computed independently: tractions integrated with
   * Cerruti's solution by quadrature, constants fitted at one point, rigid turning confirmed at
   * others to 15 digits.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.3, 5.333333333333333",
    "0.5, 0.3, 2.3416194984656036",
    "0.2, 0.22, 1.2285058136288796",
    "0.05, 0.3, 0.7876551721373395"
  })
  void spinStiffnessAgreesWithQuadratureOfTheTractions(double aspect, double nu, double expected) {
    ElasticConstants body = new ElasticConstants(2 * (1 + nu), nu);
    EllipticContact contact = EllipticContact.of(curvatureOf(aspect), ElasticPair.ofEqual(body));
    double a = contact.semiMajor(1e-3);
    double perBody = 2 * TangentialContact.of(contact).spinStiffness(1e-3);
    assertThat(perBody / (a * a * a)).isCloseTo(expected, within(1e-11 * expected));
  }

  @Test
  void spinOfUnequalBodiesOnACircleIsTwoSpringsInSeries() {
    EllipticContact contact =
        EllipticContact.of(RelativeCurvature.ballOnPlane(5e-3), new ElasticPair(STEEL, CARBIDE));
    double a = contact.semiMajor(100);
    double series = 16 * a * a * a / 3 / (1 / STEEL.shearModulus() + 1 / CARBIDE.shearModulus());
    assertThat(TangentialContact.of(contact).spinStiffness(100))
        .isCloseTo(series, within(1e-13 * series));
  }

  @Test
  void circleBetweenUnequalBodiesHasTheReducedShearModulus() {
    ElasticPair pair = new ElasticPair(STEEL, CARBIDE);
    EllipticContact contact = EllipticContact.of(RelativeCurvature.ballOnPlane(5e-3), pair);
    TangentialContact tangential = TangentialContact.of(contact);
    double expected = 8 * pair.reducedShearModulus() * contact.semiMajor(80);
    assertThat(tangential.stiffnessAlongMajor(80)).isCloseTo(expected, within(1e-14 * expected));
    assertThat(tangential.majorRatio() * contact.normalStiffness(80))
        .isCloseTo(expected, within(1e-13 * expected));
    assertThat(tangential.minorRatio() * contact.normalStiffness(80))
        .isCloseTo(expected, within(1e-13 * expected));
  }

  /** Slip everywhere: the traction mu p at every radius, integrated by the midpoint rule. */
  @Test
  void fullSlipMomentIsTheIntegralOfFrictionTimesRadius() {
    EllipticContact contact = EllipticContact.of(curvatureOf(0.4), ElasticPair.ofEqual(STEEL));
    double p = 50;
    double a = contact.semiMajor(p);
    double b = contact.semiMinor(p);
    int n = 400;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double u = (i + 0.5) * Math.PI / 2 / n;
      for (int j = 0; j < n; j++) {
        double t = (j + 0.5) * Math.PI / 2 / n;
        double r = Math.sin(u);
        double radius = Math.hypot(a * r * Math.cos(t), b * r * Math.sin(t));
        sum += Math.cos(u) * Math.cos(u) * r * radius;
      }
    }
    double cell = Math.pow(Math.PI / 2 / n, 2);
    double moment = 0.1 * contact.peakPressure(p) * 4 * a * b * sum * cell;
    assertThat(TangentialContact.of(contact).fullSlipSpinMoment(p, 0.1))
        .isCloseTo(moment, within(1e-5 * moment));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.05, 0.0999, 0.1001, 0.5, 0.999})
  void hysteresisLoopEnclosesItsEnergyAndEndsAtItsResidual(double q) {
    PartialSlip slip = new PartialSlip(10, 30e6);
    double peak = 10 * q;
    // the return branch is the mirror image, so the loop is twice the area above the unloading line
    int n = 2000;
    double area = 0;
    for (int i = 0; i < n; i++) {
      double s = (i + 0.5) / n;
      double force = peak * (1 - 2 * s);
      area += (unloading(slip, peak, force) + unloading(slip, peak, -force)) * 2 * peak / n;
    }
    assertThat(slip.loopEnergy(peak)).isCloseTo(area, within(1e-5 * area + 1e-12 * 1e-6));
    double residual = unloading(slip, peak, 0);
    assertThat(slip.residual(peak)).isCloseTo(residual, within(1e-15 * 1e-6 + 1e-9 * residual));
  }

  /** On the way back the rim slips again as in loading, with twice the force for twice the way. */
  private static double unloading(PartialSlip slip, double peak, double force) {
    return slip.displacement(peak) - 2 * slip.displacement((peak - force) / 2);
  }

  @Test
  void smallLoopsLoseEnergyWithTheCubeOfTheForceAndLeaveAResidualWithItsSquare() {
    PartialSlip slip = new PartialSlip(10, 30e6);
    double peak = 1e-5;
    // 7.2 F^2/k0 times 5 q^3/162, and u_full q^2 t_2/2 with t_2 = 1/9
    double energy = 7.2 * 5 / 162 * Math.pow(peak, 3) / (10 * 30e6);
    assertThat(slip.loopEnergy(peak)).isCloseTo(energy, within(1e-5 * energy));
    double residual = 1.5 * Math.pow(peak, 2) / (18 * 10 * 30e6);
    assertThat(slip.residual(peak)).isCloseTo(residual, within(1e-5 * residual));
  }

  @Test
  void slipStiffnessIsTheSlopeOfTheDisplacement() {
    PartialSlip slip = new PartialSlip(10, 30e6);
    for (double q : new double[] {0.1, 1, 5, 9}) {
      double h = 1e-4;
      double slope = 2 * h / (slip.displacement(q + h) - slip.displacement(q - h));
      assertThat(slip.stiffness(q)).isCloseTo(slope, within(1e-6 * slope));
    }
    assertThat(slip.displacement(10)).isEqualTo(slip.fullSlipDisplacement());
    assertThat(slip.stiffness(10)).isZero();
  }

  @Test
  void forcesBeyondTheFrictionLimitAreRefused() {
    PartialSlip slip = new PartialSlip(10, 30e6);
    assertThatThrownBy(() -> slip.displacement(10.1)).hasMessageContaining("friction limit");
    assertThatThrownBy(() -> slip.residual(10.1)).hasMessageContaining("friction limit");
    assertThatThrownBy(() -> new PartialSlip(0, 1)).hasMessageContaining("friction limit");
  }

  private static RelativeCurvature curvatureOf(double aspect) {
    EllipseShape s = EllipseShape.ofAspect(aspect);
    return RelativeCurvature.of(100, 100 * s.integralB() / (aspect * aspect * s.integralD()));
  }
}
