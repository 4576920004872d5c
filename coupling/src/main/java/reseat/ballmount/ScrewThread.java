package reseat.ballmount;

import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.FilledText;

/**
 * A single-start 60 degree screw thread: nominal diameter, pitch and hand, with the diameters of
 * its basic profile and what one degree of turn is worth.
 *
 * <p>Basic profile of ISO 68-1 and ASME B1.1, with the fundamental triangle {@code H = P
 * sqrt(3)/2}:
 *
 * <pre>
 *   d2 = d - (3/4) H  = d - 0.649519 P    pitch diameter
 *   D1 = d - (5/4) H  = d - 1.082532 P    minor diameter of the nut
 *   d3 = d - (17/12) H = d - 1.226869 P   root diameter of the screw
 * </pre>
 *
 * <p>Formulas recalled from memory; the stress areas they give are confirmed against printed
 * tables.
 *
 * @param form metric or Unified: decides the stress-area formula, the tolerance system and the name
 * @param diameter nominal (major) diameter d, m
 * @param pitch pitch P, which is also the lead of a single start, m
 * @param hand right-hand or left-hand
 * @param designation the name to print, e.g. {@code M8x1} or {@code 3/8-40}
 */
public record ScrewThread(
    ThreadForm form, double diameter, double pitch, ThreadHand hand, String designation) {

  /** One inch, m (exact). */
  static final double INCH = 0.0254;

  /** Half the flank angle of both thread forms, 30 degrees, rad. */
  static final double HALF_FLANK_ANGLE = Math.PI / 6;

  private static final double FINEST_PITCH = 0.05e-3;
  private static final double WIDEST = 1;
  private static final double COARSEST_SHARE = 0.34;

  /** Checks that the proportions are those of a screw thread. */
  public ScrewThread {
    Objects.requireNonNull(form, "form of a screw thread must be given, found null");
    Objects.requireNonNull(hand, "hand of a screw thread must be given, found null");
    Objects.requireNonNull(designation, "designation of a screw thread must be given, found null");
    Bounds.positive("thread diameter", diameter, "m");
    if (diameter > WIDEST) {
      throw new IllegalArgumentException("thread " + designation + " is wider than 1 m");
    }
    if (!(pitch >= FINEST_PITCH)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "thread %s has a pitch of %.4g mm (%.4g threads per inch): the finest that can be"
                  + " cut is taken as 0.05 mm (508 threads per inch)",
              designation, pitch * 1e3, INCH / pitch));
    }
    if (!(pitch <= COARSEST_SHARE * diameter)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "thread %s has a pitch of %.4g mm on a diameter of %.4g mm: the pitch of a screw"
                  + " thread is at most a third of its diameter; check for threads per inch given"
                  + " as a pitch, or inches as millimetres",
              designation, pitch * 1e3, diameter * 1e3));
    }
  }

  /**
   * Reads a thread designation: {@code M8x1}, {@code M6x0.5}, {@code M8} (coarse pitch of ISO 261),
   * {@code 1/2-20}, {@code 3/8-40}, {@code 10-32}, {@code #10-32}, {@code 1/4-80}, {@code 1
   * 1/4-12}, {@code 0.190-40}, {@code 1in-12}, each optionally with the series ({@code UNC}, {@code
   * UNF}, {@code UNEF}, {@code UN}, {@code UNS}) and with {@code -LH} for a left-hand thread.
   *
   * @param text the designation
   * @return the thread
   * @throws IllegalArgumentException if the text is no designation; the message says what is
   *     allowed
   */
  public static ScrewThread parse(String text) {
    return ThreadDesignation.parse(text);
  }

  /**
   * Threads per inch.
   *
   * @return threads per inch, 1/in
   */
  public double threadsPerInch() {
    return INCH / pitch;
  }

  /**
   * Height H of the fundamental triangle.
   *
   * @return H, m
   */
  public double triangleHeight() {
    return Math.sqrt(3) / 2 * pitch;
  }

  /**
   * Basic pitch diameter d2.
   *
   * @return d2, m
   */
  public double pitchDiameter() {
    return diameter - 0.75 * triangleHeight();
  }

  /**
   * Basic minor diameter D1 of the nut.
   *
   * @return D1, m
   */
  public double minorDiameter() {
    return diameter - 1.25 * triangleHeight();
  }

  /**
   * Root diameter d3 of a screw with rounded root, {@code d - (17/12) H}.
   *
   * @return d3, m
   */
  public double rootDiameter() {
    return diameter - 17.0 / 12.0 * triangleHeight();
  }

  /**
   * Tensile stress area: {@code (pi/4)((d2 + d3)/2)^2} for metric threads (ISO 898-1) and {@code
   * (pi/4)(d - 0.9743 P)^2} for Unified threads (ASME B1.1). The two differ by under 2 %.
   *
   * @return stress area, m²
   */
  public double stressArea() {
    double effective =
        form == ThreadForm.METRIC
            ? (pitchDiameter() + rootDiameter()) / 2
            : diameter - 0.9743 * pitch;
    return Math.PI / 4 * effective * effective;
  }

  /**
   * Lead angle at the basic pitch diameter, {@code atan(P / (pi d2))}.
   *
   * @return lead angle, rad
   */
  public double leadAngle() {
    return leadAngleAt(pitchDiameter());
  }

  /**
   * Lead angle at a given diameter.
   *
   * @param at diameter, m
   * @return lead angle, rad
   */
  public double leadAngleAt(double at) {
    return Elementary.atan(pitch / (Math.PI * at));
  }

  /**
   * Whether an axial load cannot turn the screw: {@code tan(lead angle) < mu / cos 30°}.
   *
   * @param friction coefficient of friction of the flanks
   * @return true if the thread holds itself, without vibration
   */
  public boolean selfLocking(double friction) {
    return friction > selfLockingFriction();
  }

  /**
   * Coefficient of friction at which the thread begins to hold itself.
   *
   * @return limiting coefficient of friction
   */
  public double selfLockingFriction() {
    return Elementary.tan(leadAngle()) * Elementary.cos(HALF_FLANK_ANGLE);
  }

  /**
   * Axial travel for one radian of turn.
   *
   * @return travel, m/rad
   */
  public double travelPerRadian() {
    return pitch / (2 * Math.PI);
  }

  /**
   * Axial travel for one degree of turn.
   *
   * @return travel, m per degree
   */
  public double travelPerDegree() {
    return pitch / 360;
  }

  /**
   * Axial travel for one minute of the clock face, a sixtieth of a turn (6 degrees).
   *
   * @return travel, m per clock-minute
   */
  public double travelPerClockMinute() {
    return pitch / 60;
  }

  /**
   * Travel per radian of a differential screw: this thread in the body and a finer or coarser one
   * of the same hand in the carrier.
   *
   * @param inner the second thread
   * @return travel of the carrier against the body, m/rad; negative if the inner thread is coarser
   */
  public double differentialTravelPerRadian(ScrewThread inner) {
    return hand.advanceClockwise() * travelPerRadian()
        - inner.hand().advanceClockwise() * inner.travelPerRadian();
  }

  @Override
  public String toString() {
    return designation;
  }
}
