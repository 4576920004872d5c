package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Holder;
import reseat.space.Vec3;
import reseat.space.Wrench;

class NaturalFrequenciesTest {

  private static final double RC = 0.05;
  private static final CouplingDesign COUPLING =
      TestCouplings.threeVees(RC, 0.00635, Math.toRadians(45), 90, 210, 330).build();
  private static final Equilibrium STATE =
      CouplingModel.of(COUPLING).equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -600), Vec3.ZERO));
  private static final CouplingStiffness STIFFNESS =
      CouplingStiffness.of(STATE, CouplingStiffness.Bound.FRICTIONLESS);

  @Test
  void aBodyCentredInTheBallPlaneHasSixUncoupledModes() {
    // k of a contact: 1.5 k sideways, 3 k upward, 1.5 k Rc^2 tilting, 3 k Rc^2 turning
    double k = STATE.contacts().get(0).normalStiffness();
    double m = 1.5;
    double g = 0.03;
    NaturalFrequencies found =
        NaturalFrequencies.of(STIFFNESS, new Holder(m, Vec3.ZERO, new Vec3(g, g, g)));
    double side = Math.sqrt(1.5 * k / m) / (2 * Math.PI);
    double tilt = side * RC / g;
    double[] expected = {side, side, side * Math.sqrt(2), tilt, tilt, tilt * Math.sqrt(2)};
    assertThat(found.withInertia()).isTrue();
    assertThat(found.hertz()).hasSize(6);
    for (int i = 0; i < 6; i++) {
      assertThat(found.hertz().get(i)).isCloseTo(expected[i], within(1e-3 * expected[i]));
    }
  }

  @Test
  void massAloneIsTheLimitOfSmallInertia() {
    Vec3 com = new Vec3(0.01, 0.005, 0.04);
    NaturalFrequencies bare = NaturalFrequencies.of(STIFFNESS, new Holder(2, com, Vec3.ZERO));
    double g = 1e-6;
    NaturalFrequencies nearly =
        NaturalFrequencies.of(STIFFNESS, new Holder(2, com, new Vec3(g, g, g)));
    for (int i = 0; i < 3; i++) {
      assertThat(nearly.hertz().get(i))
          .isCloseTo(bare.hertz().get(i), within(1e-5 * bare.hertz().get(i)));
    }
  }

  @Test
  void moreOverhangLowersTheFirstFrequency() {
    double last = Double.POSITIVE_INFINITY;
    for (double height : new double[] {0, 0.02, 0.05, 0.1}) {
      double first =
          NaturalFrequencies.of(STIFFNESS, new Holder(2, new Vec3(0, 0, height), Vec3.ZERO))
              .hertz()
              .get(0);
      assertThat(first).isLessThan(last);
      last = first;
    }
  }

  @Test
  void aHolderWithoutMassHasNoFrequency() {
    assertThat(NaturalFrequencies.of(STIFFNESS, new Holder(0, Vec3.ZERO, Vec3.ZERO)).hertz())
        .isEmpty();
  }
}
