package reseat.interchange;

import reseat.numerics.Bounds;
import reseat.space.Vec3;

/**
 * Where a ball or a seat was found by a measuring machine.
 *
 * <p>A seat is told by the centre of a ball of the drawn diameter that rests in it, at the place
 * along the groove where the holder's ball rests. So one point says all that the flanks, their
 * angles and the depth do to the pose, to first order.
 *
 * @param support name of the support
 * @param centre centre of the ball, in the coupling frame of its half, m
 * @param diameter diameter of the ball as measured, m; 0 if not measured, and for a seat
 * @param uncertainty standard uncertainty of each coordinate and of the diameter, m
 */
public record MeasuredPoint(String support, Vec3 centre, double diameter, double uncertainty) {

  /** Refuses negative sizes. */
  public MeasuredPoint {
    Bounds.notNegative("measured diameter of " + support, diameter, "m");
    Bounds.notNegative("measuring uncertainty of " + support, uncertainty, "m");
  }
}
