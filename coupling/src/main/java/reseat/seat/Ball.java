package reseat.seat;

import java.util.Objects;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * A ball, carried rigidly by one half of the coupling.
 *
 * @param centre centre of the ball in the axes of the half that carries it, m
 * @param radius radius, m; positive
 */
public record Ball(Vec3 centre, double radius) {

  /** Refuses a ball without size. */
  public Ball {
    Objects.requireNonNull(centre, "centre of a ball must be given, found null");
    if (!(radius > 0) || Double.isInfinite(radius)) {
      throw new IllegalArgumentException(
          "ball radius must be positive, found " + PrintedNumber.shortest(radius) + " m");
    }
  }

  /**
   * Returns the diameter.
   *
   * @return diameter, m
   */
  public double diameter() {
    return 2 * radius;
  }
}
