package reseat.repeatability;

import java.util.OptionalDouble;
import reseat.design.Half;
import reseat.design.Support;
import reseat.material.MaterialProperty;
import reseat.space.Vec3;

/**
 * How far a holder that is one kelvin warmer opens its gaps.
 *
 * <p>The holder grows evenly about the coupling's origin; its balls and pins have the expansion of
 * their own material, or the holder's where that is unknown.
 */
final class WarmHolder {

  private WarmHolder() {}

  /**
   * Returns the change of a gap, the holder not moved.
   *
   * @param at the contacts
   * @param i contact
   * @param grows expansion of the holder, 1/K
   * @return m/K, positive where the gap opens
   */
  static double opening(SeatedContacts at, int i, double grows) {
    Support s = at.support(i);
    Vec3 push = new Vec3(at.push[3 * i], at.push[3 * i + 1], at.push[3 * i + 2]);
    if (at.design().ballsOn() == Half.HOLDER) {
      double ball = or(s.ballMaterial().nominal(MaterialProperty.EXPANSION), grows);
      return grows * push.dot(at.ballCentre(i)) - ball * s.ball().radius();
    }
    Vec3 point = new Vec3(at.point(i, 0), at.point(i, 1), at.point(i, 2));
    double pinRadius = at.pinRadius(i);
    double pin = or(s.seatMaterial().nominal(MaterialProperty.EXPANSION), grows);
    return grows * push.dot(point) - (pinRadius > 0 ? (pin - grows) * pinRadius : 0);
  }

  private static double or(OptionalDouble value, double otherwise) {
    return value.isPresent() ? value.getAsDouble() : otherwise;
  }
}
