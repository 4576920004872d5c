package reseat.readings;

import reseat.elementary.Elementary;

/**
 * What the extreme ones of n readings bound without any shape: the share of all mounts between the
 * smallest and the largest, and the share below the largest (Wilks; 93 readings hold 95 % of all
 * between them with 95 % confidence, 59 hold 95 % below the largest).
 */
public final class ShapelessBound {

  private ShapelessBound() {}

  /**
   * Returns the share of all mounts that lies between the smallest and the largest reading.
   *
   * @param n independent readings of one distribution, 2 or more
   * @param confidence confidence level, between 0 and 1
   * @return the share p with n p^(n-1) - (n - 1) p^n = 1 - confidence
   */
  public static double between(int n, double confidence) {
    ScatterBounds.requireConfidence(confidence);
    if (n < 2) {
      throw new IllegalArgumentException("the range needs at least 2 readings, found " + n);
    }
    double lo = 0;
    double hi = 1;
    for (int i = 0; i < 60; i++) {
      double p = (lo + hi) / 2;
      double chance = Elementary.pow(p, n - 1.0) * (n - (n - 1) * p);
      if (chance < 1 - confidence) {
        lo = p;
      } else {
        hi = p;
      }
    }
    return (lo + hi) / 2;
  }

  /**
   * Returns the share of all mounts that lies below the largest reading.
   *
   * @param n independent readings of one distribution, 1 or more
   * @param confidence confidence level, between 0 and 1
   * @return (1 - confidence)^(1/n)
   */
  public static double belowLargest(int n, double confidence) {
    ScatterBounds.requireConfidence(confidence);
    return Elementary.pow(1 - confidence, 1.0 / n);
  }
}
