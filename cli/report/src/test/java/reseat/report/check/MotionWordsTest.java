package reseat.report.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import reseat.equilibrium.FreeMotion;
import reseat.space.Twist;
import reseat.space.Vec3;

/** Slides, turns and screws as they are told. */
class MotionWordsTest {

  private static String words(Vec3 shift, Vec3 turn, Vec3 at) {
    return MotionWords.of(FreeMotion.of(new Twist(shift, turn, at), 0.05));
  }

  @Test
  void theWordsNameAxesWhereTheyCanAndGiveTheAdvancePerDegree() {
    Vec3 at = new Vec3(0, 0.012, 0);
    assertThat(words(Vec3.ZERO, Vec3.Z.times(2), at))
        .isEqualTo("turning about a line along z through (0.0, 12.0, 0.0) mm");
    // 20 mm per radian are 0.35 mm per degree
    assertThat(words(Vec3.Y.times(0.04), Vec3.Y.times(2), Vec3.ZERO))
        .isEqualTo(
            "turning about a line along y through (0.0, 0.0, 0.0) mm while advancing 0.35 mm per"
                + " degree");
    assertThat(words(new Vec3(0.6, 0, 0.8), Vec3.ZERO, at))
        .isEqualTo("sliding along (0.600, 0.000, 0.800)");
    assertThat(words(Vec3.X.negated(), Vec3.ZERO, at)).isEqualTo("sliding along x");
  }
}
