package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.RemountConditions;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.Distribution;
import reseat.numerics.RandomStream;
import reseat.numerics.RunningHistogram;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/** Facts that a simulated tool change must reproduce. */
class RemountSimulationTest {

  private static RemountScatter run(CouplingDesign d, long mounts, int threads)
      throws InterruptedException {
    return new RemountSimulation(CouplingModel.of(d)).run(RemountPlan.of(mounts, 11, threads));
  }

  @Test
  void aLongRampErasesTheMemoryOfTheApproach() throws InterruptedException {
    // ramp forty times the seating force, steady friction 0.1
    Vec3 sd = run(Couplings.post(0.1, 600).build(), 600, 2).toolPoint().deviation();
    assertThat(sd.norm()).isBetween(1e-14, 1e-9);
  }

  @Test
  void aShortRampRemembersTheApproach() throws InterruptedException {
    Vec3 sd = run(Couplings.post(0.1, 20).build(), 600, 2).toolPoint().deviation();
    assertThat(sd.norm()).isGreaterThan(20e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.1, 0.15})
  void underASlowVerticalRampAllContactsSlideAndShareTheLoad(double mu) {
    // each carries P / (6 (cos a + mu sin a)): statics of a ball sliding down both flanks
    FrictionEquilibrium m = Mounted.prepared(Couplings.post(mu, 600).build());
    double[] closing = {1, 0, 0, 0, 0, 0};
    assertThat(m.seat(closing, load(2))).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    double ratio = Math.pow(300, 1.0 / 60);
    double force = 2;
    for (int i = 0; i < 60; i++) {
      force *= ratio;
      assertThat(m.follow(load(force), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    }
    double c = Math.cos(Math.toRadians(45));
    double expected = 600 / (6 * (c + mu * c));
    for (int i = 0; i < 6; i++) {
      assertThat(m.state.friction.slips[i]).isTrue();
      assertThat(m.force(i)).isCloseTo(expected, within(2e-4 * expected));
    }
  }

  private static double[] load(double down) {
    return new double[] {0, 0, -down, 0, 0, 0};
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void withoutFrictionAndScatterTheHolderGoesToTheFrictionlessRest(boolean post)
      throws InterruptedException {
    CouplingDesign d =
        (post ? Couplings.post(0, 600) : Couplings.mixedSeats())
            .friction(Couplings.friction(0))
            .build();
    RemountScatter s = run(d, 50, 1);
    double sink = CouplingModel.of(d).standing().displacementOf(d.toolPoint()).norm();
    assertThat(s.toolPoint().mean().norm()).isLessThan(1e-9 * sink);
    assertThat(s.toolPoint().deviation().norm()).isLessThan(1e-9 * sink);
  }

  @Test
  void theSameSeedGivesTheSameBitsOnAnyNumberOfThreads() throws InterruptedException {
    CouplingDesign d = Couplings.scatteringPost().build();
    RemountScatter one = run(d, 3000, 1);
    for (int threads : new int[] {2, 8}) {
      RemountScatter many = run(d, 3000, threads);
      assertThat(many.toolPoint()).isEqualTo(one.toolPoint());
      assertThat(many.rotation()).isEqualTo(one.rotation());
      assertThat(many.failures()).isEqualTo(one.failures());
    }
  }

  @Test
  void anotherSeedGivesOtherLuckWithTheSameScatter() throws InterruptedException {
    RemountSimulation s =
        new RemountSimulation(CouplingModel.of(Couplings.scatteringPost().build()));
    Vec3 a = s.run(RemountPlan.of(4000, 1, 2)).toolPoint().deviation();
    Vec3 b = s.run(RemountPlan.of(4000, 2, 2)).toolPoint().deviation();
    assertThat(a).isNotEqualTo(b);
    for (int k = 0; k < 3; k++) {
      // standard error of a standard deviation from 4000: about 1.1 %
      assertThat(a.component(k)).isCloseTo(b.component(k), within(0.08 * b.component(k)));
    }
  }

  @Test
  void turningThePostTurnsTheScatter() throws InterruptedException {
    double turn = 2 * Math.PI / 5;
    CouplingDesign d = Couplings.post(0.15, 40).build();
    CouplingDesign turned =
        d.toBuilder()
            .supports(Couplings.threeVees(0.034925, 0.00635, Math.toRadians(45), turn))
            .toolPoint(reseat.space.Pose.of(new Vec3(0, 0, turn), Vec3.ZERO).apply(Couplings.TIP))
            .build();
    VectorScatter a = run(d, 400, 1).toolPoint();
    VectorScatter b = run(turned, 400, 1).toolPoint();
    Vec3 mean = reseat.space.Pose.of(new Vec3(0, 0, turn), Vec3.ZERO).rotate(a.mean());
    assertThat(b.mean().distanceTo(mean)).isLessThan(1e-6 * a.deviation().norm());
    assertThat(b.deviation().norm()).isCloseTo(a.deviation().norm(), within(1e-15));
    assertThat(b.deviation().z()).isCloseTo(a.deviation().z(), within(1e-15));
  }

  @Test
  void lettingGoAndClampingAgainForgetsTheCut() throws InterruptedException {
    CouplingDesign d = Couplings.scatteringPost().build();
    RemountScatter s =
        new RemountSimulation(CouplingModel.of(d)).run(new RemountPlan(400, 3, 2, "rough", true));
    Vec3 cut = s.afterCut().mean();
    assertThat(cut.norm()).isGreaterThan(50e-9);
    assertThat(s.afterReclamp().mean().plus(cut).norm()).isLessThan(0.01 * cut.norm());
  }

  @Test
  void failedMountingsAreCountedAndExplained() throws InterruptedException {
    RemountScatter s = run(Couplings.post(0.33, 600).build(), 1000, 2);
    assertThat(s.failed()).isGreaterThan(0);
    assertThat(s.failed() + s.seated()).isEqualTo(1000);
    assertThat(s.failures().get(0).words()).startsWith("hangs up before ball");
  }

  @Test
  void mixedSeatsWithTheBallsOnTheBaseComeBackToo() throws InterruptedException {
    RemountScatter s = run(Couplings.mixedSeats().build(), 300, 2);
    assertThat(s.seated() + s.failed()).isEqualTo(300);
    assertThat(s.seated()).isGreaterThan(0);
  }

  @Test
  void theBandOfNinetyFivePercentHoldsNinetyFivePercent() {
    RandomStream luck = RandomStream.of(5, 0);
    RunningHistogram h = new RunningHistogram(1, 2);
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < 20000; i++) {
      double v = luck.normal(1, 2);
      values.add(v);
      h.add(v);
    }
    double half = h.halfWidth(1, 0.95);
    long inside = values.stream().filter(v -> Math.abs(v - 1) <= half).count();
    assertThat(inside / 20000.0).isCloseTo(0.95, within(0.002));
    assertThat(half).isCloseTo(2 * 1.959964, within(0.06));
  }

  @Test
  void sharesOfNearlyAdditiveCausesAddUpAndAgreeWithEachCauseAlone() throws InterruptedException {
    CouplingModel model = CouplingModel.of(Couplings.scatteringPost().build());
    CauseShares shares = CauseShares.of(model, 1500, 4, 2, done -> {});
    assertThat(CauseShares.of(model, 1500, 4, 8, done -> {})).isEqualTo(shares);
    assertThat(shares.dropped()).isZero();
    for (int k = 0; k < 3; k++) {
      double alone = 0;
      double first = 0;
      for (CauseShares.Share s : shares.causes()) {
        alone += s.alone().component(k) * s.alone().component(k);
        first += s.first().component(k);
        assertThat(s.total().component(k)).isBetween(0.0, 1.2);
      }
      assertThat(first + shares.interaction().component(k)).isCloseTo(1, within(1e-9));
      double error = shares.interactionError().component(k);
      assertThat(error).isBetween(0.01, 0.06);
      assertThat(Math.abs(shares.interaction().component(k))).isLessThan(0.05 + 4 * error);
      assertThat(alone).isGreaterThan(0);
    }
    CauseShares.Share heat =
        shares.causes().stream()
            .filter(s -> s.cause() == Cause.TEMPERATURE)
            .findFirst()
            .orElseThrow();
    // growth of the holder moves the tip along x alone: alpha L dT, uniform within 0.2 K
    assertThat(heat.alone().x()).isCloseTo(11.5e-6 * 0.047 * 0.2 / Math.sqrt(3), within(5e-9));
    assertThat(heat.alone().y()).isLessThan(1e-12);
  }

  @Test
  void scatterNeedsTwoMountings() {
    assertThatThrownBy(() -> RemountPlan.of(1, 1, 1)).hasMessageContaining("at least 2");
  }

  @Test
  void deadWeightAloneSeatsWithoutARamp() throws InterruptedException {
    CouplingDesign d =
        Couplings.post(0.1, 600)
            .preloads(List.of())
            .holder(new reseat.design.Holder(5, new Vec3(0, 0, 0.02), Vec3.ZERO))
            .remount(
                new RemountConditions(
                    15, 12, Distribution.NONE, Distribution.NONE, Distribution.NONE, 11.5e-6))
            .build();
    assertThat(run(d, 100, 1).seated()).isEqualTo(100);
  }
}
