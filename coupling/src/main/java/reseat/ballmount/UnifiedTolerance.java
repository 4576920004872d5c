package reseat.ballmount;

import reseat.elementary.Elementary;

/**
 * Limits of Unified threads by the formulas of ASME B1.1, recalled from memory (inches):
 *
 * <pre>
 *   Td2 (2A) = 0.0015 D^(1/3) + 0.0015 sqrt(LE) + 0.015 P^(2/3);   3A: 0.75 of it
 *   TD2 (2B) = 1.3 Td2(2A);                                        3B: 0.975 Td2(2A)
 *   allowance (2A) = 0.3 Td2(2A);                                  3A: none
 *   Td (2A, 3A) = 0.06 P^(2/3)
 *   TD1 (2B) = 0.25 P - 0.4 P²                              for D >= 0.25
 *   TD1 (2B) = 0.05 P^(2/3) + 0.03 P/D - 0.002              below, within [0.25 P - 0.4 P², 0.394 P]
 *   TD1 (3B) = 0.05 P^(2/3) + 0.03 P/D - 0.002              within [0.23 P - 1.5 P², 0.394 P]
 * </pre>
 *
 * <p>The length of engagement LE is one diameter for the coarse and fine series and nine pitches
 * for extra-fine and special threads. Diameters and tolerances are rounded to 0.0001 in, the minor
 * diameter of 2B nuts of 0.138 in and larger to 0.001 in.
 */
final class UnifiedTolerance {

  private UnifiedTolerance() {}

  static ThreadTolerance limits(ScrewThread thread, ThreadFit fit) {
    double inch = ScrewThread.INCH;
    double d = thread.diameter() / inch;
    double p = thread.pitch() / inch;
    boolean medium = fit == ThreadFit.MEDIUM;
    double coarseOrFine = Elementary.rint(1 / p);
    StandardThreads.UnifiedSeries series = StandardThreads.seriesOf(d, coarseOrFine);
    boolean diameterLong =
        series == StandardThreads.UnifiedSeries.UNC || series == StandardThreads.UnifiedSeries.UNF;
    double engagement = diameterLong ? d : 9 * p;
    double pitchTolerance2A =
        0.0015 * Elementary.cbrt(d)
            + 0.0015 * Math.sqrt(engagement)
            + 0.015 * Elementary.cbrt(p * p);
    double screwTolerance = round4(medium ? pitchTolerance2A : 0.75 * pitchTolerance2A);
    double nutTolerance = round4((medium ? 1.3 : 0.975) * pitchTolerance2A);
    double allowance = medium ? round4(0.3 * pitchTolerance2A) : 0;
    double majorTolerance = round4(0.06 * Elementary.cbrt(p * p));
    double pitchDiameter = round4(thread.pitchDiameter() / inch);
    double minor = thread.minorDiameter() / inch;
    double minorMax = minor + minorTolerance(d, p, medium);
    boolean threeDecimals = medium && d >= 0.138 - 1e-9;
    double minorMaxRounded =
        threeDecimals ? Elementary.rint(minorMax * 1e3) / 1e3 : round4(minorMax);
    double minorMinRounded = threeDecimals ? Elementary.rint(minor * 1e3) / 1e3 : round4(minor);
    return new ThreadTolerance(
        thread,
        fit,
        round4(d - allowance - majorTolerance) * inch,
        round4(d - allowance) * inch,
        round4(pitchDiameter - allowance - screwTolerance) * inch,
        round4(pitchDiameter - allowance) * inch,
        minorMinRounded * inch,
        minorMaxRounded * inch,
        pitchDiameter * inch,
        round4(pitchDiameter + nutTolerance) * inch);
  }

  private static double minorTolerance(double d, double p, boolean medium) {
    double byLength = 0.25 * p - 0.4 * p * p;
    if (medium && d >= 0.25 - 1e-9) {
      return byLength;
    }
    double byDiameter = 0.05 * Elementary.cbrt(p * p) + 0.03 * p / d - 0.002;
    double least = medium ? byLength : 0.23 * p - 1.5 * p * p;
    return Math.max(least, Math.min(0.394 * p, byDiameter));
  }

  private static double round4(double inches) {
    return Elementary.rint(inches * 1e4) / 1e4;
  }
}
