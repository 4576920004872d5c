package reseat.remount;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import reseat.elementary.Elementary;
import reseat.numerics.NumberRow;
import reseat.numerics.RunningCovariance;
import reseat.space.Vec3;

/**
 * Running sums behind {@link CauseShares}; tallies of successive mountings can be joined in order.
 *
 * <p>Per mounting there are the shifts a and b of two independent sets, and for each cause c the
 * shift m of the first set with c's luck from the second. With y = m - a, the total share of c is
 * mean(y²) / (2 V), and its first-order share is cov(b, y) / V: that estimator is precise where y
 * is small, so a cause without effect is told as such.
 */
final class ShareTally {

  private static final Cause[] CAUSES = Cause.values();

  private final Map<Cause, RunningCovariance> alone = new EnumMap<>(Cause.class);
  private final RunningCovariance both;
  private final double[][] sumY = new double[CAUSES.length][3];
  private final double[][] sumYy = new double[CAUSES.length][3];
  private final double[][] sumBy = new double[CAUSES.length][3];
  private final double[] sumB = new double[3];
  private final double[] all = new double[3];
  private final double[] allSquared = new double[3];
  private final double[] bAllSquared = new double[3];
  private final double[] bbAllSquared = new double[3];
  private long used;
  private long dropped;

  ShareTally() {
    both = new RunningCovariance();
    for (Cause c : CAUSES) {
      alone.put(c, new RunningCovariance());
    }
  }

  private ShareTally(NumberRow row) {
    both = RunningCovariance.readFrom(row);
    for (Cause c : CAUSES) {
      alone.put(c, RunningCovariance.readFrom(row));
    }
    for (double[] sums : sums()) {
      for (int k = 0; k < 3; k++) {
        sums[k] = row.next();
      }
    }
    used = row.nextCount();
    dropped = row.nextCount();
    row.end();
  }

  /** The tally that {@link #toArray} turned into numbers. */
  static ShareTally of(double[] numbers) {
    return new ShareTally(NumberRow.of(numbers));
  }

  /** All sums and counts as numbers. */
  double[] toArray() {
    NumberRow row = new NumberRow();
    both.writeTo(row);
    for (Cause c : CAUSES) {
      alone.get(c).writeTo(row);
    }
    for (double[] sums : sums()) {
      for (double sum : sums) {
        row.put(sum);
      }
    }
    row.putCount(used);
    row.putCount(dropped);
    return row.toArray();
  }

  /** Every sum by axis, in the order in which they travel. */
  private List<double[]> sums() {
    List<double[]> sums = new ArrayList<>();
    sums.addAll(List.of(sumY));
    sums.addAll(List.of(sumYy));
    sums.addAll(List.of(sumBy));
    sums.addAll(List.of(sumB, all, allSquared, bAllSquared, bbAllSquared));
    return sums;
  }

  /** Takes the shift with one cause alone at work; null if that mounting failed. */
  void addAlone(Cause cause, Vec3 shift) {
    if (shift != null) {
      alone.get(cause).add(shift);
    }
  }

  /**
   * Takes the shifts of one mounting.
   *
   * @param a of the first set; null if it failed
   * @param b of the second set; null if it failed
   * @param mixed of the first set with one cause exchanged, by cause; null where it failed
   */
  void add(Vec3 a, Vec3 b, Map<Cause, Vec3> mixed) {
    if (a == null || b == null || mixed.containsValue(null)) {
      dropped++;
      return;
    }
    used++;
    both.add(a);
    both.add(b);
    for (int k = 0; k < 3; k++) {
      double bk = b.component(k);
      double sum = 0;
      for (int c = 0; c < CAUSES.length; c++) {
        double y = mixed.get(CAUSES[c]).component(k) - a.component(k);
        sum += y;
        sumY[c][k] += y;
        sumYy[c][k] += y * y;
        sumBy[c][k] += bk * y;
      }
      sumB[k] += bk;
      all[k] += sum;
      allSquared[k] += sum * sum;
      bAllSquared[k] += bk * sum * sum;
      bbAllSquared[k] += bk * bk * sum * sum;
    }
  }

  /** Takes in the sums of later mountings. */
  void merge(ShareTally next) {
    both.merge(next.both);
    for (Cause c : CAUSES) {
      alone.get(c).merge(next.alone.get(c));
    }
    List<double[]> ours = sums();
    List<double[]> theirs = next.sums();
    for (int i = 0; i < ours.size(); i++) {
      add(ours.get(i), theirs.get(i));
    }
    used += next.used;
    dropped += next.dropped;
  }

  private static void add(double[] to, double[] from) {
    for (int k = 0; k < 3; k++) {
      to[k] += from[k];
    }
  }

  CauseShares shares() {
    double[][] first = new double[CAUSES.length][3];
    double[][] total = new double[CAUSES.length][3];
    double[] interaction = new double[3];
    double[] error = new double[3];
    for (int k = 0; k < 3; k++) {
      double variance = used < 2 ? 0 : both.covariance(k, k);
      if (!(variance > 0)) {
        continue;
      }
      double meanB = sumB[k] / used;
      interaction[k] = 1;
      for (int c = 0; c < CAUSES.length; c++) {
        first[c][k] = (sumBy[c][k] - meanB * sumY[c][k]) / (used * variance);
        total[c][k] = sumYy[c][k] / (2 * used * variance);
        interaction[k] -= first[c][k];
      }
      double meanSquare =
          (bbAllSquared[k] - 2 * meanB * bAllSquared[k] + meanB * meanB * allSquared[k]) / used;
      double mean = (1 - interaction[k]) * variance;
      error[k] = Math.sqrt(Math.max(0, meanSquare - mean * mean) / used) / variance;
    }
    List<CauseShares.Share> shares = new ArrayList<>();
    for (int c = 0; c < CAUSES.length; c++) {
      RunningCovariance single = alone.get(CAUSES[c]);
      Vec3 deviation = single.count() < 2 ? Vec3.ZERO : single.standardDeviation();
      shares.add(new CauseShares.Share(CAUSES[c], deviation, vector(first[c]), vector(total[c])));
    }
    // rounded, so that equal shares stay in the order of the causes
    shares.sort(
        (p, q) ->
            Double.compare(
                Elementary.rint(1e9 * sum(q.total())), Elementary.rint(1e9 * sum(p.total()))));
    return new CauseShares(shares, vector(interaction), vector(error), used + dropped, dropped);
  }

  private static Vec3 vector(double[] v) {
    return new Vec3(v[0], v[1], v[2]);
  }

  private static double sum(Vec3 v) {
    return v.x() + v.y() + v.z();
  }
}
