package reseat.repeatability;

import reseat.numerics.Lu6;
import reseat.seating.SelfSeating;

/**
 * The friction at which one way home ends badly, by the statics of the slide under one load.
 *
 * <p>Contacts that close carry normal forces only; the others slide, friction fully against them.
 * Storage is reused; not for use by several threads.
 */
final class SlideLimit {

  private static final int N = SeatedContacts.N;
  private static final double RESOLUTION = 5e-4;

  private final SeatedContacts at;
  private final double[] load;

  /** Slips, along the axes of the patches, while one contact after the other closes at rate 1. */
  private final double[][] slipOf = new double[N][SeatedContacts.TANGENTS];

  private final Lu6 statics = new Lu6();
  private final double[] matrix = new double[N * N];
  private final double[] force = new double[N];

  /** Friction on the holder per normal force and friction coefficient, 3 values each. */
  private final double[] slope = new double[3 * N];

  private final double[] slip = new double[SeatedContacts.TANGENTS];

  /**
   * Prepares a load.
   *
   * @param at the contacts
   * @param load load on the holder about the origin, 6 values
   */
  SlideLimit(SeatedContacts at, double[] load) {
    this.at = at;
    this.load = load;
    double[] twist = new double[N];
    for (int i = 0; i < N; i++) {
      double[] unit = new double[N];
      unit[i] = 1;
      at.move(unit, new double[3 * N], twist, slipOf[i]);
    }
  }

  /**
   * Computes how the contacts slide on a way home.
   *
   * @param rates rate at which each contact closes, zero for those that slide
   */
  void computeSlip(double[] rates) {
    for (int t = 0; t < slip.length; t++) {
      slip[t] = 0;
      for (int i = 0; i < N; i++) {
        slip[t] += rates[i] * slipOf[i][t];
      }
    }
    for (int i = 0; i < N; i++) {
      double a = slip[2 * i];
      double b = slip[2 * i + 1];
      double speed = rates[i] > 0 ? 0 : Math.sqrt(a * a + b * b);
      for (int k = 0; k < 3; k++) {
        slope[3 * i + k] =
            speed > 0 ? -(a * at.axis[6 * i + k] + b * at.axis[6 * i + 3 + k]) / speed : 0;
      }
    }
  }

  /**
   * Finds the friction up to which contacts stay pressed.
   *
   * @param most greatest friction looked at
   * @return the limit; {@value SelfSeating#GREATEST} if there is none up to the greatest
   */
  double limit(double most) {
    double bad = most;
    if (pressed(bad)) {
      return SelfSeating.GREATEST;
    }
    double good = 0;
    while (bad - good > RESOLUTION) {
      double middle = (good + bad) / 2;
      if (pressed(middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  private boolean pressed(double mu) {
    at.copyNormals(matrix);
    for (int i = 0; i < N; i++) {
      at.wrench(i, slope, 3 * i, mu, matrix, i);
    }
    if (!statics.factor(matrix)) {
      return false;
    }
    for (int k = 0; k < N; k++) {
      force[k] = -load[k];
    }
    statics.solve(force, force);
    for (int i = 0; i < N; i++) {
      if (!(force[i] > 0)) {
        return false;
      }
    }
    return true;
  }

  /** Weights of the contacts' own friction where the force that vanishes first does so; or none. */
  double[] weights(double limit) {
    if (!pressed(limit)) {
      return new double[0];
    }
    int first = 0;
    for (int i = 1; i < N; i++) {
      first = force[i] < force[first] ? i : first;
    }
    double[] row = new double[N];
    row[first] = 1;
    statics.solveTransposed(row, row);
    double[] column = new double[N * N];
    double[] weights = new double[N];
    for (int i = 0; i < N; i++) {
      at.wrench(i, slope, 3 * i, force[i], column, i);
      for (int k = 0; k < N; k++) {
        weights[i] += row[k] * column[N * k + i];
      }
    }
    return weights;
  }
}
