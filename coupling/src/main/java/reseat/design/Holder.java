package reseat.design;

import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * Mass of the moving half with its tool.
 *
 * @param mass kg; zero if not to be counted
 * @param centreOfMass m
 * @param gyration radii of gyration about axes through the centre of mass parallel to x, y, z, m;
 *     all zero if not stated, and then only translation enters the natural frequencies
 */
public record Holder(double mass, Vec3 centreOfMass, Vec3 gyration) {

  /** Refuses negative mass and radii. */
  public Holder {
    if (!(mass >= 0) || Double.isInfinite(mass)) {
      throw new IllegalArgumentException(
          "holder mass must not be negative, found " + PrintedNumber.shortest(mass) + " kg");
    }
    if (gyration.x() < 0 || gyration.y() < 0 || gyration.z() < 0) {
      throw new IllegalArgumentException("radii of gyration must not be negative");
    }
  }

  /**
   * Says whether rotational inertia was stated.
   *
   * @return true if all three radii of gyration are positive
   */
  public boolean hasInertia() {
    return gyration.x() > 0 && gyration.y() > 0 && gyration.z() > 0;
  }
}
