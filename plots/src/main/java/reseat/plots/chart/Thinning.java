package reseat.plots.chart;

import java.util.HashSet;
import java.util.Set;

/**
 * Leaves out points that would lie on others anyway.
 *
 * <p>The range is cut into cells; the first point in each cell is kept. The look of the cloud
 * stays, its density does not, so a caption must say how many points there are.
 */
final class Thinning {

  private Thinning() {}

  /** Cells along each axis. */
  static final int CELLS = 110;

  /**
   * Keeps one point per cell.
   *
   * @param xs first coordinates
   * @param ys second coordinates
   * @param x range of the first
   * @param y range of the second
   * @return two arrays of equal length; points outside the ranges are left out
   */
  static double[][] of(double[] xs, double[] ys, AxisRange x, AxisRange y) {
    Set<Integer> taken = new HashSet<>();
    double[][] kept = new double[2][xs.length];
    int n = 0;
    for (int i = 0; i < xs.length; i++) {
      int column = (int) Math.floor((xs[i] - x.from()) / x.span() * CELLS);
      int row = (int) Math.floor((ys[i] - y.from()) / y.span() * CELLS);
      boolean inside = column >= 0 && column < CELLS && row >= 0 && row < CELLS;
      if (inside && taken.add(row * CELLS + column)) {
        kept[0][n] = xs[i];
        kept[1][n++] = ys[i];
      }
    }
    return new double[][] {
      java.util.Arrays.copyOf(kept[0], n), java.util.Arrays.copyOf(kept[1], n)
    };
  }
}
