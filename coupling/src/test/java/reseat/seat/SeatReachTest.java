package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import reseat.space.Vec3;

/** How far balls and contacts are from what they must not reach, by the geometry of a section. */
class SeatReachTest {

  private static final double R = 0.010;
  private static final SeatFrame LEVEL = SeatFrame.level(Vec3.ZERO, 0);
  private static final double NONE = Double.POSITIVE_INFINITY;

  private static List<Double> of(Seat seat, Vec3 centre, SeatClearance.Feature feature) {
    return seat.clearances(new Ball(centre, R)).stream()
        .filter(c -> c.feature() == feature)
        .map(SeatClearance::distance)
        .toList();
  }

  private static void are(List<Double> found, int count, double distance) {
    assertThat(found)
        .hasSize(count)
        .allSatisfy(d -> assertThat(d).isCloseTo(distance, within(1e-12)));
  }

  @Test
  void aBallSlidAlongItsPinsComesNearerToTheirEndsAndNotToTheFloor() {
    CylinderPair pins = CylinderPair.forBall(LEVEL, R, 0.005, 0.018, 0.032, 0.006);
    double rise = Math.sqrt(0.015 * 0.015 - 0.009 * 0.009);
    for (double slid : new double[] {0, 0.003, -0.003}) {
      Vec3 at = new Vec3(slid, 0, 0);
      are(of(pins, at, SeatClearance.Feature.END), 2, 0.016 - Math.abs(slid));
      are(of(pins, at, SeatClearance.Feature.FLOOR), 1, rise - R + 0.006);
    }
    assertThat(
            CylinderPair.forBall(LEVEL, R, 0.005, 0.018, NONE, NONE)
                .clearances(new Ball(Vec3.ZERO, R)))
        .isEmpty();
  }

  @Test
  void aBallSlidAlongAGothicGrooveComesNearerToItsEnd() {
    GrooveExtent extent = new GrooveExtent(0.016, 0.030, 0.002, 0.001);
    GothicGroove groove = GothicGroove.forBall(LEVEL, R, 1.04 * R, Math.PI / 4, extent);
    for (double slid : new double[] {0, 0.004, -0.004}) {
      are(of(groove, new Vec3(slid, 0, 0), SeatClearance.Feature.END), 2, 0.015 - Math.abs(slid));
    }
    GothicGroove endless =
        GothicGroove.forBall(LEVEL, R, 1.04 * R, Math.PI / 4, new GrooveExtent(0.016, NONE, 0, 0));
    assertThat(of(endless, Vec3.ZERO, SeatClearance.Feature.END)).isEmpty();
  }

  @Test
  void threeFlatsAndAConeHaveTheSameSection() {
    double root = 0.004;
    double mouth = 0.018;
    for (double degrees : new double[] {30, 45, 60}) {
      double angle = Math.toRadians(degrees);
      double tan = Math.tan(angle);
      double cos = Math.cos(angle);
      List<Seat> seats =
          List.of(
              TrihedralSeat.forBall(LEVEL, R, angle, mouth, root),
              ConeSeat.forBall(LEVEL, R, angle, mouth, root));
      for (Seat seat : seats) {
        // the contact lies R sin off the axis; the ball's underside R/cos - R above the apex
        are(
            of(seat, Vec3.ZERO, SeatClearance.Feature.MOUTH_EDGE),
            3,
            (mouth / 2 - R * Math.sin(angle)) / cos);
        are(
            of(seat, Vec3.ZERO, SeatClearance.Feature.ROOT_EDGE),
            3,
            (R * Math.sin(angle) - root / 2) / cos);
        are(of(seat, Vec3.ZERO, SeatClearance.Feature.FLOOR), 1, R / cos - R - root / 2 * tan);
      }
      for (Seat sharp :
          List.of(
              TrihedralSeat.forBall(LEVEL, R, angle, NONE, 0),
              ConeSeat.forBall(LEVEL, R, angle, NONE, 0))) {
        assertThat(sharp.clearances(new Ball(Vec3.ZERO, R))).isEmpty();
      }
    }
  }

  @Test
  void theReliefOfUnlikeFlanksIsDeepestAtTheFlattest() {
    double[] angles = {Math.toRadians(40), Math.toRadians(50), Math.toRadians(60)};
    Vec3 high = new Vec3(0, 0, 0.02);
    for (int turn = 0; turn < 3; turn++) {
      TrihedralSeat seat =
          new TrihedralSeat(
              LEVEL, angles[turn], angles[(turn + 1) % 3], angles[(turn + 2) % 3], 0.018, 0.004);
      are(of(seat, high, SeatClearance.Feature.FLOOR), 1, 0.02 - R - 0.002 * Math.tan(angles[0]));
    }
    GrooveExtent extent = new GrooveExtent(0.018, 0.03, 0.004, 0.001);
    for (VeeGroove vee :
        List.of(
            new VeeGroove(LEVEL, angles[0], angles[2], extent),
            new VeeGroove(LEVEL, angles[2], angles[0], extent))) {
      are(
          of(vee, high, SeatClearance.Feature.FLOOR),
          1,
          0.02 - R - 0.002 * Math.tan(angles[0]) + 0.001);
    }
  }

