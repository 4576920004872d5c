package reseat.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Scatter about the mean of each group, pooled over the groups: with one group the ordinary
 * standard deviation.
 *
 * @param s pooled standard deviation; 0 if no group has two readings
 * @param freedom readings less groups
 * @param readings number of readings
 */
public record PooledScatter(double s, int freedom, int readings) {

  /**
   * Pools the readings of several groups.
   *
   * @param values readings
   * @param groups group of each reading
   * @return the pooled scatter
   */
  static PooledScatter of(double[] values, Groups groups) {
    double squares = 0;
    for (double d : groups.deviations(values)) {
      squares += d * d;
    }
    int freedom = groups.freedom();
    return new PooledScatter(
        freedom == 0 ? 0 : Math.sqrt(squares / freedom), freedom, values.length);
  }

  /**
   * Pools the readings of several groups without some of them.
   *
   * @param leftOut places of the readings left out
   * @param values readings
   * @param names group of each reading; an empty list if they are all of one group
   * @return the pooled scatter of the rest
   */
  static PooledScatter without(Set<Integer> leftOut, double[] values, List<String> names) {
    double[] kept = new double[values.length - leftOut.size()];
    List<String> keptNames = new ArrayList<>();
    int k = 0;
    for (int i = 0; i < values.length; i++) {
      if (!leftOut.contains(i)) {
        kept[k++] = values[i];
        if (!names.isEmpty()) {
          keptNames.add(names.get(i));
        }
      }
    }
    return of(kept, Groups.of(keptNames, k));
  }

  /**
   * Returns what this scatter says of the true one.
   *
   * @param confidence confidence level
   * @return the bounds, for as many mounts as would give this freedom in one group
   */
  public ScatterBounds bounds(double confidence) {
    return ScatterBounds.of(s, freedom + 1, confidence);
  }
}
