package reseat.space;

import java.util.Objects;

/**
 * A load on a rigid body: a force and a moment about a reference point.
 *
 * @param force N
 * @param moment moment about {@code at}, N·m
 * @param at reference point, m, in the same frame
 */
public record Wrench(Vec3 force, Vec3 moment, Vec3 at) {

  /** Refuses what is missing. */
  public Wrench {
    Objects.requireNonNull(force, "force of a wrench must be given, found null");
    Objects.requireNonNull(moment, "moment of a wrench must be given, found null");
    Objects.requireNonNull(at, "at of a wrench must be given, found null");
  }

  /**
   * Returns a pure force through a point.
   *
   * @param force N
   * @param point a point on its line of action, m
   * @return the wrench, told at that point
   */
  public static Wrench ofForce(Vec3 force, Vec3 point) {
    return new Wrench(force, Vec3.ZERO, point);
  }

  /**
   * Returns no load.
   *
   * @param point reference point, m
   * @return the zero wrench there
   */
  public static Wrench zero(Vec3 point) {
    return new Wrench(Vec3.ZERO, Vec3.ZERO, point);
  }

  /**
   * Returns the same load told at another point.
   *
   * @param point new reference point, m
   * @return the same force, with the moment about that point
   */
  public Wrench movedTo(Vec3 point) {
    return new Wrench(force, moment.plus(at.minus(point).cross(force)), point);
  }

  /**
   * Returns the sum of two loads, told at this one's point.
   *
   * @param other the other load, at any point
   * @return both together
   */
  public Wrench plus(Wrench other) {
    Wrench moved = other.movedTo(at);
    return new Wrench(force.plus(moved.force), moment.plus(moved.moment), at);
  }

  /**
   * Returns the load scaled.
   *
   * @param factor the scale
   * @return factor times this, at the same point
   */
  public Wrench times(double factor) {
    return new Wrench(force.times(factor), moment.times(factor), at);
  }
}
