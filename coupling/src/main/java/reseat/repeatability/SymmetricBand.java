package reseat.repeatability;

import reseat.elementary.Elementary;

/**
 * Half-widths of distributions that are alike to both sides, known by standard deviation and excess
 * kurtosis.
 *
 * <p>Pearson's symmetric family (types II and VII): exact for the arcsine (kurtosis -1.5), uniform
 * (-1.2) and normal shapes and for Student's. With the variable on it put as {@code A sin φ} or
 * {@code √ν tan φ} every member is {@code ∫ cos^m φ dφ}, which Gauss's formula with 20 points gives
 * to 1e-9. Moments of the family: Johnson, Kotz, Balakrishnan, Continuous Univariate Distributions
 * (from memory), checked by quadrature.
 */
public final class SymmetricBand {

  /** Excess kurtosis this near to zero counts as zero. */
  private static final double NORMAL = 0.002;

  private static final double[] NODE = {
    0.0765265211334973, 0.2277858511416451, 0.3737060887154195, 0.5108670019508271,
    0.636053680726515, 0.7463319064601508, 0.8391169718222188, 0.912234428251326,
    0.9639719272779138, 0.9931285991850949
  };

  private static final double[] WEIGHT = {
    0.1527533871307258, 0.1491729864726037, 0.142096109318382, 0.1316886384491766,
    0.1181945319615184, 0.1019301198172404, 0.0832767415767048, 0.0626720483341091,
    0.0406014298003869, 0.0176140071391521
  };

  private SymmetricBand() {}

  /**
   * Returns the half-width about the mean over the standard deviation.
   *
   * @param kurtosis excess kurtosis; below -1.5 counts as -1.5
   * @param share share of the values within, between 0 and 1
   * @return ratio; 1.96 for a normal distribution and 95 %
   */
  public static double ratio(double kurtosis, double share) {
    if (kurtosis < 0) {
      double m = -6 / Math.max(-1.5, Math.min(kurtosis, -NORMAL)) - 4;
      return Math.sqrt(m + 2) * Elementary.sin(angle(m, share));
    }
    double nu = 4 + 6 / Math.max(kurtosis, NORMAL);
    return Math.sqrt(nu - 2) * Elementary.tan(angle(nu - 1, share));
  }

  /**
   * Returns the share of the values within a half-width about the mean.
   *
   * @param kurtosis excess kurtosis; below -1.5 counts as -1.5
   * @param ratio half-width over the standard deviation, not negative
   * @return 0 to 1; 0.95 for a normal distribution and 1.96
   */
  static double share(double kurtosis, double ratio) {
    if (kurtosis < 0) {
      double m = -6 / Math.max(-1.5, Math.min(kurtosis, -NORMAL)) - 4;
      double sine = ratio / Math.sqrt(m + 2);
      return sine >= 1 ? 1 : within(m, Elementary.asin(sine));
    }
    double nu = 4 + 6 / Math.max(kurtosis, NORMAL);
    return within(nu - 1, Elementary.atan(ratio / Math.sqrt(nu - 2)));
  }

  private static double within(double m, double angle) {
    double all = widest(m);
    return angle >= all ? 1 : integral(m, angle) / integral(m, all);
  }

  /** Right angle, or where nothing of cos^m is left. */
  private static double widest(double m) {
    return Math.min(Math.PI / 2, 9 / Math.sqrt(m + 1));
  }

  /** Angle up to which cos^m holds a share of what it holds up to a right angle. */
  private static double angle(double m, double share) {
    double all = widest(m);
    double wanted = share * integral(m, all);
    double low = 0;
    double high = all;
    double angle = share * all / Math.max(1, all);
    for (int round = 0; round < 60; round++) {
      double off = integral(m, angle) - wanted;
      if (off > 0) {
        high = angle;
      } else {
        low = angle;
      }
      double next = angle - off / power(m, angle);
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - angle) < 1e-9) {
        return next;
      }
      angle = next;
    }
    return angle;
  }

  private static double integral(double m, double to) {
    double half = to / 2;
    double sum = 0;
    for (int i = 0; i < NODE.length; i++) {
      sum += WEIGHT[i] * (power(m, half * (1 - NODE[i])) + power(m, half * (1 + NODE[i])));
    }
    return half * sum;
  }

  private static double power(double m, double angle) {
    double c = Elementary.cos(angle);
    return c > 0 ? Elementary.exp(m * Elementary.log(c)) : m > 0 ? 0 : 1;
  }
}
