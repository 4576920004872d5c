package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.ballmount.BondJoint;
import reseat.ballmount.ConePivot;
import reseat.ballmount.FlatPivot;
import reseat.ballmount.FluidFilmPad;
import reseat.ballmount.PivotSeat;
import reseat.ballmount.SocketPivot;
import reseat.ballmount.TrihedralPivot;
import reseat.contact.ContactLimits;
import reseat.contact.RingContact;
import reseat.design.PivotDuty;
import reseat.material.ElasticPair;
import reseat.material.Material;
import reseat.material.MaterialCatalog;

/** What is said of a seat that a ball turns in and of the pad it aligns. */
class PivotCheckTest {

  private static final double R = 0.005;
  private static final Material BALL = MaterialCatalog.standard().find("52100").orElseThrow();
  private static final Material SEAT = MaterialCatalog.standard().find("1045").orElseThrow();
  private static final ElasticPair PAIR = new ElasticPair(BALL.elastic(), SEAT.elastic());

  private static List<Finding> of(PivotSeat seat, double force) {
    PivotDuty duty = new PivotDuty(seat, SEAT, 0.1, "assumed", Optional.empty(), Optional.empty());
    return PivotCheck.of(duty, BALL, pressed(force));
  }

  private static StudLoads pressed(double force) {
    return new StudLoads(new BondJoint.Load(-force, 0), List.of());
  }

  private static List<Finding> of(PivotSeat seat, double peak, double across) {
    PivotDuty duty = new PivotDuty(seat, SEAT, 0.1, "assumed", Optional.empty(), Optional.empty());
    return PivotCheck.of(
        duty,
        BALL,
        new StudLoads(
            new BondJoint.Load(-250, 0),
            List.of(new StudLoads.Peak("the peak load", new BondJoint.Load(-peak, -across)))));
  }

  @Test
  void theWorstLoadIsJudgedWithWhatPushesSideways() {
    PivotSeat seat = new TrihedralPivot(R, Math.toRadians(54.7356), PAIR);
    Finding stays = of(seat, 250, 0).get(0);
    assertThat(stays.value()).isEqualTo(seat.peakPressure(250));
    assertThat(stays.said().arguments()).contains(Argument.amount(Measure.FORCE, 250));
    Finding peak = of(seat, 1500, 0).get(0);
    // Hertz pressure of a point goes with the cube root of the force
    assertThat(peak.value()).isCloseTo(Math.cbrt(6) * stays.value(), within(1e-9 * peak.value()));
    assertThat(peak.said().arguments()).contains(Argument.amount(Measure.FORCE, 1500));
    assertThat(of(seat, 1500, 400).get(0).value()).isGreaterThan(peak.value());
    assertThat(of(seat, 1500, 400).get(0).said().arguments())
        .contains(Argument.amount(Measure.FORCE, 400));
    // a peak that takes load off is not the worst
    assertThat(of(seat, 100, 0).get(0).value()).isEqualTo(stays.value());
  }

  @Test
  void aLoadThatOpensTheSeatIsTold() {
    PivotSeat seat = new ConePivot(R, Math.toRadians(45), PAIR);
    // at 45 degrees the ring opens when half of the force along the axis acts across it
    assertThat(of(seat, 1000, 499)).hasSize(2);
    List<Finding> opened = of(seat, 1000, 501);
    assertThat(opened).hasSize(3);
    assertThat(opened.get(1).judged()).isEqualTo(Judged.DECIDE);
    assertThat(opened.get(1).said().key()).isEqualTo(Said.LEAVES_PIVOT);
    assertThat(of(seat, -100, 0).get(1).said())
        .isEqualTo(Statement.of(Said.DRAWN_OUT, "the peak load", "a cone"));
    assertThat(of(seat, -100, 0).get(0).value()).isEqualTo(seat.peakPressure(250));
  }

  private static double weaker() {
    return Math.min(
        BALL.flowStrength().orElseThrow().nominal(), SEAT.flowStrength().orElseThrow().nominal());
  }

  /** Force at which the pressure of a seat is at its limit; pressure rises with force. */
  private static double forceAtLimit(PivotSeat seat) {
    double low = 1e-3;
    double high = 1e6;
    for (int i = 0; i < 100; i++) {
      double force = Math.sqrt(low * high);
      Finding f = of(seat, force).get(0);
      if (f.value() > f.limit()) {
        high = force;
      } else {
        low = force;
      }
    }
    return low;
  }

