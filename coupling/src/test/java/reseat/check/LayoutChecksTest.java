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
    assertThat(f.severity()).isEqualTo(Severity.OK);
    assertThat(f.message())
        .isEqualTo("6 contacts hold all 6 motions, condition number 1.4 (poor above 20).");
  }

  @Test
  void parallelGroovesAreToldWhichMotionIsFreeAndWhatToTurn() {
    Finding f = constraint(turned(90, -30, -150));
    assertThat(f.severity()).isEqualTo(Severity.FAIL);
    assertThat(f.value()).isEqualTo(5);
    assertThat(f.message())
        .isEqualTo("6 contacts hold only 5 of 6 motions; one motion is free: sliding along y.");
    assertThat(f.advice()).contains("any one of").contains("turned by 20 deg would hold it");
  }

  @Test
  void groovesAlongTheCircleLeaveTheTurnFree() {
    assertThat(constraint(turned(90, 90, 90)).message())
        .contains("turning about a line along z through (0.0, 0.0, 0.0) mm");
  }

  @Test
  void groovesAlmostAlongTheCircleHoldTheTurnBarely() {
    Finding f = constraint(turned(89, 89, 89));
    assertThat(f.severity()).isEqualTo(Severity.WARNING);
    assertThat(f.message()).contains("one barely: turning about a line along z");
  }

  @Test
  void twoSupportsWantMoreContacts() {
    CouplingDesign three = turned(0, 0, 0);
    Finding f = constraint(three.toBuilder().supports(three.supports().subList(0, 2)).build());
    assertThat(f.message()).startsWith("4 contacts hold only 4 of 6 motions; 2 motions are free");
    assertThat(f.advice()).startsWith("Add contacts");
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
    assertThat(f.severity()).isEqualTo(Severity.FAIL);
    assertThat(f.message()).startsWith("over-constrained: 7 contacts for 6 motions");
  }

  private static List<Finding> directions(CouplingDesign design) {
    return GrooveDirectionCheck.of(design, ConstraintQuality.of(design));
  }

  @Test
  void groovesAlongTheBisectorsAreRight() {
    assertThat(directions(turned(0, 0, 0)).get(0).severity()).isEqualTo(Severity.OK);
    // the pallet's triangle is not equilateral; its grooves run along its bisectors
    assertThat(directions(WorkedExamples.pallet()).get(0).severity()).isEqualTo(Severity.OK);
  }

  @Test
  void groovesALittleOffCostLittle() {
    Finding f = directions(turned(10, 0, 0)).get(0);
    assertThat(f.severity()).isEqualTo(Severity.NOTE);
    assertThat(f.message()).contains("10.00° off the bisector");
    assertThat(f.value()).isBetween(0.05, 0.15);
  }

  @Test
  void groovesFarOffCostHalfTheStiffness() {
    // turned alike by 60 deg: turning about z is held by 3 cos^2 60 = 0.75 of a contact's
    // stiffness at the coupling radius where the softest motion had 1.5
    Finding f = directions(turned(60, 60, 60)).get(0);
    assertThat(f.severity()).isEqualTo(Severity.WARNING);
    assertThat(f.value()).isCloseTo(0.5, within(1e-9));
    assertThat(f.message()).contains("50 % softer");
  }

  @Test
  void theRuleIsForThreeGrooves() {
    assertThat(directions(WorkedExamples.sensorBracket())).isEmpty();
  }
}
