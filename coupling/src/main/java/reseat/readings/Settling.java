package reseat.readings;

import java.util.Arrays;
import reseat.numerics.RandomStream;

/**
 * From which mount on a series has settled.
 *
 * <p>Wear-in is a run from one level to another that dies out. The readings are replaced by their
 * ranks (so that one outlier weighs little), and for every place k a line is fitted that slopes up
 * to mount k and is level after it; the k that explains most of the variance is the change point.
 * Whether there is a run at all is judged by shuffling the ranks: if a series without order
 * explains as much in more than the stated share of shuffles, the series counts as settled from the
 * start. The test is then repeated on what follows the change point, until nothing more is seen
 * (settled) or fewer than {@value #LEAST_TAIL} mounts are left (not settled within the test).
 *
 * <p>Because shuffling needs no distribution, the chance of throwing away mounts of a series that
 * was settled from the start is the stated one, normal or not, as long as the readings are
 * independent; {@link #FALSE_ALARM} unless another is asked for. For a run that dies out
 * exponentially the change point falls where the rest of it is about half a standard deviation or
 * less. After a run has been seen, each repeat of the test may take a further stretch with the same
 * chance. More than {@value #MOST_BLOCKS} mounts are first averaged in equal blocks, and the change
 * point is told to a block. The shuffles are drawn from a fixed seed: the same series always gives
 * the same answer.
 *
 * @param wearIn number of mounts at the start that belong to the wear-in; 0 if none
 * @param settled false if the series was still running at its end
 * @param p probability of so clear a run in a settled series of that length
 */
public record Settling(int wearIn, boolean settled, double p) {

  /** Chance of seeing a run in a settled series, unless another is asked for. */
  public static final double FALSE_ALARM = 0.05;

  /** Fewest mounts that must follow the change point for the series to count as settled. */
  public static final int LEAST_TAIL = 10;

  /** Fewest mounts in which a run is looked for. */
  public static final int LEAST_MOUNTS = 12;

  private static final int MOST_BLOCKS = 1000;
  private static final int SHUFFLES = 999;
  private static final long SEED = 20_260_101L;

  /**
   * Looks for wear-in.
   *
   * @param readings readings in the order of the mounts
   * @return the change point, at the usual chance of a false alarm
   */
  public static Settling of(double[] readings) {
    return of(readings, FALSE_ALARM);
  }

  /**
   * Looks for wear-in at a stated chance of a false alarm.
   *
   * @param readings readings in the order of the mounts; with fewer than {@value #LEAST_MOUNTS}
   *     nothing is looked for and the series counts as settled with p = 1
   * @param falseAlarm chance of seeing a run in a settled series, between 0 and 1
   * @return the change point
   */
  public static Settling of(double[] readings, double falseAlarm) {
    return of(readings, Groups.one(readings.length), falseAlarm);
  }

  /**
   * Looks for wear-in in readings of several groups: each is compared with the mean of its group,
   * and shuffled within its group only. Small groups have few arrangements, many of them equally
   * clear, so that the chance of a false alarm is then below the stated one.
   *
   * @param readings readings in the order of the mounts
   * @param groups group of each
   * @param falseAlarm chance of seeing a run in a settled series, between 0 and 1
   * @return the change point
   */
  static Settling of(double[] readings, Groups groups, double falseAlarm) {
    ScatterBounds.requireConfidence(falseAlarm);
    int block = (readings.length + MOST_BLOCKS - 1) / MOST_BLOCKS;
    double[] y = block > 1 ? blockMeans(groups.deviations(readings), block) : readings;
    Groups of = block > 1 ? Groups.one(y.length) : groups;
    RandomStream random = RandomStream.of(SEED, 0);
    double first = 1;
    int start = 0;
    boolean settled = true;
    while (y.length - start >= (start == 0 ? LEAST_MOUNTS : LEAST_TAIL)) {
      Groups rest = of.from(start);
      double[] ranks = ranks(rest.deviations(Arrays.copyOfRange(y, start, y.length)));
      int least = Math.max(3, ranks.length / 4);
      Fit fit = Fit.best(ranks, least);
      double p = chance(ranks, rest, least, fit.explained(), random);
      first = start == 0 ? p : first;
      if (p > falseAlarm) {
        break;
      }
      start += fit.place();
      settled = y.length - start >= LEAST_TAIL;
    }
    return new Settling(start * block, settled, first);
  }

