package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Where a force does not turn the holder. */
class StiffnessCentreTest {

  private static final Wrench DOWN = Wrench.ofForce(new Vec3(0, 0, -300), Vec3.ZERO);

  private static CouplingStiffness stiffness(double... azimuths) {
    CouplingDesign d = TestCouplings.threeVees(0.04, 0.006, Math.toRadians(45), azimuths).build();
    return CouplingStiffness.of(
        CouplingModel.of(d).equilibriumUnder(DOWN), CouplingStiffness.Bound.FRICTIONLESS);
  }

  @Test
  void theSymmetricCouplingHasItInTheMiddleOfItsBalls() {
    Vec3 c = StiffnessCentre.of(stiffness(0, 120, 240).at(new Vec3(0.01, -0.02, 0.03)));
    assertThat(c.norm()).isLessThan(1e-5);
  }

  @Test
  void aForceThroughItDoesNotTurnTheSymmetricHolder() {
    CouplingStiffness s = stiffness(10, 130, 250);
    Vec3 c = StiffnessCentre.of(s.at(Vec3.ZERO));
    Vec3 push = new Vec3(3, -2, 5);
    double turnAtCentre = s.motionUnder(Wrench.ofForce(push, c)).rotation().norm();
    double turnAside =
        s.motionUnder(Wrench.ofForce(push, c.plus(new Vec3(0, 0.01, 0)))).rotation().norm();
    assertThat(turnAtCentre).isLessThan(1e-3 * turnAside);
  }

  @Test
  void itDoesNotDependOnThePointTheStiffnessIsToldAt() {
    CouplingStiffness s = stiffness(0, 100, 250);
    Vec3 here = StiffnessCentre.of(s.at(Vec3.ZERO));
    Vec3 there = StiffnessCentre.of(s.at(new Vec3(0.3, -0.1, 0.2)));
    assertThat(here.distanceTo(there)).isLessThan(1e-12);
  }

  @Test
  void noOtherPointNearbyCouplesLess() {
    CouplingStiffness s = stiffness(0, 100, 250);
    Vec3 c = StiffnessCentre.of(s.at(Vec3.ZERO));
    double least = coupling(s.at(c));
    for (Vec3 step : new Vec3[] {Vec3.X, Vec3.Y, Vec3.Z}) {
      assertThat(coupling(s.at(c.plus(step.times(1e-3))))).isGreaterThan(least);
      assertThat(coupling(s.at(c.minus(step.times(1e-3))))).isGreaterThan(least);
    }
  }

  private static double coupling(Matrix6 k) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      for (int j = 3; j < 6; j++) {
        sum += k.get(i, j) * k.get(i, j);
      }
    }
    return sum;
  }
}
