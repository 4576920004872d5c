package reseat.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.numerics.RandomStream;

class PoseTest {

  private static final long SEED = 20260111;

  private static Pose random(RandomStream draw, double turn) {
    return Pose.of(RandomDirection.of(draw).times(turn), RandomDirection.of(draw).times(0.1));
  }

  private static void same(Vec3 found, Vec3 expected, double tolerance) {
    assertThat(found.distanceTo(expected)).isLessThan(tolerance);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, 1e-7, 9.9e-5, 1.01e-4, 1e-2, 1, 3})
  void aRotationVectorComesBackFromItsMatrix(double angle) {
    RandomStream draw = RandomStream.of(SEED, 1);
    for (int i = 0; i < 50; i++) {
      Vec3 w = RandomDirection.of(draw).times(angle);
      same(Pose.of(w, Vec3.ZERO).rotationVector(), w, 1e-15 + 1e-14 * angle);
    }
  }

  @Test
  void aQuarterTurnAboutZTakesXToY() {
    Pose pose = Pose.of(new Vec3(0, 0, Math.PI / 2), new Vec3(0, 0, 1));
    same(pose.apply(Vec3.X), new Vec3(0, 1, 1), 1e-15);
    same(pose.rotate(Vec3.X), Vec3.Y, 1e-15);
  }

  @Test
  void rotationKeepsLengthsAndAngles() {
    RandomStream draw = RandomStream.of(SEED, 2);
    for (int i = 0; i < 100; i++) {
      Pose pose = random(draw, draw.uniform(0, 3));
      Vec3 a = RandomDirection.of(draw);
      Vec3 b = RandomDirection.of(draw);
      assertThat(pose.rotate(a).dot(pose.rotate(b))).isCloseTo(a.dot(b), within(1e-14));
      same(pose.rotate(a).cross(pose.rotate(b)), pose.rotate(a.cross(b)), 1e-14);
    }
  }

  @Test
  void thereAndBackIsNowhere() {
    RandomStream draw = RandomStream.of(SEED, 3);
    for (int i = 0; i < 100; i++) {
      Pose pose = random(draw, draw.uniform(0, 3));
      Vec3 p = RandomDirection.of(draw);
      same(pose.inverse().apply(pose.apply(p)), p, 1e-14);
      same(pose.compose(pose.inverse()).apply(p), p, 1e-14);
    }
  }

  @Test
  void chainedPosesActOneAfterTheOther() {
    RandomStream draw = RandomStream.of(SEED, 4);
    for (int i = 0; i < 100; i++) {
      Pose outer = random(draw, draw.uniform(0, 3));
      Pose inner = random(draw, draw.uniform(0, 3));
      Vec3 p = RandomDirection.of(draw);
      same(outer.compose(inner).apply(p), outer.apply(inner.apply(p)), 1e-14);
    }
  }

  @Test
  void motionOfAPointIsExactAndItsRotationIsWhatWasAdded() {
    RandomStream draw = RandomStream.of(SEED, 5);
    for (int i = 0; i < 100; i++) {
      Pose before = random(draw, draw.uniform(0, 3));
      Vec3 w = RandomDirection.of(draw).times(1e-3);
      Pose after = Pose.of(w, RandomDirection.of(draw).times(1e-3)).compose(before);
      Vec3 p = RandomDirection.of(draw);
      Twist motion = after.motionFrom(before, p);
      same(motion.translation(), after.apply(p).minus(before.apply(p)), 1e-16);
      same(motion.rotation(), w, 1e-14);
      same(motion.at(), before.apply(p), 1e-15);
    }
  }

  @Test
  void aMatrixThatIsNoRotationIsRefused() {
    assertThatThrownBy(() -> Pose.ofMatrix(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1.001}, Vec3.ZERO))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not a rotation");
    assertThatThrownBy(() -> Pose.ofMatrix(new double[] {1, 0, 0, 0, 1, 0, 0, 0, -1}, Vec3.ZERO))
        .as("a reflection")
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aHalfTurnHasNoRotationVector() {
    assertThatThrownBy(
            () ->
                Pose.ofMatrix(new double[] {-1, 0, 0, 0, -1, 0, 0, 0, 1}, Vec3.ZERO)
                    .rotationVector())
        .isInstanceOf(ArithmeticException.class);
  }
}
