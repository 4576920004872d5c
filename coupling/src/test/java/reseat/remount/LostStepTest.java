package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** A load step that finds no state of rest leaves everything as it was before it. */
class LostStepTest {

  private static final double[] CLOSING = {1, 0, 0, 0, 0, 0};

  /** Pulls the holder off: no contact can hold it. */
  private static final double[] OFF = {20, -10, 5000, 3, 40, -2};

  private static double[] down(double force) {
    return new double[] {0.02 * force, 0.01 * force, -force, 0.001 * force, 0, 0};
  }

  /** The post on rigid mountings, or the starter's post on studs that give way. */
  private static CouplingDesign design(boolean rigid) {
    return rigid
        ? Couplings.post(0.15, 600).build()
        : DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
  }

  private static FrictionEquilibrium seated(boolean rigid) {
    FrictionEquilibrium m = Mounted.prepared(design(rigid));
    assertThat(m.seat(CLOSING, down(15))).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    assertThat(m.follow(down(25), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    return m;
  }

  private static void same(FrictionEquilibrium found, FrictionEquilibrium expected) {
    assertThat(found.state.force).isEqualTo(expected.state.force);
    assertThat(found.state.approach).isEqualTo(expected.state.approach);
    assertThat(found.state.stiffness).isEqualTo(expected.state.stiffness);
    assertThat(found.state.load).isEqualTo(expected.state.load);
    assertThat(found.state.at.lever).isEqualTo(expected.state.at.lever);
    assertThat(found.state.at.normal).isEqualTo(expected.state.at.normal);
    assertThat(found.state.at.gap).isEqualTo(expected.state.at.gap);
    assertThat(found.state.friction.trial).isEqualTo(expected.state.friction.trial);
    assertThat(found.state.friction.held).isEqualTo(expected.state.friction.held);
    assertThat(found.state.friction.slips).isEqualTo(expected.state.friction.slips);
    double[] a = new double[3];
    double[] b = new double[3];
    found.state.displacement(0.05, 0.01, 0.02, a);
    expected.state.displacement(0.05, 0.01, 0.02, b);
    assertThat(a).isEqualTo(b);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aStepThatRanAwayLeavesNoTrace(boolean rigid) {
    FrictionEquilibrium strayed = seated(rigid);
    FrictionEquilibrium steady = seated(rigid);
    assertThat(strayed.follow(OFF, null)).isEqualTo(FrictionEquilibrium.Outcome.RUNS_AWAY);
    same(strayed, steady);
    assertThat(strayed.follow(down(40), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    assertThat(steady.follow(down(40), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    same(strayed, steady);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aRetryAfterABadGuessGoesWhereAFirstTryGoes(boolean rigid) {
    FrictionEquilibrium strayed = seated(rigid);
    FrictionEquilibrium steady = seated(rigid);
    double[] guess = new double[strayed.motionSize()];
    guess[2] = 0.02; // off its seats by twenty times the longest step that is believed
    assertThat(strayed.follow(down(40), guess)).isEqualTo(FrictionEquilibrium.Outcome.RUNS_AWAY);
    same(strayed, steady);
    assertThat(strayed.follow(down(40), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    assertThat(steady.follow(down(40), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    same(strayed, steady);
  }

  @Test
  void aPullThatNoContactHoldsIsToldAsLostInTheCut() throws InterruptedException {
    CouplingDesign lost =
        Couplings.post(0.1, 600)
            .cases(
                List.of(
                    new LoadCase("tear off", Wrench.ofForce(new Vec3(0, 0, 2000), Couplings.TIP))))
            .build();
    RemountScatter s =
        new RemountSimulation(CouplingModel.of(lost))
            .run(new RemountPlan(20, 1, 1, "tear off", false));
    assertThat(s.seated()).isZero();
    assertThat(s.failures()).hasSize(1);
    assertThat(s.failures().get(0).words()).contains("cut");
  }
}
