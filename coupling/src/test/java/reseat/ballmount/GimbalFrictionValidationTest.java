package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.space.Vec3;

/**
 * A ball of R = 6.35 mm in a trihedral seat under 100 N with friction 0.1, computed independently
 * from {@code M = mu F R tan phi} about the axis and {@code Sum mu N R sqrt(1 - (sin phi cos az)²)}
 * across it (CV-071, CV-072).
 */
class GimbalFrictionValidationTest {

  @Test
  void flanksAtFortyFiveDegrees() {
    GimbalFriction seat = GimbalFriction.trihedral(6.35e-3, 0.1, 100, Math.PI / 4, 0);
    assertThat(seat.momentAboutSeatAxis() * 1e3).isCloseTo(63.5, within(1e-9));
    assertThat(seat.momentAbout(Vec3.X) * 1e3).isCloseTo(77.16840275, within(1e-8));
  }

  @Test
  void flanksOfACubeCorner() {
    // The reference uses the angle rounded to 54.7356°.
    double phi = Math.toRadians(54.7356);
    GimbalFriction seat = GimbalFriction.trihedral(6.35e-3, 0.1, 100, phi, 0);
    assertThat(100 / (3 * Math.cos(phi))).isCloseTo(57.73501222, within(5e-9));
    assertThat(seat.momentAboutSeatAxis() * 1e3).isCloseTo(89.80252691, within(1e-8));
    assertThat(seat.momentAbout(Vec3.X) * 1e3).isCloseTo(88.10152847, within(1e-8));
  }

  @Test
  void spinAloneIsFiftyToAHundredTimesTooSmall() {
    // CV-069, computed independently: spin of a 12.7 mm ball on a flat under 100 N, a =
    // 161.4407075 um, friction 0.1: 0.9509642636 N mm.
    GimbalFriction flat = GimbalFriction.flat(6.35e-3, 0.1, 100, 161.4407075e-6);
    assertThat(flat.momentAboutSeatAxis() * 1e3).isCloseTo(0.9509642636, within(1e-9));
    GimbalFriction seat = GimbalFriction.trihedral(6.35e-3, 0.1, 100, Math.PI / 4, 0);
    assertThat(seat.momentAboutSeatAxis() / flat.momentAboutSeatAxis()).isBetween(50.0, 100.0);
    assertThat(seat.greatestTransverseMoment() / flat.momentAboutSeatAxis()).isBetween(50.0, 100.0);
  }
}
