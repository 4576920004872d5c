package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.ballmount.StudCompliance;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.space.Twist;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Balls that give way on their mountings while friction works. */
class ElasticBallSupportTest {

  /** A stud about as soft as its contacts: 0.02 um/N along, 0.05 um/N across, with tilt. */
  private static final StudCompliance STUD = new StudCompliance(2e-8, 5e-8, 5e-6, 8e-4, 3e-4);

  private static CouplingDesign mounted(CouplingDesign d, Vec3 axis, StudCompliance stud) {
    List<Support> supports =
        d.supports().stream()
            .map(s -> s.withMounting(new BallMounting(axis, stud, Optional.empty(), "stud")))
            .toList();
    return d.toBuilder().supports(supports).build();
  }

  private static FrictionEquilibrium ramped(
      CouplingDesign d, double first, double last, int steps) {
    FrictionEquilibrium m = Mounted.prepared(d);
    double[] closing = {1, 0.4, 0, 0, 0, 0};
    assertThat(m.seat(closing, down(first))).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    for (int s = 1; s <= steps; s++) {
      double force = first * Math.pow(last / first, s / (double) steps);
      assertThat(m.follow(down(force), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    }
    return m;
  }

  private static double[] down(double force) {
    return new double[] {0, 0, -force, 0, 0, 0};
  }

  private static Vec3 tip(FrictionEquilibrium m) {
    double[] out = new double[3];
    m.state.displacement(Couplings.TIP.x(), Couplings.TIP.y(), Couplings.TIP.z(), out);
    return new Vec3(out[0], out[1], out[2]);
  }

  @Test
  void aMountingOfVanishingComplianceGivesTheRigidResult() {
    CouplingDesign rigid = Couplings.post(0.12, 600).build();
    StudCompliance none = new StudCompliance(1e-20, 1e-20, 1e-19, 1e-16, 1e-16);
    Vec3 a = tip(ramped(rigid, 15, 600, 12));
    Vec3 b = tip(ramped(mounted(rigid, Vec3.Z, none), 15, 600, 12));
    // a residual of 1e-9 of the load leaves a few picometres where all contacts slide
    assertThat(a.distanceTo(b)).isLessThan(1e-11);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 0.2})
  void eachBallCarriesAThirdAndSinksByItsStudAndItsSlidingContacts(double mu) {
    // by hand, one support: the ball slides down both flanks, so each contact carries
    // N = P / (6 (cos a + mu sin a)) and the ball goes down by delta(N) / cos a; the stud, under
    // P/3 along its axis, gives way by that times its axial compliance
    double load = 600;
    CouplingDesign d = mounted(Couplings.post(mu, load).build(), Vec3.Z.negated(), STUD);
    FrictionEquilibrium m = ramped(d, 1, load, 120);
    double c = Math.cos(Math.toRadians(45));
    double force = load / (6 * (c + mu * c));
    double delta = CouplingModel.of(d).contacts().get(0).approach(force);
    double sink = delta / c + STUD.axial() * load / 3;
    assertThat(m.force(0)).isCloseTo(force, within(2e-4 * force));
    assertThat(-tip(m).z()).isCloseTo(sink, within(2e-4 * sink));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void stickingContactsOnGivingBallsAnswerASmallLoadWithTheStickingStiffness(boolean post) {
    // second road: the stiffness assembled from springs in series
    CouplingDesign d =
        mounted(
            (post ? Couplings.post(0, 600) : Couplings.mixedSeats()).build(),
            post ? new Vec3(0.1, 0.2, -1) : new Vec3(0, 0.1, 1),
            STUD);
    FrictionEquilibrium m = Mounted.prepared(d);
    Wrench standing = d.preload().movedTo(Vec3.ZERO);
    double[] load = {
      standing.force().x(), standing.force().y(), standing.force().z(),
      standing.moment().x(), standing.moment().y(), standing.moment().z()
    };
    assertThat(m.seat(new double[] {1, 1, 1, 1, 1, 1}, load))
        .isEqualTo(FrictionEquilibrium.Outcome.HELD);
    Arrays.fill(m.state.friction.mu, 100);
    Vec3 before = tip(m);
    double[] turnBefore = new double[3];
    m.state.rotation(turnBefore);
    double[] extra = {0.01, -0.02, 0.015, 2e-4, 3e-4, -1e-4};
    for (int k = 0; k < 6; k++) {
      load[k] += extra[k];
    }
    assertThat(m.follow(load, null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    Twist expected =
        CouplingStiffness.of(CouplingModel.of(d).standing(), CouplingStiffness.Bound.STICKING)
            .motionUnder(
                new Wrench(
                    new Vec3(extra[0], extra[1], extra[2]),
                    new Vec3(extra[3], extra[4], extra[5]),
                    Vec3.ZERO));
    Vec3 moved = tip(m).minus(before);
    Vec3 by = expected.displacementOf(Couplings.TIP);
    assertThat(moved.distanceTo(by)).isLessThan(2e-3 * by.norm());
    double[] turn = new double[3];
    m.state.rotation(turn);
    for (int k = 0; k < 3; k++) {
      assertThat(turn[k] - turnBefore[k])
          .isCloseTo(expected.rotation().component(k), within(2e-3 * expected.rotation().norm()));
    }
  }

  @Test
  void withoutFrictionAndScatterGivingBallsGoToTheFrictionlessRest() throws InterruptedException {
    for (boolean post : new boolean[] {true, false}) {
      CouplingDesign d =
          mounted(
              (post ? Couplings.post(0, 600) : Couplings.mixedSeats())
                  .friction(Couplings.friction(0))
                  .build(),
              post ? Vec3.Z.negated() : Vec3.Z,
              STUD);
      CouplingModel model = CouplingModel.of(d);
      double sink = model.standing().displacementOf(d.toolPoint()).norm();
      RemountScatter s = new RemountSimulation(model).run(RemountPlan.of(20, 3, 1));
      assertThat(s.seated()).isEqualTo(20);
      assertThat(s.toolPoint().mean().norm()).isLessThan(1e-8 * sink);
    }
  }

  @Test
  void softStudsLetFrictionHoldTheToolFurtherOff() throws InterruptedException {
    CouplingDesign rigid = Couplings.scatteringPost().build();
    Vec3 stiff = scatter(rigid);
    Vec3 soft = scatter(mounted(rigid, Vec3.Z.negated(), STUD));
    // along the grooves only friction holds a ball, so a soft stud takes up part of its slide
    assertThat(soft.norm()).isGreaterThan(stiff.norm());
  }

  private static Vec3 scatter(CouplingDesign d) throws InterruptedException {
    return new RemountSimulation(CouplingModel.of(d))
        .run(RemountPlan.of(500, 3, 1))
        .toolPoint()
        .deviation();
  }
}
