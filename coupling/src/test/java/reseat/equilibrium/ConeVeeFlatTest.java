package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.contact.RingContact;
import reseat.contact.RingThird;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.material.Material;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.FlatSeat;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.space.Wrench;

class ConeVeeFlatTest {

  private static final double R = 0.005;
  private static final double PHI = Math.toRadians(50);
  private static final Material STEEL =
      new Material("test steel", new ElasticConstants(206e9, 0.3));
  private static final ElasticPair PAIR = ElasticPair.ofEqual(STEEL.elastic());
  private static final Vec3 CONE = new Vec3(0.03, 0, 0);
  private static final Vec3 VEE = new Vec3(-0.02, 0.025, 0);
  private static final Vec3 FLAT = new Vec3(-0.02, -0.025, 0);

  private static Support support(String name, Vec3 at, Seat seat) {
    return new Support(
        name, new Ball(at, R), STEEL, seat, STEEL, Double.POSITIVE_INFINITY, BallMounting.rigid());
  }

  private static CouplingDesign coupling(double turn) {
    SeatFrame along = new SeatFrame(VEE, CONE.minus(VEE), Vec3.Z);
    return CouplingDesign.builder()
        .supports(
            List.of(
                support(
                    "cone",
                    CONE,
                    ConeSeat.forBall(
                        SeatFrame.level(CONE, turn), R, PHI, Double.POSITIVE_INFINITY, 0)),
                support(
                    "vee",
                    VEE,
                    VeeGroove.forBall(along, R, Math.toRadians(45), GrooveExtent.unlimited())),
                support(
                    "flat",
                    FLAT,
                    FlatSeat.forBall(SeatFrame.level(FLAT, 0), R, Double.POSITIVE_INFINITY))))
        .toolPoint(new Vec3(0, 0, 0.04))
        .build();
  }

  private static Wrench down(double cone, double vee, double flat) {
    return Wrench.ofForce(Vec3.Z.times(-cone), CONE)
        .plus(Wrench.ofForce(Vec3.Z.times(-vee), VEE))
        .plus(Wrench.ofForce(Vec3.Z.times(-flat), FLAT));
  }

  @Test
  void underAnAxialForceTheRingCarriesAndSinksByTheClosedForm() {
    RingContact ring = RingContact.of(R, PHI, PAIR);
    double sink = ring.normalApproach(150) / Math.cos(PHI);
    for (double turn : new double[] {0, 0.7, 2}) {
      Equilibrium e = CouplingModel.of(coupling(turn)).equilibriumUnder(down(150, 80, 60));
      for (int i = 0; i < 3; i++) {
        Equilibrium.Contact c = e.contacts().get(i);
        assertThat(c.force()).isCloseTo(150 / (3 * Math.cos(PHI)), within(1e-3));
        assertThat(c.peakPressure())
            .isCloseTo(ring.peakPressure(150), within(1e-4 * ring.peakPressure(150)));
      }
      // the cone's ball moves a little sideways as the vee and the flat sink
      assertThat(e.displacementOf(CONE).z()).isCloseTo(-sink, within(2e-4 * sink));
    }
  }

