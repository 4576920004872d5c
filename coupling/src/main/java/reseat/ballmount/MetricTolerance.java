package reseat.ballmount;

import java.util.Map;
import reseat.elementary.Elementary;

/**
 * Limits of ISO metric threads by the formulas of ISO 965-1, recalled from memory (micrometres, P
 * and d in millimetres, d being the geometric mean of the diameter step):
 *
 * <pre>
 *   allowance of g       15 + 11 P
 *   Td  (grade 6)        180 P^(2/3) - 3.15 / sqrt(P)
 *   TD1 (grade 6)        433 P - 190 P^1.22 up to P = 0.8;  230 P^0.7 above
 *   Td2 (grade 6)        90 P^0.4 d^0.1
 *   TD2 (grade 6)        1.32 Td2 (grade 6)
 *   grade 4 : 5 : 6      0.63 : 0.8 : 1
 * </pre>
 *
 * <p>The standard rounds to the R40 series of preferred numbers and lets a constant ratio between
 * grades go before the rounding, so the ratios 0.63, 0.8 and 1.32 are taken here as -8, -4 and +5
 * steps of R40. A few entries of its tables depart from its formulas; those for threads in common
 * use are listed below.
 */
final class MetricTolerance {

  private static final double[] R40 = {
    1.00, 1.06, 1.12, 1.18, 1.25, 1.32, 1.40, 1.50, 1.60, 1.70, 1.80, 1.90, 2.00, 2.12, 2.24, 2.36,
    2.50, 2.65, 2.80, 3.00, 3.15, 3.35, 3.55, 3.75, 4.00, 4.25, 4.50, 4.75, 5.00, 5.30, 5.60, 6.00,
    6.30, 6.70, 7.10, 7.50, 8.00, 8.50, 9.00, 9.50
  };

  /** Diameter steps of the standard, mm. */
  private static final double[] STEPS = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355};

  private static final Map<Double, Double> ALLOWANCE_AS_PRINTED = Map.of(0.75, 22.0);
  private static final Map<Double, Double> MAJOR_AS_PRINTED = Map.of(0.75, 140.0, 4.0, 475.0);
  private static final Map<Double, Double> MINOR_AS_PRINTED = Map.of(0.5, 140.0, 2.5, 450.0);

  private MetricTolerance() {}

  static ThreadTolerance limits(ScrewThread thread, ThreadFit fit) {
    double pitch = round(thread.pitch() * 1e3, 1e6);
    boolean medium = fit == ThreadFit.MEDIUM;
    int screwSteps = medium ? 0 : -8;
    int nutSteps = medium ? 0 : -4;
    double major = round(thread.diameter() * 1e3, 1e3);
    double pitchDiameter = round(thread.pitchDiameter() * 1e3, 1e3);
    double minor = round(thread.minorDiameter() * 1e3, 1e3);
    double allowance = medium ? allowance(pitch) : 0;
    int pitchRank = pitchDiameterRank(thread.diameter() * 1e3, pitch);
    double screwPitchMax = pitchDiameter - allowance * 1e-3;
    double screwMajorMax = major - allowance * 1e-3;
    return new ThreadTolerance(
        thread,
        fit,
        mm(screwMajorMax - 1e-3 * preferred(majorRank(pitch) + screwSteps)),
        mm(screwMajorMax),
        mm(screwPitchMax - 1e-3 * preferred(pitchRank + screwSteps)),
        mm(screwPitchMax),
        mm(minor),
        mm(minor + 1e-3 * preferred(minorRank(pitch) + nutSteps)),
        mm(pitchDiameter),
        mm(pitchDiameter + 1e-3 * preferred(pitchRank + 5 + nutSteps)));
  }

  private static double allowance(double pitch) {
    return ALLOWANCE_AS_PRINTED.getOrDefault(pitch, preferred(rank(15 + 11 * pitch)));
  }

  private static int majorRank(double pitch) {
    double formula = 180 * Elementary.cbrt(pitch * pitch) - 3.15 / Math.sqrt(pitch);
    return rank(MAJOR_AS_PRINTED.getOrDefault(pitch, formula));
  }

  private static int minorRank(double pitch) {
    double formula =
        pitch <= 0.8
            ? 433 * pitch - 190 * Elementary.pow(pitch, 1.22)
            : 230 * Elementary.pow(pitch, 0.7);
    return rank(MINOR_AS_PRINTED.getOrDefault(pitch, formula));
  }

  private static int pitchDiameterRank(double diameter, double pitch) {
    int step = 1;
    while (step < STEPS.length - 1 && diameter > STEPS[step]) {
      step++;
    }
    double mean = Math.sqrt(STEPS[step - 1] * STEPS[step]);
    boolean printedLower = pitch == 0.5 && STEPS[step] == 5.6;
    return rank(printedLower ? 75 : 90 * Elementary.pow(pitch, 0.4) * Elementary.pow(mean, 0.1));
  }

  /** Place of the preferred number nearest to a value, nearest by ratio. */
  private static int rank(double value) {
    int guess = (int) Elementary.round(R40.length * Elementary.log10(value));
    int best = guess;
    for (int near = guess - 1; near <= guess + 1; near++) {
      if (distance(near, value) < distance(best, value)) {
        best = near;
      }
    }
    return best;
  }

  private static double distance(int rank, double value) {
    return Math.abs(Elementary.log(exactPreferred(rank) / value));
  }

  private static double exactPreferred(int rank) {
    return R40[Math.floorMod(rank, R40.length)]
        * Elementary.pow(10, Math.floorDiv(rank, R40.length));
  }

  /** A preferred number of R40 in whole micrometres, halves to the even neighbour. */
  private static double preferred(int rank) {
    return Elementary.rint(exactPreferred(rank));
  }

  private static double round(double value, double perUnit) {
    return Elementary.rint(value * perUnit) / perUnit;
  }

  private static double mm(double value) {
    return round(value, 1e3) * 1e-3;
  }
}
