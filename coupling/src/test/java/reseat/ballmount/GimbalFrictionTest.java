package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import reseat.numerics.EllipticIntegrals;
import reseat.space.Vec3;

class GimbalFrictionTest {

  @Test
  void aConeTurnsAboutItsAxisAsHardAsATrihedralSeat() {
    SplittableRandom random = new SplittableRandom(69);
    for (int i = 0; i < 50; i++) {
      double phi = random.nextDouble(0.2, 1.3);
      double cone = GimbalFriction.cone(5e-3, 0.12, 250, phi).momentAboutSeatAxis();
      double seat = GimbalFriction.trihedral(5e-3, 0.12, 250, phi, 0).momentAboutSeatAxis();
      assertThat(cone).as("seed 69, case %d", i).isCloseTo(seat, within(1e-12));
    }
  }

  @Test
  void aConeTiltsWithTheCompleteEllipticIntegral() {
    // Second road: (1/2pi) Int sqrt(1 - sin² phi cos² az) d az = (2/pi) E(sin² phi).
    for (double phi : new double[] {0.3, Math.PI / 4, 1.0}) {
      double expected =
          0.12
              * 250
              / Math.cos(phi)
              * 5e-3
              * 2
              / Math.PI
              * EllipticIntegrals.cel(Math.cos(phi), 1, 1, Math.cos(phi) * Math.cos(phi));
      assertThat(GimbalFriction.cone(5e-3, 0.12, 250, phi).greatestTransverseMoment())
          .isCloseTo(expected, within(1e-9 * expected));
    }
  }

  @Test
  void aSocketTurnsAboutItsAxisByTheClosedIntegral() {
    // p = p0 cos psi: F = 2 pi R² p0 (cos³ psi1 - cos³ psi2)/3, M = mu 2 pi R³ p0 (sin³ psi2 - sin³
    // psi1)/3.
    double inner = 0.3;
    double outer = 1.1;
    double cosines = Math.pow(Math.cos(inner), 3) - Math.pow(Math.cos(outer), 3);
    double sines = Math.pow(Math.sin(outer), 3) - Math.pow(Math.sin(inner), 3);
    double expected = 0.12 * 250 * 5e-3 * sines / cosines;
    GimbalFriction socket = GimbalFriction.socket(5e-3, 0.12, 250, inner, outer);
    assertThat(socket.momentAboutSeatAxis()).isCloseTo(expected, within(1e-10 * expected));
  }

  @Test
  void aNarrowLandIsAConeAndASmallCapIsABallOnItsPole() {
    GimbalFriction land = GimbalFriction.socket(5e-3, 0.12, 250, 0.7 - 1e-5, 0.7 + 1e-5);
    GimbalFriction cone = GimbalFriction.cone(5e-3, 0.12, 250, 0.7);
    assertThat(land.greatestTransverseMoment())
        .isCloseTo(cone.greatestTransverseMoment(), within(1e-8));
    GimbalFriction cap = GimbalFriction.socket(5e-3, 0.12, 250, 0, 1e-3);
    assertThat(cap.greatestTransverseMoment()).isCloseTo(0.12 * 250 * 5e-3, within(1e-6));
    assertThat(cap.momentAboutSeatAxis()).isLessThan(1e-3 * cap.greatestTransverseMoment());
  }

  @Test
  void aBallOnAFlatRollsAndOnlySpins() {
    GimbalFriction flat = GimbalFriction.flat(5e-3, 0.12, 250, 0.2e-3);
    assertThat(flat.greatestTransverseMoment()).isLessThan(1e-12);
    assertThat(flat.momentAboutSeatAxis())
        .isCloseTo(3 * Math.PI / 16 * 0.12 * 250 * 0.2e-3, within(1e-12));
  }

  @Test
  void momentIsTheRateOfFrictionWorkOfTheSlidingContacts() {
    // Second road: turn the ball by a small angle and add friction force times slid distance.
    SplittableRandom random = new SplittableRandom(70);
    for (int i = 0; i < 50; i++) {
      Vec3 n1 = direction(random);
      Vec3 n2 = direction(random);
      Vec3 axis = direction(random);
      List<GimbalFriction.Element> contacts =
          List.of(new GimbalFriction.Element(n1, 30, 0), new GimbalFriction.Element(n2, 70, 0));
      double angle = 1e-6;
      double work = 0;
      for (GimbalFriction.Element e : contacts) {
        Vec3 point = e.normal().times(-5e-3);
        work += 0.15 * e.force() * axis.times(angle).cross(point).norm();
      }
      assertThat(GimbalFriction.of(5e-3, 0.15, contacts).momentAbout(axis))
          .as("seed 70, case %d", i)
          .isCloseTo(work / angle, within(1e-12));
    }
  }

  @Test
  void spinAddsLittleToAGimballingSeat() {
    double without =
        GimbalFriction.trihedral(5e-3, 0.12, 250, Math.PI / 4, 0).greatestTransverseMoment();
    double with =
        GimbalFriction.trihedral(5e-3, 0.12, 250, Math.PI / 4, 0.15e-3).greatestTransverseMoment();
    assertThat(with / without).isBetween(1.0, 1.02);
  }

  @Test
  void impossibleSeatsAreRefused() {
    assertThatThrownBy(() -> GimbalFriction.cone(5e-3, 0.1, 100, 1.6))
        .hasMessageContaining("contact normals from its axis");
    assertThatThrownBy(() -> GimbalFriction.socket(5e-3, 0.1, 100, 0.8, 0.5))
        .hasMessageContaining("outer angle of the socket");
  }

  private static Vec3 direction(SplittableRandom random) {
    return new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(0.2, 1))
        .unit();
  }
}
