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

  /** Readings beyond which a series is drawn by the extremes of its stretches. */
  static final int LONG_SERIES = 2000;

  /**
   * Keeps of a long series the least and the greatest reading of each stretch, in order, so that
   * nothing that stands out is lost.
   *
   * @param xs places, rising
   * @param ys readings
   * @return two arrays of equal length; the series itself if it is not long
   */
  static double[][] ofSeries(double[] xs, double[] ys) {
    int n = ys.length;
    if (n <= LONG_SERIES) {
      return new double[][] {xs, ys};
    }
    int stretches = LONG_SERIES / 2;
    double[][] kept = new double[2][2 * stretches];
    for (int k = 0; k < stretches; k++) {
      int from = (int) ((long) n * k / stretches);
      int to = (int) ((long) n * (k + 1) / stretches);
      int least = from;
      int most = from;
      for (int i = from; i < to; i++) {
        least = ys[i] < ys[least] ? i : least;
        most = ys[i] > ys[most] ? i : most;
      }
      int earlier = Math.min(least, most);
      int later = Math.max(least, most);
      kept[0][2 * k] = xs[earlier];
      kept[1][2 * k] = ys[earlier];
      kept[0][2 * k + 1] = xs[later];
      kept[1][2 * k + 1] = ys[later];
    }
    return kept;
  }
}
