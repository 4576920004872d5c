package reseat.contact;

import reseat.material.ElasticPair;

/**
 * How the contact of a ball gives way along its normal and how hard it presses.
 *
 * <p>Either an {@link EllipticContact}, at a point, or a {@link RingThird}, along a part of a ring.
 */
public sealed interface BallContact permits EllipticContact, RingThird {

  /**
   * Calls the visitor's method for this kind of contact.
   *
   * @param visitor the visitor
   * @param <T> type of the answer
   * @return the visitor's answer
   */
  <T> T accept(Visitor<T> visitor);

  /**
   * Returns the elastic constants of both bodies.
   *
   * @return ball and seat
   */
  ElasticPair elasticity();

  /**
   * Returns the approach of the two bodies.
   *
   * @param force normal force, zero or more, N
   * @return approach along the normal, m
   */
  double approach(double force);

  /**
   * Returns the force of a given approach.
   *
   * @param approach approach, m; negative for open bodies
   * @return normal force, N, zero for open bodies
   */
  double force(double approach);

  /**
   * Returns the tangent stiffness along the normal.
   *
   * @param force normal force, zero or more, N
   * @return dN/d delta, N/m
   */
  double normalStiffness(double force);

  /**
   * Returns the tangential stiffness along the patch's long axis over the normal one, no slip.
   *
   * @return ratio, the same at any force
   */
  double tangentialRatioLong();

  /**
   * Returns the tangential stiffness along the patch's short axis over the normal one, no slip.
   *
   * @return ratio, the same at any force
   */
  double tangentialRatioShort();

  /**
   * Returns half of the patch's length.
   *
   * @param force normal force, zero or more, N
   * @return a, m
   */
  double semiMajor(double force);

  /**
   * Returns half of the patch's width.
   *
   * @param force normal force, zero or more, N
   * @return b, m
   */
  double semiMinor(double force);

  /**
   * Returns the pressure in the middle of the patch.
   *
   * @param force normal force, zero or more, N
   * @return p0, Pa
   */
  double peakPressure(double force);

  /**
   * Returns the force at which the pressure in the middle reaches a value.
   *
   * @param peakPressure p0, zero or more, Pa
   * @return normal force, N
   */
  double forceAtPeakPressure(double peakPressure);

  /**
   * Returns the aspect ratio of the patch for the stress below it.
   *
   * @return b/a; for a line contact a value so small that the stress is that of an endless line
   */
  double aspect();

  /**
   * Says whether another contact has the same law but for materials.
   *
   * @param other the other contact
   * @return true if the surfaces meet alike
   */
  boolean hasShapeOf(BallContact other);

  /**
   * One method for each kind of contact, so that a new kind must be handled everywhere.
   *
   * @param <T> type of the answer
   */
  interface Visitor<T> {

    /**
     * A contact at a point.
     *
     * @param contact the contact
     * @return the answer
     */
    T point(EllipticContact contact);

    /**
     * A contact along a third of a ring.
     *
     * @param contact the contact
     * @return the answer
     */
    T ringThird(RingThird contact);
  }
}
