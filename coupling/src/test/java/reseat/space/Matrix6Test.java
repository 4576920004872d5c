package reseat.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;

/** Twists, wrenches and stiffness told at different points must tell the same thing. */
class Matrix6Test {

  private final RandomStream draw = RandomStream.of(20260113, 0);

  private Twist twist() {
    return new Twist(RandomDirection.of(draw), RandomDirection.of(draw), RandomDirection.of(draw));
  }

  private Wrench wrench() {
    return new Wrench(RandomDirection.of(draw), RandomDirection.of(draw), RandomDirection.of(draw));
  }

  private static double power(Wrench w, Twist t) {
    Twist there = t.movedTo(w.at());
    return w.force().dot(there.translation()) + w.moment().dot(there.rotation());
  }

  private Matrix6 stiffness() {
    double[] a = new double[36];
    for (int i = 0; i < 36; i++) {
      a[i] = draw.normal();
    }
    double[] k = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        for (int m = 0; m < 6; m++) {
          k[6 * i + j] += a[6 * i + m] * a[6 * j + m];
        }
      }
    }
    return Matrix6.of(k, RandomDirection.of(draw));
  }

  @Test
  void powerDoesNotDependOnThePointOfReference() {
    for (int i = 0; i < 100; i++) {
      Twist t = twist();
      Wrench w = wrench();
      assertThat(power(w.movedTo(RandomDirection.of(draw)), t.movedTo(RandomDirection.of(draw))))
          .isCloseTo(power(w, t), within(1e-13));
    }
  }

  @Test
  void aMotionToldElsewhereMovesEveryPointAlike() {
    Twist t = twist();
    Vec3 p = RandomDirection.of(draw);
    assertThat(t.movedTo(RandomDirection.of(draw)).displacementOf(p).distanceTo(t.displacementOf(p)))
        .isLessThan(1e-15);
  }

  @Test
  void loadsAddAboutTheFirstOnesPoint() {
    Wrench a = wrench();
    Wrench b = wrench();
    Twist t = twist();
    assertThat(power(a.plus(b), t)).isCloseTo(power(a, t) + power(b, t), within(1e-13));
    assertThat(power(a.times(3), t)).isCloseTo(3 * power(a, t), within(1e-13));
    assertThat(a.plus(b).at()).isEqualTo(a.at());
  }

  @Test
  void energyDoesNotDependOnWhereTheStiffnessIsTold() {
    for (int i = 0; i < 100; i++) {
      Matrix6 k = stiffness();
      Twist t = twist();
      Matrix6 moved = k.stiffnessAt(RandomDirection.of(draw));
      assertThat(power(moved.times(t), t)).isCloseTo(power(k.times(t), t), within(1e-12));
      for (int r = 0; r < 6; r++) {
        for (int c = 0; c < r; c++) {
          assertThat(moved.get(r, c)).isCloseTo(moved.get(c, r), within(1e-12));
        }
      }
    }
  }

  @Test
  void movedThereAndBackIsUnchanged() {
    Matrix6 k = stiffness();
    double[] back = k.stiffnessAt(RandomDirection.of(draw)).stiffnessAt(k.at()).toArray();
    for (int i = 0; i < 36; i++) {
      assertThat(back[i]).isCloseTo(k.toArray()[i], within(1e-12));
    }
  }

  @Test
  void entriesInTurnedAxesAreTheTurnedEntries() {
    Matrix6 k = stiffness();
    Matrix6 swapped = k.inAxes(Vec3.Y, Vec3.Z, Vec3.X);
    int[] from = {1, 2, 0, 4, 5, 3};
    for (int r = 0; r < 6; r++) {
      for (int c = 0; c < 6; c++) {
        assertThat(swapped.get(r, c)).isCloseTo(k.get(from[r], from[c]), within(1e-14));
      }
    }
  }

  @Test
  void aComplianceAnswersALoadWithAMotionAtItsPoint() {
    double[] flexible = new double[36];
    for (int i = 0; i < 6; i++) {
      flexible[7 * i] = i + 1;
    }
    Vec3 at = RandomDirection.of(draw);
    Wrench load = wrench();
    Twist motion = Matrix6.of(flexible, at).times(load);
    assertThat(motion.at()).isEqualTo(at);
    assertThat(motion.translation().z()).isCloseTo(3 * load.force().z(), within(1e-15));
    assertThat(motion.rotation().x()).isCloseTo(4 * load.movedTo(at).moment().x(), within(1e-14));
  }

  @Test
  void matricesToldAtDifferentPointsDoNotAdd() {
    Matrix6 k = stiffness();
    assertThatThrownBy(() -> k.plus(k.stiffnessAt(Vec3.ZERO)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("different points");
    assertThat(k.plus(k).get(2, 3)).isEqualTo(2 * k.get(2, 3));
  }

  @Test
  void entriesMustBeThirtySixFiniteNumbers() {
    assertThatThrownBy(() -> Matrix6.of(new double[35], Vec3.ZERO)).hasMessageContaining("35");
    double[] bad = new double[36];
    bad[4] = Double.NaN;
    assertThatThrownBy(() -> Matrix6.of(bad, Vec3.ZERO)).hasMessageContaining("finite");
  }
}
