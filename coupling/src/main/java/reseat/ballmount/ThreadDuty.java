package reseat.ballmount;

import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;

/**
 * What an adjusting thread is asked to do, so that two threads can be compared on equal terms.
 *
 * @param axialForce axial load the thread carries, N
 * @param engagement engaged length of full thread, m
 * @param screwUltimate ultimate tensile strength of the screw, Pa
 * @param nutUltimate ultimate tensile strength of the tapped part, Pa
 * @param friction coefficient of friction of the flanks and under the lock nut
 * @param lockNutDiameter mean diameter of the lock nut's bearing face, m
 * @param handResolution smallest turn a hand can set, rad; two degrees is realistic (common
 *     practice)
 * @param fit the pair of tolerance classes
 */
public record ThreadDuty(
    double axialForce,
    double engagement,
    double screwUltimate,
    double nutUltimate,
    double friction,
    double lockNutDiameter,
    double handResolution,
    ThreadFit fit) {

  /** Smallest turn a hand sets reliably, two degrees, rad: common practice, no source. */
  public static final double HAND_RESOLUTION = Elementary.toRadians(2);

  /** Checks that the duty makes sense. */
  public ThreadDuty {
    Objects.requireNonNull(fit, "fit of a thread duty must be given, found null");
    Bounds.positive("axial load on the thread", axialForce, "N");
    Bounds.positive("thread engagement", engagement, "m");
    Bounds.positive("ultimate strength of the screw", screwUltimate, "Pa");
    Bounds.positive("ultimate strength of the nut", nutUltimate, "Pa");
    Bounds.notNegative("friction of the thread", friction, "");
    Bounds.notNegative("mean diameter of the lock nut face", lockNutDiameter, "m");
    Bounds.positive("smallest turn by hand", handResolution, "rad");
  }
}
