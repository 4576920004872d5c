package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;
import reseat.space.Vec3;

/**
 * Symmetric three-vee coupling, balls of 12.7 mm on a radius of 50 mm, flanks at 45 degrees, tool
 * point in the middle.
 *
 * <p>Values computed independently from Wᵀ X = e, no published table: CV-078 to CV-080 and CV-091.
 */
class SensitivityValidationTest {

  private static final double MICRON = 1e-6;

  private static Sensitivity of(Tolerance... tolerances) {
    CouplingDesign d =
        TolerancedCouplings.threeVees().tolerances(Tolerances.of(tolerances)).build();
    return Sensitivity.of(ToleranceModel.of(d));
  }

  private static void assertVector(Vec3 v, double x, double y, double z, double tolerance) {
    assertThat(v.x()).isCloseTo(x, within(tolerance));
    assertThat(v.y()).isCloseTo(y, within(tolerance));
    assertThat(v.z()).isCloseTo(z, within(tolerance));
  }

  @Test
  void oneFlankThatStandsProud() {
    // CV-078: the flank that pushes along z x radial is the right one when looking outward
    Sensitivity s =
        of(
            Tolerance.ofEach(ToleranceKind.FLANK_POSITION, MICRON, DistributionShape.UNIFORM)
                .at("ball 90")
                .onPart("right"));
    Sensitivity.Effect e = s.effects().get(0);
    assertVector(e.shift(), -0.471405, 0, 0.235702, 5e-7);
    assertVector(e.rotation(), 9.42809, 0, 4.714045, 5e-6);
  }

  @Test
  void sixIndependentErrorsOfOneMicron() {
    // CV-079, closed form 1/sqrt(3 s^2), 1/sqrt(6 c^2), 1/(Rc sqrt(3) c), 1/(Rc sqrt(6) s)
    double limit = MICRON / DistributionShape.UNIFORM.standardDeviationPerLimit();
    LinearStack.Sum sum =
        new LinearStack(
                of(
                    Tolerance.ofEach(
                        ToleranceKind.FLANK_POSITION, limit, DistributionShape.UNIFORM)))
            .sum(LinearStack.EVERYTHING);
    assertVector(sum.deviation(), 0.8164966e-6, 0.8164966e-6, 0.5773503e-6, 5e-14);
    assertVector(sum.rotationDeviation(), 16.3299316e-6, 16.3299316e-6, 11.5470054e-6, 5e-13);
    assertVector(sum.covariances(), 0, 0, 0, 1e-20);
  }

  @Test
  void sixEqualErrorsLiftTheHolder() {
    // CV-080: a lot of balls 2 um too large stands 1 um proud at every flank, dz = 1 um / cos 45
    Sensitivity s =
        of(Tolerance.shared(ToleranceKind.BALL_DIAMETER, 2 * MICRON, DistributionShape.UNIFORM));
    assertVector(s.effects().get(0).shift().times(2), 0, 0, 1.41421356, 5e-9);
    assertVector(s.effects().get(0).rotation(), 0, 0, 0, 1e-12);
  }

  @Test
  void steeperFlanksLiftTheBall() {
    // CV-091: R s / c^2 = 8.98026 mm/rad at R = 6.35 mm and 45 degrees, 2.6122 um per arc minute
    Sensitivity s =
        of(Tolerance.shared(ToleranceKind.FLANK_ANGLE, 1e-3, DistributionShape.UNIFORM));
    double arcMinute = Math.toRadians(1 / 60.0);
    assertThat(s.effects().get(0).shift().z()).isCloseTo(8.98026e-3, within(5e-9));
    assertThat(s.effects().get(0).shift().z() * arcMinute).isCloseTo(2.6122e-6, within(1e-10));
  }

  @Test
  void depthLowersTheHolderOneForOne() {
    // closed form: the groove's height enters as e = cos(angle) h at both flanks
    Sensitivity s =
        of(Tolerance.shared(ToleranceKind.SEAT_DEPTH, MICRON, DistributionShape.UNIFORM));
    assertVector(s.effects().get(0).shift(), 0, 0, -1, 1e-12);
  }

  @Test
  void aWarmerHolderOnRadialVeesRisesOnlyByItsBalls() {
    // CV-165 and CV-166: growth about the centre moves balls along their grooves; the balls lift
    // the holder by alpha R dT / c = 0.103273 um per kelvin at 11.5e-6 per kelvin
    Sensitivity s = of(Tolerance.ofEach(ToleranceKind.TEMPERATURE, 1, DistributionShape.UNIFORM));
    assertVector(s.effects().get(0).shift(), 0, 0, 0.103273e-6, 5e-13);
    assertVector(s.effects().get(0).rotation(), 0, 0, 0, 1e-15);
  }
}
