package reseat.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;

/** The pose in arrays against the pose as a value. */
class WorkingPoseTest {

  private final RandomStream draw = RandomStream.of(20260112, 0);
  private WorkingPose working;
  private Pose pose;

  @BeforeEach
  void moveInThreeSteps() {
    working = new WorkingPose();
    pose = Pose.identity();
    for (int i = 0; i < 3; i++) {
      Vec3 t = RandomDirection.of(draw).times(0.02);
      Vec3 w = RandomDirection.of(draw).times(0.7);
      working.move(new double[] {t.x(), t.y(), t.z(), w.x(), w.y(), w.z()});
      pose = Pose.of(w, t).compose(pose);
    }
  }

  private static void same(double[] found, Vec3 expected) {
    for (int i = 0; i < 3; i++) {
      assertThat(found[i]).isCloseTo(expected.component(i), within(1e-14));
    }
  }

  @Test
  void stepsAddUpToTheChainedPose() {
    Vec3 p = RandomDirection.of(draw);
    double[] out = new double[5];
    working.apply(p.x(), p.y(), p.z(), out, 2);
    same(new double[] {out[2], out[3], out[4]}, pose.apply(p));
    assertThat(working.toPose().apply(p).distanceTo(pose.apply(p))).isLessThan(1e-14);
  }

  @Test
  void aDirectionIsTurnedAsThePoseTurnsIt() {
    for (int i = 0; i < 5; i++) {
      Vec3 v = RandomDirection.of(draw);
      double[] out = new double[3];
      working.rotate(v.x(), v.y(), v.z(), out);
      same(out, pose.rotate(v));
    }
  }

  @Test
  void rotatingBackUndoesRotation() {
    Vec3 v = RandomDirection.of(draw);
    double[] out = new double[3];
    working.rotateBack(v.x(), v.y(), v.z(), out);
    same(out, pose.inverse().rotate(v));
  }

  @Test
  void displacementIsThePlaceMinusTheNominalPlace() {
    Vec3 p = RandomDirection.of(draw);
    double[] out = new double[3];
    working.displacement(p.x(), p.y(), p.z(), out);
    same(out, pose.apply(p).minus(p));
    working.inverseDisplacement(p.x(), p.y(), p.z(), out);
    same(out, pose.inverse().apply(p).minus(p));
  }

  @Test
  void aWrenchDoesTheSameWorkInEitherFrame() {
    Vec3 force = RandomDirection.of(draw);
    Vec3 moment = RandomDirection.of(draw);
    double[] out = new double[6];
    working.wrenchToFrame(
        new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()}, out);
    Wrench told =
        new Wrench(pose.rotate(force), pose.rotate(moment), pose.translation()).movedTo(Vec3.ZERO);
    same(out, told.force());
    same(new double[] {out[3], out[4], out[5]}, told.moment());
  }

  @Test
  void aCopyStandsWhereItsOriginalStandsAndGoesItsOwnWay() {
    WorkingPose copy = new WorkingPose();
    copy.copyFrom(working);
    working.reset();
    assertThat(copy.toPose().apply(Vec3.X).distanceTo(pose.apply(Vec3.X))).isLessThan(1e-14);
    assertThat(working.toPose().apply(Vec3.X)).isEqualTo(Vec3.X);
  }
}
