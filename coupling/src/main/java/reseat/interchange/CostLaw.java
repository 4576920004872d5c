package reseat.interchange;

import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * What it costs to keep a dimension within a limit: a/t^p.
 *
 * <p>The reciprocal power is the simple law of tolerance allocation (from memory); a and p are the
 * user's to set.
 *
 * @param coefficient a, cost times the unit of the limit to the power p; positive
 * @param exponent p; positive
 * @param tightest smallest limit that can be made, m, rad or K; positive
 * @param loosest largest limit that is accepted, m, rad or K; not below the tightest
 */
public record CostLaw(double coefficient, double exponent, double tightest, double loosest) {

  /** Refuses laws under which nothing costs anything and limits out of order. */
  public CostLaw {
    Bounds.positive("cost coefficient", coefficient, "");
    Bounds.positive("cost exponent", exponent, "");
    Bounds.positive("tightest limit", tightest, "");
    if (!(loosest >= tightest) || Double.isInfinite(loosest)) {
      throw new IllegalArgumentException(
          "the loosest limit is "
              + PrintedNumber.shortest(loosest)
              + ": it must be finite and not below the tightest, "
              + PrintedNumber.shortest(tightest));
    }
  }

  /**
   * Returns the law under which the present limit costs one unit.
   *
   * @param limit present limit, m, rad or K
   * @param exponent p
   * @param range how many times tighter or looser than the present limit is allowed; at least 1
   * @return the law
   */
  public static CostLaw unitAt(double limit, double exponent, double range) {
    return new CostLaw(Elementary.pow(limit, exponent), exponent, limit / range, limit * range);
  }

  /**
   * Returns the cost of a limit.
   *
   * @param limit m, rad or K
   * @return cost, in the user's unit
   */
  public double cost(double limit) {
    return coefficient / Elementary.pow(limit, exponent);
  }
}
