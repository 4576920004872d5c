package reseat.equilibrium;

import java.util.Arrays;
import reseat.numerics.Inverse6;

/**
 * Forces of six contacts that carry a load, and how deep these press the balls in.
 *
 * <p>Kept from round to round of the {@link EquilibriumSolver}: each round only corrects the forces
 * for what W has changed, so an inverse that belongs to a pose near by serves, and each cube root
 * starts from the last.
 */
final class ContactForces {

  private static final int N = 6;

  private final Inverse6 inverse;
  private final double[] missing = new double[N];
  private final double[] correction = new double[N];
  private final double[] roots = new double[N];

  private NormalLaws usedLaws;

  /** N, compression positive; negative where a contact would have to pull. */
  final double[] forces = new double[N];

  /** m, zero where a contact has lifted. */
  final double[] approaches = new double[N];

  /** Takes the inverse of W, or of one near it, that its owner keeps. */
  ContactForces(Inverse6 inverse) {
    this.inverse = inverse;
  }

  /** Whether a contact, or a part of a ring, would have to pull. */
  boolean lifted() {
    return usedLaws != null && usedLaws.anyLifted(forces);
  }

  void reset() {
    usedLaws = null;
    Arrays.fill(forces, 0);
    Arrays.fill(approaches, 0);
    Arrays.fill(roots, 0);
  }

  /** Corrects the forces until they carry the load on W as it is now; then finds approaches. */
  void carry(double[] load, double[] wrenchColumns, NormalLaws laws) {
    usedLaws = laws;
    for (int i = 0; i < N; i++) {
      double left = load[i];
      for (int j = 0; j < N; j++) {
        left -= wrenchColumns[N * i + j] * forces[j];
      }
      missing[i] = left;
    }
    inverse.solve(missing, correction);
    for (int i = 0; i < N; i++) {
      forces[i] += correction[i];
      if (laws.onRing(i) || laws.dented(i)) {
        approaches[i] = laws.approach(i, forces[i]);
        continue;
      }
      double ratio = forces[i] / laws.constant(i);
      roots[i] = ratio > 0 ? cubeRoot(ratio, roots[i]) : 0;
      approaches[i] = roots[i] * roots[i];
    }
  }

  /**
   * Cube root of a positive number by Halley's method, from a guess that the next round betters.
   *
   * <p>Without a guess that is near, a third of the exponent gives one good to 4 %, and two steps
   * leave parts in 1e14.
   */
  private static double cubeRoot(double x, double guess) {
    if (Math.abs(guess * guess * guess - x) > 0.03 * x) {
      long third = Double.doubleToRawLongBits(x) / 3 + 0x2A9F789300000000L;
      return halley(x, halley(x, Double.longBitsToDouble(third)));
    }
    return halley(x, guess);
  }

  private static double halley(double x, double guess) {
    double cube = guess * guess * guess;
    return guess * (cube + 2 * x) / (2 * cube + x);
  }
}
