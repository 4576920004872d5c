package reseat.study;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Depth;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.numerics.OnThreads;
import reseat.numerics.OrderedBatches;

/**
 * What to vary and what to ask for.
 *
 * @param file the design file, without errors
 * @param axes one key or two, with their values
 * @param outputs what to ask for
 * @param mounts tool changes to simulate at each point, if an output needs them
 * @param seed seed of all luck, the same at each point
 * @param way how the points are run; the result does not depend on it
 */
public record SweepPlan(
    AlterableDesign file,
    List<SweepAxis> axes,
    List<Output> outputs,
    int mounts,
    long seed,
    OrderedBatches way) {

  /** Most points at which tool changes are simulated where the closed form does not decide. */
  private static final int MOST_SIMULATED = 1000;

  /** Most points of one sweep. */
  public static final int MOST = 1_000_000;

  /** Refuses what cannot be swept. */
  public SweepPlan {
    axes = List.copyOf(axes);
    outputs = List.copyOf(outputs);
    if (axes.isEmpty() || axes.size() > 2) {
      throw new IllegalArgumentException("one key or two can vary, found " + axes.size());
    }
    if (axes.size() == 2 && axes.get(0).key().inFile().equals(axes.get(1).key().inFile())) {
      throw new IllegalArgumentException(axes.get(0).key().path() + " is to vary twice");
    }
    long points = 1;
    for (SweepAxis axis : axes) {
      points *= axis.values().size();
    }
    if (points > MOST) {
      throw new IllegalArgumentException(
          "a sweep has at most " + MOST + " points, found " + points);
    }
    if (mounts < 2) {
      throw new IllegalArgumentException("at least 2 mountings are needed, found " + mounts);
    }
  }

  /**
   * Plans a sweep on threads.
   *
   * @param file the design file, without errors
   * @param axes one key or two, with their values
   * @param outputs what to ask for
   * @param mounts tool changes to simulate at each point, if an output needs them
   * @param seed seed of all luck, the same at each point
   * @param threads number of threads
   */
  public SweepPlan(
      AlterableDesign file,
      List<SweepAxis> axes,
      List<Output> outputs,
      int mounts,
      long seed,
      int threads) {
    this(file, axes, outputs, mounts, seed, new OnThreads(threads));
  }

  /**
   * Returns the number of points.
   *
   * @return product of the numbers of values
   */
  public int points() {
    return axes.stream().mapToInt(a -> a.values().size()).reduce(1, (a, b) -> a * b);
  }

  /**
   * Returns the values at a point.
   *
   * @param point number of the point from 0; the last key varies fastest
   * @return one change of the file for each key
   */
  List<Alteration> at(int point) {
    List<Alteration> changes = new ArrayList<>();
    int rest = point;
    int block = points();
    for (SweepAxis axis : axes) {
      block /= axis.values().size();
      changes.add(new Alteration(axis.key(), axis.values().get(rest / block)));
      rest %= block;
    }
    return changes;
  }

  /**
   * Says how far tool changes are looked at: simulated where that decides, by the closed form alone
   * in a sweep of very many points.
   *
   * @return the depth of every point's check
   */
  Depth depth() {
    return points() <= MOST_SIMULATED ? Depth.SIMULATED : Depth.CLOSED_FORM;
  }
}
