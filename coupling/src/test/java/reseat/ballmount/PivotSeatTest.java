package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.contact.EllipticContact;
import reseat.contact.RingContact;
import reseat.contact.SubsurfaceStress;
import reseat.contact.TangentialContact;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.space.Matrix6;
import reseat.space.Twist;
import reseat.space.Vec3;

/** Seats in which a ball pivots, against sums over their contacts. */
class PivotSeatTest {

  private static final ElasticConstants STEEL = new ElasticConstants(206e9, 0.3);
  private static final ElasticPair PAIR = new ElasticPair(STEEL, STEEL);
  private static final double R = 0.005;
  private static final double FORCE = 250;

  /** Energy of springs along and across each normal, which the matrix must reproduce. */
  private static double energy(List<Vec3> normals, double k, double kt, Twist motion) {
    double sum = 0;
    for (Vec3 n : normals) {
      Vec3 u = motion.displacementOf(n.times(-R));
      double along = u.dot(n);
      Vec3 across = u.minus(n.times(along));
      sum += 0.5 * (k * along * along + kt * across.dot(across));
    }
    return sum;
  }

  private static double energy(Matrix6 k, Twist t) {
    var w = k.times(t);
    return 0.5 * (w.force().dot(t.translation()) + w.moment().dot(t.rotation()));
  }

  private static void matches(PivotSeat seat, List<Vec3> normals) {
    EllipticContact contact = seat.point().orElseThrow();
    double n = seat.contactForce(FORCE);
    double k = contact.normalStiffness(n);
    double kt = TangentialContact.of(contact).stiffnessAlongMajor(n);
    Twist motion = new Twist(new Vec3(0.3e-6, -0.7e-6, 0.5e-6), new Vec3(1e-4, 2e-4, 0), Vec3.ZERO);
    double sliding = energy(normals, k, 0, motion);
    assertThat(energy(seat.slidingStiffness(FORCE).orElseThrow(), motion))
        .isCloseTo(sliding, within(1e-9 * sliding));
    double sticking = energy(normals, k, kt, motion);
    assertThat(energy(seat.stickingStiffness(FORCE).orElseThrow(), motion))
        .isCloseTo(sticking, within(1e-9 * sticking));
  }

