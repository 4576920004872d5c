package reseat.remount;

import java.util.Arrays;

/**
 * Tangent stiffness of six contacts with friction, as Newton's method needs it.
 *
 * <p>Not symmetric: a slipping contact's friction follows its normal force, but not the other way
 * round. Storage is reused; not for use by several threads.
 */
final class ContactTangent {

  private static final int N = 6;

  /**
   * Minus the derivative of the sum of contact forces over a twist about the origin, row by row.
   */
  final double[] matrix = new double[N * N];

  /** Derivative of each contact's force over the displacement of its point, 9 values each, N/m. */
  final double[] perPoint = new double[9 * N];

  /** Computes the derivative of each contact's force over the displacement of its point. */
  void computePoints(ToolChangeState s) {
    FrictionState friction = s.friction;
    ContactFrames at = s.at;
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      int m = 9 * i;
      if (!(s.force[i] > 0)) {
        Arrays.fill(perPoint, m, m + 9, 0);
        continue;
      }
      double nx = at.normal[v];
      double ny = at.normal[v + 1];
      double nz = at.normal[v + 2];
      double kn = s.stiffness[i];
      friction.computeTangent(i, nx, ny, nz, s.force[i], kn, s.approach[i]);
      // force = T u with u the point's displacement: T = -(kn n + s) nT + friction tangent
      for (int row = 0; row < 3; row++) {
        double c = kn * at.normal[v + row] + friction.perApproach[v + row];
        perPoint[m + 3 * row] = friction.tangent[m + 3 * row] - c * nx;
        perPoint[m + 3 * row + 1] = friction.tangent[m + 3 * row + 1] - c * ny;
        perPoint[m + 3 * row + 2] = friction.tangent[m + 3 * row + 2] - c * nz;
      }
    }
  }

  /** Puts the contacts of balls on rigid mountings together over a twist of their half. */
  void assemble(ContactFrames at) {
    Arrays.fill(matrix, 0);
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      int m = 9 * i;
      double lx = at.lever[v];
      double ly = at.lever[v + 1];
      double lz = at.lever[v + 2];
      for (int row = 0; row < 3; row++) {
        double gx = perPoint[m + 3 * row];
        double gy = perPoint[m + 3 * row + 1];
        double gz = perPoint[m + 3 * row + 2];
        double rx = ly * gz - lz * gy;
        double ry = lz * gx - lx * gz;
        double rz = lx * gy - ly * gx;
        add(row, gx, gy, gz, rx, ry, rz, lx, ly, lz);
      }
    }
  }

  /** Adds one row of a point's -G to the force row and, by its lever, to the moment rows. */
  private void add(
      int row,
      double gx,
      double gy,
      double gz,
      double rx,
      double ry,
      double rz,
      double lx,
      double ly,
      double lz) {
    addRow(N * row, -1, gx, gy, gz, rx, ry, rz);
    switch (row) {
      case 0 -> {
        addRow(N * 4, -lz, gx, gy, gz, rx, ry, rz);
        addRow(N * 5, ly, gx, gy, gz, rx, ry, rz);
      }
      case 1 -> {
        addRow(N * 3, lz, gx, gy, gz, rx, ry, rz);
        addRow(N * 5, -lx, gx, gy, gz, rx, ry, rz);
      }
      default -> {
        addRow(N * 3, -ly, gx, gy, gz, rx, ry, rz);
        addRow(N * 4, lx, gx, gy, gz, rx, ry, rz);
      }
    }
  }

  private void addRow(
      int from, double s, double gx, double gy, double gz, double rx, double ry, double rz) {
    matrix[from] += s * gx;
    matrix[from + 1] += s * gy;
    matrix[from + 2] += s * gz;
    matrix[from + 3] += s * rx;
    matrix[from + 4] += s * ry;
    matrix[from + 5] += s * rz;
  }
}
