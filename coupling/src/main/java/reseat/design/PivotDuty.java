package reseat.design;

import java.util.Objects;
import java.util.Optional;
import reseat.ballmount.IndexedSlotting;
import reseat.ballmount.PivotSeat;
import reseat.material.Material;
import reseat.numerics.Bounds;

/**
 * The seat a ball turns in, and what hangs on it.
 *
 * @param seat the seat
 * @param material material of the seat
 * @param friction coefficient of friction between ball and seat
 * @param frictionBasis where the friction comes from
 * @param film the pad on a fluid film that the pivot aligns; empty if there is none
 * @param slotting how the seat is cut by indexed slots; empty if that is not looked at
 */
public record PivotDuty(
    PivotSeat seat,
    Material material,
    double friction,
    String frictionBasis,
    Optional<Film> film,
    Optional<IndexedSlotting> slotting) {

  /**
   * A pad on a fluid film.
   *
   * @param stiffness of the film against a normal force, N/m
   * @param tiltStiffness of the film against tilt, N m/rad
   * @param padRadius distance from the pivot to the farthest edge, m
   * @param thickness of the film, m
   */
  public record Film(double stiffness, double tiltStiffness, double padRadius, double thickness) {

    /** Checks that all are above zero. */
    public Film {
      Bounds.positive("film stiffness", stiffness, "N/m");
      Bounds.positive("tilt stiffness of the film", tiltStiffness, "N m/rad");
      Bounds.positive("radius of the pad", padRadius, "m");
      Bounds.positive("film thickness", thickness, "m");
    }
  }

  /** Refuses negative friction. */
  public PivotDuty {
    Objects.requireNonNull(seat, "seat of a pivot duty must be given, found null");
    Objects.requireNonNull(material, "material of a pivot duty must be given, found null");
    Objects.requireNonNull(
        frictionBasis, "friction basis of a pivot duty must be given, found null");
    Objects.requireNonNull(film, "film of a pivot duty must be given, found null");
    Objects.requireNonNull(slotting, "slotting of a pivot duty must be given, found null");
    Bounds.notNegative("friction of the pivot", friction, "");
  }
}
