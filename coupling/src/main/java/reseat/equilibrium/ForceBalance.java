package reseat.equilibrium;

import reseat.numerics.Lu6;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The forces of six contacts without friction that balance one load after another: W N = -F, with
 * the wrench matrix W of the lines factored once. Not for use by several threads.
 */
final class ForceBalance {

  private static final int N = 6;

  private final Lu6 lu = new Lu6();

  /**
   * Prepares lines.
   *
   * @param lines the lines of action
   * @throws ArithmeticException if the contacts are not six or do not constrain the holder
   */
  ForceBalance(ContactLines lines) {
    if (lines.lines().size() != N) {
      throw new ArithmeticException("six contacts wanted, found " + lines.lines().size());
    }
    double[] flat = new double[N * N];
    double[][] w = lines.wrenchMatrix(Vec3.ZERO, 1);
    for (int i = 0; i < N; i++) {
      System.arraycopy(w[i], 0, flat, N * i, N);
    }
    if (!lu.factor(flat)) {
      throw new ArithmeticException("the contacts do not constrain the holder");
    }
  }

  /**
   * Finds the forces.
   *
   * @param load load on the holder
   * @return force per contact, N, compression positive; negative where a contact would have to pull
   */
  double[] forces(Wrench load) {
    Wrench w = load.movedTo(Vec3.ZERO);
    double[] n = {
      -w.force().x(), -w.force().y(), -w.force().z(),
      -w.moment().x(), -w.moment().y(), -w.moment().z()
    };
    lu.solve(n, n);
    return n;
  }
}
