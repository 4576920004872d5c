package reseat.equilibrium;

import reseat.space.Matrix6;
import reseat.space.Vec3;

/**
 * The point at which forces and turning are least coupled.
 *
 * <p>Told at a point p, a stiffness has a block B that couples translation with rotation; moving
 * the point by d changes it by -A [d]x, with A the translational block. The centre of stiffness is
 * the point where the sum of squares of B is least; for a symmetric coupling it is zero there, and
 * a force through the centre does not turn the holder.
 */
public final class StiffnessCentre {

  private StiffnessCentre() {}

  /**
   * Finds the centre of a stiffness.
   *
   * @param stiffness stiffness matrix with a regular translational block
   * @return the centre, m
   * @throws ArithmeticException if some translation meets no stiffness
   */
  public static Vec3 of(Matrix6 stiffness) {
    double[] normal = new double[9];
    double[] right = new double[3];
    double largest = 0;
    for (int k = 0; k < 3; k++) {
      double[] perShift = shiftEffect(stiffness, k);
      for (int l = 0; l < 3; l++) {
        double[] other = shiftEffect(stiffness, l);
        for (int i = 0; i < 9; i++) {
          normal[3 * k + l] += perShift[i] * other[i];
        }
      }
      for (int i = 0; i < 9; i++) {
        right[k] += perShift[i] * stiffness.get(i / 3, 3 + i % 3);
      }
      largest = Math.max(largest, normal[3 * k + k]);
    }
    for (int k = 0; k < 3; k++) {
      if (!(normal[3 * k + k] > 1e-18 * largest)) {
        throw new ArithmeticException("a translation meets no stiffness: there is no centre");
      }
    }
    double[] d = Matrix3.multiply(Matrix3.inverse(normal), right);
    return stiffness.at().minus(new Vec3(d[0], d[1], d[2]));
  }

  /** A [e_k]x, row by row: what a unit shift along axis k takes from the coupling block. */
  private static double[] shiftEffect(Matrix6 stiffness, int k) {
    double[] cross = new double[9];
    // [e]x has e_x in rows y, z and so on
    int next = (k + 1) % 3;
    int last = (k + 2) % 3;
    cross[3 * last + next] = 1;
    cross[3 * next + last] = -1;
    double[] a = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        a[3 * i + j] = stiffness.get(i, j);
      }
    }
    return Matrix3.multiply(a, cross);
  }
}
