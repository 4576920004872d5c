package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PoseConvergenceTest {

  private static final double SIZE = 0.05;

  private final PoseConvergence steps = new PoseConvergence();

  /** Distance left after two steps into a gap z + z²/2R, both with the slope it has at zero. */
  private double left(double depth, double radius) {
    double rest = -radius + Math.sqrt(radius * radius - 2 * radius * depth);
    double z = 0;
    steps.reset();
    for (int k = 0; k < 2; k++) {
      double[] step = {0, 0, -depth - (z + z * z / (2 * radius)), 0, 0, 0};
      steps.add(step, SIZE, k > 0);
      z += step[2];
    }
    return Math.abs(z - rest);
  }

  @Test
  void aSinkIntoACurvedGapIsFoundInTwoStepsToTheFourthOrder() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 200; i++) {
      double radius = random.nextDouble(2e-3, 20e-3);
      double depth = radius * random.nextDouble(1e-4, 5e-3);
      assertThat(left(depth, radius))
          .as("seed 4, depth %s on %s", depth, radius)
          .isLessThan(3 * depth * Math.pow(depth / radius, 3));
    }
  }

  @Test
  void aSecondStepAcrossTheFirstIsLeftAsItIs() {
    steps.reset();
    steps.add(new double[] {1e-5, 0, 0, 0, 0, 0}, SIZE, false);
    double[] across = {0, 1e-8, 0, 0, 2e-7, 0};
    steps.add(across, SIZE, true);
    assertThat(across).containsExactly(0, 1e-8, 0, 0, 2e-7, 0);
  }

  @Test
  void aStepFoundWithAnInverseOfItsOwnIsLeftAsItIs() {
    steps.reset();
    steps.add(new double[] {0, 0, 1e-5, 0, 0, 0}, SIZE, false);
    double[] own = {0, 0, 1e-8, 0, 0, 0};
    steps.add(own, SIZE, false);
    assertThat(own[2]).isEqualTo(1e-8);
  }

  @Test
  void aLuckyStepIsNotTakenForTheUsualRate() {
    steps.reset();
    steps.add(new double[] {0, 0, 1e-5, 0, 0, 0}, SIZE, false);
    steps.add(new double[] {0, 0, 5e-8, 0, 0, 0}, SIZE, true);
    steps.add(new double[] {0, 0, 2e-12, 0, 0, 0}, SIZE, true);
    assertThat(steps.mayReuseInverse(SIZE)).isTrue();
    assertThat(steps.hasConverged(1e-14)).as("2e-12 m, of which a fiftieth may follow").isFalse();
    assertThat(steps.hasConverged(5e-14)).isTrue();
  }

  @Test
  void rotationCountsByWhatItMovesAtTheSizeOfTheCoupling() {
    steps.reset();
    steps.add(new double[] {1e-7, 0, 0, 0, 4e-6, 0}, SIZE, false);
    assertThat(steps.change()).isEqualTo(SIZE * 4e-6);
  }
}
