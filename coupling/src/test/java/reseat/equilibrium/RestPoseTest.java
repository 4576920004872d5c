package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.numerics.RandomStream;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.SeatFrame;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** How the holder stands without load: exact geometry against closed forms, small and large. */
class RestPoseTest {

  private static final double RADIUS = 0.034925;

  private static CouplingDesign coupling() {
    return TestCouplings.threeVees(RADIUS, 0.00635, Math.toRadians(45), 0, 120, 240).build();
  }

  private static CouplingDesign withBall(CouplingDesign design, int index, Ball ball) {
    List<Support> supports = new ArrayList<>(design.supports());
    supports.set(index, supports.get(index).withBall(ball));
    return design.toBuilder().supports(supports).build();
  }

  @Test
  void aPerfectCouplingRestsInItsNominalPlace() {
    for (int i = 0; i < 40; i++) {
      CouplingDesign design = RandomCoupling.draw(RandomStream.of(20260221, i)).design();
      Pose rest = CouplingModel.of(design).restPose();
      assertThat(rest.apply(design.toolPoint()).distanceTo(design.toolPoint()))
          .as("seed 20260221, layout %d", i)
          .isLessThan(1e-14);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 25e-6, 2e-3, -10e-3})
  void loweringTheFrontBallTurnsTheHolderAboutTheOtherTwo(double h) {
    // Screwed out downward by h, the front ball still has to sit in its groove, along which it is
    // free; so the holder turns about the line through the other two balls by atan(h/(3R/2)),
    // however large h is. With h = 25 um and R = 34.925 mm: 477 urad.
    CouplingDesign design = coupling();
    Ball ball = design.supports().get(0).ball();
    design = withBall(design, 0, new Ball(new Vec3(RADIUS, 0, -h), ball.radius()));
    Pose rest = CouplingModel.of(design).restPose();
    double angle = Math.atan(h / (1.5 * RADIUS));
    assertThat(rest.rotationVector().distanceTo(new Vec3(0, -angle, 0))).isLessThan(2e-14);
    double arm = Math.hypot(1.5 * RADIUS, h) - 0.5 * RADIUS;
    assertThat(rest.apply(new Vec3(RADIUS, 0, -h)).distanceTo(new Vec3(arm, 0, 0)))
        .isLessThan(2e-15);
    if (h == 25e-6) {
      assertThat(angle).isCloseTo(477e-6, within(0.5e-6));
      Vec3 tip = new Vec3(0.047, 0, 0.0152);
      assertThat(rest.apply(tip).z() - tip.z()).isCloseTo(31e-6, within(0.5e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 1e-5, 1e-3})
  void largerBallsStandHigherByTheirGrowthOverTheCosine(double growth) {
    CouplingDesign design = coupling();
    for (int i = 0; i < 3; i++) {
      Ball b = design.supports().get(i).ball();
      design = withBall(design, i, new Ball(b.centre(), b.radius() + growth));
    }
    Vec3 shift = CouplingModel.of(design).restPose().translation();
    assertThat(shift.distanceTo(new Vec3(0, 0, growth * Math.sqrt(2)))).isLessThan(1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 1e-3, 5e-3})
  void aHolderGrownEvenlyStandsWhereItStoodInRadialGrooves(double growth) {
    // every ball slides along its own groove, toward or from the point where the grooves meet
    CouplingDesign design = coupling();
    for (int i = 0; i < 3; i++) {
      Ball b = design.supports().get(i).ball();
      design = withBall(design, i, new Ball(b.centre().times(1 + growth), b.radius()));
    }
    Pose rest = CouplingModel.of(design).restPose();
    assertThat(rest.translation().norm()).isLessThan(1e-15);
    assertThat(rest.rotationVector().norm()).isLessThan(1e-13);
  }

  @Test
  void contactsThatDoNotConstrainHaveNoRestPose() {
    CouplingDesign parallel = Unconstrained.parallelVees();
    assertThatThrownBy(() -> CouplingModel.of(parallel).restPose())
        .isInstanceOf(NoEquilibriumException.class)
        .hasMessageContaining("do not constrain");
    CouplingDesign two =
        coupling().toBuilder().supports(coupling().supports().subList(0, 2)).build();
    assertThatThrownBy(() -> CouplingModel.of(two).standing())
        .isInstanceOf(NoEquilibriumException.class)
        .hasMessageContaining("4 contacts");
  }

  @Test
  void aBallPressedThroughItsPinsHasNoRest() {
    // pins so far apart that the ball barely stays on top; the sink takes it through
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double azimuth = Math.toRadians(120 * i);
      Vec3 centre = Vec3.atAzimuth(azimuth).times(RADIUS);
      supports.add(
          TestCouplings.support(
              "ball " + i,
              new Ball(centre, 0.00635),
              CylinderPair.forBall(
                  SeatFrame.level(centre, azimuth), 0.00635, 0.003, 0.018699, 0.1, 0.1)));
    }
    CouplingModel model = CouplingModel.of(CouplingDesign.builder().supports(supports).build());
    assertThatThrownBy(() -> model.equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -600), Vec3.ZERO)))
        .isInstanceOf(NoEquilibriumException.class)
        .hasMessageContaining("presses a ball through its seat");
    assertThat(model.equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -1e-6), Vec3.ZERO)).lifted()).isFalse();
  }
}
