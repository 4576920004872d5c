package reseat.plots.scene;

import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/**
 * A point on the sheet.
 *
 * @param x to the right, sheet units
 * @param y down, sheet units
 */
public record Point(double x, double y) {

  /** Refuses what is not a finite number: a picture must not hide a bad result. */
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException(
          "a point of a picture must be finite, found ("
              + PrintedNumber.shortest(x)
              + ", "
              + PrintedNumber.shortest(y)
              + ")");
    }
  }

  /**
   * Returns the sum.
   *
   * @param other the other
   * @return this + other
   */
  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  /**
   * Returns the difference.
   *
   * @param other the other
   * @return this - other
   */
  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  /**
   * Returns the point scaled about the sheet's origin.
   *
   * @param factor the scale
   * @return factor times this
   */
  public Point times(double factor) {
    return new Point(factor * x, factor * y);
  }

  /**
   * Returns a point moved.
   *
   * @param dx to the right
   * @param dy down
   * @return the moved point
   */
  public Point moved(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }

  /**
   * Returns a point at a distance in a direction.
   *
   * @param distance sheet units
   * @param angle rad, counter-clockwise as seen from the right-hand direction
   * @return the point
   */
  public Point toward(double distance, double angle) {
    return new Point(x + distance * Elementary.cos(angle), y - distance * Elementary.sin(angle));
  }

  /**
   * Returns the distance to another point.
   *
   * @param other the other
   * @return sheet units
   */
  public double distanceTo(Point other) {
    return Elementary.hypot(x - other.x, y - other.y);
  }

  /**
   * Returns the direction to another point.
   *
   * @param other the other
   * @return rad, counter-clockwise as seen from the right-hand direction
   */
  public double angleTo(Point other) {
    return Elementary.atan2(y - other.y, other.x - x);
  }
}
