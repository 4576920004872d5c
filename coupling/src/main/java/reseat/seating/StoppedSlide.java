package reseat.seating;

import reseat.equilibrium.ContactLines;
import reseat.numerics.Lu6;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The forces of six contacts that would stop a slide at a given friction: the engaged ones carry
 * friction μN against their slip, the open ones whatever it takes. Storage used again and again.
 */
final class StoppedSlide {

  private static final int N = 6;

  private final ContactLines lines;
  private final double[] opposite;
  private final Lu6 lu = new Lu6();
  private final double[] normalColumns = new double[N * N];
  private final double[] slipColumns = new double[N * N];
  private final double[] pushing = new double[N * N];
  private final double[] n = new double[N];
  private boolean finite;

  StoppedSlide(ContactLines lines, Wrench load) {
    this.lines = lines;
    opposite = opposite(load);
    for (int i = 0; i < Math.min(N, lines.lines().size()); i++) {
      writeColumn(lines.lines().get(i), lines.lines().get(i).push(), normalColumns, i);
    }
  }

  /** What balances a load, about the origin. */
  static double[] opposite(Wrench load) {
    Wrench w = load.movedTo(Vec3.ZERO);
    return new double[] {
      -w.force().x(), -w.force().y(), -w.force().z(),
      -w.moment().x(), -w.moment().y(), -w.moment().z()
    };
  }

  /** Wrenches of unit forces along the normals, 6x6 row by row, a contact to a column. */
  double[] normalColumns() {
    return normalColumns;
  }

  /** Takes the unit slip of the holder at each engaged contact; null where nothing slips. */
  void setSlips(Vec3[] slip) {
    for (int i = 0; i < N; i++) {
      Vec3 direction = slip[i] == null ? Vec3.ZERO : slip[i];
      writeColumn(lines.lines().get(i), direction, slipColumns, i);
    }
  }

  /** Finds the forces that stop the slide at a friction. */
  StoppedSlide stop(double mu) {
    factor(mu);
    if (finite) {
      lu.solve(opposite, n);
    }
    return this;
  }

  private void factor(double mu) {
    for (int k = 0; k < N * N; k++) {
      pushing[k] = normalColumns[k] - mu * slipColumns[k];
    }
    finite = lu.factor(pushing);
  }

  /**
   * Finds the force of one contact that stops the slide, for each part of {@link #opposite} at one;
   * zeros if the holder wedges.
   */
  double[] perLoad(double mu, int contact) {
    double[] row = new double[N];
    factor(mu);
    if (finite) {
      row[contact] = 1;
      lu.solveTransposed(row, row);
    }
    return row;
  }

  /** Whether power is left at the open contacts to go on closing. */
  boolean goesOn(double[] rates) {
    if (!finite) {
      return false; // the contact forces grow without bound: the holder wedges
    }
    double power = 0;
    for (int i = 0; i < N; i++) {
      power += rates[i] * n[i];
    }
    return power > 0;
  }

  /** Whether every engaged contact is pressed. */
  boolean staysEngaged(double[] rates) {
    if (!finite) {
      return true;
    }
    double largest = 0;
    for (double force : n) {
      largest = Math.max(largest, Math.abs(force));
    }
    for (int i = 0; i < N; i++) {
      if (rates[i] == 0 && n[i] < -1e-9 * largest) {
        return false;
      }
    }
    return true;
  }

  private static void writeColumn(ContactLines.Line line, Vec3 force, double[] columns, int i) {
    Vec3 moment = line.point().cross(force);
    for (int k = 0; k < 3; k++) {
      columns[N * k + i] = force.component(k);
      columns[N * (k + 3) + i] = moment.component(k);
    }
  }
}
