package reseat.remount;

import java.util.List;
import reseat.equilibrium.ContactGeometry;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.NormalLaws;
import reseat.space.Vec3;
import reseat.space.WorkingPose;

/**
 * Where a holder stands and what its six contacts carry, with the elastic laws they follow.
 *
 * <p>The pose is that of the ball half in the seat half, and all vectors are in the seat half's
 * axes. Storage is reused; not for use by several threads.
 */
final class ToolChangeState {

  static final int N = 6;

  /** Balls and flanks; may be overwritten, which is how a warmer holder is made. */
  final ContactGeometry geometry;

  /** How the balls give way on their mountings; null if all mountings are rigid. */
  final ElasticBallSupports supports;

  final FrictionState friction = new FrictionState();
  final WorkingPose pose = new WorkingPose();
  final ContactFrames at = new ContactFrames();

  /** How each contact gives way along its normal. */
  final NormalLaws laws;

  /** Thickness of what lies in each contact (film, particle), m. */
  final double[] film = new double[N];

  /** Normal force of each contact, N. */
  final double[] force = new double[N];

  /** Approach of each contact, m; negative where it is open. */
  final double[] approach = new double[N];

  /** Normal stiffness of each contact, N/m. */
  final double[] stiffness = new double[N];

  /** Load on the ball half about the seat half's origin, N and N·m. */
  final double[] load = new double[N];

  /**
   * Takes the laws of a coupling; friction coefficients and films are zero to begin with.
   *
   * @param model the coupling, six contacts
   */
  ToolChangeState(CouplingModel model) {
    geometry = model.geometry();
    supports = ElasticBallSupports.of(model.design());
    laws = model.normalLaws();
    List<ContactLines.Line> lines = ContactLines.nominal(model.design()).lines();
    for (int i = 0; i < N; i++) {
      friction.ratioLong[i] = model.tangentialRatioLong(i);
      friction.ratioShort[i] = model.tangentialRatioShort(i);
      Vec3 axis = lines.get(i).longAxis();
      for (int k = 0; k < 3; k++) {
        friction.longAxis[3 * i + k] = axis.component(k);
      }
    }
  }

  /** Forgets where the holder stood and what it carried. */
  void reset() {
    friction.clear();
    pose.reset();
    if (supports != null) {
      supports.reset();
    }
  }

  /** Finds centres, normals, contact points and gaps for the present pose. */
  void place() {
    at.compute(geometry, pose, supports);
  }

  /** Tells a load on the holder, base axes, about the base's origin, as one on the ball half. */
  void turnLoad(double[] holderLoad) {
    if (geometry.ballsOnHolder()) {
      System.arraycopy(holderLoad, 0, load, 0, N);
    } else {
      pose.wrenchToFrame(holderLoad, load);
      for (int i = 0; i < N; i++) {
        load[i] = -load[i];
      }
    }
  }

  /** How far a point of the holder stands from its nominal place, base axes, m. */
  void displacement(double x, double y, double z, double[] out) {
    if (geometry.ballsOnHolder()) {
      pose.displacement(x, y, z, out);
    } else {
      pose.inverseDisplacement(x, y, z, out);
    }
  }

  /** Rotation of the holder against its nominal attitude, to first order, rad. */
  void rotation(double[] out) {
    pose.smallRotation(out);
    if (!geometry.ballsOnHolder()) {
      for (int k = 0; k < 3; k++) {
        out[k] = -out[k];
      }
    }
  }
}
