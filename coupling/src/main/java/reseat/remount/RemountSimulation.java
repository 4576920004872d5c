package reseat.remount;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import reseat.design.LoadCase;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RandomStream;
import reseat.numerics.RunningHistogram;

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
   * @param model the coupling, six contacts
   */
  public RemountSimulation(CouplingModel model) {
    this.model = model;
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
    ScatterTally pilot = batch(plan, causes, 0, null);
    ScatterTally sum = new ScatterTally(model.design().axes(), pilot);
    long batches = (plan.mounts() + BATCH - 1) / BATCH;
    ExecutorService pool = Executors.newFixedThreadPool(plan.threads(), RemountSimulation::worker);
    try {
      Deque<Future<ScatterTally>> waiting = new ArrayDeque<>();
      long sent = 0;
      for (long done = 0; done < batches; done++) {
        while (sent < batches && waiting.size() < 4 * plan.threads()) {
          long first = BATCH * sent++;
          waiting.add(pool.submit(() -> batch(plan, causes, first, pilot)));
        }
        sum.merge(waiting.remove().get());
        progress.accept(Math.min(plan.mounts(), BATCH * (done + 1)));
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
    return result(plan, sum);
  }

  private static Thread worker(Runnable work) {
    Thread t = new Thread(work, "remount");
    t.setDaemon(true);
    return t;
  }

  private ScatterTally batch(
      RemountPlan plan, Predicate<Cause> causes, long first, ScatterTally pilot) {
    MountSequence sequence = new MountSequence(model, cutCase(plan), plan.reclamps());
    ScatterTally tally = new ScatterTally(model.design().axes(), pilot);
    long last = Math.min(plan.mounts(), first + BATCH);
    for (long mount = first; mount < last; mount++) {
      for (Cause c : CAUSES) {
        if (c != Cause.PRELOAD_SIZE && c != Cause.PRELOAD_LINE) {
          sequence.draw.take(c, causes.test(c) ? stream(plan.seed(), mount, c) : null);
        }
      }
      sequence.draw.takePreloads(
          causes.test(Cause.PRELOAD_SIZE) ? stream(plan.seed(), mount, Cause.PRELOAD_SIZE) : null,
          causes.test(Cause.PRELOAD_LINE) ? stream(plan.seed(), mount, Cause.PRELOAD_LINE) : null);
      MountMechanics.Outcome outcome = sequence.run();
      if (outcome == MountMechanics.Outcome.HELD) {
        tally.add(sequence, !plan.cutCase().isEmpty(), plan.reclamps());
      } else {
        tally.fail(outcome, sequence.failedContact());
      }
    }
    return tally;
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
    RunningHistogram[] none = new RunningHistogram[0];
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
    return new RemountScatter(
        plan,
        t.shift.count(),
        RemountScatter.Spot.of(t.shift, t.bands),
        RemountScatter.Spot.of(t.rotation, none),
        RemountScatter.Spot.of(t.afterCut, none),
        RemountScatter.Spot.of(t.afterReclamp, none),
        failures);
  }

  private static RemountScatter.Failure.Kind kind(MountMechanics.Outcome outcome) {
    return switch (outcome) {
      case HANGS -> RemountScatter.Failure.Kind.HANGS;
      case TIPS -> RemountScatter.Failure.Kind.TIPS;
      default -> RemountScatter.Failure.Kind.NO_REST;
    };
  }
}
