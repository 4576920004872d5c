package reseat.space;

import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/**
 * A vector or a point in space.
 *
 * @param x first component, in the unit of the quantity it stands for (m for a point)
 * @param y second component
 * @param z third component
 */
public record Vec3(double x, double y, double z) {

  /** The zero vector, also the origin of the frame in use. */
  public static final Vec3 ZERO = new Vec3(0, 0, 0);

  /** Unit vector along x. */
  public static final Vec3 X = new Vec3(1, 0, 0);

  /** Unit vector along y. */
  public static final Vec3 Y = new Vec3(0, 1, 0);

  /** Unit vector along z. */
  public static final Vec3 Z = new Vec3(0, 0, 1);

  /** Refuses components that are not finite numbers ({@link IllegalArgumentException}). */
  public Vec3 {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(
          "vector components must be finite, found ("
              + PrintedNumber.shortest(x)
              + ", "
              + PrintedNumber.shortest(y)
              + ", "
              + PrintedNumber.shortest(z)
              + ")");
    }
  }

  /**
   * Returns the unit vector in the x-y plane at an azimuth.
   *
   * @param azimuth angle from x toward y, rad
   * @return unit vector (cos, sin, 0)
   */
  public static Vec3 atAzimuth(double azimuth) {
    return new Vec3(Elementary.cos(azimuth), Elementary.sin(azimuth), 0);
  }

  /**
   * Returns the sum.
   *
   * @param other vector to add
   * @return this + other
   */
  public Vec3 plus(Vec3 other) {
    return new Vec3(x + other.x, y + other.y, z + other.z);
  }

  /**
   * Returns the difference.
   *
   * @param other vector to take away
   * @return this - other
   */
  public Vec3 minus(Vec3 other) {
    return new Vec3(x - other.x, y - other.y, z - other.z);
  }

  /**
   * Returns this vector scaled.
   *
   * @param factor the scale
   * @return factor times this
   */
  public Vec3 times(double factor) {
    return new Vec3(factor * x, factor * y, factor * z);
  }

  /**
   * Returns the opposite vector.
   *
   * @return -this
   */
  public Vec3 negated() {
    return new Vec3(-x, -y, -z);
  }

  /**
   * Returns the scalar product.
   *
   * @param other the other factor
   * @return this . other
   */
  public double dot(Vec3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /**
   * Returns the vector product.
   *
   * @param other the right factor
   * @return this x other
   */
  public Vec3 cross(Vec3 other) {
    return new Vec3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /**
   * Returns the length.
   *
   * @return Euclidean norm, in the unit of the components
   */
  public double norm() {
    return Math.sqrt(dot(this));
  }

  /**
   * Returns the distance to another point.
   *
   * @param other the other point
   * @return distance, in the unit of the components
   */
  public double distanceTo(Vec3 other) {
    return minus(other).norm();
  }

  /**
   * Returns the direction of this vector.
   *
   * @return unit vector
   * @throws IllegalArgumentException if the vector is zero
   */
  public Vec3 unit() {
    double n = norm();
    if (n == 0) {
      throw new IllegalArgumentException("a zero vector has no direction");
    }
    return times(1 / n);
  }

  /**
   * Returns the part of this vector at right angles to a direction.
   *
   * @param direction unit vector
   * @return this less its component along the direction
   */
  public Vec3 rejectedFrom(Vec3 direction) {
    return minus(direction.times(dot(direction)));
  }

  /**
   * Returns some unit vector at right angles to this direction.
   *
   * @return a unit vector; which one is not specified, but it is the same for the same vector
   */
  public Vec3 anyPerpendicular() {
    Vec3 seed = Math.abs(x) < 0.6 * norm() ? X : Y;
    return seed.rejectedFrom(unit()).unit();
  }

  /**
   * Returns a component by its place.
   *
   * @param index 0 for x, 1 for y, 2 for z
   * @return the component
   */
  public double component(int index) {
    return switch (index) {
      case 0 -> x;
      case 1 -> y;
      case 2 -> z;
      default -> throw new IllegalArgumentException("component 0, 1 or 2, found " + index);
    };
  }
}
