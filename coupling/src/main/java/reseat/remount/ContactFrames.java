package reseat.remount;

import reseat.equilibrium.ContactGeometry;
import reseat.space.WorkingPose;

/**
 * Where balls, contact points and normals are for one pose of the ball half in the seat half.
 *
 * <p>All in the seat half's axes. Storage is reused; not for use by several threads.
 */
final class ContactFrames {

  private static final int N = 6;

  /** Centre of the ball of each contact, m. */
  final double[] centre = new double[3 * N];

  /** Unit normal of each contact, out of the seat. */
  final double[] normal = new double[3 * N];

  /** Contact point of each contact, m. */
  final double[] lever = new double[3 * N];

  /** Gap of the undeformed shapes at each contact, m. */
  final double[] gap = new double[N];

  /** Largest distance of a contact from the origin, roughly, m. */
  double size;

  private final double[] ball = new double[3];

  /**
   * Computes the placement for a pose.
   *
   * @param geometry balls and flanks
   * @param pose the ball half in the seat half
   * @param supports how far the balls have given way on their mountings; null for rigid ones
   */
  void compute(ContactGeometry geometry, WorkingPose pose, ElasticBallSupports supports) {
    size = 0;
    for (int i = 0; i < N; i++) {
      int b = geometry.ballOf(i);
      int v = 3 * i;
      geometry.copyBallCentre(b, ball);
      if (supports != null) {
        supports.addShift(b, ball);
      }
      pose.apply(ball[0], ball[1], ball[2], centre, v);
      gap[i] = geometry.gap(i, centre[v], centre[v + 1], centre[v + 2], normal);
      double r = geometry.ballRadius(b);
      for (int k = 0; k < 3; k++) {
        lever[v + k] = centre[v + k] - r * normal[v + k];
      }
      size = Math.max(size, Math.abs(lever[v]) + Math.abs(lever[v + 1]));
    }
  }

  /** Writes W: the wrench of a unit normal force at each contact, column by column. */
  void copyWrenchColumns(double[] columns) {
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double nx = normal[v];
      double ny = normal[v + 1];
      double nz = normal[v + 2];
      columns[i] = nx;
      columns[N + i] = ny;
      columns[2 * N + i] = nz;
      columns[3 * N + i] = lever[v + 1] * nz - lever[v + 2] * ny;
      columns[4 * N + i] = lever[v + 2] * nx - lever[v] * nz;
      columns[5 * N + i] = lever[v] * ny - lever[v + 1] * nx;
    }
  }

  /** The larger of a twist's translation and its rotation times the size, m. */
  double largest(double[] x) {
    double most = 0;
    for (int i = 0; i < 3; i++) {
      most = Math.max(most, Math.max(Math.abs(x[i]), size * Math.abs(x[i + 3])));
    }
    return most;
  }
}
