package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.material.Material;
import reseat.seat.Flank;
import reseat.seat.PlaneFlank;
import reseat.seat.VeeGroove;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Small errors of the contacts and what they do to the holder, against closed forms of the
 * symmetric three-vee coupling; and published figures that hang on the same statics.
 *
 * <p>Values computed independently from the formulas stated beside them, no published table: CV-078
 * to CV-080, CV-083, CV-090, CV-091.
 */
class ErrorMotionValidationTest {

  private static final double RC = 0.05;
  private static final double FORTY_FIVE = Math.toRadians(45);

  private static CouplingDesign coupling() {
    return TestCouplings.threeVees(RC, 0.00635, FORTY_FIVE, 90, 210, 330).build();
  }

  /** Rest pose with some flanks standing out of their seats by e along their normals. */
  private static Pose rest(double... e) {
    CouplingDesign design = coupling();
    ContactGeometry geometry = ContactGeometry.of(design);
    int i = 0;
    for (Support s : design.supports()) {
      for (Flank f : s.seat().flanks()) {
        PlaneFlank p = (PlaneFlank) f;
        geometry.setFlank(
            i,
            new PlaneFlank(
                p.name(), p.point().plus(p.normal().times(e[i])), p.normal(), p.generator()));
        i++;
      }
    }
    EquilibriumSolver solver = new EquilibriumSolver(3);
    assertThat(solver.rest(geometry)).isEqualTo(EquilibriumSolver.Outcome.SOLVED);
    return solver.holderInBase();
  }

  @Test
  void oneFlankOutByAMicrometre() {
    // CV-078: contact of the ball at 90 deg that pushes along u = z x radial, our right flank;
    // formula W^T X = e
    Pose pose = rest(0, 1e-6, 0, 0, 0, 0);
    Vec3 t = pose.translation().times(1e6);
    Vec3 r = pose.rotationVector().times(1e6);
    // the exact pose differs by the second order, 1 um of 50 mm
    assertThat(t.distanceTo(new Vec3(-0.471405, 0, 0.235702))).isLessThan(2e-5);
    assertThat(r.distanceTo(new Vec3(9.42809, 0, 4.714045))).isLessThan(2e-3);
  }

  @Test
  void sixIndependentErrorsOfOneMicrometre() {
    // CV-079, closed forms 1/sqrt(3 s^2), 1/sqrt(6 c^2), 1/(Rc sqrt 3 c), 1/(Rc sqrt 6 s)
    double[] variance = new double[6];
    double small = 1e-9;
    for (int i = 0; i < 6; i++) {
      double[] e = new double[6];
      e[i] = small;
      Pose pose = rest(e);
      for (int k = 0; k < 3; k++) {
        variance[k] += Math.pow(pose.translation().component(k) / small, 2);
        variance[k + 3] += Math.pow(pose.rotationVector().component(k) / small, 2);
      }
    }
    double[] expected = {0.8164966, 0.8164966, 0.5773503, 16.3299316, 16.3299316, 11.5470054};
    for (int k = 0; k < 6; k++) {
      assertThat(Math.sqrt(variance[k])).isCloseTo(expected[k], within(2e-6 * expected[k]));
    }
  }

  @Test
  void sixEqualErrorsLiftTheHolderStraightUp() {
    // CV-080: dz = e/cos 45 deg
    Pose pose = rest(1e-6, 1e-6, 1e-6, 1e-6, 1e-6, 1e-6);
    assertThat(pose.translation().distanceTo(new Vec3(0, 0, 1.41421356e-6))).isLessThan(1e-13);
    assertThat(pose.rotationVector().norm()).isLessThan(1e-13);
  }

  @Test
  void flanksTurnedAboutTheApexLiftTheBall() {
    // CV-091: 1 arcmin of half-angle about the apex: dz = R (s/c^2) d = 2.6122 um
    double minute = Math.toRadians(1.0 / 60);
    double rise = heightAt(FORTY_FIVE + minute / 2) - heightAt(FORTY_FIVE - minute / 2);
    assertThat(rise).isCloseTo(2.6122e-6, within(1e-10));
  }

  private static double heightAt(double flankAngle) {
    CouplingDesign design = coupling();
    CouplingDesign turned =
        design.toBuilder()
            .supports(
                design.supports().stream()
                    .map(
                        s -> {
                          VeeGroove v = (VeeGroove) s.seat();
                          return s.withSeat(
                              new VeeGroove(v.frame(), flankAngle, flankAngle, v.extent()));
                        })
                    .toList())
            .build();
    return CouplingModel.of(turned).restPose().translation().z();
  }

  @Test
  void whatFrictionCanHoldAgainstTheNormalStiffness() {
    // CV-083: mu P/kn with E 200 GPa, nu 0.3, R 6.35 mm, P 100 N; an estimate in the literature
    // (formula recalled from memory) uses E where 1/E* belongs and is larger by (1-nu^2)^(-2/3)
    EllipticContact contact =
        EllipticContact.of(
            RelativeCurvature.ballOnPlane(0.00635),
            ElasticPair.ofEqual(new ElasticConstants(200e9, 0.3)));
    double held = 0.1 * 100 / contact.normalStiffness(100);
    assertThat(held).isCloseTo(0.2790739309e-6, within(1e-15));
    double estimate = 0.1 * Math.cbrt(2 / (3 * 0.00635)) * Math.pow(100 / 200e9, 2.0 / 3);
    assertThat(estimate).isCloseTo(0.2971837155e-6, within(1e-15));
    assertThat(held / estimate).isCloseTo(0.9390619887, within(1e-9));
  }

  @Test
  void aCarbideTurretCouplingOfFifteenHundredNewtonIsEasilyAsStiffAsPublished() {
    // CV-090: published (P.H.J. Schellekens and others, Precision Engineering 1997, abstract read):
    // preload 1500 N, cemented carbide, above 1e8 N/m in every direction. Computed: balls of
    // 1.275 mm radius suffice for the lateral stiffness 3 k/2
    Material carbide = new Material("test carbide", new ElasticConstants(630e9, 0.22));
    CouplingDesign steel = TestCouplings.threeVees(RC, 0.001275, FORTY_FIVE, 90, 210, 330).build();
    CouplingDesign turret =
        steel.toBuilder()
            .supports(
                steel.supports().stream()
                    .map(
                        s ->
                            new Support(
                                s.name(),
                                s.ball(),
                                carbide,
                                s.seat(),
                                carbide,
                                s.caseDepth(),
                                s.mounting()))
                    .toList())
            .build();
    Equilibrium state =
        CouplingModel.of(turret).equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -1500), Vec3.ZERO));
    assertThat(state.contacts().get(0).force()).isCloseTo(353.553, within(0.001));
    double lateral =
        CouplingStiffness.of(state, CouplingStiffness.Bound.FRICTIONLESS).at(Vec3.ZERO).get(0, 0);
    assertThat(lateral).isCloseTo(1e8, within(0.002e8));
  }
}
