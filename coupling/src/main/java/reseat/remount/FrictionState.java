package reseat.remount;

/**
 * The six contacts' friction: what each holds now, and what a trial motion would make of it.
 *
 * <p>A contact answers to a sliding motion like a spring (Mindlin's no-slip stiffness) until the
 * friction force reaches μN; beyond, the force keeps its direction and the size μN (radial return).
 * Where the normal force falls, the spring softens with it and the friction force is scaled down in
 * the same ratio; where it grows, the force is kept. So a closed loop can only lose energy.
 *
 * <p>Partial slip inside the patch is not resolved. Against Mindlin's curve for a circle under a
 * steady normal force the spring holds up to 19.2 % of μN more at the same displacement (at μN/kt,
 * where it begins to slip and Mindlin's patch still sticks in the middle), and Mindlin's residual
 * offset after a load that never slipped (at most 0.13 μN/kt) is missing.
 *
 * <p>All vectors in the seat half's axes; the friction force is the one on the ball. Storage is
 * reused; not for use by several threads.
 */
final class FrictionState {

  static final int N = 6;

  /** Friction coefficient of each contact. */
  final double[] mu = new double[N];

  /** Ratios of tangential to normal stiffness along the long and the short axis of each patch. */
  final double[] ratioLong = new double[N];

  final double[] ratioShort = new double[N];

  /** Long axis of each patch, unit vectors. */
  final double[] longAxis = new double[3 * N];

  /** Friction force on the ball at the last accepted state, N. */
  final double[] held = new double[3 * N];

  /** Normal stiffness at the last accepted state, N/m. */
  final double[] heldStiffness = new double[N];

  /** Friction force of the trial, N. */
  final double[] trial = new double[3 * N];

  /** Tangent of the trial friction force over the point's displacement, 9 values per contact. */
  final double[] tangent = new double[9 * N];

  /** Derivative of the trial friction force over the approach, N/m. */
  final double[] perApproach = new double[3 * N];

  /** Whether the trial slips. */
  final boolean[] slips = new boolean[N];

  /** Forgets all friction. */
  void clear() {
    java.util.Arrays.fill(held, 0);
    java.util.Arrays.fill(heldStiffness, 0);
  }

  /** Makes the last trial the state to go on from. */
  void accept(double[] normalStiffness) {
    System.arraycopy(trial, 0, held, 0, 3 * N);
    System.arraycopy(normalStiffness, 0, heldStiffness, 0, N);
  }

  /**
   * Tries a motion of one contact.
   *
   * @param i contact
   * @param nx unit normal out of the seat
   * @param ny its y
   * @param nz its z
   * @param force normal force, N; not negative
   * @param kn normal stiffness at that force, N/m
   * @param approach approach, m
   * @param ux displacement of the ball's material at the contact since the last accepted state, m
   * @param uy its y
   * @param uz its z
   */
  void attempt(
      int i,
      double nx,
      double ny,
      double nz,
      double force,
      double kn,
      double approach,
      double ux,
      double uy,
      double uz) {
    int v = 3 * i;
    int m = 9 * i;
    if (!(force > 0) || mu[i] == 0) {
      for (int k = 0; k < 3; k++) {
        trial[v + k] = 0;
        perApproach[v + k] = 0;
      }
      for (int k = 0; k < 9; k++) {
        tangent[m + k] = 0;
      }
      slips[i] = true;
      return;
    }
    double scale = heldStiffness[i] > kn ? kn / heldStiffness[i] : 1;
    double hx = held[v];
    double hy = held[v + 1];
    double hz = held[v + 2];
    double hn = hx * nx + hy * ny + hz * nz;
    hx = scale * (hx - hn * nx);
    hy = scale * (hy - hn * ny);
    hz = scale * (hz - hn * nz);
    // patch axes: a the long axis made exactly tangent, b = n x a
    double ax = longAxis[v];
    double ay = longAxis[v + 1];
    double az = longAxis[v + 2];
    double an = ax * nx + ay * ny + az * nz;
    ax -= an * nx;
    ay -= an * ny;
    az -= an * nz;
    double inverse = 1 / Math.sqrt(ax * ax + ay * ay + az * az);
    ax *= inverse;
    ay *= inverse;
    az *= inverse;
    double bx = ny * az - nz * ay;
    double by = nz * ax - nx * az;
    double bz = nx * ay - ny * ax;
    double ua = ux * ax + uy * ay + uz * az;
    double ub = ux * bx + uy * by + uz * bz;
    double ka = ratioLong[i] * kn;
    double kb = ratioShort[i] * kn;
    double tx = hx - ka * ua * ax - kb * ub * bx;
    double ty = hy - ka * ua * ay - kb * ub * by;
    double tz = hz - ka * ua * az - kb * ub * bz;
    double size = Math.sqrt(tx * tx + ty * ty + tz * tz);
    double limit = mu[i] * force;
    // kn goes with the square root of the approach, so d(ka)/d(approach) = ka / (2 approach)
    double half = 0.5 / approach;
    double sx = -half * (ka * ua * ax + kb * ub * bx);
    double sy = -half * (ka * ua * ay + kb * ub * by);
    double sz = -half * (ka * ua * az + kb * ub * bz);
    if (scale < 1) {
      sx += half * hx;
      sy += half * hy;
      sz += half * hz;
    }
    tangent[m] = -ka * ax * ax - kb * bx * bx;
    tangent[m + 1] = -ka * ax * ay - kb * bx * by;
    tangent[m + 2] = -ka * ax * az - kb * bx * bz;
    tangent[m + 3] = tangent[m + 1];
    tangent[m + 4] = -ka * ay * ay - kb * by * by;
    tangent[m + 5] = -ka * ay * az - kb * by * bz;
    tangent[m + 6] = tangent[m + 2];
    tangent[m + 7] = tangent[m + 5];
    tangent[m + 8] = -ka * az * az - kb * bz * bz;
    slips[i] = size > limit;
    if (slips[i]) {
      double f = limit / size;
      double ex = tx / size;
      double ey = ty / size;
      double ez = tz / size;
      projectColumns(m, ex, ey, ez, f);
      double es = ex * sx + ey * sy + ez * sz;
      double grow = mu[i] * kn;
      sx = f * (sx - es * ex) + grow * ex;
      sy = f * (sy - es * ey) + grow * ey;
      sz = f * (sz - es * ez) + grow * ez;
      tx = limit * ex;
      ty = limit * ey;
      tz = limit * ez;
    }
    trial[v] = tx;
    trial[v + 1] = ty;
    trial[v + 2] = tz;
    perApproach[v] = sx;
    perApproach[v + 1] = sy;
    perApproach[v + 2] = sz;
  }

  /** Replaces the tangent M by f (I - e eT) M: a slipping force can only turn. */
  private void projectColumns(int m, double ex, double ey, double ez, double f) {
    for (int c = 0; c < 3; c++) {
      double d = ex * tangent[m + c] + ey * tangent[m + 3 + c] + ez * tangent[m + 6 + c];
      tangent[m + c] = f * (tangent[m + c] - d * ex);
      tangent[m + 3 + c] = f * (tangent[m + 3 + c] - d * ey);
      tangent[m + 6 + c] = f * (tangent[m + 6 + c] - d * ez);
    }
  }
}
