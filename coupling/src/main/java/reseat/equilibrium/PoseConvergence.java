package reseat.equilibrium;

/**
 * How the steps of a pose shrink from round to round, and when they have shrunk enough.
 *
 * <p>While the inverse of the first round serves, an error e of the pose leaves B(s, e) behind,
 * with the first step s and the curvature B of the gaps; the first step itself left B(s, s)/2,
 * which is what the second one finds. Of what the second step repeats of the first, r times s,
 * twice r is therefore left after it, and is added to it in advance: where the steps keep their
 * direction, that saves a round; where they do not, it does no harm, for it is no more than the
 * error that is left. Allocates nothing after construction.
 */
final class PoseConvergence {

  /** Rate of change from round to round that counts as quick. */
  private static final double QUICK = 1e-2;

  private static final int N = 6;

  private final double[] first = new double[N];
  private double previous;
  private double slowest;
  private double change;
  private double rate;
  private int taken;

  void reset() {
    previous = 0;
    slowest = 0;
    taken = 0;
  }

  /**
   * Adds a step, and lengthens the second one.
   *
   * @param step x, y, z, m, then rx, ry, rz, rad; may be changed
   * @param size of the coupling, m
   * @param sameInverse whether it was found with the inverse of the first
   */
  void add(double[] step, double size, boolean sameInverse) {
    change = 0;
    for (int i = 0; i < 3; i++) {
      change = Math.max(change, Math.max(Math.abs(step[i]), size * Math.abs(step[i + 3])));
    }
    rate = taken == 0 ? 1 : change / previous;
    if (taken == 0) {
      System.arraycopy(step, 0, first, 0, N);
    } else if (taken == 1 && sameInverse && rate < QUICK) {
      // twice what the first way shrinks by, and as much again, for another way may shrink slower
      slowest = 4 * rate;
      double longer = 1 + 2 * repeated(step, size);
      for (int i = 0; i < N; i++) {
        step[i] *= longer;
      }
    }
    previous = change;
    taken++;
  }

  /** How often a step goes the way of the first one again. */
  private double repeated(double[] step, double size) {
    double along = 0;
    double whole = 0;
    for (int i = 0; i < 3; i++) {
      along += first[i] * step[i] + size * size * first[i + 3] * step[i + 3];
      whole += first[i] * first[i] + size * size * first[i + 3] * first[i + 3];
    }
    return along / whole;
  }

  /** Largest displacement of the last step before it was lengthened, m. */
  double change() {
    return change;
  }

  /** Whether the next step, too, may be found with the inverse at hand. */
  boolean mayReuseInverse(double size) {
    return taken == 1 ? change < QUICK * size : rate < QUICK;
  }

  /** Whether neither the last step nor the next one to be expected moves anything. */
  boolean hasConverged(double limit) {
    return change <= limit || (rate < QUICK && change * Math.max(rate, slowest) <= limit);
  }
}
