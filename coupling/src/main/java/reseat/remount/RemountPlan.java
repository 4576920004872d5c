package reseat.remount;

import reseat.numerics.OnThreads;
import reseat.numerics.OrderedBatches;

/**
 * How many mountings to simulate, and what each includes.
 *
 * @param mounts number of mountings
 * @param seed seed of all luck
 * @param way how the batches are run; the result does not depend on it
 * @param cutCase name of the load case that comes and goes after each mounting; empty for none
 * @param reclamps whether the preload is let go and applied again after each mounting
 */
public record RemountPlan(
    long mounts, long seed, OrderedBatches way, String cutCase, boolean reclamps) {

  /** Refuses runs of no mountings. */
  public RemountPlan {
    if (mounts < 2) {
      throw new IllegalArgumentException(
          "at least 2 mountings are needed to speak of scatter, found " + mounts);
    }
  }

  /**
   * Plans mountings on threads.
   *
   * @param mounts number of mountings
   * @param seed seed of all luck
   * @param threads number of threads
   * @param cutCase name of the load case that comes and goes after each mounting; empty for none
   * @param reclamps whether the preload is let go and applied again after each mounting
   */
  public RemountPlan(long mounts, long seed, int threads, String cutCase, boolean reclamps) {
    this(mounts, seed, new OnThreads(threads), cutCase, reclamps);
  }

  /**
   * Returns a plan of plain mountings.
   *
   * @param mounts number of mountings
   * @param seed seed of all luck
   * @param threads number of threads
   * @return the plan, without cutting load and without letting go
   */
  public static RemountPlan of(long mounts, long seed, int threads) {
    return of(mounts, seed, new OnThreads(threads));
  }

  /**
   * Returns a plan of plain mountings.
   *
   * @param mounts number of mountings
   * @param seed seed of all luck
   * @param way how the batches are run
   * @return the plan, without cutting load and without letting go
   */
  public static RemountPlan of(long mounts, long seed, OrderedBatches way) {
    return new RemountPlan(mounts, seed, way, "", false);
  }
}
