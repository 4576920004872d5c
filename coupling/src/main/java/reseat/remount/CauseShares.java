package reseat.remount;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RandomStream;
import reseat.numerics.RunningCovariance;
import reseat.space.Vec3;

/**
 * What causes the scatter of the tool point.
 *
 * <p>Two answers for each cause and machine axis. Alone: the standard deviation when only that
 * cause is at work and the others keep their nominal values. Shares of variance: the first-order
 * share (what fixing the cause would surely take away) and the total share (what it has a part in),
 * by exchanging one cause at a time between two independent sets of mountings; estimators of Jansen
 * 1999 (from memory). What the first-order shares leave is interaction.
 *
 * @param causes one entry per cause, greatest total share (summed over axes) first
 * @param interaction 1 less the sum of first-order shares, per machine axis
 * @param mounts number of mountings in each set
 * @param dropped pairs left out because one of their mountings failed
 */
public record CauseShares(List<Share> causes, Vec3 interaction, long mounts, long dropped) {

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
   * @param mounts number of mountings in each of the sets; eight sets are simulated
   * @param seed seed of all luck
   * @return the shares; zero along an axis that does not scatter
   */
  public static CauseShares of(CouplingModel model, int mounts, long seed) {
    MountSequence sequence = new MountSequence(model, null, false);
    Map<Cause, RunningCovariance> alone = new EnumMap<>(Cause.class);
    Map<Cause, double[]> fromFirst = new EnumMap<>(Cause.class);
    Map<Cause, double[]> fromSecond = new EnumMap<>(Cause.class);
    for (Cause c : Cause.values()) {
      alone.put(c, new RunningCovariance());
      fromFirst.put(c, new double[3]);
      fromSecond.put(c, new double[3]);
    }
    RunningCovariance all = new RunningCovariance();
    long used = 0;
    for (int m = 0; m < mounts; m++) {
      Vec3 a = mount(sequence, seed, m, null, false, false);
      Vec3 b = mount(sequence, seed, m, null, true, false);
      Map<Cause, Vec3> mixed = new EnumMap<>(Cause.class);
      for (Cause c : Cause.values()) {
        Vec3 single = mount(sequence, seed, m, c, false, true);
        if (single != null) {
          alone.get(c).add(single);
        }
        Vec3 exchanged = mount(sequence, seed, m, c, false, false);
        if (exchanged != null) {
          mixed.put(c, exchanged);
        }
      }
      if (a == null || b == null || mixed.size() < Cause.values().length) {
        continue;
      }
      used++;
      all.add(a);
      all.add(b);
      for (Cause c : Cause.values()) {
        for (int k = 0; k < 3; k++) {
          double x = mixed.get(c).component(k);
          fromFirst.get(c)[k] += square(a.component(k) - x);
          fromSecond.get(c)[k] += square(b.component(k) - x);
        }
      }
    }
    return gather(all, alone, fromFirst, fromSecond, mounts, used);
  }

  private static double square(double x) {
    return x * x;
  }

  /** Tool shift in machine axes, or null if the mounting fails. */
  private static Vec3 mount(
      MountSequence sequence,
      long seed,
      long m,
      Cause special,
      boolean second,
      boolean onlySpecial) {
    long other = ~seed;
    for (Cause c : Cause.values()) {
      if (c != Cause.PRELOAD_SIZE && c != Cause.PRELOAD_LINE) {
        sequence.draw.take(c, luck(seed, other, m, c, special, second, onlySpecial));
      }
    }
    sequence.draw.takePreloads(
        luck(seed, other, m, Cause.PRELOAD_SIZE, special, second, onlySpecial),
        luck(seed, other, m, Cause.PRELOAD_LINE, special, second, onlySpecial));
    if (sequence.run() != MountMechanics.Outcome.HELD) {
      return null;
    }
    return sequence.toolShiftInMachineAxes();
  }

  private static RandomStream luck(
      long seed,
      long other,
      long m,
      Cause cause,
      Cause special,
      boolean second,
      boolean onlySpecial) {
    if (onlySpecial) {
      return cause == special ? RemountSimulation.stream(seed, m, cause) : null;
    }
    boolean fromOther = second != (cause == special);
    return RemountSimulation.stream(fromOther ? other : seed, m, cause);
  }

  private static CauseShares gather(
      RunningCovariance all,
      Map<Cause, RunningCovariance> alone,
      Map<Cause, double[]> fromFirst,
      Map<Cause, double[]> fromSecond,
      long mounts,
      long used) {
    List<Share> shares = new ArrayList<>();
    double[] left = new double[3];
    double[] variance = new double[3];
    for (int k = 0; k < 3; k++) {
      variance[k] = used < 2 ? 0 : all.covariance(k, k);
      left[k] = variance[k] > 0 ? 1 : 0;
    }
    for (Cause c : Cause.values()) {
      double[] first = new double[3];
      double[] total = new double[3];
      for (int k = 0; k < 3; k++) {
        if (variance[k] > 0) {
          first[k] = 1 - fromSecond.get(c)[k] / (2 * used * variance[k]);
          total[k] = fromFirst.get(c)[k] / (2 * used * variance[k]);
          left[k] -= first[k];
        }
      }
      RunningCovariance single = alone.get(c);
      shares.add(
          new Share(
              c,
              single.count() < 2 ? Vec3.ZERO : single.standardDeviation(),
              new Vec3(first[0], first[1], first[2]),
              new Vec3(total[0], total[1], total[2])));
    }
    shares.sort((p, q) -> Double.compare(sum(q.total()), sum(p.total())));
    return new CauseShares(shares, new Vec3(left[0], left[1], left[2]), mounts, mounts - used);
  }

  private static double sum(Vec3 v) {
    return v.x() + v.y() + v.z();
  }
}
