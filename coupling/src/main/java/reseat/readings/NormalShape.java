package reseat.readings;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import reseat.elementary.Elementary;

/**
 * Whether the readings look normal, since the bounds on sigma and the tolerance interval rest on
 * it: the Anderson-Darling test with mean and s taken from the readings.
 *
 * <p>Of a long series so many readings are taken, evenly from all of it, that the test would see a
 * shape that matters; from a million it would see the rounding of the gauge.
 *
 * <p>A mount with two resting places, or readings in few coarse steps, show up here. The
 * probability uses the fitted formulas of Stephens for A* = A² (1 + 0.75/n + 2.25/n²) (recalled
 * from memory, confirmed by simulation).
 *
 * @param n number of readings looked at
 * @param adjusted A*
 * @param p probability of so large a value if the readings are normal
 */
public record NormalShape(int n, double adjusted, double p) {

  /** Fewest readings for which the test says anything. */
  public static final int LEAST = 8;

  /** Most readings that are looked at. */
  public static final int MOST = 2000;

  /**
   * Tests a series.
   *
   * @param readings {@value #LEAST} readings or more, not all equal
   * @return the test
   */
  public static NormalShape of(double[] readings) {
    return readings.length > MOST ? ofAll(part(readings)) : ofAll(readings);
  }

  private static double[] part(double[] readings) {
    double[] part = new double[MOST];
    for (int i = 0; i < MOST; i++) {
      part[i] = readings[(int) ((long) readings.length * i / MOST)];
    }
    return part;
  }

  private static NormalShape ofAll(double[] readings) {
    int n = readings.length;
    if (n < LEAST) {
      throw new IllegalArgumentException(
          "a test of normal shape needs at least " + LEAST + " readings, found " + n);
    }
    Repeatability r = Repeatability.of(readings);
    if (r.isWithoutScatter()) {
      throw new IllegalArgumentException("a test of normal shape needs readings that scatter");
    }
    double[] sorted = readings.clone();
    Arrays.sort(sorted);
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double low = normal.cumulativeProbability((sorted[i] - r.mean()) / r.s());
      double high = normal.cumulativeProbability((r.mean() - sorted[n - 1 - i]) / r.s());
      sum +=
          (2.0 * i + 1)
              * (Elementary.log(Math.max(low, Double.MIN_NORMAL))
                  + Elementary.log(Math.max(high, Double.MIN_NORMAL)));
    }
    double a = (-n - sum / n) * (1 + 0.75 / n + 2.25 / ((double) n * n));
    return new NormalShape(n, a, Math.max(0, Math.min(1, chanceOf(a))));
  }

  private static double chanceOf(double a) {
    if (a < 0.2) {
      return 1 - Elementary.exp(-13.436 + 101.14 * a - 223.73 * a * a);
    }
    if (a < 0.34) {
      return 1 - Elementary.exp(-8.318 + 42.796 * a - 59.938 * a * a);
    }
    if (a < 0.6) {
      return Elementary.exp(0.9177 - 4.279 * a - 1.38 * a * a);
    }
    return a > 13 ? 0 : Elementary.exp(1.2937 - 5.709 * a + 0.0186 * a * a);
  }
}
