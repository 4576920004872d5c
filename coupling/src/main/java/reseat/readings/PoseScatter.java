package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import reseat.elementary.Elementary;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/**
 * How a holder moves from mount to mount as a whole: the readings of several probes turned into
 * motions, and the motions into the shift of a point such as the tool point.
 *
 * <p>Each mount is compared with the mean of its holder, so that the motions have mean zero and
 * their scatter about it is what counts. The part of that scatter which the probe noise explains is
 * given beside it.
 */
public final class PoseScatter {

  private final ProbeLayout layout;
  private final List<ProbePose> poses;
  private final int freedom;

  private PoseScatter(ProbeLayout layout, List<ProbePose> poses, int freedom) {
    this.layout = layout;
    this.poses = List.copyOf(poses);
    this.freedom = freedom;
  }

  /**
   * A scatter with the part of it that the probes themselves cause.
   *
   * @param s standard deviation over the mounts, m or rad
   * @param probeNoise standard deviation that the probe noise alone would give
   */
  public record Figure(double s, double probeNoise) {}

  /**
   * Solves a series mount by mount, as far as every probe was read.
   *
   * @param layout probes, each with the name of a column that reads a length
   * @param series the series
   * @param wearIn mounts left out at the start
   * @return the poses
   * @throws IllegalArgumentException if a probe has no such column, if the layout cannot tell the
   *     motions asked for, or if fewer than two mounts of one holder are left
   */
  public static PoseScatter of(ProbeLayout layout, MeasuredSeries series, int wearIn) {
    int[] read =
        IntStream.range(wearIn, series.mounts()).filter(i -> isRead(layout, series, i)).toArray();
    Groups groups = Groups.of(series.holdersAt(read), read.length);
    if (groups.freedom() < 1) {
      throw new IllegalArgumentException("scatter of poses needs at least 2 mounts of one holder");
    }
    List<double[]> parts = new ArrayList<>();
    for (Probe p : layout.probes()) {
      Optional<ReadingColumn> column = series.column(p.name());
      if (column.isEmpty() || column.get().quantity() != QuantityKind.LENGTH) {
        throw new IllegalArgumentException(
            "probe "
                + p.name()
                + " has no column of lengths in "
                + series.source()
                + ", which has "
                + String.join(", ", series.columns().stream().map(ReadingColumn::name).toList()));
      }
      double[] all = column.get().values();
      parts.add(groups.deviations(Arrays.stream(read).mapToDouble(i -> all[i]).toArray()));
    }
    layout.requireSufficient();
    List<ProbePose> poses = new ArrayList<>();
    for (int m = 0; m < groups.mounts(); m++) {
      double[] readings = new double[parts.size()];
      for (int i = 0; i < readings.length; i++) {
        readings[i] = parts.get(i)[m];
      }
      poses.add(layout.solve(readings));
    }
    return new PoseScatter(layout, poses, groups.freedom());
  }

  private static boolean isRead(ProbeLayout layout, MeasuredSeries series, int mount) {
    return layout.probes().stream()
        .map(p -> series.column(p.name()))
        .flatMap(Optional::stream)
        .allMatch(c -> c.isRead(mount));
  }

  /**
   * Returns the probes.
   *
   * @return the layout
   */
  public ProbeLayout layout() {
    return layout;
  }

  /**
   * Returns the pose of each mount, as a change from the mean of its holder.
   *
   * @return in the order of the mounts
   */
  public List<ProbePose> poses() {
    return poses;
  }

  /**
   * Returns the scatter of each motion solved for.
   *
   * @return figures by motion, in the order of a twist
   */
  public Map<RigidMotion, Figure> motions() {
    Map<RigidMotion, Figure> out = new EnumMap<>(RigidMotion.class);
    for (RigidMotion f : layout.freedoms()) {
      double squares = 0;
      for (ProbePose p : poses) {
        Vec3 part = f.isRotation() ? p.motion().rotation() : p.motion().translation();
        squares += Elementary.pow(part.dot(f.axis()), 2);
      }
      out.put(f, new Figure(Math.sqrt(squares / freedom), poses.get(0).uncertainty(f)));
    }
    return out;
  }

  /**
   * Returns the scatter of a point that moves with the holder, along a direction.
   *
   * @param point the point, m
   * @param direction unit vector
   * @return the figure, m
   */
  public Figure scatterOf(Vec3 point, Vec3 direction) {
    double squares = 0;
    for (ProbePose p : poses) {
      squares += Elementary.pow(p.shiftOf(point).dot(direction), 2);
    }
    return new Figure(Math.sqrt(squares / freedom), poses.get(0).uncertaintyOf(point, direction));
  }

  /**
   * Returns how well the probes agree with a rigid body, over all mounts.
   *
   * @return rms residual of the spare readings over their noise, 1 if they agree within the noise;
   *     empty if there are no spare readings
   */
  public Optional<Double> misfit() {
    int spare = poses.get(0).spare();
    if (spare == 0) {
      return Optional.empty();
    }
    double sum = poses.stream().mapToDouble(ProbePose::misfit).sum();
    return Optional.of(Math.sqrt(sum / ((double) spare * freedom)));
  }
}