  private static double chance(
      double[] ranks, Groups groups, int least, double explained, RandomStream random) {
    int[][] members = new int[groups.count()][];
    int[] filled = new int[members.length];
    for (int i = 0; i < ranks.length; i++) {
      int g = groups.groupOf(i);
      members[g] = members[g] == null ? new int[groups.sizeAt(i)] : members[g];
      members[g][filled[g]++] = i;
    }
    double[] shuffled = ranks.clone();
    int asClear = 0;
    for (int s = 0; s < SHUFFLES; s++) {
      for (int[] group : members) {
        for (int i = group.length - 1; i > 0; i--) {
          int j = random.below(i + 1);
          double keep = shuffled[group[i]];
          shuffled[group[i]] = shuffled[group[j]];
          shuffled[group[j]] = keep;
        }
      }
      if (Fit.best(shuffled, least).explained() >= explained) {
        asClear++;
      }
    }
    return (asClear + 1.0) / (SHUFFLES + 1);
  }

  private static double[] blockMeans(double[] y, int block) {
    double[] means = new double[y.length / block];
    for (int i = 0; i < means.length; i++) {
      double sum = 0;
      for (int j = 0; j < block; j++) {
        sum += y[i * block + j];
      }
      means[i] = sum / block;
    }
    return means;
  }

  /** Ranks less their mean; equal readings share the mean of their ranks. */
  private static double[] ranks(double[] y) {
    int n = y.length;
    double[] sorted = y.clone();
    Arrays.sort(sorted);
    double[] ranks = new double[n];
    for (int i = 0; i < n; i++) {
      int lo = lowerBound(sorted, y[i], false);
      int hi = lowerBound(sorted, y[i], true);
      ranks[i] = (lo + hi - n) / 2.0;
    }
    return ranks;
  }

  /** Number of sorted values below v, or not above it. */
  private static int lowerBound(double[] sorted, double v, boolean countEqual) {
    int lo = 0;
    int hi = sorted.length;
    while (lo < hi) {
      int mid = (lo + hi) >>> 1;
      if (sorted[mid] < v || (countEqual && sorted[mid] == v)) {
        lo = mid + 1;
      } else {
        hi = mid;
      }
    }
    return lo;
  }

  /**
   * The line, sloping up to a place and level after it, that explains most.
   *
   * @param place number of readings before the level part
   * @param explained share of the variance explained, 0 to 1
   */
  private record Fit(int place, double explained) {

    /**
     * Tries every place, keeping running sums so that the whole search takes one pass.
     *
     * @param y readings with mean 0
     * @param least fewest readings that the level part must hold
     */
    static Fit best(double[] y, int least) {
      int n = y.length;
      double total = 0;
      for (double v : y) {
        total += v * v;
      }
      double before = 0; // sum of y over the first k readings
      double hinge = 0; // sum of (k - i) y[i] over i < k
      int place = 0;
      double most = 0;
      for (int k = 1; k <= n - least; k++) {
        before += y[k - 1];
        hinge += before;
        double sum = 0.5 * k * (k + 1.0);
        double squares = k * (k + 1.0) * (2.0 * k + 1) / 6 - sum * sum / n;
        double explained = hinge * hinge / squares;
        if (explained > most) {
          most = explained;
          place = k;
        }
      }
      return new Fit(place, total > 0 ? most / total : 0);
    }
  }
}
