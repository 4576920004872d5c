package reseat.seat;

import reseat.space.Vec3;

/**
 * One surface of a seat that touches a ball at one point.
 *
 * <p>Either a {@link PlaneFlank} or a {@link CylinderFlank}.
 */
public sealed interface Flank permits PlaneFlank, CylinderFlank {

  /**
   * Returns the name of the flank in its seat.
   *
   * @return for instance {@code left}
   */
  String name();

  /**
   * Calls the visitor's method for this kind of flank.
   *
   * @param visitor the visitor
   * @param <T> type of the answer
   * @return the visitor's answer
   */
  <T> T accept(Visitor<T> visitor);

  /**
   * Returns how far a ball is from touching.
   *
   * @param centre centre of the ball, m
   * @param ballRadius radius of the ball, m
   * @return gap, m; negative if the undeformed shapes overlap
   */
  double gap(Vec3 centre, double ballRadius);

  /**
   * Returns the contact normal for a ball.
   *
   * @param centre centre of the ball, m
   * @return unit vector out of the seat into the ball
   */
  Vec3 normal(Vec3 centre);

  /**
   * Returns the radius of the flank across its generators.
   *
   * @return m: positive for a convex cylinder, negative for a hollow one, infinite for a plane
   */
  double signedRadius();

  /**
   * Returns the direction of the flank's straight generators.
   *
   * @return unit vector; for a plane, the direction of the groove it belongs to
   */
  Vec3 generator();

  /**
   * Returns the point where the ball touches, or would touch if the gap were closed.
   *
   * @param centre centre of the ball, m
   * @param ballRadius radius of the ball, m
   * @return point on the undeformed ball, m
   */
  default Vec3 contactPoint(Vec3 centre, double ballRadius) {
    return centre.minus(normal(centre).times(ballRadius));
  }

  /**
   * Returns the direction of the long axis of the contact ellipse.
   *
   * <p>The patch is long where the relative curvature is small: along the generators of a convex
   * cylinder, across them in a hollow one. On a plane the patch is a circle and the generator is
   * returned.
   *
   * @param centre centre of the ball, m
   * @return unit vector in the flank's surface
   */
  default Vec3 longAxis(Vec3 centre) {
    return signedRadius() < 0 ? normal(centre).cross(generator()).unit() : generator();
  }

  /**
   * One method for each kind of flank, so that a new kind must be handled everywhere.
   *
   * @param <T> type of the answer
   */
  interface Visitor<T> {

    /**
     * A plane.
     *
     * @param flank the flank
     * @return the answer
     */
    T plane(PlaneFlank flank);

    /**
     * A cylinder, convex or hollow.
     *
     * @param flank the flank
     * @return the answer
     */
    T cylinder(CylinderFlank flank);
  }
}
