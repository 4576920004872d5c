package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;
import reseat.space.Twist;
import reseat.space.Vec3;

/** A small motion told as a slide, a turn or a screw. */
class FreeMotionTest {

  private static final double SIZE = 0.05;

  /** The motion of a body that turns about a line and advances along it, told at some point. */
  private static Twist screw(Vec3 axis, Vec3 through, double turn, double pitch, Vec3 at) {
    Vec3 w = axis.unit().times(turn);
    Vec3 v = w.cross(at.minus(through)).plus(axis.unit().times(turn * pitch));
    return new Twist(v, w, at);
  }

  @Test
  void aScrewIsFoundFromItsMotionAtAnyPointAndOfAnySize() {
    long seed = 20261126;
    for (int i = 0; i < 60; i++) {
      RandomStream draw = RandomStream.of(seed, i);
      Vec3 axis = RandomDirection.of(draw);
      Vec3 through = RandomDirection.of(draw).times(0.03);
      double pitch = draw.uniform(-0.02, 0.02);
      double turn = draw.uniform(0.1, 5);
      Vec3 at = RandomDirection.of(draw).times(0.04);
      FreeMotion m = FreeMotion.of(screw(axis, through, turn, pitch, at), SIZE);
      assertThat(m.direction().cross(axis).norm()).as("seed %d, %d", seed, i).isLessThan(1e-12);
      assertThat(m.through().minus(through).cross(axis).norm()).isLessThan(1e-12);
      boolean pure = Math.abs(pitch) <= 1e-3 * SIZE;
      assertThat(m.kind()).isEqualTo(pure ? FreeMotion.Kind.TURN : FreeMotion.Kind.SCREW);
      assertThat(m.pitch()).isCloseTo(pure ? 0 : pitch, within(1e-12));
    }
  }

  @Test
  void theDirectionIsToldWithItsLastPartPositive() {
    Vec3[] directions = {new Vec3(1, 2, -3), new Vec3(1, -2, 0), new Vec3(-1, 0, 0)};
    Vec3[] told = {new Vec3(-1, -2, 3), new Vec3(-1, 2, 0), new Vec3(1, 0, 0)};
    for (int i = 0; i < 3; i++) {
      FreeMotion m = FreeMotion.of(new Twist(directions[i], Vec3.ZERO, Vec3.ZERO), SIZE);
      assertThat(m.kind()).isEqualTo(FreeMotion.Kind.SLIDE);
      assertThat(m.direction().minus(told[i].unit()).norm()).isLessThan(1e-12);
    }
  }

  @Test
  void aTurnTooSmallToTellIsASlideWhateverItsSpeed() {
    for (double speed : new double[] {1e-6, 1, 1e6}) {
      // 1e-3 of the slide over the size of the coupling
      Vec3 v = Vec3.X.times(speed);
      Vec3 little = Vec3.Z.times(0.9e-3 * speed / SIZE);
      Vec3 enough = Vec3.Z.times(1.1e-3 * speed / SIZE);
      assertThat(FreeMotion.of(new Twist(v, little, Vec3.ZERO), SIZE).kind())
          .isEqualTo(FreeMotion.Kind.SLIDE);
      assertThat(FreeMotion.of(new Twist(v, enough, Vec3.ZERO), SIZE).kind())
          .isEqualTo(FreeMotion.Kind.TURN);
    }
  }

  @Test
  void theWordsNameAxesWhereTheyCanAndGiveTheAdvancePerDegree() {
    Vec3 at = new Vec3(0, 0.012, 0);
    assertThat(FreeMotion.of(screw(Vec3.Z, at, 2, 0, Vec3.ZERO), SIZE).words())
        .isEqualTo("turning about a line along z through (0.0, 12.0, 0.0) mm");
    // 20 mm per radian are 0.35 mm per degree
    assertThat(FreeMotion.of(screw(Vec3.Y, Vec3.ZERO, 2, 0.020, Vec3.ZERO), SIZE).words())
        .isEqualTo(
            "turning about a line along y through (0.0, 0.0, 0.0) mm while advancing 0.35 mm per"
                + " degree");
    assertThat(FreeMotion.of(new Twist(new Vec3(0.6, 0, 0.8), Vec3.ZERO, at), SIZE).words())
        .isEqualTo("sliding along (0.600, 0.000, 0.800)");
    assertThat(FreeMotion.of(new Twist(Vec3.X.negated(), Vec3.ZERO, at), SIZE).words())
        .isEqualTo("sliding along x");
  }
}
