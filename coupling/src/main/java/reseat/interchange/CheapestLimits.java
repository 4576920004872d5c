package reseat.interchange;

import java.util.Arrays;
import java.util.List;
import reseat.elementary.Elementary;

/** The search behind {@link ToleranceAdvice}: multipliers of up to three sums of squares. */
final class CheapestLimits {

  private static final int ROUNDS = 10_000;

  private final double[][] weight;
  private final List<CostLaw> laws;
  private final double[] limit;
  private final double[] multiplier = new double[3];

  /**
   * States the problem.
   *
   * @param weight what the square of each limit adds to the variance along each axis, per m², rad²
   *     or K²
   * @param laws cost law of each limit
   */
  CheapestLimits(double[][] weight, List<CostLaw> laws) {
    this.weight = weight;
    this.laws = laws;
    limit = new double[laws.size()];
  }

  double limit(int index) {
    return limit[index];
  }

  /** Variances along the axes with the present limits, m². */
  double[] sums() {
    double[] sum = new double[3];
    for (int j = 0; j < 3; j++) {
      sum[j] = sum(j);
    }
    return sum;
  }

  private double sum(int axis) {
    double s = 0;
    for (int i = 0; i < limit.length; i++) {
      s += weight[i][axis] * limit[i] * limit[i];
    }
    return s;
  }

  /**
   * Finds the cheapest limits.
   *
   * @param room variance allowed along each axis, m²; infinite for any
   * @return false if the tightest limits are still too wide; they are the result then
   */
  boolean solve(double[] room) {
    for (int i = 0; i < limit.length; i++) {
      limit[i] = laws.get(i).tightest();
    }
    for (int j = 0; j < 3; j++) {
      if (sum(j) > room[j]) {
        return false;
      }
    }
    Arrays.fill(multiplier, 0);
    place();
    for (int round = 0; round < ROUNDS && !settled(room); round++) {
      for (int j = 0; j < 3; j++) {
        balance(j, room[j]);
      }
    }
    return true;
  }

  /** Limits for the present multipliers, by the closed form. */
  private void place() {
    for (int i = 0; i < limit.length; i++) {
      CostLaw law = laws.get(i);
      double slope = 0;
      for (int j = 0; j < 3; j++) {
        slope += multiplier[j] * weight[i][j];
      }
      double best =
          slope > 0
              ? Elementary.pow(
                  law.exponent() * law.coefficient() / (2 * slope), 1 / (law.exponent() + 2))
              : law.loosest();
      limit[i] = Math.max(law.tightest(), Math.min(law.loosest(), best));
    }
  }

  private boolean settled(double[] room) {
    for (int j = 0; j < 3; j++) {
      double excess = sum(j) - room[j];
      double allowed = ToleranceAdvice.ACCURACY * room[j];
      if (excess > allowed || (multiplier[j] > 0 && excess < -allowed && !pinned(j))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the sum along an axis can no longer change because all that matter are at a limit. */
  private boolean pinned(int axis) {
    for (int i = 0; i < limit.length; i++) {
      if (weight[i][axis] > 0
          && limit[i] > laws.get(i).tightest()
          && limit[i] < laws.get(i).loosest()) {
        return false;
      }
    }
    return true;
  }

  /** Chooses one multiplier, the others as they are: zero, or such that the sum fills its room. */
  private void balance(int axis, double room) {
    multiplier[axis] = 0;
    place();
    if (sum(axis) <= room) {
      return;
    }
    double high = 1;
    multiplier[axis] = high;
    place();
    while (sum(axis) > room) {
      high *= 1e3;
      multiplier[axis] = high;
      place();
      if (Double.isInfinite(high)) {
        return;
      }
    }
    double low = 0;
    for (int i = 0; i < 2000 && high - low > 0; i++) {
      double middle = low == 0 && high > 1e-300 ? high / 1e3 : 0.5 * (low + high);
      if (middle <= low || middle >= high) {
        break;
      }
      multiplier[axis] = middle;
      place();
      if (sum(axis) > room) {
        low = middle;
      } else {
        high = middle;
      }
    }
    multiplier[axis] = high;
    place();
  }
}
