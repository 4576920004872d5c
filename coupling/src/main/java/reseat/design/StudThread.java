package reseat.design;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.ballmount.LockNut;
import reseat.ballmount.ThreadStrength;
import reseat.ballmount.ThreadTolerance;
import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.numerics.Bounds;

/**
 * The thread that holds a stud in a body and sets its height.
 *
 * @param limits thread with its limit diameters
 * @param engagement engaged length of full thread, m
 * @param screw material of the screw
 * @param body material of the tapped body
 * @param friction coefficient of friction of the flanks
 * @param lockNut the nut that locks it, for an unloaded screw; empty if there is none
 */
public record StudThread(
    ThreadTolerance limits,
    double engagement,
    Material screw,
    Material body,
    double friction,
    Optional<LockNut> lockNut) {

  /** Checks length and friction, and that the nut fits the thread. */
  public StudThread {
    Objects.requireNonNull(limits, "limits of a stud thread must be given, found null");
    Objects.requireNonNull(screw, "screw of a stud thread must be given, found null");
    Objects.requireNonNull(body, "body of a stud thread must be given, found null");
    Objects.requireNonNull(lockNut, "lock nut of a stud thread must be given, found null");
    Bounds.positive("thread engagement", engagement, "m");
    Bounds.notNegative("friction of the thread", friction, "");
    if (lockNut.isPresent() && !Objects.equals(lockNut.get().limits(), limits)) {
      throw new IllegalArgumentException("the lock nut has another thread than the stud");
    }
  }

  /**
   * Returns the strength of the thread.
   *
   * @return the strength; empty if the tensile strength of screw or body is not known
   */
  public Optional<ThreadStrength> strength() {
    OptionalDouble screwUltimate = screw.nominal(MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble bodyUltimate = body.nominal(MaterialProperty.TENSILE_STRENGTH);
    if (screwUltimate.isEmpty() || bodyUltimate.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        ThreadStrength.of(
            limits, engagement, screwUltimate.getAsDouble(), bodyUltimate.getAsDouble()));
  }
}
