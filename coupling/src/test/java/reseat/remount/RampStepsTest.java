package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.RemountConditions;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.Distribution;
import reseat.space.Vec3;

/** More load steps where friction nears the friction at which the slide home stalls. */
class RampStepsTest {

  private static CouplingDesign post(double mu, int steps) {
    return Couplings.post(mu, 600)
        .remount(
            new RemountConditions(
                10, steps, Distribution.NONE, Distribution.NONE, Distribution.NONE, 11.5e-6))
        .build();
  }

  private static double scatter(double mu, int steps) throws InterruptedException {
    Vec3 sd =
        new RemountSimulation(CouplingModel.of(post(mu, steps)))
            .run(RemountPlan.of(400, 1, 2))
            .toolPoint()
            .deviation();
    return sd.norm();
  }

  @Test
  void theNearerTheLimitTheMoreSteps() {
    // the slide of this post stalls at 0.313
    assertThat(RampSteps.of(post(0, RemountConditions.AS_NEEDED))).isEqualTo(12);
    assertThat(RampSteps.of(post(0.1, RemountConditions.AS_NEEDED))).isEqualTo(12);
    assertThat(RampSteps.of(post(0.23, RemountConditions.AS_NEEDED))).isEqualTo(12);
    assertThat(RampSteps.of(post(0.24, RemountConditions.AS_NEEDED))).isEqualTo(96);
    assertThat(RampSteps.of(post(0.27, 12))).as("as the design states").isEqualTo(12);
  }

  @Test
  void nearTheLimitTheScatterIsThatOfAFineRamp() throws InterruptedException {
    double fine = scatter(0.28, 384);
    assertThat(scatter(0.28, 12)).as("twelve steps").isGreaterThan(1.15 * fine);
    assertThat(scatter(0.28, RemountConditions.AS_NEEDED)).isCloseTo(fine, within(0.05 * fine));
  }

  @Test
  void farFromTheLimitNothingChanges() throws InterruptedException {
    assertThat(scatter(0.15, RemountConditions.AS_NEEDED)).isEqualTo(scatter(0.15, 12));
  }
}
