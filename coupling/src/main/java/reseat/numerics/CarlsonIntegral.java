package reseat.numerics;

import reseat.units.PrintedNumber;

/**
 * Carlson's symmetric elliptic integral of the second kind,
 *
 * <pre>RD(x, y, z) = (3/2) int_0^inf dt / (sqrt((t+x)(t+y)) (t+z)^(3/2))</pre>
 *
 * <p>It gives the stresses under an elliptical contact without the cancelling differences of F and
 * E. Method: Carlson's duplication with a fifth-order end series (recalled from memory, checked
 * against quadrature). {@code RD(x, x, x) = x^(-3/2)}; {@code RD(cx, cy, cz) = c^(-3/2) RD(x, y,
 * z)}.
 */
public final class CarlsonIntegral {

  /** Leaves a truncation error of about 3 times its sixth power: below rounding. */
  private static final double SPREAD_LIMIT = 1.5e-3;

  private CarlsonIntegral() {}

  /**
   * Computes RD.
   *
   * @param x not negative; symmetric with y
   * @param y not negative, at most one of x and y zero
   * @param z positive
   * @return RD(x, y, z), relative error a few 1e-16
   */
  public static double rd(double x, double y, double z) {
    if (!(x >= 0 && y >= 0 && x + y > 0 && z > 0)) {
      throw new IllegalArgumentException(
          "RD wants x, y not negative, not both zero, and z > 0, found "
              + PrintedNumber.shortest(x)
              + ", "
              + PrintedNumber.shortest(y)
              + ", "
              + PrintedNumber.shortest(z));
    }
    double sum = 0;
    double factor = 1;
    while (true) {
      double mean = (x + y + 3 * z) / 5;
      double dx = (mean - x) / mean;
      double dy = (mean - y) / mean;
      double dz = (mean - z) / mean;
      if (Math.max(Math.abs(dx), Math.max(Math.abs(dy), Math.abs(dz))) < SPREAD_LIMIT) {
        return 3 * sum + factor * endSeries(dx, dy, dz) / (mean * Math.sqrt(mean));
      }
      double rx = Math.sqrt(x);
      double ry = Math.sqrt(y);
      double rz = Math.sqrt(z);
      double lambda = rx * (ry + rz) + ry * rz;
      sum += factor / (rz * (z + lambda));
      factor /= 4;
      x = (x + lambda) / 4;
      y = (y + lambda) / 4;
      z = (z + lambda) / 4;
    }
  }

  private static double endSeries(double dx, double dy, double dz) {
    double ea = dx * dy;
    double eb = dz * dz;
    double ec = ea - eb;
    double ed = ea - 6 * eb;
    double ef = ed + ec + ec;
    return 1
        + ed * (-3.0 / 14 + 9.0 / 88 * ed - 9.0 / 52 * dz * ef)
        + dz * (ef / 6 + dz * (-9.0 / 22 * ec + dz * 3.0 / 26 * ea));
  }
}