  @Test
  void aPointIsHeldAgainstTheLimitsOfBothBodies() {
    TrihedralPivot seat = new TrihedralPivot(R, Math.toRadians(45), PAIR);
    Finding f = of(seat, 250).get(0);
    assertThat(f.value()).isEqualTo(seat.peakPressure(250));
    assertThat(f.limit())
        .isEqualTo(
            ContactLimits.of(seat.point().orElseThrow(), BALL, SEAT)
                .governing()
                .orElseThrow()
                .peakPressure());
    assertThat(of(seat, 250)).hasSize(1);
  }

  @Test
  void aRingYieldsAsALineAndASocketAtTheStrengthItself() {
    Finding ring = of(new ConePivot(R, Math.toRadians(45), PAIR), 250).get(0);
    assertThat(ring.limit()).isCloseTo(RingContact.FIRST_YIELD * weaker(), within(1.0));
    Finding socket = of(new SocketPivot(R, 0, 1, PAIR), 250).get(0);
    assertThat(socket.limit()).isCloseTo(weaker(), within(1e-6));
    assertThat(ring.judged()).isEqualTo(Judged.HOLDS);
    assertThat(ring.advice().isEmpty()).isTrue();
  }

  @Test
  void everySeatIsHarmedJustAboveItsLimit() {
    for (PivotSeat seat :
        List.of(
            new TrihedralPivot(R, Math.toRadians(45), PAIR),
            new ConePivot(R, Math.toRadians(45), PAIR),
            new SocketPivot(R, 0, 1, PAIR),
            new FlatPivot(R, PAIR))) {
      double force = forceAtLimit(seat);
      assertThat(of(seat, 0.99 * force).get(0).judged()).isEqualTo(Judged.HOLDS);
      Finding harmed = of(seat, 1.01 * force).get(0);
      // a set of a point or a ring is a figure; a socket flows over its whole face
      assertThat(harmed.judged())
          .isEqualTo(seat instanceof SocketPivot ? Judged.FAILS : Judged.DECIDE);
      assertThat(harmed.advice().key()).isEqualTo(Said.EASE_PIVOT);
    }
  }

  @Test
  void aPointSeatThatSinksInLikeABrinellBallFails() {
    PivotSeat seat = new TrihedralPivot(R, Math.toRadians(45), PAIR);
    // at eight times the pressure of first yield: 512 times the force
    Finding ruined = of(seat, 512 * forceAtLimit(seat)).get(0);
    assertThat(ruined.judged()).isEqualTo(Judged.FAILS);
    assertThat(ruined.basis()).isEqualTo(LimitBasis.STRENGTH);
  }

  @Test
  void aRingAndALandTouchMoreThanThreePointsAndAFlatHoldsNothingSideways() {
    for (PivotSeat seat :
        List.of(new ConePivot(R, Math.toRadians(45), PAIR), new SocketPivot(R, 0, 1, PAIR))) {
      assertThat(of(seat, 250)).hasSize(2);
      assertThat(of(seat, 250).get(1).judged()).isEqualTo(Judged.ADVICE);
      assertThat(of(seat, 250).get(1).said())
          .isEqualTo(Statement.of(Said.PIVOT_OVER_DETERMINED, seat.words()));
    }
    List<Finding> flat = of(new FlatPivot(R, PAIR), 250);
    assertThat(flat).hasSize(2);
    assertThat(flat.get(1).said()).isEqualTo(Statement.of(Said.PIVOT_BY_FRICTION, "a flat"));
    assertThat(flat.get(1).judged()).isEqualTo(Judged.ADVICE);
  }

  @Test
  void aBallOfUnknownStrengthIsNotCalledSafe() {
    Material unknown = new Material("test steel", BALL.elastic());
    PivotSeat seat = new TrihedralPivot(R, Math.toRadians(45), ElasticPair.ofEqual(BALL.elastic()));
    PivotDuty duty =
        new PivotDuty(seat, unknown, 0.1, "assumed", Optional.empty(), Optional.empty());
    Finding f = PivotCheck.of(duty, unknown, pressed(250)).get(0);
    assertThat(f.judged()).isEqualTo(Judged.ADVICE);
    assertThat(f.value()).isEqualTo(seat.peakPressure(250));
    assertThat(f.said().key()).isEqualTo(Said.PIVOT_UNJUDGED);
    assertThat(Looked.name(f.said(), 5)).isEqualTo("test steel");
    assertThat(f.advice().key()).isEqualTo(Said.STATE_PIVOT_YIELD);
  }

  @Test
  void theShareOfTheLimitIsTold() {
    // a mean pressure goes with the force on a socket: half the force at the limit is half of it
    PivotSeat seat = new SocketPivot(R, 0, 1, PAIR);
    double force = forceAtLimit(seat);
    assertThat(Looked.amount(of(seat, force / 2).get(0).said(), 5)).isCloseTo(0.5, within(1e-9));
  }

