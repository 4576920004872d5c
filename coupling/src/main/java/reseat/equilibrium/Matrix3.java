package reseat.equilibrium;

import reseat.space.Vec3;

/** Products of 3x3 matrices (9 values, row by row) with each other and with vectors. */
final class Matrix3 {

  private Matrix3() {}

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** Matrix times matrix, or matrix times vector, by the length of the second. */
  static double[] multiply(double[] m, double[] x) {
    int columns = x.length / 3;
    double[] out = new double[x.length];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < columns; j++) {
        for (int k = 0; k < 3; k++) {
          out[columns * i + j] += m[3 * i + k] * x[columns * k + j];
        }
      }
    }
    return out;
  }

  static double[] inverse(double[] m) {
    double a = m[4] * m[8] - m[5] * m[7];
    double b = m[5] * m[6] - m[3] * m[8];
    double c = m[3] * m[7] - m[4] * m[6];
    double s = 1 / (m[0] * a + m[1] * b + m[2] * c);
    return new double[] {
      s * a, s * (m[2] * m[7] - m[1] * m[8]), s * (m[1] * m[5] - m[2] * m[4]),
      s * b, s * (m[0] * m[8] - m[2] * m[6]), s * (m[2] * m[3] - m[0] * m[5]),
      s * c, s * (m[1] * m[6] - m[0] * m[7]), s * (m[0] * m[4] - m[1] * m[3])
    };
  }

  static void addOuter(double[] m, double scale, Vec3 n) {
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        m[3 * i + j] += scale * n.component(i) * n.component(j);
      }
    }
  }
}
