package reseat.remount;

import java.util.Arrays;

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

  private final boolean[] heldSlips = new boolean[N];

  /** Displacement that was tried, m. */
  private final double[] moved = new double[3 * N];

  // of the contact last looked at: held force on its plane, patch axes, spring forces along them
  private double hx;
  private double hy;
  private double hz;
  private boolean softens;
  private double ax;
  private double ay;
  private double az;
  private double bx;
  private double by;
  private double bz;
  private double pullA;
  private double pullB;
  private double tx;
  private double ty;
  private double tz;

  /** Forgets all friction. */
  void clear() {
    Arrays.fill(held, 0);
    Arrays.fill(heldStiffness, 0);
  }

  /** Which contacts of the trial slip or are open: one bit each. */
  int slipMask() {
    int mask = 0;
    for (int i = 0; i < N; i++) {
      mask |= slips[i] ? 1 << i : 0;
    }
    return mask;
  }

  /** Makes the last trial the state to go on from. */
  void accept(double[] normalStiffness) {
    System.arraycopy(trial, 0, held, 0, 3 * N);
    System.arraycopy(normalStiffness, 0, heldStiffness, 0, N);
    System.arraycopy(slips, 0, heldSlips, 0, N);
  }

  /** Drops the last trial for the state last accepted. */
  void restore() {
    System.arraycopy(held, 0, trial, 0, 3 * N);
    System.arraycopy(heldSlips, 0, slips, 0, N);
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
      double ux,
      double uy,
      double uz) {
    int v = 3 * i;
    if (!(force > 0) || mu[i] == 0) {
      trial[v] = 0;
      trial[v + 1] = 0;
      trial[v + 2] = 0;
      slips[i] = true;
      return;
    }
    moved[v] = ux;
    moved[v + 1] = uy;
    moved[v + 2] = uz;
    spring(i, nx, ny, nz, kn);
    double size = Math.sqrt(tx * tx + ty * ty + tz * tz);
    double limit = mu[i] * force;
    slips[i] = size > limit;
    double f = slips[i] ? limit / size : 1;
    trial[v] = f * tx;
    trial[v + 1] = f * ty;
    trial[v + 2] = f * tz;
  }

  /** Force of the spring for the motion that was tried, before any slip; and the patch's axes. */
  private void spring(int i, double nx, double ny, double nz, double kn) {
    int v = 3 * i;
    double scale = heldStiffness[i] > kn ? kn / heldStiffness[i] : 1;
    double x = held[v];
    double y = held[v + 1];
    double z = held[v + 2];
    double hn = x * nx + y * ny + z * nz;
    hx = scale * (x - hn * nx);
    hy = scale * (y - hn * ny);
    hz = scale * (z - hn * nz);
    softens = scale < 1;
    // patch axes: a the long axis made exactly tangent, b = n x a
    ax = longAxis[v];
    ay = longAxis[v + 1];
    az = longAxis[v + 2];
    double an = ax * nx + ay * ny + az * nz;
    if (an != 0) {
      ax -= an * nx;
      ay -= an * ny;
      az -= an * nz;
      double inverse = 1 / Math.sqrt(ax * ax + ay * ay + az * az);
      ax *= inverse;
      ay *= inverse;
      az *= inverse;
    }
    bx = ny * az - nz * ay;
    by = nz * ax - nx * az;
    bz = nx * ay - ny * ax;
    pullA = ratioLong[i] * kn * (moved[v] * ax + moved[v + 1] * ay + moved[v + 2] * az);
    pullB = ratioShort[i] * kn * (moved[v] * bx + moved[v + 1] * by + moved[v + 2] * bz);
    tx = hx - pullA * ax - pullB * bx;
    ty = hy - pullA * ay - pullB * by;
    tz = hz - pullA * az - pullB * bz;
  }

  /**
   * Finds the derivatives of the trial force of a contact that is closed.
   *
   * @param i contact
   * @param nx unit normal out of the seat
   * @param ny its y
   * @param nz its z
   * @param force normal force, N; positive
   * @param kn normal stiffness at that force, N/m
   * @param approach approach, m
   */
  void computeTangent(
      int i, double nx, double ny, double nz, double force, double kn, double approach) {
    int v = 3 * i;
    int m = 9 * i;
    if (mu[i] == 0) {
      Arrays.fill(tangent, m, m + 9, 0);
      Arrays.fill(perApproach, v, v + 3, 0);
      return;
    }
    spring(i, nx, ny, nz, kn);
    // kn goes with the square root of the approach, so d(ka)/d(approach) = ka / (2 approach)
    double half = 0.5 / approach;
    double sx = -half * (pullA * ax + pullB * bx);
    double sy = -half * (pullA * ay + pullB * by);
    double sz = -half * (pullA * az + pullB * bz);
    if (softens) {
      sx += half * hx;
      sy += half * hy;
      sz += half * hz;
    }
    double ka = ratioLong[i] * kn;
    double kb = ratioShort[i] * kn;
    tangent[m] = -ka * ax * ax - kb * bx * bx;
    tangent[m + 1] = -ka * ax * ay - kb * bx * by;
    tangent[m + 2] = -ka * ax * az - kb * bx * bz;
    tangent[m + 3] = tangent[m + 1];
    tangent[m + 4] = -ka * ay * ay - kb * by * by;
    tangent[m + 5] = -ka * ay * az - kb * by * bz;
    tangent[m + 6] = tangent[m + 2];
    tangent[m + 7] = tangent[m + 5];
    tangent[m + 8] = -ka * az * az - kb * bz * bz;
    if (slips[i]) {
      double size = Math.sqrt(tx * tx + ty * ty + tz * tz);
      double f = mu[i] * force / size;
      double ex = tx / size;
      double ey = ty / size;
      double ez = tz / size;
      projectColumns(m, ex, ey, ez, f);
      double es = ex * sx + ey * sy + ez * sz;
      double grow = mu[i] * kn;
      sx = f * (sx - es * ex) + grow * ex;
      sy = f * (sy - es * ey) + grow * ey;
      sz = f * (sz - es * ez) + grow * ez;
    }
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
