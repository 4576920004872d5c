package reseat.seat;

import java.util.Objects;
import reseat.space.Vec3;

/**
 * Axes of a seat: where it is and which way it runs and opens.
 *
 * @param origin reference point of the seat, m; each seat kind says which point that is
 * @param axis unit vector along the groove (for a trihedral seat: toward its first flank's push)
 * @param up unit vector out of the seat toward the ball, at right angles to the axis
 */
public record SeatFrame(Vec3 origin, Vec3 axis, Vec3 up) {

  /** Makes both directions unit vectors at right angles; the opening direction is kept. */
  public SeatFrame {
    Objects.requireNonNull(origin, "origin of a seat frame must be given, found null");
    Objects.requireNonNull(axis, "axis of a seat frame must be given, found null");
    Objects.requireNonNull(up, "up of a seat frame must be given, found null");
    up = up.unit();
    Vec3 flat = axis.rejectedFrom(up);
    if (!(flat.norm() > 1e-6 * axis.norm())) {
      throw new IllegalArgumentException(
          "the groove axis must not run along the direction the seat opens to");
    }
    axis = flat.unit();
  }

  /**
   * Returns a frame whose seat opens along +z and whose axis has an azimuth in the coupling plane.
   *
   * @param origin reference point, m
   * @param azimuth direction of the groove axis from x toward y, rad
   * @return the frame
   */
  public static SeatFrame level(Vec3 origin, double azimuth) {
    return new SeatFrame(origin, Vec3.atAzimuth(azimuth), Vec3.Z);
  }

  /**
   * Returns the direction across the groove.
   *
   * @return up x axis: to the left when looking along the axis with the opening upward
   */
  public Vec3 left() {
    return up.cross(axis);
  }

  /**
   * Returns the point at given coordinates.
   *
   * @param along along the axis, m
   * @param toLeft along {@link #left()}, m
   * @param upward along {@code up}, m
   * @return the point in the frame that the seat is described in, m
   */
  public Vec3 point(double along, double toLeft, double upward) {
    return origin.plus(axis.times(along)).plus(left().times(toLeft)).plus(up.times(upward));
  }

  /**
   * Returns the frame with another origin.
   *
   * @param newOrigin reference point, m
   * @return the same axes there
   */
  public SeatFrame at(Vec3 newOrigin) {
    return new SeatFrame(newOrigin, axis, up);
  }

  /**
   * Returns the coordinate along the groove of a point.
   *
   * @param p point, m
   * @return m
   */
  public double along(Vec3 p) {
    return p.minus(origin).dot(axis);
  }

  /**
   * Returns the coordinate across the groove of a point.
   *
   * @param p point, m
   * @return m, positive to the left
   */
  public double toLeft(Vec3 p) {
    return p.minus(origin).dot(left());
  }

  /**
   * Returns the height of a point over the reference point.
   *
   * @param p point, m
   * @return m
   */
  public double upward(Vec3 p) {
    return p.minus(origin).dot(up);
  }
}
