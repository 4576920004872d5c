package reseat.readings;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;

/**
 * One weighted step of a {@link CauseFit}: signatures and measured scatter whitened by the inverse
 * Cholesky factor of the weight, which turns the weighted sum into a plain sum of squares.
 */
final class WeightedCauses {

  private final double[] y;
  private final double[][] columns;
  private final int causes;

  /**
   * Whitens a step.
   *
   * @param measured measured scatter less what is known
   * @param causes the causes
   * @param weight scatter whose sampling error weighs the entries
   * @param floor variance added to each axis of the weight
   * @param freedom degrees of freedom of the measured scatter
   */
  WeightedCauses(
      ScatterMatrix measured,
      List<CauseSignature> causes,
      ScatterMatrix weight,
      double floor,
      int freedom) {
    int d = measured.axes().size();
    DMatrixRMaj w = new DMatrixRMaj(d, d, true, weight.toArray());
    for (int i = 0; i < d; i++) {
      w.add(i, i, floor);
    }
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(d, true);
    if (!cholesky.decompose(w)) {
      throw new IllegalArgumentException("the scatter over the axes is not a covariance");
    }
    DMatrixRMaj inverse = cholesky.getT(null);
    CommonOps_DDRM.invert(inverse);
    double scale = Math.sqrt(freedom / 2.0);
    this.y = whitened(inverse, measured, scale);
    this.causes = causes.size();
    this.columns = new double[this.causes][];
    for (int k = 0; k < this.causes; k++) {
      columns[k] = whitened(inverse, causes.get(k).scatter(), scale);
    }
  }

  private static double[] whitened(DMatrixRMaj inverse, ScatterMatrix m, double scale) {
    int d = m.axes().size();
    DMatrixRMaj half = new DMatrixRMaj(d, d);
    DMatrixRMaj full = new DMatrixRMaj(d, d);
    CommonOps_DDRM.mult(inverse, new DMatrixRMaj(d, d, true, m.toArray()), half);
    CommonOps_DDRM.multTransB(half, inverse, full);
    CommonOps_DDRM.scale(scale, full);
    return full.data;
  }

  /**
   * Returns the nonnegative amounts of least misfit, over all subsets of causes.
   *
   * @return one squared multiplier per cause
   */
  double[] best() {
    double[] best = new double[causes];
    double least = misfit(best);
    for (int set = 1; set < 1 << causes; set++) {
      double[] v = solve(set, y);
      boolean feasible = v.length > 0;
      for (double x : v) {
        feasible = feasible && x >= 0;
      }
      if (feasible && misfit(v) < least) {
        least = misfit(v);
        best = v;
      }
    }
    return best;
  }

  /** Least squares over a subset, zero outside it; empty if the subset is not independent. */
  private double[] solve(int set, double[] target) {
    DMatrixRMaj inverse = inverse(set);
    if (inverse.numRows == 0) {
      return new double[0];
    }
    int[] members = members(set);
    double[] v = new double[causes];
    for (int i = 0; i < members.length; i++) {
      for (int j = 0; j < members.length; j++) {
        v[members[i]] += inverse.get(i, j) * dot(columns[members[j]], target);
      }
    }
    return v;
  }

  private DMatrixRMaj inverse(int set) {
    int[] members = members(set);
    int m = members.length;
    DMatrixRMaj gram = new DMatrixRMaj(m, m);
    double[] norm = new double[m];
    for (int i = 0; i < m; i++) {
      norm[i] = Math.sqrt(dot(columns[members[i]], columns[members[i]]));
    }
    for (int i = 0; i < m; i++) {
      for (int j = 0; j < m; j++) {
        gram.set(i, j, dot(columns[members[i]], columns[members[j]]) / norm[i] / norm[j]);
      }
    }
    if (CommonOps_DDRM.det(gram) < 1e-10 || !CommonOps_DDRM.invert(gram)) {
      return new DMatrixRMaj(0, 0);
    }
    for (int i = 0; i < m; i++) {
      for (int j = 0; j < m; j++) {
        gram.set(i, j, gram.get(i, j) / norm[i] / norm[j]);
      }
    }
    return gram;
  }

  private int[] members(int set) {
    int[] members = new int[Integer.bitCount(set)];
    int m = 0;
    for (int k = 0; k < causes; k++) {
      if ((set >> k & 1) == 1) {
        members[m++] = k;
      }
    }
    return members;
  }

  /**
   * Returns the misfit.
   *
   * @param v squared multipliers
   * @return weighted sum of squares
   */
  double misfit(double[] v) {
    double sum = 0;
    for (int i = 0; i < y.length; i++) {
      double e = y[i];
      for (int k = 0; k < causes; k++) {
        e -= v[k] * columns[k][i];
      }
      sum += e * e;
    }
    return sum;
  }

  /**
   * Returns the standard error of a squared multiplier, beside the causes in use.
   *
   * @param v squared multipliers; those at zero count as not in use
   * @param cause which cause
   * @return standard error; that of the cause alone if it depends on those in use
   */
  double error(double[] v, int cause) {
    int set = 1 << cause;
    for (int k = 0; k < causes; k++) {
      set |= v[k] > 0 ? 1 << k : 0;
    }
    DMatrixRMaj inverse = inverse(set);
    int place = Integer.bitCount(set & ((1 << cause) - 1));
    return inverse.numRows == 0 ? errorAlone(cause) : Math.sqrt(inverse.get(place, place));
  }

  /**
   * Returns the standard error of a squared multiplier with no other cause beside it.
   *
   * @param cause which cause
   * @return standard error
   */
  double errorAlone(int cause) {
    return 1 / Math.sqrt(dot(columns[cause], columns[cause]));
  }

  /**
   * Returns the squared multiplier with no other cause beside it.
   *
   * @param cause which cause
   * @return least-squares value, not below 0
   */
  double alone(int cause) {
    return Math.max(0, dot(columns[cause], y) / dot(columns[cause], columns[cause]));
  }

  /**
   * Returns how nearly a signature is a combination of the others.
   *
   * @param cause which cause
   * @return multiple correlation, 0 to 1
   */
  double correlationWithOthers(int cause) {
    double most = 0;
    for (int set = 1; set < 1 << causes; set++) {
      if ((set >> cause & 1) == 0) {
        double[] v = solve(set, columns[cause]);
        if (v.length > 0) {
          double left = 0;
          for (int i = 0; i < y.length; i++) {
            double e = columns[cause][i];
            for (int k = 0; k < causes; k++) {
              e -= v[k] * columns[k][i];
            }
            left += e * e;
          }
          most = Math.max(most, 1 - left / dot(columns[cause], columns[cause]));
        }
      }
    }
    return Math.sqrt(most);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
