package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Holder;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Symmetric three-vee couplings against closed forms.
 *
 * <p>Values computed independently from the stated formulas (statics of six lines of action), no
 * published table: CV-073 to CV-082.
 */
class StaticsValidationTest {

  private static final double FORTY_FIVE = Math.toRadians(45);

  private static CouplingDesign coupling() {
    return TestCouplings.threeVees(0.05, 0.00635, FORTY_FIVE, 90, 210, 330).build();
  }

  @Test
  void centralPreloadLoadsAllContactsAlike() {
    // CV-073: N = P / (6 cos 45 deg)
    double[] n =
        ContactLines.nominal(coupling()).forces(Wrench.ofForce(new Vec3(0, 0, -100), Vec3.ZERO));
    for (double force : n) {
      assertThat(force).isCloseTo(23.57022604, within(1e-8));
    }
  }

  @Test
  void offCentreLoadFallsOnTheBallsByTheLever() {
    // CV-076
    double[] n =
        ContactLines.nominal(coupling())
            .forces(Wrench.ofForce(new Vec3(0, 0, -100), new Vec3(0.010, 0.020, 0)));
    double[] expected = {42.426407, 42.426407, 5.977170, 5.977170, 22.307101, 22.307101};
    for (int i = 0; i < 6; i++) {
      assertThat(n[i]).isCloseTo(expected[i], within(1e-6));
    }
  }

  @Test
  void sidewaysLoadAtAHeight() {
    // CV-077, printed per ball as (+u, -u): the flank that pushes along +u = z x g is our right one
    Wrench load =
        Wrench.ofForce(new Vec3(0, 0, -200), Vec3.ZERO)
            .plus(Wrench.ofForce(new Vec3(30, 0, 0), new Vec3(0, 0, 0.040)));
    double[] n = ContactLines.nominal(coupling()).forces(load);
    double[] expected = {61.282588, 32.998316, 30.271425, 44.413561, 49.867343, 64.009479};
    for (int b = 0; b < 3; b++) {
      assertThat(n[2 * b + 1]).isCloseTo(expected[2 * b], within(1e-6));
      assertThat(n[2 * b]).isCloseTo(expected[2 * b + 1], within(1e-6));
    }
  }

  @Test
  void stiffnessOfTheSymmetricCoupling() {
    // CV-074 and CV-075 in units of the contact stiffness k
    Equilibrium state =
        CouplingModel.of(coupling()).equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -100), Vec3.ZERO));
    double k = state.contacts().get(0).normalStiffness();
    double lambda = 14.0 / 17;
    Matrix6 soft = CouplingStiffness.of(state, CouplingStiffness.Bound.FRICTIONLESS).at(Vec3.ZERO);
    double[] diagonal = {1.5, 1.5, 3, 0.00375, 0.00375, 0.0075};
    for (int i = 0; i < 6; i++) {
      assertThat(soft.get(i, i) / k).isCloseTo(diagonal[i], within(1e-5 * diagonal[i]));
    }
    Matrix6 stiff = CouplingStiffness.of(state, CouplingStiffness.Bound.STICKING).at(Vec3.ZERO);
    assertThat(stiff.get(0, 0) / k).isCloseTo(5.205882353, within(1e-4));
    assertThat(stiff.get(2, 2) / k).isCloseTo(5.470588235, within(1e-4));
    assertThat(lambda).isCloseTo(state.contacts().get(0).ratioLong(), within(1e-12));
  }

  @Test
  void oneNewtonAtTheCentreMovesTheHolder() {
    // CV-081: k = 36.5459 N/um per contact, which 100 N gives each contact of this steel
    Equilibrium state = withHundredNewtonPerContact();
    CouplingStiffness stiffness = CouplingStiffness.of(state, CouplingStiffness.Bound.FRICTIONLESS);
    assertThat(1e9 / stiffness.stiffnessAlong(Vec3.ZERO, Vec3.Z)).isCloseTo(9.12095, within(1e-3));
    assertThat(1e9 / stiffness.stiffnessAlong(Vec3.ZERO, Vec3.X)).isCloseTo(18.2419, within(2e-3));
  }

  @Test
  void twoKilogramsOnTheirContacts() {
    // CV-082: f = sqrt(3 k/m)/(2 pi) upward, sqrt(1.5 k/m)/(2 pi) sideways
    NaturalFrequencies found =
        NaturalFrequencies.of(
            CouplingStiffness.of(
                withHundredNewtonPerContact(), CouplingStiffness.Bound.FRICTIONLESS),
            new Holder(2, Vec3.ZERO, Vec3.ZERO));
    assertThat(found.hertz()).hasSize(3);
    assertThat(found.hertz().get(0)).isCloseTo(833.240, within(0.05));
    assertThat(found.hertz().get(1)).isCloseTo(833.240, within(0.05));
    assertThat(found.hertz().get(2)).isCloseTo(1178.380, within(0.05));
    assertThat(found.withInertia()).isFalse();
  }

  private static Equilibrium withHundredNewtonPerContact() {
    return CouplingModel.of(coupling())
        .equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -600 * Math.cos(FORTY_FIVE)), Vec3.ZERO));
  }
}
