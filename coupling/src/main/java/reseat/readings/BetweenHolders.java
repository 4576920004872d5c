package reseat.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.FDistribution;
import reseat.elementary.Elementary;

/**
 * Several holders on one mount: how well each comes back to itself, and how alike they are.
 *
 * <p>One-way analysis of variance, in the terms of ISO 5725 (recalled from memory, the standard was
 * not opened): repeatability s_r² is the mean square within holders, the variance between holders
 * s_L² = (MS between - MS within) / n0 with n0 = (N - sum n² / N) / (holders - 1), which is the
 * common number of mounts if the groups are alike; s_R² = s_r² + s_L². A negative estimate of s_L²
 * is set to zero: the holders cannot be told apart.
 *
 * @param holders figures of each holder, in the order they first appear
 * @param within mean square within holders
 * @param between mean square between holders
 * @param effective n0
 */
public record BetweenHolders(
    List<Holder> holders, double within, double between, double effective) {

  /**
   * Figures of one holder.
   *
   * @param name name or number of the holder
   * @param n number of mounts
   * @param mean mean reading
   * @param s standard deviation, 0 with a single mount
   */
  public record Holder(String name, int n, double mean, double s) {}

  /** Refuses fewer than two holders. */
  public BetweenHolders {
    holders = List.copyOf(holders);
    if (holders.size() < 2) {
      throw new IllegalArgumentException(
          "holders are compared only if there are at least 2, found " + holders.size());
    }
  }

  /**
   * Analyses the readings of several holders.
   *
   * @param names holder of each mount
   * @param readings reading of each mount, as many
   * @return the analysis
   * @throws IllegalArgumentException if there are fewer than two holders, or no holder was mounted
   *     twice
   */
  public static BetweenHolders of(List<String> names, double[] readings) {
    if (names.size() != readings.length) {
      throw new IllegalArgumentException(
          readings.length + " readings need as many holder names, found " + names.size());
    }
    Map<String, List<Double>> groups = new LinkedHashMap<>();
    for (int i = 0; i < readings.length; i++) {
      groups.computeIfAbsent(names.get(i), k -> new ArrayList<>()).add(readings[i]);
    }
    List<Holder> holders = new ArrayList<>();
    groups.forEach((name, values) -> holders.add(figures(name, values)));
    int total = readings.length;
    if (total == holders.size()) {
      throw new IllegalArgumentException(
          "holders are compared only if at least one of them was mounted twice");
    }
    double origin = readings.length == 0 ? 0 : readings[0];
    double grand = 0;
    double squares = 0;
    double inside = 0;
    for (Holder h : holders) {
      grand += h.n() * (h.mean() - origin) / total;
      squares += (double) h.n() * h.n();
      inside += (h.n() - 1) * h.s() * h.s();
    }
    double among = 0;
    for (Holder h : holders) {
      double d = h.mean() - origin - grand;
      among += h.n() * d * d;
    }
    int k = holders.size();
    return new BetweenHolders(
        holders,
        inside / (total - k),
        k > 1 ? among / (k - 1) : 0,
        k > 1 ? (total - squares / total) / (k - 1) : 0);
  }

  private static Holder figures(String name, List<Double> values) {
    if (values.size() == 1) {
      return new Holder(name, 1, values.get(0), 0);
    }
    Repeatability r = Repeatability.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    return new Holder(name, r.n(), r.mean(), r.s());
  }

  /**
   * Returns the number of mounts.
   *
   * @return mounts of all holders together
   */
  public int mounts() {
    return holders.stream().mapToInt(Holder::n).sum();
  }

  /**
   * Returns the degrees of freedom of the scatter within holders.
   *
   * @return mounts less holders
   */
  public int freedomWithin() {
    return mounts() - holders.size();
  }

  /**
   * Returns the repeatability of a holder to itself.
   *
   * @return s_r
   */
  public double repeatability() {
    return Math.sqrt(within);
  }

  /**
   * Returns the spread of the holders' own places.
   *
   * @return s_L; 0 if the holders cannot be told apart
   */
  public double interchangeability() {
    return Math.sqrt(Math.max(0, (between - within) / effective));
  }

  /**
   * Returns the scatter of any mount of any holder.
   *
   * @return s_R
   */
  public double overall() {
    return Elementary.hypot(repeatability(), interchangeability());
  }

  /**
   * Returns a bound on the spread of the holders' own places, from the spread of their means.
   *
   * @param confidence confidence level
   * @return upper bound; on the safe side, since the means also hold the repeatability
   */
  public double interchangeabilityBelow(double confidence) {
    return Math.sqrt(between / effective) * ScatterBounds.upperFactor(holders.size(), confidence);
  }

  /**
   * Returns the probability that holders so different come from equal ones.
   *
   * @return upper tail of the F ratio; 1 if nothing scatters, 0 if only the holders differ
   */
  public double chanceThatAlike() {
    if (within == 0) {
      return between == 0 ? 1 : 0;
    }
    FDistribution f = new FDistribution(null, holders.size() - 1.0, freedomWithin());
    return 1 - f.cumulativeProbability(between / within);
  }

  /**
   * Returns the probability that scatters so different come from holders with one scatter:
   * Bartlett's test over holders mounted at least twice.
   *
   * @return upper tail; 1 if fewer than two holders can be compared or nothing scatters, 0 if some
   *     holders do not scatter at all and others do
   */
  public double chanceOfOneScatter() {
    double statistic = bartlett();
    long k = holders.stream().filter(h -> h.n() > 1).count();
    if (k < 2) {
      return 1;
    }
    return statistic == Double.MAX_VALUE
        ? 0
        : 1 - new ChiSquaredDistribution(null, k - 1.0).cumulativeProbability(statistic);
  }

  /**
   * Returns Bartlett's statistic over the holders mounted at least twice.
   *
   * @return chi-square distributed with one degree of freedom less than holders; the greatest
   *     double if some do not scatter at all and others do
   */
  public double bartlett() {
    List<Holder> repeated = holders.stream().filter(h -> h.n() > 1).toList();
    if (repeated.size() < 2 || within == 0) {
      return 0;
    }
    double freedom = freedomWithin();
    double logs = 0;
    double inverses = 0;
    for (Holder h : repeated) {
      if (h.s() == 0) {
        return Double.MAX_VALUE;
      }
      logs += (h.n() - 1) * Elementary.log(h.s() * h.s());
      inverses += 1.0 / (h.n() - 1);
    }
    double correction = 1 + (inverses - 1 / freedom) / (3 * (repeated.size() - 1.0));
    return Math.max(0, (freedom * Elementary.log(within) - logs) / correction);
  }
}
