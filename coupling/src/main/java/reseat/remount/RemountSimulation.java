package reseat.remount;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import reseat.design.LoadCase;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RandomStream;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/**
 * Mounts the holder many times with random luck and gathers where the tool comes to stand.
 *
 * <p>Each mounting has a random stream of its own for every cause, opened from (seed, mounting,
 * cause), and results are joined in the order of the mountings in fixed batches; so the same seed
 * gives the same result, to the last bit, on any number of threads. Memory does not grow with the
 * number of mountings.
 */
public final class RemountSimulation {

  /** Mountings in one batch. */
  static final int BATCH = 512;

  private static final Cause[] CAUSES = Cause.values();

  private final CouplingModel model;

  /**
   * Prepares simulations of a coupling.
   *
   * @param model the coupling, six contacts; tool changes are those of the worked-in coupling
   * @throws reseat.equilibrium.NoEquilibriumException if there is no frictionless state of rest
   */
  public RemountSimulation(CouplingModel model) {
    this.model = model.workedIn();
  }

  /**
   * Simulates mountings with all causes at work.
   *
   * @param plan how many, with which seed, on how many threads
   * @return the scatter
   * @throws reseat.equilibrium.NoEquilibriumException if there is no frictionless state of rest
   * @throws InterruptedException if the thread is interrupted
   */
  public RemountScatter run(RemountPlan plan) throws InterruptedException {
    return run(plan, cause -> true, done -> {});
  }

  /**
   * Simulates mountings with some causes at work and the others at their nominal values.
   *
   * @param plan how many, with which seed, on how many threads
   * @param causes says which causes are at work
   * @param progress told the number of mountings done, now and then, from this thread
   * @return the scatter
   * @throws InterruptedException if the thread is interrupted
   */
  public RemountScatter run(RemountPlan plan, Predicate<Cause> causes, LongConsumer progress)
      throws InterruptedException {
    Sum sum = new Sum(plan);
    long[] done = {0};
    plan.way()
        .run(
            batches(plan),
            "remount",
            number -> tally(plan, causes, number),
            tally -> {
              sum.add(tally);
              progress.accept(Math.min(plan.mounts(), BATCH * ++done[0]));
            });
    return sum.scatter();
  }

  /**
   * Returns into how many batches the mountings are cut.
   *
   * @param plan how many mountings
   * @return number of batches
   */
  public static long batches(RemountPlan plan) {
    return (plan.mounts() + BATCH - 1) / BATCH;
  }

  /**
   * Simulates one batch, wherever the others are simulated.
   *
   * @param plan how many mountings, with which seed
   * @param causes says which causes are at work
   * @param number number of the batch, from 0
   * @return its sums, to be added to a {@link Sum}
   */
  public double[] tally(RemountPlan plan, Predicate<Cause> causes, long number) {
    return batch(plan, causes, BATCH * number).toArray();
  }

  /** The sums of the batches so far. Mutable, one thread at a time. */
  public final class Sum {

    private final RemountPlan plan;
    private final ScatterTally all = new ScatterTally(model.design().axes());

    /**
     * Starts with no batch.
     *
     * @param plan what is simulated
     */
    public Sum(RemountPlan plan) {
      this.plan = plan;
    }

    /**
     * Adds the next batch.
     *
     * @param tally what {@link RemountSimulation#tally} gave; batches come in the order of their
     *     numbers
     */
    public void add(double[] tally) {
      all.merge(ScatterTally.of(model.design().axes(), tally));
    }

    /**
     * Returns the scatter.
     *
     * @return that of all batches added
     */
    public RemountScatter scatter() {
      return result(plan, all);
    }
  }

  private ScatterTally batch(RemountPlan plan, Predicate<Cause> causes, long first) {
    ToolChange sequence = new ToolChange(model, cutCase(plan), plan.reclamps());
    ScatterTally tally = new ScatterTally(model.design().axes());
    long last = Math.min(plan.mounts(), first + BATCH);
    for (long mount = first; mount < last; mount++) {
      long number = mount;
      sequence.draw.drawAll(c -> causes.test(c) ? stream(plan.seed(), number, c) : null);
      FrictionEquilibrium.Outcome outcome = sequence.run();
      if (outcome == FrictionEquilibrium.Outcome.HELD) {
        tally.add(sequence, !plan.cutCase().isEmpty(), plan.reclamps());
      } else {
        tally.fail(outcome, sequence.failedContact());
      }
    }
    return tally;
  }

  /**
   * Mounts the holder a few times and keeps every position, for a picture of the cloud.
   *
   * @param seed seed of all luck; the mountings are the first of those that {@link
   *     #run(RemountPlan)} makes with it
   * @param mounts number of mountings
   * @return shifts of the tool point along the machine axes, m; mountings that fail are left out
   */
  public List<Vec3> positions(long seed, int mounts) {
    ToolChange sequence = new ToolChange(model, null, false);
    List<Vec3> positions = new ArrayList<>();
    for (int mount = 0; mount < mounts; mount++) {
      long number = mount;
      sequence.draw.drawAll(c -> stream(seed, number, c));
      if (sequence.run() == FrictionEquilibrium.Outcome.HELD) {
        positions.add(sequence.toolShiftInMachineAxes());
      }
    }
    return positions;
  }

  /** Opens the stream of one cause in one mounting. */
  static RandomStream stream(long seed, long mount, Cause cause) {
    return RandomStream.of(seed, CAUSES.length * mount + cause.stream());
  }

  private LoadCase cutCase(RemountPlan plan) {
    if (plan.cutCase().isEmpty()) {
      return null;
    }
    return model.design().cases().stream()
        .filter(c -> c.name().equals(plan.cutCase()))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("there is no load case called " + plan.cutCase()));
  }

  private RemountScatter result(RemountPlan plan, ScatterTally t) {
    List<RemountScatter.Failure> failures = new ArrayList<>();
    List<ContactLines.Line> lines = ContactLines.nominal(model.design()).lines();
    t.failures.forEach(
        (outcome, byContact) ->
            byContact.forEach(
                (contact, count) -> {
                  String name = contact < 0 ? "" : lines.get(contact).name();
                  failures.add(new RemountScatter.Failure(kind(outcome), name, count));
                }));
    failures.sort(
        Comparator.comparingLong(RemountScatter.Failure::count)
            .reversed()
            .thenComparing(RemountScatter.Failure::words));
    double share = model.design().targets().coverage().share();
    VectorScatter shift = t.shift.scatter(share);
    return new RemountScatter(
        plan,
        shift.count(),
        shift,
        t.inCouplingAxes.scatter(share),
        t.rotation.scatter(share),
        t.afterCut.scatter(share),
        t.afterReclamp.scatter(share),
        failures);
  }

  private static RemountScatter.Failure.Kind kind(FrictionEquilibrium.Outcome outcome) {
    return switch (outcome) {
      case HANGS -> RemountScatter.Failure.Kind.HANGS;
      case TIPS -> RemountScatter.Failure.Kind.TIPS;
      case LOST_IN_CUT -> RemountScatter.Failure.Kind.LOST_IN_CUT;
      case LOST_IN_RECLAMP -> RemountScatter.Failure.Kind.LOST_IN_RECLAMP;
      default -> RemountScatter.Failure.Kind.NO_REST;
    };
  }
}