  @Test
  void aTrihedralSeatIsThreeSprings() {
    double phi = Math.toRadians(54.7356);
    List<Vec3> normals = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Vec3 out = Vec3.atAzimuth(0.4 + i * 2 * Math.PI / 3).times(Math.sin(phi));
      normals.add(out.plus(Vec3.Z.times(Math.cos(phi))));
    }
    TrihedralPivot seat = new TrihedralPivot(R, phi, PAIR);
    // three contacts hold the force up: 3 N cos phi = F
    assertThat(3 * seat.contactForce(FORCE) * Math.cos(phi)).isCloseTo(FORCE, within(1e-9));
    matches(seat, normals);
    Twist turn = new Twist(Vec3.ZERO, new Vec3(0, 0, 1e-4), Vec3.ZERO);
    double kt =
        TangentialContact.of(seat.point().orElseThrow())
            .stiffnessAlongMajor(seat.contactForce(FORCE));
    double twisted = energy(normals, 0, kt, turn);
    assertThat(energy(seat.stickingStiffness(FORCE).orElseThrow(), turn))
        .isCloseTo(twisted, within(1e-9 * twisted));
  }

  @Test
  void aForceAcrossIsBorneByWhatLeansAgainstIt() {
    double phi = Math.toRadians(54.7356);
    TrihedralPivot three = new TrihedralPivot(R, phi, PAIR);
    // solved for the forces: normals of three contacts, the load against the first of them
    double across = 90;
    double[] n = new double[3];
    for (int i = 0; i < 3; i++) {
      n[i] =
          FORCE / (3 * Math.cos(phi))
              + 2 * across * Math.cos(i * 2 * Math.PI / 3) / (3 * Math.sin(phi));
    }
    double up = 0;
    double aside = 0;
    for (int i = 0; i < 3; i++) {
      up += n[i] * Math.cos(phi);
      aside += n[i] * Math.sin(phi) * Math.cos(i * 2 * Math.PI / 3);
    }
    assertThat(up).isCloseTo(FORCE, within(1e-9));
    assertThat(aside).isCloseTo(across, within(1e-9));
    double p = three.point().orElseThrow().peakPressure(n[0]);
    assertThat(three.peakPressure(FORCE, across)).isCloseTo(p, within(1e-9 * p));
    // turned round, one contact bears nothing at the force at which it opens
    double opens = three.openingForce(FORCE);
    assertThat(FORCE / (3 * Math.cos(phi)))
        .isCloseTo(2 * opens / (3 * Math.sin(phi)), within(1e-9));
    assertThat(new FlatPivot(R, PAIR).peakPressure(FORCE, across))
        .isEqualTo(new FlatPivot(R, PAIR).peakPressure(FORCE));
    assertThat(new FlatPivot(R, PAIR).openingForce(FORCE)).isInfinite();
  }

  @Test
  void theLineLoadOfARingAndThePressureOfALandAddUpToBothForces() {
    double phi = Math.toRadians(40);
    double across = 70;
    ConePivot cone = new ConePivot(R, phi, PAIR);
    SocketPivot socket = new SocketPivot(R, 0.3, 1.1, PAIR);
    // pressure of a ring: p0 = sqrt(w E* / (pi R)), so the line load at the worst place is known
    double p = cone.peakPressure(FORCE, across);
    double worst = Math.PI * R * p * p / PAIR.reducedModulus();
    double middle = FORCE / (2 * Math.PI * R * Math.sin(phi) * Math.cos(phi));
    int parts = 400;
    double aside = 0;
    for (int i = 0; i < parts; i++) {
      double turn = 2 * Math.PI * (i + 0.5) / parts;
      double w = middle + (worst - middle) * Math.cos(turn);
      aside += w * Math.sin(phi) * Math.cos(turn) * R * Math.sin(phi) * 2 * Math.PI / parts;
    }
    assertThat(aside).isCloseTo(across, within(1e-9 * across));
    assertThat(cone.openingForce(FORCE)).isCloseTo(FORCE * Math.tan(phi) / 2, within(1e-9));

    assertThat(socket.peakPressure(FORCE, 0))
        .isCloseTo(socket.peakPressure(FORCE), within(1e-9 * socket.peakPressure(FORCE)));
    double a = socket.peakPressure(FORCE) / Math.cos(0.3);
    // pressure rises sideways by b n_x: b from the worst place, at the polar angle where it is
    // worst
    double b = sideways(a, socket.peakPressure(FORCE, across));
    double sum = 0;
    double along = 0;
    for (int i = 0; i < parts; i++) {
      double theta = 0.3 + 0.8 * (i + 0.5) / parts;
      double area = 2 * Math.PI * R * R * Math.sin(theta) * 0.8 / parts;
      sum += b * Math.sin(theta) * Math.sin(theta) / 2 * area;
      along += a * Math.cos(theta) * Math.cos(theta) * area;
    }
    assertThat(along).isCloseTo(FORCE, within(1e-5 * FORCE));
    assertThat(sum).isCloseTo(across, within(1e-5 * across));
    assertThat(socket.openingForce(FORCE) * b / across * Math.sin(1.1))
        .isCloseTo(a * Math.cos(1.1), within(1e-6 * a));
  }

  /** The b for which a cos(theta) + b sin(theta) is at most p on the land of 0.3 to 1.1 rad. */
  private static double sideways(double a, double p) {
    double low = 0;
    double high = 10 * a;
    for (int i = 0; i < 100; i++) {
      double b = (low + high) / 2;
      double most = 0;
      for (int k = 0; k <= 4000; k++) {
        double theta = 0.3 + 0.8 * k / 4000;
        most = Math.max(most, a * Math.cos(theta) + b * Math.sin(theta));
      }
      if (most > p) {
        high = b;
      } else {
        low = b;
      }
    }
    return low;
  }

  @Test
  void aFlatIsOneSpring() {
    matches(new FlatPivot(R, PAIR), List.of(Vec3.Z));
    assertThat(new FlatPivot(R, PAIR).locates()).isFalse();
  }

  @Test
  void aRingPressesLessThanThreePointsAndIsStiffer() {
    double phi = Math.toRadians(45);
    TrihedralPivot points = new TrihedralPivot(R, phi, PAIR);
    ConePivot cone = new ConePivot(R, phi, PAIR);
    assertThat(cone.peakPressure(FORCE)).isLessThan(0.5 * points.peakPressure(FORCE));
    assertThat(cone.slidingStiffness(FORCE).orElseThrow().get(2, 2))
        .isGreaterThan(points.slidingStiffness(FORCE).orElseThrow().get(2, 2));
    assertThat(cone.overDetermined()).isTrue();
    assertThat(points.overDetermined()).isFalse();
  }

  @Test
  void theLandOfASocketHoldsTheForceUp() {
    SocketPivot seat = new SocketPivot(R, Math.toRadians(20), Math.toRadians(60), PAIR);
    int steps = 20_000;
    double inner = seat.innerAngle();
    double step = (seat.outerAngle() - inner) / steps;
    double p1 = seat.peakPressure(FORCE) / Math.cos(inner);
    double vertical = 0;
    double normal = 0;
    for (int i = 0; i < steps; i++) {
      double t = inner + (i + 0.5) * step;
      double ring = p1 * Math.cos(t) * 2 * Math.PI * R * R * Math.sin(t) * step;
      vertical += ring * Math.cos(t);
      normal += ring;
    }
    assertThat(vertical).isCloseTo(FORCE, within(1e-6 * FORCE));
    assertThat(seat.contactForce(FORCE)).isCloseTo(normal, within(1e-6 * normal));
  }

  @Test
  void theWorkedPadSeatHasItsForceAndPressure() {
    // computed independently by a short script for 206 GPa, 0.3: 250 N in a trihedral seat of a
    // cube corner, 10 mm ball: 144.3 N a contact; pressure from (6 N E*^2/(pi^3 R^2))^(1/3)
    TrihedralPivot seat = new TrihedralPivot(R, Math.atan(Math.sqrt(2)), PAIR);
    double n = seat.contactForce(FORCE);
    assertThat(n).isCloseTo(144.3376, within(1e-3));
    double e = PAIR.reducedModulus();
    double p0 = Math.cbrt(6 * n * e * e / (Math.pow(Math.PI, 3) * R * R));
    assertThat(seat.peakPressure(FORCE)).isCloseTo(p0, within(1e-9 * p0));
  }

  @Test
  void aLineContactYieldsWhereALongEllipseDoes() {
    assertThat(SubsurfaceStress.of(1 / 300.0, 0.3).firstYieldTresca())
        .isCloseTo(RingContact.FIRST_YIELD, within(0.01));
  }

  /** Springs at places round the ball, each along its normal and along two tangents. */
  private static double energyOf(List<Vec3> normals, double[] k, Twist motion) {
    double sum = 0;
    for (Vec3 n : normals) {
      Vec3 d = motion.displacementOf(n.times(-R));
      Vec3 round = Vec3.Z.cross(n).unit();
      Vec3 up = n.cross(round);
      sum +=
          k[0] * d.dot(n) * d.dot(n)
              + k[1] * d.dot(round) * d.dot(round)
              + k[2] * d.dot(up) * d.dot(up);
    }
    return sum / 2;
  }

  @Test
  void aStickingRingIsTheSumOfItsPlaces() {
    double phi = Math.toRadians(40);
    ConePivot cone = new ConePivot(R, phi, PAIR);
    int places = 360;
    List<Vec3> normals = new ArrayList<>();
    for (int i = 0; i < places; i++) {
      Vec3 out = Vec3.atAzimuth(2 * Math.PI * i / places).times(Math.sin(phi));
      normals.add(out.plus(Vec3.Z.times(Math.cos(phi))));
    }
    double kn =
        cone.slidingStiffness(FORCE).orElseThrow().get(2, 2)
            / (places * Math.cos(phi) * Math.cos(phi));
    for (Twist motion : motions()) {
      double wanted = energyOf(normals, new double[] {kn, 0.7 * kn, kn}, motion);
      assertThat(energy(cone.stickingStiffness(FORCE).orElseThrow(), motion))
          .isCloseTo(wanted, within(1e-9 * wanted));
    }
  }

  @Test
  void aSocketIsTheSumOfItsLandAndAShallowOneADiscOnAHalfSpace() {
    SocketPivot seat = new SocketPivot(R, Math.toRadians(20), Math.toRadians(60), PAIR);
    double disc = 2 * PAIR.reducedModulus() / (Math.PI * R * Math.sin(seat.outerAngle()));
    double part = 4 * PAIR.reducedShearModulus() / PAIR.reducedModulus();
    int rings = 400;
    int places = 72;
    for (Twist motion : motions()) {
      double free = 0;
      double stuck = 0;
      double step = (seat.outerAngle() - seat.innerAngle()) / rings;
      for (int i = 0; i < rings; i++) {
        double t = seat.innerAngle() + (i + 0.5) * step;
        double k = disc * R * R * Math.sin(t) * step * 2 * Math.PI / places;
        List<Vec3> normals = new ArrayList<>();
        for (int j = 0; j < places; j++) {
          Vec3 out = Vec3.atAzimuth(2 * Math.PI * j / places).times(Math.sin(t));
          normals.add(out.plus(Vec3.Z.times(Math.cos(t))));
        }
        free += energyOf(normals, new double[] {k, 0, 0}, motion);
        stuck += energyOf(normals, new double[] {k, part * k, part * k}, motion);
      }
      assertThat(energy(seat.slidingStiffness(FORCE).orElseThrow(), motion))
          .isCloseTo(free, within(1e-5 * free + 1e-15));
      assertThat(energy(seat.stickingStiffness(FORCE).orElseThrow(), motion))
          .isCloseTo(stuck, within(1e-5 * stuck));
    }
    // rigid disc of radius a pressed into a half-space: 2 E* a (Boussinesq, recalled from memory)
    SocketPivot shallow = new SocketPivot(R, 0, 0.02, PAIR);
    assertThat(shallow.slidingStiffness(FORCE).orElseThrow().get(2, 2))
        .isCloseTo(2 * PAIR.reducedModulus() * R * Math.sin(0.02), within(1e-3 * 24e6));
  }

  private static List<Twist> motions() {
    return List.of(
        new Twist(new Vec3(1e-6, 0, 0), Vec3.ZERO, Vec3.ZERO),
        new Twist(new Vec3(0, 2e-7, 1e-6), Vec3.ZERO, Vec3.ZERO),
        new Twist(new Vec3(1e-6, -3e-7, 5e-7), new Vec3(1e-4, 2e-4, -3e-4), Vec3.ZERO));
  }
}
