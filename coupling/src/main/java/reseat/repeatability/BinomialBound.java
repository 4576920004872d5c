package reseat.repeatability;
import reseat.elementary.Elementary;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Beta;

/**
 * Bounds on a share of which a number of trials were seen, each 95 % sure (Clopper and Pearson
 * 1934: quantiles of the beta distribution).
 */
final class BinomialBound {

  private static final double UNSURE = 0.05;
  private static final double ACCURACY = 1e-12;
  private static final int ROUNDS = 200;

  private BinomialBound() {}

  /** Lower bound of the share; 0 if none was seen. */
  static double least(long seen, long trials) {
    return seen == 0 ? 0 : quantile(UNSURE, (double) seen, trials - seen + 1.0);
  }

  /** Upper bound of the share; 1 if all were seen. */
  static double most(long seen, long trials) {
    if (seen == 0) {
      return 1 - Elementary.pow(UNSURE, 1.0 / trials);
    }
    return seen == trials ? 1 : quantile(1 - UNSURE, seen + 1.0, (double) (trials - seen));
  }

  private static double quantile(double share, double a, double b) {
    return new BrentSolver(ACCURACY)
        .solve(ROUNDS, x -> Beta.regularizedBeta(x, a, b) - share, 0, 1);
  }
}