  @Test
  void eachFlankOfAnUnlikeVeeIsMeasuredUpItsOwnSlope() {
    double left = Math.toRadians(35);
    double right = Math.toRadians(55);
    VeeGroove vee = new VeeGroove(LEVEL, left, right, new GrooveExtent(0.030, NONE, 0, 0));
    // a ball touches both where its centre is R from both flanks; the contact is the foot of that
    double[] angle = {left, right};
    Vec3 apexToCentre = centre(left, right);
    List<SeatClearance> found = vee.clearances(new Ball(apexToCentre, R));
    for (int i = 0; i < 2; i++) {
      SeatClearance c = found.get(i);
      double upSlope =
          Math.sqrt(apexToCentre.dot(apexToCentre) - R * R); // from the apex to the contact
      assertThat(c.flank()).isEqualTo(i == 0 ? "left" : "right");
      assertThat(c.distance()).isCloseTo(0.015 / Math.cos(angle[i]) - upSlope, within(1e-12));
    }
  }

  /** Solves n1.c = R and n2.c = R for a vee with its apex at the origin, axis along x. */
  private static Vec3 centre(double left, double right) {
    double y = R * (Math.cos(left) - Math.cos(right)) / Math.sin(left + right);
    double z = R * (Math.sin(left) + Math.sin(right)) / Math.sin(left + right);
    Vec3 one = new Vec3(0, y, z);
    VeeGroove vee = new VeeGroove(LEVEL, left, right, GrooveExtent.unlimited());
    double gap = vee.flanks().get(0).gap(one, R);
    return Math.abs(gap) < 1e-12 ? one : new Vec3(0, -y, z);
  }

  private static void refused(ThrowingCallable made, String... words) {
    assertThatThrownBy(made)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(words);
  }

  @Test
  void seatsThatCannotBeCutAreRefused() {
    refused(() -> new CylinderPair(LEVEL, 0, 0.005, 0.02, 0.03, 0.01), "must be positive");
    refused(() -> new CylinderPair(LEVEL, 0.005, 0, 0.02, 0.03, 0.01), "must be positive");
    refused(() -> new CylinderPair(LEVEL, 0.005, 0.005, 0.02, 0, 0.01), "must be positive");
    refused(() -> new CylinderPair(LEVEL, 0.005, 0.005, 0.02, 0.03, 0), "must be positive");
    refused(
        () -> new CylinderPair(LEVEL, 0.005, 0.004, 0.0089, 0.03, 0.01),
        "pins of 10.0000 mm and 8.00000 mm diameter cannot stand 8.90000 mm apart");
    assertThatCode(() -> new CylinderPair(LEVEL, 0.005, 0.004, 0.005 + 0.004, 0.03, 0.01))
        .as("pins side by side")
        .doesNotThrowAnyException();
    refused(
        () -> CylinderPair.forBall(LEVEL, R, 0.005, 0.031, 0.03, 0.01),
        "a ball of 20.0000 mm falls through pins of 10.0000 mm spaced 31.0000 mm",
        "under 30.0000 mm");
    refused(() -> CylinderPair.forBall(LEVEL, R, 0.005, 0.030, 0.03, 0.01), "falls through");
    refused(
        () -> new ConeSeat(LEVEL, Math.toRadians(2.9), 0.02, 0),
        "between 3 and 85 deg, found 2.900 deg (included angle 174.2 deg)");
    refused(() -> new ConeSeat(LEVEL, Math.toRadians(85.1), 0.02, 0), "found 85.10 deg");
    refused(() -> new ConeSeat(LEVEL, 1, 0, 0), "narrower than the mouth");
    refused(() -> new ConeSeat(LEVEL, 1, 0.02, 0.02), "narrower than the mouth");
    refused(() -> new ConeSeat(LEVEL, 1, 0.02, -0.001), "narrower than the mouth");
    refused(() -> new TrihedralSeat(LEVEL, 1, 1, 1, 0, 0), "narrower than the mouth");
    refused(() -> new TrihedralSeat(LEVEL, 1, 1, 1, 0.02, 0.02), "narrower than the mouth");
    refused(() -> new TrihedralSeat(LEVEL, 1, 1, 1, 0.02, -0.001), "narrower than the mouth");
    refused(() -> new GrooveExtent(0.01, 0.02, 0.01, 0), "");
    refused(() -> new GrooveExtent(0, 0.02, 0, 0), "");
    refused(() -> new GrooveExtent(0.01, 0, 0, 0), "");
    refused(() -> FlankAngle.checked(Math.toRadians(0.99)), "");
    refused(() -> FlankAngle.checked(Math.toRadians(89.01)), "");
    assertThat(FlankAngle.checked(Math.toRadians(1.01))).isEqualTo(Math.toRadians(1.01));
    assertThat(new ConeSeat(LEVEL, 1, 0.02, 0).isRing()).isTrue();
    assertThat(new TrihedralSeat(LEVEL, 1, 1, 1, 0.02, 0).isRing()).isFalse();
    for (SeatClearance.Feature f : SeatClearance.Feature.values()) {
      assertThat(f.words()).isNotBlank();
    }
    assertThat(new Ball(Vec3.ZERO, R).diameter()).isEqualTo(2 * R);
  }

  @Test
  void aFrameNeedsTwoDirectionsThatDifferHoweverLongTheyAre() {
    Vec3 nearlyUp = new Vec3(1e-7, 0, 1);
    for (double length : new double[] {1e-3, 1, 1e3}) {
      refused(() -> new SeatFrame(Vec3.ZERO, nearlyUp.times(length), Vec3.Z), "");
      assertThatCode(() -> new SeatFrame(Vec3.ZERO, new Vec3(1e-5, 0, 1).times(length), Vec3.Z))
          .doesNotThrowAnyException();
    }
  }
}
