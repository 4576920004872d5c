package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ThreadTorqueTest {

  @Test
  void fullTorqueFormulaOfAnM6Screw() {
    // CV-117, computed independently: F [P/(2 pi) + 0.577 mu d2 + 0.5 mu Dm] with d2 = 5.35 and
    // Dm = 8.5 mm gives 2.0796 N m at 2000 N. The exact 1/(2 cos 30°) = 0.57735 and d2 = 5.3505
    // differ by 0.03 %.
    ThreadTorque torque = new ThreadTorque(ScrewThread.parse("M6"), 0.12, 0.12, 8.5e-3);
    assertThat(torque.tightening(2000)).isCloseTo(2.0796, within(0.0010));
    assertThat(torque.nutFactor()).isCloseTo(0.17330, within(1e-4));
    assertThat(torque.force(torque.tightening(2000))).isCloseTo(2000, within(1e-9));
  }

  @Test
  void shortFormStaysWithinTwoPercentOfTheExactWedge() {
    // Second road: a block pushed up an incline of the lead angle with wedge friction
    // mu/cos 30° needs F tan(lambda + rho') at the pitch radius. The difference is the product of
    // friction and lead.
    for (String name : new String[] {"M6", "M8x1", "1/4-80", "3/8-40", "10-32"}) {
      ScrewThread thread = ScrewThread.parse(name);
      double mu = 0.15;
      double rho = Math.atan(mu / Math.cos(Math.PI / 6));
      double exact = 1000 * thread.pitchDiameter() / 2 * Math.tan(thread.leadAngle() + rho);
      double shortForm = new ThreadTorque(thread, mu, 0, 0).tightening(1000);
      assertThat(shortForm).isCloseTo(exact, within(0.02 * exact)).isLessThan(exact);
    }
  }
}
