package reseat.design;

import java.util.List;
import reseat.numerics.DistributionShape;

/**
 * Grades of rolling-bearing balls by the designation of ISO 3290-1.
 *
 * <p>A grade limits the departure from roundness of one ball and the spread of diameters within one
 * lot. It does not say how far the lot's mean is from the nominal diameter; where holders get balls
 * of different lots, that is a shared tolerance of its own. Balls are assumed fixed in the half
 * that carries them, so the form error at each contact stays what it is.
 *
 * <p>Values: literature table as recalled, the standard itself not opened. Grades 20, 24, 40, 60
 * and 200 are from memory alone.
 */
public enum BallGrade {
  /** Grade 3. */
  G3(0.08e-6, 0.13e-6, true),
  /** Grade 5. */
  G5(0.13e-6, 0.25e-6, true),
  /** Grade 10. */
  G10(0.25e-6, 0.5e-6, true),
  /** Grade 16. */
  G16(0.4e-6, 0.8e-6, true),
  /** Grade 20. */
  G20(0.5e-6, 1e-6, false),
  /** Grade 24. */
  G24(0.6e-6, 1.2e-6, false),
  /** Grade 28. */
  G28(0.7e-6, 1.4e-6, true),
  /** Grade 40. */
  G40(1e-6, 2e-6, false),
  /** Grade 60. */
  G60(1.5e-6, 3e-6, false),
  /** Grade 100. */
  G100(2.5e-6, 5e-6, true),
  /** Grade 200. */
  G200(5e-6, 10e-6, false);

  /** Greatest radial distance between the ball's surface and the sphere about it, m. */
  private final double form;

  /** Mean diameter of a lot's largest ball less that of its smallest, m. */
  private final double lotSpread;

  private final boolean fromTable;

  BallGrade(double form, double lotSpread, boolean fromTable) {
    this.form = form;
    this.lotSpread = lotSpread;
    this.fromTable = fromTable;
  }

  /**
   * Says where the values come from.
   *
   * @return the source, with what was opened and what was not
   */
  public String source() {
    return fromTable
        ? "ISO 3290-1, literature table, standard not opened"
        : "ISO 3290-1, from memory";
  }

  /**
   * Returns the tolerances that the grade puts on every ball.
   *
   * @return diameter of each ball within its lot, and form at each contact
   */
  public List<Tolerance> tolerances() {
    return List.of(
        Tolerance.ofEach(ToleranceKind.BALL_DIAMETER, lotSpread / 2, DistributionShape.UNIFORM),
        Tolerance.ofEach(ToleranceKind.BALL_FORM, form / 2, DistributionShape.UNIFORM));
  }

  /**
   * Finds a grade by its designation.
   *
   * @param designation for instance {@code G10}, {@code 10} or {@code g10}
   * @return the grade
   * @throws IllegalArgumentException if there is no such grade; the message lists those known
   */
  public static BallGrade of(String designation) {
    String digits = designation.strip();
    if (digits.startsWith("G") || digits.startsWith("g")) {
      digits = digits.substring(1).strip();
    }
    for (BallGrade g : values()) {
      if (g.name().substring(1).equals(digits)) {
        return g;
      }
    }
    throw new IllegalArgumentException(
        "no ball grade " + designation + "; known are " + List.of(values()));
  }
}
