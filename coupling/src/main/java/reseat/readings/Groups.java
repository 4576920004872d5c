package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which holder each mount of a series belongs to. Tests on several holders at once compare readings
 * with the mean of their own holder and count the degrees of freedom that those means use up.
 */
final class Groups {

  private final int[] code;
  private final int[] sizes;

  private Groups(int[] code, int count) {
    this.code = code;
    this.sizes = new int[count];
    for (int c : code) {
      sizes[c]++;
    }
  }

  /**
   * Puts all mounts in one group.
   *
   * @param n number of mounts
   * @return one group
   */
  static Groups one(int n) {
    return new Groups(new int[n], n == 0 ? 0 : 1);
  }

  /**
   * Groups mounts by name.
   *
   * @param names group of each mount; an empty list puts them all in one
   * @param n number of mounts
   * @return the groups, in the order in which they first appear
   */
  static Groups of(List<String> names, int n) {
    if (names.isEmpty()) {
      return one(n);
    }
    if (names.size() != n) {
      throw new IllegalArgumentException(
          n + " readings need as many holder names, found " + names.size());
    }
    Map<String, Integer> codes = new HashMap<>();
    int[] code = new int[n];
    for (int i = 0; i < n; i++) {
      Integer known = codes.putIfAbsent(names.get(i), codes.size());
      code[i] = known == null ? codes.size() - 1 : known;
    }
    return new Groups(code, codes.size());
  }

  /**
   * Returns the groups of the later mounts.
   *
   * @param from mounts left out at the start
   * @return groups of the rest
   */
  Groups from(int from) {
    int[] fresh = new int[sizes.length];
    Arrays.fill(fresh, -1);
    int[] rest = new int[code.length - from];
    int count = 0;
    for (int i = from; i < code.length; i++) {
      if (fresh[code[i]] < 0) {
        fresh[code[i]] = count++;
      }
      rest[i - from] = fresh[code[i]];
    }
    return new Groups(rest, count);
  }

  int count() {
    return sizes.length;
  }

  int mounts() {
    return code.length;
  }

  int groupOf(int mount) {
    return code[mount];
  }

  /**
   * Returns the size of the group of a mount.
   *
   * @param mount its place
   * @return mounts in its group
   */
  int sizeAt(int mount) {
    return sizes[code[mount]];
  }

  int smallest() {
    return Arrays.stream(sizes).min().orElse(0);
  }

  /**
   * Returns the degrees of freedom left by the means of the groups.
   *
   * @return mounts less groups
   */
  int freedom() {
    return code.length - sizes.length;
  }

  /**
   * Takes the mean of its group from every reading; equal readings give exactly zero.
   *
   * @param values one per mount
   * @return deviations
   */
  double[] deviations(double[] values) {
    double[] first = new double[sizes.length];
    boolean[] seen = new boolean[sizes.length];
    double[] sum = new double[sizes.length];
    for (int i = 0; i < values.length; i++) {
      int g = code[i];
      if (!seen[g]) {
        seen[g] = true;
        first[g] = values[i];
      }
      sum[g] += values[i] - first[g];
    }
    double[] out = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      int g = code[i];
      out[i] = values[i] - first[g] - sum[g] / sizes[g];
    }
    return out;
  }

  /**
   * Splits readings by group.
   *
   * @param values one per mount
   * @return readings of each group, in the order of the mounts
   */
  List<double[]> split(double[] values) {
    if (sizes.length == 1) {
      return List.of(values.clone());
    }
    double[][] parts = new double[sizes.length][];
    int[] filled = new int[sizes.length];
    for (int g = 0; g < sizes.length; g++) {
      parts[g] = new double[sizes[g]];
    }
    for (int i = 0; i < values.length; i++) {
      parts[code[i]][filled[code[i]]++] = values[i];
    }
    return new ArrayList<>(Arrays.asList(parts));
  }
}
