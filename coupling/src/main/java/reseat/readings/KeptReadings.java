package reseat.readings;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Settled readings of a column with the holder of each, perhaps without those that stand out. */
final class KeptReadings {

  /** Degrees of freedom from which a line is fitted. */
  private static final int LEAST_FOR_LINE = 3;

  private final double[] values;
  private final Groups groups;

  private KeptReadings(double[] values, Groups groups) {
    this.values = values;
    this.groups = groups;
  }

  /**
   * Keeps all but some readings.
   *
   * @param all readings in the order of the mounts
   * @param names holder of each; empty for one
   * @param out places of those that are not kept
   * @return the others
   */
  static KeptReadings of(double[] all, List<String> names, Set<Integer> out) {
    int[] kept = IntStream.range(0, all.length).filter(i -> !out.contains(i)).toArray();
    List<String> of = names.isEmpty() ? names : Arrays.stream(kept).mapToObj(names::get).toList();
    return new KeptReadings(
        Arrays.stream(kept).mapToDouble(i -> all[i]).toArray(), Groups.of(of, kept.length));
  }

  double[] values() {
    return values.clone();
  }

  Groups groups() {
    return groups;
  }

  PooledScatter scatter() {
    return PooledScatter.of(values, groups);
  }

  /**
   * Takes a straight line over the mounts away.
   *
   * @return the scatter about it, with one degree of freedom less; empty if too few are left
   */
  Optional<PooledScatter> aboutLine() {
    return groups.freedom() < LEAST_FOR_LINE
        ? Optional.empty()
        : Optional.of(
            new PooledScatter(
                LinearTrend.perMount(values, groups).residual(),
                groups.freedom() - 1,
                values.length));
  }

  /**
   * Looks for a trend.
   *
   * @param level chance of a false alarm
   * @return what the tests say; steady if too few are left
   */
  Drift.Verdict trend(double level) {
    return groups.freedom() < 2 ? Drift.Verdict.STEADY : Drift.of(values, groups, level).verdict();
  }

  /**
   * Returns the skewness about the means of the holders.
   *
   * @return mean cube of the deviations over the cube of their standard deviation; 0 if nothing
   *     scatters
   */
  double skewness() {
    double squares = 0;
    double cubes = 0;
    for (double v : groups.deviations(values)) {
      squares += v * v;
      cubes += v * v * v;
    }
    double s = Math.sqrt(squares / values.length);
    return s > 0 ? cubes / (values.length * s * s * s) : 0;
  }
}
