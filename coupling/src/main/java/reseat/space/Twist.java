package reseat.space;

/**
 * A small motion of a rigid body: the displacement of the material point at {@code at}, and the
 * rotation.
 *
 * @param translation displacement of the reference point, m
 * @param rotation rotation vector, rad
 * @param at reference point, m, in the same frame
 */
public record Twist(Vec3 translation, Vec3 rotation, Vec3 at) {

  /**
   * Returns the displacement of another point of the body, to first order.
   *
   * @param point the point, m
   * @return translation + rotation x (point - at), m
   */
  public Vec3 displacementOf(Vec3 point) {
    return translation.plus(rotation.cross(point.minus(at)));
  }

  /**
   * Returns the same motion told at another point.
   *
   * @param point new reference point, m
   * @return the same motion with the displacement of that point
   */
  public Twist movedTo(Vec3 point) {
    return new Twist(displacementOf(point), rotation, point);
  }
}
