package reseat.numerics;

import org.ejml.data.DMatrixRMaj;
import reseat.units.PrintedNumber;

/** The border to EJML: checks an array of entries and hands over a matrix of its own. */
final class DenseMatrix {

  private DenseMatrix() {}

  static DMatrixRMaj of(double[] entries, int rows, int columns) {
    if (rows < 1 || columns < 1 || entries.length != rows * columns) {
      throw new IllegalArgumentException(
          rows + " x " + columns + " entries wanted, found " + entries.length);
    }
    for (double entry : entries) {
      if (!Double.isFinite(entry)) {
        throw new IllegalArgumentException(
            "matrix entries must be finite, found " + PrintedNumber.shortest(entry));
      }
    }
    return new DMatrixRMaj(rows, columns, true, entries.clone());
  }

  static DMatrixRMaj symmetric(double[] entries, int size) {
    DMatrixRMaj a = of(entries, size, size);
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (a.unsafe_get(i, j) + a.unsafe_get(j, i)) / 2;
        a.unsafe_set(i, j, mean);
        a.unsafe_set(j, i, mean);
      }
    }
    return a;
  }

  /** Turns a vector so that its largest entry is positive; a tie goes to the first. */
  static double[] signed(double[] vector) {
    double largest = 0;
    for (double entry : vector) {
      // entries that differ by rounding only must not decide the sign by chance
      if (Math.abs(entry) > Math.abs(largest) * (1 + 1e-9)) {
        largest = entry;
      }
    }
    if (largest < 0) {
      for (int i = 0; i < vector.length; i++) {
        vector[i] = -vector[i];
      }
    }
    return vector;
  }
}
