package reseat.equilibrium;

import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * How far the tool moves from one state of the coupling to another.
 *
 * @param shift displacement of the point, coupling frame, m
 * @param rotation rotation of the holder, coupling frame, rad
 */
public record ErrorMotion(Vec3 shift, Vec3 rotation) {

  /**
   * Compares two states.
   *
   * @param from the state before
   * @param to the state after
   * @param point point of the holder, m
   * @return the motion of that point, exactly, and of the holder
   */
  public static ErrorMotion between(Equilibrium from, Equilibrium to, Vec3 point) {
    Twist t = to.holderInBase().motionFrom(from.holderInBase(), point);
    return new ErrorMotion(t.translation(), t.rotation());
  }
}
