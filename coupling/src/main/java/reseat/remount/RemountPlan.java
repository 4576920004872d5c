package reseat.remount;

/**
 * How many mountings to simulate, and what each includes.
 *
 * @param mounts number of mountings
 * @param seed seed of all luck; the same seed gives the same result on any number of threads
 * @param threads number of threads
 * @param cutCase name of the load case that comes and goes after each mounting; empty for none
 * @param reclamps whether the preload is let go and applied again after each mounting
 */
public record RemountPlan(long mounts, long seed, int threads, String cutCase, boolean reclamps) {

  /** Refuses runs of no mountings. */
  public RemountPlan {
    if (mounts < 2) {
      throw new IllegalArgumentException(
          "at least 2 mountings are needed to speak of scatter, found " + mounts);
    }
    if (threads < 1) {
      throw new IllegalArgumentException("at least 1 thread is needed, found " + threads);
    }
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
    return new RemountPlan(mounts, seed, threads, "", false);
  }
}