  private static FluidFilmPad pad(double frictionMoment, double pivotStiffness) {
    return new FluidFilmPad(250, 25e6, 1500, 0.02, 5e-6, frictionMoment, pivotStiffness);
  }

  private static Finding one(List<Finding> all, String where) {
    return all.stream().filter(f -> f.subject().name().equals(where)).findFirst().orElseThrow();
  }

  @Test
  void frictionHoldsATiltThatTheFilmMustTurnBack() {
    // 0.03 N m over 1500 N m/rad: 20 urad
    List<Finding> just = PivotCheck.pad(pad(0.03, 200e6), 20e-6);
    assertThat(one(just, "tilt").value()).isCloseTo(20e-6, within(1e-15));
    assertThat(one(just, "tilt").judged()).isEqualTo(Judged.HOLDS);
    assertThat(one(just, "tilt").limit()).isEqualTo(20e-6);
    Finding over = one(PivotCheck.pad(pad(0.0301, 200e6), 20e-6), "tilt");
    assertThat(over.judged()).isEqualTo(Judged.FAILS);
    assertThat(over.advice())
        .isEqualTo(
            Statement.of(
                Said.PAD_CURES,
                FluidFilmPad.Remedy.LUBRICATE,
                FluidFilmPad.Remedy.WIDEN_PAD,
                FluidFilmPad.Remedy.BOND_AFTER_FLOATING,
                FluidFilmPad.Remedy.ROLL_ON_FLAT));
    // a soft pivot is told beside the stiffness, once
    assertThat(one(PivotCheck.pad(pad(0.0301, 10e6), 20e-6), "tilt").advice())
        .isEqualTo(over.advice());
    Finding unasked = one(PivotCheck.pad(pad(0.03, 200e6), Double.POSITIVE_INFINITY), "tilt");
    assertThat(unasked.judged()).isEqualTo(Judged.ADVICE);
    assertThat(Looked.amount(unasked.said(), 2)).isZero();
    assertThat(unasked.limit()).isZero();
    assertThat(unasked.advice().isEmpty()).isTrue();
  }

  @Test
  void theEdgeOfTheFilmIsToldFromHalfItsThicknessAndFailsWhenItTouches() {
    // at the edge, 20 mm out, the tilt takes 20 mm * M/1500 of the 5 um
    double touches = 5e-6 / 0.02 * 1500;
    double tilt = 1;
    assertThat(PivotCheck.pad(pad(0.499 * touches, 200e6), tilt)).hasSize(2);
    List<Finding> thin = PivotCheck.pad(pad(0.75 * touches, 200e6), tilt);
    assertThat(one(thin, "film").judged()).isEqualTo(Judged.DECIDE);
    assertThat(one(thin, "film").value()).isCloseTo(0.75, within(1e-12));
    assertThat(one(thin, "film").limit()).isEqualTo(0.5);
    assertThat(one(thin, "film").advice().isEmpty()).isTrue();
    Finding gone = one(PivotCheck.pad(pad(1.001 * touches, 200e6), tilt), "film");
    assertThat(gone.judged()).isEqualTo(Judged.FAILS);
    assertThat(gone.limit()).isEqualTo(1);
    assertThat(gone.advice().key()).isEqualTo(Said.DO_NOT_RUN);
  }

  @Test
  void aPivotFiveTimesAsStiffAsTheFilmHardlyCounts() {
    Finding stiff = one(PivotCheck.pad(pad(0.01, 125.1e6), 1), "stiffness");
    assertThat(stiff.judged()).isEqualTo(Judged.ADVICE);
    assertThat(stiff.value()).isCloseTo(5.004, within(1e-9));
    assertThat(stiff.advice().isEmpty()).isTrue();
    Finding soft = one(PivotCheck.pad(pad(0.01, 124.9e6), 1), "stiffness");
    assertThat(soft.judged()).isEqualTo(Judged.ADVICE);
    assertThat(soft.advice())
        .isEqualTo(Statement.of(Said.PAD_CURES, FluidFilmPad.Remedy.STIFFEN_PIVOT));
    // 25 and 124.9 N/um in series: 20.83 N/um, of whose give 16.7 % is the pivot's
    assertThat(Looked.amount(soft.said(), 3)).isCloseTo(20.83e6, within(0.01e6));
    assertThat(Looked.amount(soft.said(), 4)).isCloseTo(0.167, within(0.001));
  }
}
