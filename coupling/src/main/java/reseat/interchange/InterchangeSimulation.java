package reseat.interchange;

import java.util.function.LongConsumer;
import reseat.numerics.RandomStream;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/**
 * Makes posts and holders by luck and finds how every holder stands: exact geometry, Hertz contacts
 * under preload and weight.
 *
 * <p>Every post and every holder has a random stream of its own, opened from (seed, number): holder
 * h of post p is number p·holders + h, post p number -1 - p. Holders are taken in batches of a
 * fixed size whose sums are joined in order, so the same seed gives the same result, to the last
 * bit, on any number of threads. Memory does not grow with the number of holders.
 */
public final class InterchangeSimulation {

  /** Holders in one batch. */
  static final int BATCH = 4096;

  private final SimulatedCoupling coupling;

  /**
   * Prepares simulations of a coupling.
   *
   * @param tolerances the coupling with its tolerances
   * @throws reseat.equilibrium.NoEquilibriumException if the coupling as drawn finds no rest
   * @throws IllegalArgumentException if a part cannot be made at the limit of its tolerance
   */
  public InterchangeSimulation(ToleranceModel tolerances) {
    coupling = new SimulatedCoupling(tolerances);
  }

  /**
   * Returns the linear stack that the simulation is compared with.
   *
   * @return the stack
   */
  public LinearStack stack() {
    return coupling.stack;
  }

  /**
   * Simulates.
   *
   * @param plan how many, with which seed, on how many threads
   * @return the spread
   * @throws InterruptedException if the thread is interrupted
   */
  public InterchangeResult run(InterchangePlan plan) throws InterruptedException {
    return run(plan, done -> {});
  }

  /**
   * Simulates.
   *
   * @param plan how many, with which seed, on how many threads
   * @param progress told the number of holders done, now and then, from this thread
   * @return the spread
   * @throws InterruptedException if the thread is interrupted
   */
  public InterchangeResult run(InterchangePlan plan, LongConsumer progress)
      throws InterruptedException {
    Sum sum = new Sum(plan);
    plan.way()
        .run(
            batches(plan),
            "interchange",
            number -> tally(plan, number),
            tally -> {
              sum.add(tally);
              progress.accept(sum.holders());
            });
    return sum.result();
  }

  /**
   * Returns into how many batches the holders are cut.
   *
   * @param plan how many holders
   * @return number of batches
   */
  public static long batches(InterchangePlan plan) {
    return (plan.posts() * plan.holders() + BATCH - 1) / BATCH;
  }

  /**
   * Simulates one batch, wherever the others are simulated.
   *
   * @param plan how many holders, with which seed
   * @param number number of the batch, from 0
   * @return its sums, to be added to a {@link Sum}
   */
  public double[] tally(InterchangePlan plan, long number) {
    long holders = plan.posts() * plan.holders();
    return batch(plan, BATCH * number, Math.min(holders, BATCH * (number + 1))).toArray();
  }

  /** The sums of the batches so far. Mutable, one thread at a time. */
  public final class Sum {

    private final InterchangePlan plan;
    private final InterchangeTally all = new InterchangeTally(coupling);

    /**
     * Starts with no batch.
     *
     * @param plan what is simulated
     */
    public Sum(InterchangePlan plan) {
      this.plan = plan;
    }

    /**
     * Adds the next batch.
     *
     * @param tally what {@link InterchangeSimulation#tally} gave; batches come in the order of
     *     their numbers
     */
    public void add(double[] tally) {
      all.merge(tally);
    }

    /**
     * Returns how many holders were added.
     *
     * @return those that fit and those that do not
     */
    public long holders() {
      return all.fits.values().stream().mapToLong(Long::longValue).sum();
    }

    /**
     * Returns the spread.
     *
     * @return that of all batches added
     */
    public InterchangeResult result() {
      return InterchangeSimulation.this.result(plan, all);
    }
  }

  private InterchangeResult result(InterchangePlan plan, InterchangeTally sum) {
    VectorScatter own =
        VectorScatter.of(sum.own, coupling.design.targets().coverage().share(), sum.ownBands);
    return new InterchangeResult(
        plan,
        own,
        VectorScatter.of(sum.ownInCouplingAxes, sum.couplingBands),
        VectorScatter.of(sum.ownRotation, sum.rotationBands),
        VectorScatter.of(sum.post, sum.postBands),
        VectorScatter.of(sum.total, sum.totalBands),
        sum.fits,
        LinearComparison.of(
            coupling.stack.sum(LinearStack.BETWEEN_HOLDERS),
            own,
            VectorScatter.of(sum.beyondLinear)));
  }

  private InterchangeTally batch(InterchangePlan plan, long from, long to) {
    HolderTrial trial = new HolderTrial(coupling);
    InterchangeTally tally = new InterchangeTally(coupling);
    long post = -1;
    Fit perfectFit = Fit.FITS;
    Vec3 perfect = Vec3.ZERO;
    Vec3 perfectRotation = Vec3.ZERO;
    for (long i = from; i < to; i++) {
      if (i / plan.holders() != post) {
        post = i / plan.holders();
        trial.drawPost(RandomStream.of(plan.seed(), -1 - post));
        perfectFit = trial.perfectHolder();
        if (perfectFit != Fit.NO_POSE) {
          perfect = new Vec3(trial.shift[0], trial.shift[1], trial.shift[2]);
          perfectRotation = new Vec3(trial.rotation[0], trial.rotation[1], trial.rotation[2]);
          if (i % plan.holders() == 0) {
            tally.addPost(perfect);
          }
        }
      }
      // a post that takes no perfect holder leaves nothing to measure its holders against
      Fit fit =
          perfectFit == Fit.NO_POSE
              ? Fit.NO_POSE
              : trial.drawHolder(RandomStream.of(plan.seed(), i));
      tally.addHolder(fit, trial, perfect, perfectRotation);
    }
    return tally;
  }
}
