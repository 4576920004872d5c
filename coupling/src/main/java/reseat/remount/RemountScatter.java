package reseat.remount;

import java.util.List;
import reseat.numerics.RunningCovariance;
import reseat.numerics.RunningHistogram;
import reseat.space.Vec3;

/**
 * What many simulated mountings came to.
 *
 * <p>Shifts of the tool point in machine axes, against the frictionless state of rest under nominal
 * preload and weight. Failed mountings have no position: they are counted and explained, and are
 * not in the statistics.
 *
 * @param plan what was simulated
 * @param seated number of mountings that seated
 * @param toolPoint shift of the tool point
 * @param rotation rotation of the holder about the machine axes, rad
 * @param afterCut further shift once a cutting load has come and gone; no count if not simulated
 * @param afterReclamp further shift once the preload was let go and applied again; likewise
 * @param failures failed mountings by kind and contact, most frequent first
 */
public record RemountScatter(
    RemountPlan plan,
    long seated,
    Spot toolPoint,
    Spot rotation,
    Spot afterCut,
    Spot afterReclamp,
    List<Failure> failures) {

  /** Copies the list. */
  public RemountScatter {
    failures = List.copyOf(failures);
  }

  /**
   * Returns the number of mountings that did not seat.
   *
   * @return count over all kinds of failure
   */
  public long failed() {
    return failures.stream().mapToLong(Failure::count).sum();
  }

  /**
   * Scatter of a vector over mountings, along the three machine axes.
   *
   * @param count number of mountings
   * @param mean mean
   * @param deviation standard deviation
   * @param least smallest value
   * @param greatest largest value
   * @param band half-width about the mean that holds 95 % of the mountings; zero if not counted
   * @param covariances covariances of first with second, second with third, third with first axis
   */
  public record Spot(
      long count,
      Vec3 mean,
      Vec3 deviation,
      Vec3 least,
      Vec3 greatest,
      Vec3 band,
      Vec3 covariances) {

    static Spot of(RunningCovariance c, RunningHistogram[] bands) {
      if (c.count() < 2) {
        return new Spot(
            c.count(), Vec3.ZERO, Vec3.ZERO, Vec3.ZERO, Vec3.ZERO, Vec3.ZERO, Vec3.ZERO);
      }
      double[] band = new double[3];
      for (int k = 0; k < bands.length; k++) {
        band[k] = bands[k].halfWidth(c.mean().component(k), 0.95);
      }
      return new Spot(
          c.count(),
          c.mean(),
          c.standardDeviation(),
          c.minimum(),
          c.maximum(),
          new Vec3(band[0], band[1], band[2]),
          new Vec3(c.covariance(0, 1), c.covariance(1, 2), c.covariance(2, 0)));
    }

    /**
     * Returns the distance between extremes.
     *
     * @return greatest less least, along each axis
     */
    public Vec3 range() {
      return greatest.minus(least);
    }
  }

  /**
   * One way in which mountings failed.
   *
   * @param kind which way
   * @param contact name of the contact that hung or tipped; empty if none is to blame
   * @param count how many mountings
   */
  public record Failure(Kind kind, String contact, long count) {

    /** Ways in which a mounting fails. */
    public enum Kind {
      /** Friction holds the slide before the contact has closed. */
      HANGS,
      /** While the others slide, the contact would have to pull: the holder tips there. */
      TIPS,
      /** Contacts opened under the load and the holder did not come to rest. */
      NO_REST
    }

    /**
     * Returns the failure in words.
     *
     * @return one sentence
     */
    public String words() {
      return switch (kind) {
        case HANGS -> "hangs up before " + contact + " closes";
        case TIPS -> "tips off " + contact + " while sliding home";
        case NO_REST -> "finds no rest under the load";
      };
    }
  }
}
