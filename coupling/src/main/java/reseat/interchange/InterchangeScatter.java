package reseat.interchange;

import java.util.EnumSet;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.special.Erf;
import reseat.elementary.Elementary;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * Repeatability, interchangeability and accuracy of the tool point side by side, as standard
 * deviations along the machine axes, m.
 *
 * <p>Independent parts add as squares. An offset table takes away what a holder carries with it for
 * good; what it cannot take away is how well the holder was measured for it, how well it comes
 * back, and what differs from one occasion to the next (temperature).
 *
 * @param repeatability one holder that returns to itself, as given
 * @param calibration uncertainty of an entry of the offset table, as given
 * @param occasion what differs from one occasion to the next, among the tolerances
 * @param holderOwn errors that each holder carries with it
 * @param postOwn errors of the post, common to all its holders
 */
public record InterchangeScatter(
    Vec3 repeatability, Vec3 calibration, Vec3 occasion, Vec3 holderOwn, Vec3 postOwn) {

  /** Refuses negative standard deviations. */
  public InterchangeScatter {
    checkNotNegative("repeatability", repeatability);
    checkNotNegative("calibration uncertainty", calibration);
    checkNotNegative("spread of the occasion", occasion);
    checkNotNegative("spread of holders", holderOwn);
    checkNotNegative("spread of posts", postOwn);
  }

  private static void checkNotNegative(String what, Vec3 v) {
    if (v.x() < 0 || v.y() < 0 || v.z() < 0) {
      throw new IllegalArgumentException(
          what
              + " is a standard deviation along each machine axis and must not be negative, found ("
              + PrintedNumber.shortest(v.x())
              + ", "
              + PrintedNumber.shortest(v.y())
              + ", "
              + PrintedNumber.shortest(v.z())
              + ") m");
    }
  }

  /**
   * Takes the spread of parts from the linear stack.
   *
   * @param stack tolerances added up
   * @param repeatability standard deviation of one holder that returns to itself, machine axes, m
   * @param calibration standard uncertainty of an entry of the offset table, machine axes, m
   * @return the scatter
   */
  public static InterchangeScatter of(LinearStack stack, Vec3 repeatability, Vec3 calibration) {
    return new InterchangeScatter(
        repeatability,
        calibration,
        stack.sum(EnumSet.of(Owner.OCCASION)).deviation(),
        stack.sum(EnumSet.of(Owner.HOLDER)).deviation(),
        stack.sum(EnumSet.of(Owner.POST)).deviation());
  }

  /**
   * Returns the spread between holders on one post without an offset table: interchangeability.
   *
   * @return errors of the holders, the occasion and repeatability together
   */
  public Vec3 withoutTable() {
    return together(holderOwn, occasion, repeatability);
  }

  /**
   * Returns the spread between holders on one post, each corrected by its entry in the offset
   * table.
   *
   * @return calibration uncertainty, the occasion and repeatability together
   */
  public Vec3 withTable() {
    return together(calibration, occasion, repeatability);
  }

  /**
   * Returns how far a holder on a post may stand from the drawing: accuracy.
   *
   * @return errors of post and holder, the occasion and repeatability together
   */
  public Vec3 againstDrawing() {
    return together(postOwn, holderOwn, occasion, repeatability);
  }

  private static Vec3 together(Vec3... parts) {
    double[] sum = new double[3];
    for (Vec3 p : parts) {
      for (int k = 0; k < 3; k++) {
        sum[k] += p.component(k) * p.component(k);
      }
    }
    return new Vec3(Math.sqrt(sum[0]), Math.sqrt(sum[1]), Math.sqrt(sum[2]));
  }

  /**
   * Returns how far apart the first and the last of a few holders stand on average, over their
   * standard deviation.
   *
   * <p>Mean range of n independent normal values: the integral of 1 - Φ(x)ⁿ - (1 - Φ(x))ⁿ over all
   * x (formula from memory, gives the usual control-chart constant d2).
   *
   * @param holders number of holders, 2 to 1000
   * @return dimensionless, for instance 2.326 for five
   */
  public static double expectedRange(int holders) {
    if (holders < 2 || holders > 1000) {
      throw new IllegalArgumentException("a range needs 2 to 1000 holders, found " + holders);
    }
    return new IterativeLegendreGaussIntegrator(16, 1e-10, 1e-10)
        .integrate(
            100_000,
            x -> {
              double below = Erf.erfc(-x / Math.sqrt(2)) / 2;
              double above = Erf.erfc(x / Math.sqrt(2)) / 2;
              return 1 - Elementary.pow(below, holders) - Elementary.pow(above, holders);
            },
            -9,
            9);
  }
}
