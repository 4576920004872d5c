package reseat.design;

import java.util.Objects;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.units.PrintedNumber;

/**
 * What differs from one mounting of the holder to the next, besides the preload's own scatter.
 *
 * @param seatingForce force along the preloads with which the holder is pushed home before the
 *     preload is applied, N; the weight comes on top
 * @param rampSteps number of load steps from the seating force to the full preload; {@link
 *     #AS_NEEDED} for more of them the nearer friction comes to where the slide home stalls
 * @param friction scatter of the friction coefficient of each contact, as a ratio of the nominal
 * @param temperature scatter of the holder's temperature against the post's, K
 * @param film scatter of the thickness of what lies in each contact (oil, dust), m
 * @param holderExpansion thermal expansion of the holder, 1/K; its balls and pins have their own
 */
public record RemountConditions(
    double seatingForce,
    int rampSteps,
    Distribution friction,
    Distribution temperature,
    Distribution film,
    double holderExpansion) {

  /** Number of load steps that leaves their choice to the simulation. */
  public static final int AS_NEEDED = 0;

  /**
   * What is assumed where the design file says nothing.
   *
   * <p>Hand force 10 N, friction within 20 % from contact to contact, holder within 0.2 K of the
   * post, film within 10 nm, a steel holder: common practice, no source. As many load steps as the
   * friction needs (see the theory page).
   */
  public static final RemountConditions DEFAULT =
      new RemountConditions(
          10,
          AS_NEEDED,
          new Distribution(0.2, DistributionShape.NORMAL),
          new Distribution(0.2, DistributionShape.UNIFORM),
          new Distribution(10e-9, DistributionShape.UNIFORM),
          11.5e-6);

  /** Refuses forces and step counts that no ramp can start from. */
  public RemountConditions {
    Objects.requireNonNull(friction, "friction of remount conditions must be given, found null");
    Objects.requireNonNull(
        temperature, "temperature of remount conditions must be given, found null");
    Objects.requireNonNull(film, "film of remount conditions must be given, found null");
    if (!(seatingForce > 0) || Double.isInfinite(seatingForce)) {
      throw new IllegalArgumentException(
          "the seating force must be positive, found "
              + PrintedNumber.shortest(seatingForce)
              + " N");
    }
    if (rampSteps != AS_NEEDED && (rampSteps < 1 || rampSteps > 100_000)) {
      throw new IllegalArgumentException(
          "the ramp needs between 1 and 100000 steps, found " + rampSteps);
    }
    if (!(friction.limit() < 1)) {
      throw new IllegalArgumentException(
          "friction scatter must be under 100 %, found "
              + PrintedNumber.shortest(100 * friction.limit())
              + " %");
    }
    if (!Double.isFinite(holderExpansion)) {
      throw new IllegalArgumentException("thermal expansion must be a number");
    }
  }

  /**
   * Returns the same conditions with other scatter from mount to mount.
   *
   * @param newFriction scatter of the friction coefficient, as a ratio of the nominal
   * @param newTemperature scatter of the holder's temperature against the post's, K
   * @param newFilm scatter of the thickness of what lies in each contact, m
   * @return the changed copy
   */
  public RemountConditions withScatter(
      Distribution newFriction, Distribution newTemperature, Distribution newFilm) {
    return new RemountConditions(
        seatingForce, rampSteps, newFriction, newTemperature, newFilm, holderExpansion);
  }
}