  @Test
  void turningTheThirdsChangesNeitherForcesNorStiffnessNorLiftOff() {
    Wrench load = down(150, 80, 60).plus(Wrench.ofForce(new Vec3(15, -22, 0), CONE));
    Equilibrium first = CouplingModel.of(coupling(0)).equilibriumUnder(load);
    double opens = new LiftOff(first.lines(), load).weakest(new Vec3(0, 0, 0.04)).force();
    double greatest = greatest(first);
    for (double turn : new double[] {0.3, 0.9, 1.4, Math.PI}) {
      Equilibrium other = CouplingModel.of(coupling(turn)).equilibriumUnder(load);
      assertThat(greatest(other)).isCloseTo(greatest, within(1e-4 * greatest));
      assertThat(least(other)).isCloseTo(least(first), within(1e-4 * greatest));
      assertThat(new LiftOff(other.lines(), load).weakest(new Vec3(0, 0, 0.04)).force())
          .isCloseTo(opens, within(2e-4 * opens));
      // the logarithm in the law makes the pressed side a little stiffer, whence two in a hundred
      Vec3 moved = first.displacementOf(CONE);
      assertThat(other.displacementOf(CONE).distanceTo(moved)).isLessThan(0.02 * moved.norm());
      for (Bound bound : Bound.values()) {
        Matrix6 a = CouplingStiffness.of(first, bound).at(CONE);
        Matrix6 b = CouplingStiffness.of(other, bound).at(CONE);
        for (int i = 0; i < 6; i++) {
          assertThat(b.get(i, i)).isCloseTo(a.get(i, i), within(0.02 * a.get(i, i)));
        }
      }
    }
  }

  private static double greatest(Equilibrium e) {
    return e.contacts().subList(0, 3).stream()
        .mapToDouble(Equilibrium.Contact::greatestForce)
        .max()
        .orElseThrow();
  }

  private static double least(Equilibrium e) {
    return e.contacts().subList(0, 3).stream()
        .mapToDouble(Equilibrium.Contact::leastForce)
        .min()
        .orElseThrow();
  }

