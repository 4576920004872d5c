package reseat.equilibrium;

import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * A motion of the holder told as a machinist would: a slide, a turn about a line, or a screw.
 *
 * @param kind which of the three
 * @param direction unit vector of the slide, or along the axis of the turn
 * @param through point of the axis nearest the reference point, m; the reference point for a slide
 * @param pitch advance along the axis per radian, m; zero for a turn, infinite for a slide
 */
public record FreeMotion(Kind kind, Vec3 direction, Vec3 through, double pitch) {

  /** What sort of motion it is. */
  public enum Kind {
    /** No turning. */
    SLIDE,
    /** Turning about a line. */
    TURN,
    /** Turning about a line and advancing along it. */
    SCREW
  }

  /** Part of the coupling's size below which an advance or a turn is not worth telling. */
  private static final double NEGLIGIBLE = 1e-3;

  /**
   * Tells a twist as a slide, a turn or a screw.
   *
   * @param twist the motion, any size but zero
   * @param length size of the coupling, m
   * @return the motion
   */
  public static FreeMotion of(Twist twist, double length) {
    Vec3 w = twist.rotation();
    Vec3 v = twist.translation();
    double turn = w.norm();
    if (turn * length <= NEGLIGIBLE * v.norm()) {
      return new FreeMotion(Kind.SLIDE, positive(v.unit()), twist.at(), Double.POSITIVE_INFINITY);
    }
    Vec3 axis = w.unit();
    Vec3 through = twist.at().plus(w.cross(v).times(1 / (turn * turn)));
    double pitch = v.dot(axis) / turn;
    boolean pure = Math.abs(pitch) <= NEGLIGIBLE * length;
    return new FreeMotion(pure ? Kind.TURN : Kind.SCREW, positive(axis), through, pure ? 0 : pitch);
  }

  private static Vec3 positive(Vec3 d) {
    for (int i = 2; i >= 0; i--) {
      if (Math.abs(d.component(i)) > 1e-9) {
        return d.component(i) < 0 ? d.negated() : d;
      }
    }
    return d;
  }
}
