package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.TestCouplings;
import reseat.equilibrium.WorkedExamples;
import reseat.seat.Ball;
import reseat.seat.FlatSeat;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/** Constraint and groove directions. */
class LayoutChecksTest {

  /** Three vees at azimuths 0, 120, 240 degrees, their grooves turned off radial. */
  private static CouplingDesign turned(double... degreesOff) {
    CouplingDesign good =
        TestCouplings.threeVees(0.05, 0.00635, Math.toRadians(45), 0, 120, 240).build();
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      supports.add(
          good.supports()
              .get(i)
              .withGrooveAlong(Vec3.atAzimuth(Math.toRadians(120 * i + degreesOff[i]))));
    }
    return good.toBuilder().supports(supports).build();
  }

  private static Finding constraint(CouplingDesign design) {
    List<Finding> found = ConstraintCheck.of(ConstraintQuality.of(design));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void radialGroovesHoldEverything() {
    Finding f = constraint(turned(0, 0, 0));
    assertThat(f.judged()).isEqualTo(Judged.HOLDS);
    assertThat(f.said().key()).isEqualTo(Said.ALL_HELD);
    // the square root of two
    assertThat(f.value()).isCloseTo(1.41, within(0.05));
    assertThat(f.limit()).isEqualTo(20);
  }

  @Test
  void parallelGroovesAreToldWhichMotionIsFreeAndWhichToTurn() {
    Finding f = constraint(turned(90, -30, -150));
    assertThat(f.judged()).isEqualTo(Judged.FAILS);
    assertThat(f.value()).isEqualTo(5);
    assertThat(f.said().key()).isEqualTo(Said.MOTION_FREE);
    assertThat(Looked.amount(f.said(), 0)).isEqualTo(6);
    assertThat(Looked.amount(f.said(), 1)).isEqualTo(5);
    assertThat(Looked.amount(f.said(), 2)).isEqualTo(1);
    assertThat(motion(f, 3)).isEqualTo("sliding along y");
    assertThat(f.subject().name()).as("any one of them, turned, would hold it").contains(", ");
  }

  @Test
  void groovesAlongTheCircleLeaveTheTurnFree() {
    assertThat(motion(constraint(turned(90, 90, 90)), 3))
        .contains("turning about a line along z through (0.0, 0.0, 0.0) mm");
  }

  private static String motion(Finding f, int place) {
    return Looked.name(Looked.inner(f.said(), place), 0);
  }

  @Test
  void groovesAlmostAlongTheCircleHoldTheTurnBarely() {
    Finding f = constraint(turned(89, 89, 89));
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(f.said().key()).isEqualTo(Said.BARELY_HELD);
    assertThat(motion(f, 0)).startsWith("turning about a line along z");
    assertThat(f.value()).isGreaterThan(f.limit());
  }

  @Test
  void twoSupportsHoldFourMotions() {
    CouplingDesign three = turned(0, 0, 0);
    Finding f = constraint(three.toBuilder().supports(three.supports().subList(0, 2)).build());
    assertThat(f.said().key()).isEqualTo(Said.MOTION_FREE);
    assertThat(Looked.amount(f.said(), 1)).isEqualTo(4);
    assertThat(Looked.amount(f.said(), 2)).isEqualTo(2);
  }

  @Test
  void aFourthBallIsOneTooMany() {
    CouplingDesign three = turned(0, 0, 0);
    List<Support> four = new ArrayList<>(three.supports());
    four.add(
        TestCouplings.support(
            "middle",
            new Ball(Vec3.ZERO, 0.005),
            FlatSeat.forBall(SeatFrame.level(Vec3.ZERO, 0), 0.005, 0.01)));
    Finding f = constraint(three.toBuilder().supports(four).build());
    assertThat(f.judged()).isEqualTo(Judged.FAILS);
    assertThat(f.said().key()).isEqualTo(Said.OVER_CONSTRAINED);
    assertThat(f.value()).isEqualTo(7);
  }

  private static List<Finding> directions(CouplingDesign design) {
    return GrooveDirectionCheck.of(design, ConstraintQuality.of(design));
  }

  @Test
  void groovesAlongTheBisectorsAreRight() {
    assertThat(directions(turned(0, 0, 0)).get(0).judged()).isEqualTo(Judged.HOLDS);
    // the pallet's triangle is not equilateral; its grooves run along its bisectors
    assertThat(directions(WorkedExamples.pallet()).get(0).judged()).isEqualTo(Judged.HOLDS);
  }

  @Test
  void groovesALittleOffCostLittle() {
    Finding f = directions(turned(10, 0, 0)).get(0);
    assertThat(f.judged()).isEqualTo(Judged.ADVICE);
    assertThat(Looked.amount(f.said(), 1)).isCloseTo(Math.toRadians(10), within(1e-9));
    assertThat(Looked.amount(f.said(), 2)).as("radial at 0 deg").isZero();
    assertThat(f.advice().isEmpty()).isTrue();
    assertThat(f.value()).isBetween(0.05, 0.15);
  }

  @Test
  void groovesFarOffCostHalfTheStiffness() {
    // turned alike by 60 deg: turning about z is held by 3 cos^2 60 = 0.75 of a contact's
    // stiffness at the coupling radius where the softest motion had 1.5
    Finding f = directions(turned(60, 60, 60)).get(0);
    assertThat(f.judged()).isEqualTo(Judged.ADVICE);
    assertThat(f.value()).isCloseTo(0.5, within(1e-9));
    // radial at 0, 120 and 240 deg; the last is the line at 60 deg
    String named = Looked.name(f.advice(), 0);
    assertThat(named).contains(" 0.00 deg", " 120.00 deg", " 60.00 deg");
    assertThat(f.advice().key()).isEqualTo(Said.TURN_TO_BISECTORS);
  }

  @Test
  void theBisectorsOfThePalletAreNamedByTheirAngles() {
    // corners of the pallet's triangle: (80, -60), (0, 90), (-80, -60) mm; bisectors by hand
    CouplingDesign pallet = WorkedExamples.pallet();
    List<Support> alike = new ArrayList<>();
    for (Support s : pallet.supports()) {
      alike.add(s.withGrooveAlong(Vec3.atAzimuth(Math.toRadians(20))));
    }
    Finding f = directions(pallet.toBuilder().supports(alike).build()).get(0);
    assertThat(Looked.name(f.advice(), 0)).contains("30.96 deg", "149.04 deg", "90.00 deg");
  }

  @Test
  void theRuleIsForThreeGrooves() {
    assertThat(directions(WorkedExamples.sensorBracket())).isEmpty();
  }
}
