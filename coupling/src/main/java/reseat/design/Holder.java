package reseat.design;

import java.util.Objects;
import reseat.numerics.Bounds;
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
    Objects.requireNonNull(centreOfMass, "centre of mass of a holder must be given, found null");
    Objects.requireNonNull(gyration, "gyration of a holder must be given, found null");
    Bounds.notNegative("holder mass", mass, "kg");
    Bounds.notNegative("radius of gyration about x", gyration.x(), "m");
    Bounds.notNegative("radius of gyration about y", gyration.y(), "m");
    Bounds.notNegative("radius of gyration about z", gyration.z(), "m");
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
