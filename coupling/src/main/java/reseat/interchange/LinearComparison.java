package reseat.interchange;

import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/**
 * The spread between holders as simulated, beside that of the linear stack, along machine axes.
 *
 * <p>The bounds are those of sampling alone, two-sided at 99.9 % per axis: the standard deviation
 * of n values with excess kurtosis κ is uncertain by σ √((κ + 2)/n)/2, their mean by σ/√n (large
 * samples). A difference beyond them is what the linear theory leaves out: curvature of the exact
 * geometry and the load.
 *
 * @param linear standard deviation of the linear stack, m
 * @param simulated standard deviation as simulated, m
 * @param deviationBound how far the two may differ by luck, m
 * @param mean mean as simulated, which to first order is zero, m
 * @param meanBound how far the mean may be from zero by luck, m
 * @param beyondLinear exact less linear shift over the same holders: scatter and extremes, m
 */
public record LinearComparison(
    Vec3 linear,
    Vec3 simulated,
    Vec3 deviationBound,
    Vec3 mean,
    Vec3 meanBound,
    VectorScatter beyondLinear) {

  /** Two-sided 99.9 % point of the normal distribution. */
  private static final double CONFIDENCE = 3.2905267314919255;

  static LinearComparison of(
      LinearStack.Sum linear, VectorScatter own, VectorScatter beyondLinear) {
    double[] deviation = new double[3];
    double[] mean = new double[3];
    double n = Math.max(1, own.count());
    for (int k = 0; k < 3; k++) {
      double sigma = linear.deviation().component(k);
      deviation[k] = CONFIDENCE * sigma * Math.sqrt((linear.kurtosis().component(k) + 2) / n) / 2;
      mean[k] = CONFIDENCE * sigma / Math.sqrt(n);
    }
    return new LinearComparison(
        linear.deviation(),
        own.deviation(),
        new Vec3(deviation[0], deviation[1], deviation[2]),
        own.mean(),
        new Vec3(mean[0], mean[1], mean[2]),
        beyondLinear);
  }

  /**
   * Says whether the linear stack misses something along an axis.
   *
   * @param axis machine axis, 0, 1 or 2
   * @return true if standard deviation or mean differ by more than luck explains
   */
  public boolean differs(int axis) {
    double deviation = Math.abs(simulated.component(axis) - linear.component(axis));
    return deviation > deviationBound.component(axis)
        || Math.abs(mean.component(axis)) > meanBound.component(axis);
  }

  /**
   * Says whether the linear stack misses something along any axis.
   *
   * @return true if it does
   */
  public boolean differs() {
    return differs(0) || differs(1) || differs(2);
  }
}
