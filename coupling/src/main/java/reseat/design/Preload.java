package reseat.design;

import reseat.numerics.Spread;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * A force that holds the holder in its seats.
 *
 * @param name what the user calls it
 * @param force size, N; positive
 * @param direction unit vector of the force on the holder, usually (0, 0, -1)
 * @param at a point on the line of action, m
 * @param forceSpread scatter of the size from mount to mount, as a ratio of the force
 * @param lineSpread how far the line of action wanders sideways from mount to mount, m
 * @param tiltSpread how far the direction wanders from mount to mount, rad
 * @param device what makes the force, in words
 */
public record Preload(
    String name,
    double force,
    Vec3 direction,
    Vec3 at,
    Spread forceSpread,
    Spread lineSpread,
    Spread tiltSpread,
    String device) {

  /** Refuses a force without size and scatter of all the force or more. */
  public Preload {
    if (!(force > 0) || Double.isInfinite(force)) {
      throw new IllegalArgumentException("preload must be positive, found " + force + " N");
    }
    if (!(forceSpread.limit() < 1)) {
      throw new IllegalArgumentException(
          "preload scatter must be under 100 %, found " + 100 * forceSpread.limit() + " %");
    }
    direction = direction.unit();
  }

  /**
   * Returns the load on the holder.
   *
   * @return wrench at a point of the line of action
   */
  public Wrench load() {
    return Wrench.ofForce(direction.times(force), at);
  }

  /**
   * Returns the same preload with another size.
   *
   * @param newForce N
   * @return the changed copy
   */
  public Preload withForce(double newForce) {
    return new Preload(name, newForce, direction, at, forceSpread, lineSpread, tiltSpread, device);
  }
}
