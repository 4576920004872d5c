package reseat.contact;

import reseat.elementary.Elementary;

/**
 * What the greatest force ever on a contact leaves behind, and how the contact springs afterwards,
 * at any force up to that one.
 *
 * @param state how deep it is
 * @param greatestForce greatest force ever on the contact, N
 * @param sink approach of ball and seat under that force at the first loading, m
 * @param depth what of it stays, m; zero if nothing flowed
 * @param exponent n of the law of loading again, 1.5 if nothing flowed
 * @param semiMajor half of the dent's length under that force, m
 * @param semiMinor half of its width, m
 * @param lip height of the raised rim, m, an upper figure
 * @param established false where the dent is an ellipse and its figures an estimate
 */
public record Dent(
    State state,
    double greatestForce,
    double sink,
    double depth,
    double exponent,
    double semiMajor,
    double semiMinor,
    double lip,
    boolean established) {

  /** What a load leaves behind in a contact, mildest first. */
  public enum State {
    /** Nothing: no mark. */
    ELASTIC,
    /** A little settling at the first mount, nothing to be seen. */
    SETTLES,
    /** A dent; usable after work-in. */
    DENTS,
    /** A dent like a Brinell ball's, with a raised lip. */
    DENTS_FULLY
  }

  /**
   * Returns the approach in the worked-in contact.
   *
   * @param force zero to {@link #greatestForce()}, N; beyond it the same curve goes on
   * @return approach, what stays included, m
   */
  public double approach(double force) {
    return force > 0
        ? depth + (sink - depth) * Elementary.pow(force / greatestForce, 1 / exponent)
        : depth;
  }

  /**
   * Returns the stiffness of the worked-in contact.
   *
   * @param force above zero, N
   * @return dN/d delta, N/m
   */
  public double stiffness(double force) {
    return exponent * force / (approach(force) - depth);
  }

  /**
   * Returns the diameter of the dent.
   *
   * @return m; of an ellipse the diameter of the circle of the same area
   */
  public double diameter() {
    return 2 * Math.sqrt(semiMajor * semiMinor);
  }

  /**
   * Returns the pressure in the dent, nearly even over it.
   *
   * @return greatest force over the area of the dent, Pa
   */
  public double meanPressure() {
    return greatestForce / (Math.PI * semiMajor * semiMinor);
  }

  /**
   * Returns the force that presses a dent as wide as one that lands elsewhere needs.
   *
   * @param scatter how far from its place the ball may land, m
   * @return force that, at first, makes later landings elastic, N: {@code N (1 + d/a)^2}, the mean
   *     pressure being nearly constant
   */
  public double proofForce(double scatter) {
    double wider = 1 + scatter / (diameter() / 2);
    return greatestForce * wider * wider;
  }
}
