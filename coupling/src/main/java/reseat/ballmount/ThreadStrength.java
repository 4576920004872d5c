package reseat.ballmount;

import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;

/**
 * Strength of an engaged thread: shear areas, stripping loads, tensile load and what gives way
 * first.
 *
 * <p>Shear areas by the formulas of FED-STD-H28/2B and ASME B1.1 appendix B, at the worst limits of
 * the fit, with {@code n = 1/P} and engaged length {@code Le}:
 *
 * <pre>
 *   screw  AS_s = pi n Le D1max [ 1/(2n) + 0.57735 (d2min - D1max) ]
 *   nut    AS_n = pi n Le dmin  [ 1/(2n) + 0.57735 (dmin - D2max) ]
 *   load   F = 0.577 x ultimate tensile strength x area
 * </pre>
 *
 * <p>The shear factor 0.577 is that of von Mises; handbooks also use 0.5 to 0.6. Not covered: the
 * uneven share of the first turns, the spreading of a thin nut wall and the bending of worn flanks,
 * which all lower the stripping load; fatigue.
 *
 * @param limits limit diameters of the thread
 * @param engagement engaged length of full thread, m
 * @param screwUltimate ultimate tensile strength of the screw, Pa
 * @param nutUltimate ultimate tensile strength of the nut or tapped body, Pa
 * @param shearFactor shear strength over tensile strength, 0.577 by von Mises
 */
public record ThreadStrength(
    ThreadTolerance limits,
    double engagement,
    double screwUltimate,
    double nutUltimate,
    double shearFactor) {

  /** Shear strength over tensile strength by von Mises, 1/sqrt(3). */
  public static final double VON_MISES = 0.577;

  /** What gives way first when the axial load is raised. */
  public enum Weakest {
    /** The shank breaks in tension: visible at once, and the tapped part is saved. */
    SCREW_BREAKS,
    /** The threads of the screw shear off. */
    SCREW_STRIPS,
    /** The threads of the nut or of the tapped body shear off. */
    NUT_STRIPS
  }

  /** Checks that lengths and strengths are positive. */
  public ThreadStrength {
    Objects.requireNonNull(limits, "limits of a thread strength must be given, found null");
    Bounds.positive("thread engagement", engagement, "m");
    Bounds.positive("ultimate strength of the screw", screwUltimate, "Pa");
    Bounds.positive("ultimate strength of the nut", nutUltimate, "Pa");
    Bounds.positive("shear factor", shearFactor, "");
  }

  /**
   * Strength with the von Mises shear factor.
   *
   * @param limits limit diameters of the thread
   * @param engagement engaged length of full thread, m
   * @param screwUltimate ultimate tensile strength of the screw, Pa
   * @param nutUltimate ultimate tensile strength of the nut or tapped body, Pa
   * @return the strength
   */
  public static ThreadStrength of(
      ThreadTolerance limits, double engagement, double screwUltimate, double nutUltimate) {
    return new ThreadStrength(limits, engagement, screwUltimate, nutUltimate, VON_MISES);
  }

  /**
   * Shear area of the screw threads.
   *
   * @return area, m²
   */
  public double screwShearArea() {
    return engagement * screwShearAreaPerLength();
  }

  /**
   * Shear area of the nut threads.
   *
   * @return area, m²
   */
  public double nutShearArea() {
    return engagement * nutShearAreaPerLength();
  }

  /**
   * Load that strips the screw threads.
   *
   * @return load, N
   */
  public double screwStrippingLoad() {
    return shearFactor * screwUltimate * screwShearArea();
  }

  /**
   * Load that strips the nut threads.
   *
   * @return load, N
   */
  public double nutStrippingLoad() {
    return shearFactor * nutUltimate * nutShearArea();
  }

  /**
   * Load that breaks the screw in tension: ultimate strength times stress area.
   *
   * @return load, N
   */
  public double tensileLoad() {
    return screwUltimate * limits.thread().stressArea();
  }

  /**
   * What gives way first.
   *
   * @return the weakest of the three
   */
  public Weakest weakest() {
    if (tensileLoad() <= Math.min(screwStrippingLoad(), nutStrippingLoad())) {
      return Weakest.SCREW_BREAKS;
    }
    return screwStrippingLoad() <= nutStrippingLoad() ? Weakest.SCREW_STRIPS : Weakest.NUT_STRIPS;
  }

  /**
   * The smallest of the three failure loads.
   *
   * @return load, N
   */
  public double capacity() {
    return Math.min(tensileLoad(), Math.min(screwStrippingLoad(), nutStrippingLoad()));
  }

  /**
   * Engagement from which the screw breaks before any thread strips.
   *
   * @return engaged length, m
   */
  public double engagementSoScrewBreaks() {
    double screw = tensileLoad() / (shearFactor * screwUltimate * screwShearAreaPerLength());
    double nut = tensileLoad() / (shearFactor * nutUltimate * nutShearAreaPerLength());
    return Math.max(screw, nut);
  }

  /**
   * Engagement from which no thread strips under a force.
   *
   * @param force axial force, N
   * @return engaged length, m; whether the screw itself bears the force is another question
   */
  public double engagementToBear(double force) {
    double screw = force / (shearFactor * screwUltimate * screwShearAreaPerLength());
    double nut = force / (shearFactor * nutUltimate * nutShearAreaPerLength());
    return Math.max(screw, nut);
  }

  /**
   * Mean pressure on the engaged flanks under an axial load, over the annulus between smallest
   * screw major diameter and largest nut minor diameter.
   *
   * @param axialForce axial load, N
   * @return projected flank pressure, Pa
   */
  public double flankPressure(double axialForce) {
    double outer = limits.screwMajorMin();
    double inner = limits.nutMinorMax();
    double turns = engagement / limits.thread().pitch();
    return axialForce / (turns * Math.PI / 4 * (outer * outer - inner * inner));
  }

  private double screwShearAreaPerLength() {
    double pitch = limits.thread().pitch();
    double d1 = limits.nutMinorMax();
    return Math.PI
        * d1
        / pitch
        * (pitch / 2
            + (limits.screwPitchMin() - d1) * Elementary.tan(ScrewThread.HALF_FLANK_ANGLE));
  }

  private double nutShearAreaPerLength() {
    double pitch = limits.thread().pitch();
    double d = limits.screwMajorMin();
    return Math.PI
        * d
        / pitch
        * (pitch / 2 + (d - limits.nutPitchMax()) * Elementary.tan(ScrewThread.HALF_FLANK_ANGLE));
  }
}
