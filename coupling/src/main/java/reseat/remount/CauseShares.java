package reseat.remount;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.OnThreads;
import reseat.numerics.OrderedBatches;
import reseat.numerics.RandomStream;
import reseat.space.Vec3;

/**
 * What causes the scatter of the tool point.
 *
 * <p>Two answers for each cause and machine axis. Alone: the standard deviation when only that
 * cause is at work and the others keep their nominal values. Shares of variance: the first-order
 * share (what fixing the cause would surely take away) and the total share (what it has a part in),
 * by exchanging one cause at a time between two independent sets of mountings; estimators of
 * Saltelli and others 2010 for the first, Jansen 1999 for the second (both from memory). What the
 * first-order shares leave is interaction.
 *
 * @param causes one entry per cause, greatest total share (summed over axes) first
 * @param interaction 1 less the sum of first-order shares, per machine axis
 * @param interactionError standard error of that remainder, from the finite number of mountings
 * @param mounts number of mountings in each set
 * @param dropped mountings left out because they failed with one luck or another
 */
public record CauseShares(
    List<Share> causes, Vec3 interaction, Vec3 interactionError, long mounts, long dropped) {

  /** Sets of mountings that are simulated: two independent ones, one exchanged, one alone each. */
  public static final int SETS = 2 + 2 * Cause.values().length;

  private static final int BATCH = 64;

  /** Copies the list. */
  public CauseShares {
    causes = List.copyOf(causes);
  }

  /**
   * The part of one cause.
   *
   * @param cause the cause
   * @param alone standard deviation along the machine axes when it alone is at work, m
   * @param first first-order share of variance per axis, about 0 to 1
   * @param total total share of variance per axis, about 0 to 1
   */
  public record Share(Cause cause, Vec3 alone, Vec3 first, Vec3 total) {}

  /**
   * Finds the shares.
   *
   * @param model the coupling
   * @param mounts number of mountings in each of the {@link #SETS} sets
   * @param seed seed of all luck; the same seed gives the same shares on any number of threads
   * @param threads number of threads
   * @param progress told the number of mountings done over all sets, from this thread
   * @return the shares; zero along an axis that does not scatter
   * @throws InterruptedException if the thread is interrupted
   */
  public static CauseShares of(
      CouplingModel model, long mounts, long seed, int threads, LongConsumer progress)
      throws InterruptedException {
    return of(model, mounts, seed, new OnThreads(threads), progress);
  }

  /**
   * Finds the shares.
   *
   * @param model the coupling
   * @param mounts number of mountings in each of the {@link #SETS} sets
   * @param seed seed of all luck
   * @param way how the batches are run; the shares do not depend on it
   * @param progress told the number of mountings done over all sets, from this thread
   * @return the shares; zero along an axis that does not scatter
   * @throws InterruptedException if the thread is interrupted
   */
  public static CauseShares of(
      CouplingModel model, long mounts, long seed, OrderedBatches way, LongConsumer progress)
      throws InterruptedException {
    Sum sum = new Sum();
    long[] done = {0};
    way.run(
        batches(mounts),
        "causes",
        number -> tally(model, mounts, seed, number),
        tally -> {
          sum.add(tally);
          progress.accept(SETS * Math.min(mounts, BATCH * ++done[0]));
        });
    return sum.shares();
  }

  /**
   * Returns into how many batches the mountings are cut.
   *
   * @param mounts number of mountings in each set
   * @return number of batches
   */
  public static long batches(long mounts) {
    return (mounts + BATCH - 1) / BATCH;
  }

  /**
   * Simulates one batch, wherever the others are simulated.
   *
   * @param model the coupling
   * @param mounts number of mountings in each set
   * @param seed seed of all luck
   * @param number number of the batch, from 0
   * @return its sums, to be added to a {@link Sum}
   */
  public static double[] tally(CouplingModel model, long mounts, long seed, long number) {
    return batch(model, BATCH * number, Math.min(mounts, BATCH * (number + 1)), seed).toArray();
  }

  /** The sums of the batches so far. Mutable, one thread at a time. */
  public static final class Sum {

    private final ShareTally all = new ShareTally();

    /**
     * Adds the next batch.
     *
     * @param tally what {@link CauseShares#tally} gave; batches come in the order of their numbers
     */
    public void add(double[] tally) {
      all.merge(ShareTally.of(tally));
    }

    /**
     * Returns the shares.
     *
     * @return those of all batches added; zero along an axis that does not scatter
     */
    public CauseShares shares() {
      return all.shares();
    }
  }

  private static ShareTally batch(CouplingModel model, long from, long to, long seed) {
    ToolChange sequence = new ToolChange(model, null, false);
    ShareTally tally = new ShareTally();
    for (long m = from; m < to; m++) {
      Luck luck = new Luck(sequence, seed, m);
      Map<Cause, Vec3> mixed = new EnumMap<>(Cause.class);
      for (Cause c : Cause.values()) {
        tally.addAlone(c, luck.mountWith(c));
        mixed.put(c, luck.mountExchanging(c));
      }
      tally.add(luck.mountFirst(), luck.mountSecond(), mixed);
    }
    return tally;
  }

  /** The luck of one mounting in both sets. */
  private static final class Luck {

    private enum Way {
      FIRST,
      SECOND,
      EXCHANGED,
      ALONE
    }

    private final ToolChange sequence;
    private final long seed;
    private final long mount;

    Luck(ToolChange sequence, long seed, long mount) {
      this.sequence = sequence;
      this.seed = seed;
      this.mount = mount;
    }

    Vec3 mountFirst() {
      return mount(Way.FIRST, null);
    }

    Vec3 mountSecond() {
      return mount(Way.SECOND, null);
    }

    Vec3 mountExchanging(Cause cause) {
      return mount(Way.EXCHANGED, cause);
    }

    Vec3 mountWith(Cause cause) {
      return mount(Way.ALONE, cause);
    }

    /** Tool shift in machine axes; null if the mounting fails. */
    private Vec3 mount(Way way, Cause special) {
      sequence.draw.drawAll(c -> stream(c, way, special));
      return sequence.run() == FrictionEquilibrium.Outcome.HELD
          ? sequence.toolShiftInMachineAxes()
          : null;
    }

    private RandomStream stream(Cause cause, Way way, Cause special) {
      return switch (way) {
        case ALONE -> cause == special ? first(cause) : null;
        case FIRST -> first(cause);
        case SECOND -> second(cause);
        case EXCHANGED -> cause == special ? second(cause) : first(cause);
      };
    }

    private RandomStream first(Cause cause) {
      return RemountSimulation.stream(seed, mount, cause);
    }

    private RandomStream second(Cause cause) {
      return RemountSimulation.stream(~seed, mount, cause);
    }
  }
}