  @Test
  void theStiffnessOfTheThreeThirdsIsThatOfTheWholeRing() {
    // second road: integrals round the ring of n n', of the tangents and of their moments
    Equilibrium e = CouplingModel.of(coupling(0.4)).equilibriumUnder(down(150, 80, 60));
    double third = e.contacts().get(0).normalStiffness();
    double perAngle = 3 * third / (2 * Math.PI);
    double along = e.contacts().get(0).ratioLong();
    double[][] ring = new double[6][6];
    int steps = 720;
    for (int k = 0; k < steps; k++) {
      double t = 2 * Math.PI * k / steps;
      Vec3 n = Vec3.atAzimuth(t).times(Math.sin(PHI)).plus(Vec3.Z.times(Math.cos(PHI)));
      Vec3 round = Vec3.Z.cross(Vec3.atAzimuth(t));
      add(ring, n, n.times(-R), perAngle * 2 * Math.PI / steps);
      add(ring, round, n.times(-R), along * perAngle * 2 * Math.PI / steps);
      add(ring, n.cross(round), n.times(-R), perAngle * 2 * Math.PI / steps);
    }
    double[][] found = new double[6][6];
    for (int i = 0; i < 3; i++) {
      Equilibrium.Contact c = e.contacts().get(i);
      Vec3 n = c.line().normal();
      Vec3 arm = c.line().point().minus(c.line().ballCentre());
      Vec3 round = c.line().longAxis();
      add(found, n, arm, c.normalStiffness());
      add(found, round, arm, c.tangentialStiffnessLong());
      add(found, n.cross(round), arm, c.tangentialStiffnessShort());
    }
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double scale = Math.sqrt(ring[i][i] * ring[j][j]);
        assertThat(found[i][j]).isCloseTo(ring[i][j], within(1e-4 * scale));
      }
    }
  }

  private static void add(double[][] k, Vec3 direction, Vec3 arm, double stiffness) {
    Vec3 turn = arm.cross(direction);
    double[] w = {direction.x(), direction.y(), direction.z(), turn.x(), turn.y(), turn.z()};
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        k[i][j] += stiffness * w[i] * w[j];
      }
    }
  }

  @Test
  void theRingOpensOnOneSideAtHalfTheSlopeOfItsFlank() {
    for (double azimuth : new double[] {0, 0.5, 1.2, 3}) {
      Wrench standing = down(150, 400, 400);
      Vec3 push = Vec3.atAzimuth(azimuth);
      CouplingDesign d = coupling(0.2);
      ContactLines lines = ContactLines.nominal(d);
      LiftOff.First first = new LiftOff(lines, standing).forceAlong(CONE, push);
      // only the cone takes a force along the vee; across it the vee takes part of the moment
      assertThat(first.contact()).isEqualTo("cone (side of ring)");
      double[] change = lines.forces(Wrench.ofForce(push, CONE));
      double axial = (change[0] + change[1] + change[2]) * Math.cos(PHI);
      assertThat(axial).isCloseTo(0, within(1e-9));
      assertThat(first.factor()).isCloseTo(150 * Math.tan(PHI) / 2, within(0.01));
    }
  }

  @Test
  void manyPlacesRoundTheRingPushBackAsThreeDo() {
    // the ball is shifted by v; every place gives by the law of the ring under its own load, and
    // the sum of N places is compared with that of three: up to where the ring opens they agree
    double down = 3e-6;
    for (double part : new double[] {0.2, 0.5, 0.9}) {
      double side = part * down / Math.tan(PHI);
      Vec3 three = push(3, side, down, 0.3);
      Vec3 many = push(300, side, down, 0.3);
      for (int n : new int[] {6, 12, 24}) {
        assertThat(push(n, side, down, 0.3).distanceTo(many)).isLessThan(2e-4 * many.norm());
      }
      assertThat(three.distanceTo(many))
          .as("part %s", part)
          .isLessThan((part < 0.6 ? 6e-3 : 0.02) * many.norm());
    }
  }

  /** Force on a ball shifted sideways and down, from n places round the ring. */
  private static Vec3 push(int n, double side, double down, double first) {
    RingThird third = RingThird.of(R, PHI, PAIR);
    Vec3 shift = new Vec3(side, 0, -down);
    List<Vec3> pushes = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Vec3 out = Vec3.atAzimuth(first + 2 * Math.PI * k / n);
      Vec3 normal = out.times(Math.sin(PHI)).plus(Vec3.Z.times(Math.cos(PHI)));
      pushes.add(normal.times(third.force(-shift.dot(normal)) * 3 / n));
    }
    return pushes.stream().reduce(Vec3.ZERO, Vec3::plus);
  }

  @Test
  void theExtremesOfTheThirdsCoverTheWholeRing() {
    double[] n = {70, 55, 40};
    double greatest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 3600; k++) {
      double t = 2 * Math.PI * k / 3600;
      double here = 0;
      for (int third = 0; third < 3; third++) {
        here += RingLoad.weight(t, third) * n[third];
      }
      greatest = Math.max(greatest, here);
      least = Math.min(least, here);
      int nearest = (int) Math.rint(3.0 * k / 3600) % 3;
      assertThat(here).isLessThanOrEqualTo(RingLoad.extreme(n, nearest, 1) + 1e-9);
      assertThat(here).isGreaterThanOrEqualTo(RingLoad.extreme(n, nearest, -1) - 1e-9);
    }
    double most = 0;
    for (int third = 0; third < 3; third++) {
      assertThat(RingLoad.weight(2 * Math.PI / 3 * third, third)).isCloseTo(1, within(1e-14));
      most = Math.max(most, RingLoad.extreme(n, third, 1));
    }
    assertThat(most).isCloseTo(greatest, within(1e-4));
    assertThat(RingLoad.least(n[0], n[1], n[2])).isCloseTo(least, within(1e-4));
  }

  @Test
  void aRingWithVeeAndFlatHoldsTheHolderInAllSixWaysFromEitherHalf() {
    assertThat(ConstraintQuality.of(coupling(0.5)).rank()).isEqualTo(6);
    assertThat(ConstraintQuality.of(coupling(0.5)).condition())
        .isCloseTo(ConstraintQuality.of(coupling(0)).condition(), within(1e-9));
    CouplingDesign turned = ChangedCoupling.halvesExchanged(coupling(0.5));
    assertThat(turned.ballsOn()).isEqualTo(Half.BASE);
    assertThat(ConstraintQuality.of(turned).rank()).isEqualTo(6);
  }
}
