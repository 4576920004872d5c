package reseat.ballmount;

import java.util.ArrayList;
import java.util.List;
import reseat.numerics.Bounds;

/**
 * A pad on a fluid film, pushed through a ball pivot: does it align itself, and how much does the
 * pivot soften it?
 *
 * <p>The film turns the pad back with its tilt stiffness; the pivot lets go only when that moment
 * exceeds its friction, so a tilt of up to {@code M/k_tilt} may stay. Film and pivot carry the load
 * in series.
 *
 * @param load load on the pad, N
 * @param filmStiffness normal stiffness of the film, N/m
 * @param tiltStiffness tilt stiffness of the film, N m/rad
 * @param padRadius distance from the pivot to the farthest edge of the pad, m
 * @param filmThickness thickness of the film, m
 * @param pivotFriction greatest friction moment of the pivot about an axis across the load, N m
 * @param pivotStiffness stiffness of seat, ball and stud along the load, N/m
 */
public record FluidFilmPad(
    double load,
    double filmStiffness,
    double tiltStiffness,
    double padRadius,
    double filmThickness,
    double pivotFriction,
    double pivotStiffness) {

  /** Ratio of pivot to film stiffness from which the pivot hardly counts; common practice. */
  public static final double STIFF_PIVOT = 5;

  private static final int AXIAL = 2;

  /** What would help. */
  public enum Remedy {
    /** Lower friction. */
    LUBRICATE,
    /** Stiffer film against tilt. */
    WIDEN_PAD,
    /** Fix the pivot. */
    BOND_AFTER_FLOATING,
    /** Let it roll. */
    ROLL_ON_FLAT,
    /** Stiffer pivot. */
    STIFFEN_PIVOT
  }

  /** Checks that all quantities are positive; friction may be zero. */
  public FluidFilmPad {
    Bounds.positive("load on the pad", load, "N");
    Bounds.positive("film stiffness", filmStiffness, "N/m");
    Bounds.positive("tilt stiffness of the film", tiltStiffness, "N m/rad");
    Bounds.positive("radius of the pad", padRadius, "m");
    Bounds.positive("film thickness", filmThickness, "m");
    Bounds.notNegative("friction moment of the pivot", pivotFriction, "N m");
    Bounds.positive("stiffness of the pivot", pivotStiffness, "N/m");
  }

  /**
   * A pad on a pivot seat whose ball stands on a stud.
   *
   * @param load load on the pad, N
   * @param filmStiffness normal stiffness of the film, N/m
   * @param tiltStiffness tilt stiffness of the film, N m/rad
   * @param padRadius distance from the pivot to the farthest edge of the pad, m
   * @param filmThickness thickness of the film, m
   * @param seat seat the ball turns in; a socket of unknown stiffness counts as rigid
   * @param friction coefficient of friction of the seat
   * @param stud give of stud and bond
   * @return the pad
   */
  public static FluidFilmPad on(
      double load,
      double filmStiffness,
      double tiltStiffness,
      double padRadius,
      double filmThickness,
      PivotSeat seat,
      double friction,
      StudCompliance stud) {
    double give =
        stud.axial() + seat.slidingStiffness(load).map(k -> 1 / k.get(AXIAL, AXIAL)).orElse(0.0);
    return new FluidFilmPad(
        load,
        filmStiffness,
        tiltStiffness,
        padRadius,
        filmThickness,
        seat.friction(load, friction).greatestTransverseMoment(),
        1 / give);
  }

  /**
   * Tilt that the friction of the pivot can hold against the film, either way.
   *
   * @return tilt, rad
   */
  public double heldTilt() {
    return pivotFriction / tiltStiffness;
  }

  /**
   * Distance of the centre of film pressure from the pivot while that tilt is held.
   *
   * @return distance, m
   */
  public double pressureOffset() {
    return pivotFriction / load;
  }

  /**
   * Change of film thickness at the edge of the pad while that tilt is held, over the film
   * thickness; at 1 the edge touches.
   *
   * @return share of the film thickness
   */
  public double edgeLoss() {
    return heldTilt() * padRadius / filmThickness;
  }

  /**
   * Stiffness of film and pivot in series.
   *
   * @return stiffness, N/m
   */
  public double seriesStiffness() {
    return 1 / (1 / filmStiffness + 1 / pivotStiffness);
  }

  /**
   * Share of the give of film and pivot that is the film's.
   *
   * @return share, 0 to 1
   */
  public double filmShare() {
    return seriesStiffness() / filmStiffness;
  }

  /**
   * Share that is the pivot's.
   *
   * @return share, 0 to 1
   */
  public double pivotShare() {
    return seriesStiffness() / pivotStiffness;
  }

  /**
   * Whether the pad aligns itself to within a tilt.
   *
   * @param targetTilt tilt allowed, rad
   * @return true if friction cannot hold more
   */
  public boolean alignsWithin(double targetTilt) {
    Bounds.positive("tilt allowed", targetTilt, "rad");
    return heldTilt() <= targetTilt;
  }

  /**
   * Factor by which friction moment over tilt stiffness must fall to meet a tilt.
   *
   * @param targetTilt tilt allowed, rad
   * @return held tilt over target; at most 1 when met
   */
  public double excessOver(double targetTilt) {
    Bounds.positive("tilt allowed", targetTilt, "rad");
    return heldTilt() / targetTilt;
  }

  /**
   * Whether the pivot is so stiff that it hardly counts.
   *
   * @return true from five times the film stiffness
   */
  public boolean pivotIsStiff() {
    return pivotStiffness >= STIFF_PIVOT * filmStiffness;
  }

  /**
   * What would help.
   *
   * @param targetTilt tilt allowed, rad
   * @return remedies, none if tilt and stiffness are in order
   */
  public List<Remedy> remedies(double targetTilt) {
    List<Remedy> found = new ArrayList<>();
    if (!alignsWithin(targetTilt)) {
      found.add(Remedy.LUBRICATE);
      found.add(Remedy.WIDEN_PAD);
      found.add(Remedy.BOND_AFTER_FLOATING);
      found.add(Remedy.ROLL_ON_FLAT);
    }
    if (!pivotIsStiff()) {
      found.add(Remedy.STIFFEN_PIVOT);
    }
    return List.copyOf(found);
  }
}
