package reseat.ballmount;

import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.FilledText;

/**
 * Limit diameters of screw and nut for one thread and one fit, and the play between them.
 *
 * <p>Limits come from the formulas of ISO 965-1 (metric) or ASME B1.1 (Unified), both recalled from
 * memory; the ordinary metric fit reproduces a printed table of strip areas to five digits. Sizes
 * are rounded as on a drawing: to 0.001 mm or to 0.0001 in.
 *
 * @param thread the thread
 * @param fit the pair of tolerance classes
 * @param screwMajorMin smallest major diameter of the screw, m
 * @param screwMajorMax largest major diameter of the screw, m
 * @param screwPitchMin smallest pitch diameter of the screw, m
 * @param screwPitchMax largest pitch diameter of the screw, m
 * @param nutMinorMin smallest minor diameter of the nut, m
 * @param nutMinorMax largest minor diameter of the nut, m
 * @param nutPitchMin smallest pitch diameter of the nut, m
 * @param nutPitchMax largest pitch diameter of the nut, m
 */
public record ThreadTolerance(
    ScrewThread thread,
    ThreadFit fit,
    double screwMajorMin,
    double screwMajorMax,
    double screwPitchMin,
    double screwPitchMax,
    double nutMinorMin,
    double nutMinorMax,
    double nutPitchMin,
    double nutPitchMax) {

  private static final double TAN_HALF_FLANK = Elementary.tan(ScrewThread.HALF_FLANK_ANGLE);

  /** Checks that the limits are in order and that the flanks still overlap at the worst limits. */
  public ThreadTolerance {
    Objects.requireNonNull(thread, "thread of a thread tolerance must be given, found null");
    Objects.requireNonNull(fit, "fit of a thread tolerance must be given, found null");
    inOrder("major diameter of the screw", screwMajorMin, screwMajorMax);
    inOrder("pitch diameter of the screw", screwPitchMin, screwPitchMax);
    inOrder("minor diameter of the nut", nutMinorMin, nutMinorMax);
    inOrder("pitch diameter of the nut", nutPitchMin, nutPitchMax);
    if (!(nutPitchMin >= screwPitchMax)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "thread %s: the largest screw pitch diameter %.4f mm does not enter the smallest nut"
                  + " pitch diameter %.4f mm",
              thread, screwPitchMax * 1e3, nutPitchMin * 1e3));
    }
    if (!(screwMajorMin > nutMinorMax)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "thread %s: smallest screw %.4f mm slips through the largest nut bore %.4f mm",
              thread, screwMajorMin * 1e3, nutMinorMax * 1e3));
    }
  }

  /**
   * Limits of a thread by the formulas of its standard.
   *
   * @param thread the thread
   * @param fit the pair of tolerance classes
   * @return the limits
   */
  public static ThreadTolerance of(ScrewThread thread, ThreadFit fit) {
    return thread.form() == ThreadForm.METRIC
        ? MetricTolerance.limits(thread, fit)
        : UnifiedTolerance.limits(thread, fit);
  }

  /**
   * Smallest play in pitch diameter, the two parts at their fullest.
   *
   * @return diametral play, m
   */
  public double pitchPlayMin() {
    return nutPitchMin - screwPitchMax;
  }

  /**
   * Largest play in pitch diameter, the two parts at their leanest.
   *
   * @return diametral play, m
   */
  public double pitchPlayMax() {
    return nutPitchMax - screwPitchMin;
  }

  /**
   * Smallest axial lost motion, flank to flank: play in pitch diameter times tan 30°.
   *
   * @return axial play, m
   */
  public double axialPlayMin() {
    return pitchPlayMin() * TAN_HALF_FLANK;
  }

  /**
   * Largest axial lost motion, flank to flank: play in pitch diameter times tan 30°.
   *
   * @return axial play, m
   */
  public double axialPlayMax() {
    return pitchPlayMax() * TAN_HALF_FLANK;
  }

  /**
   * Angle through which an unlocked screw may rock in its thread: the largest play in pitch
   * diameter over the engaged length. A locked nut takes this away.
   *
   * @param engagement engaged length, m
   * @return full range of tilt, rad
   */
  public double unlockedTilt(double engagement) {
    Bounds.positive("thread engagement", engagement, "m");
    return pitchPlayMax() / engagement;
  }

  /**
   * Radial depth over which the flanks still bear at the worst limits.
   *
   * @return half of smallest screw major diameter less largest nut minor diameter, m
   */
  public double flankOverlapMin() {
    return (screwMajorMin - nutMinorMax) / 2;
  }

  private static void inOrder(String what, double min, double max) {
    if (!(min > 0 && min <= max)) {
      throw new IllegalArgumentException(
          FilledText.of("%s: limits %.4f to %.4f mm are not in order", what, min * 1e3, max * 1e3));
    }
  }
}
