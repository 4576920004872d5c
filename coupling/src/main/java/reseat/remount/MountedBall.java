package reseat.remount;

import java.util.Arrays;
import reseat.numerics.Lu6;
import reseat.space.Matrix6;

/**
 * How one ball gives way on its mounting under normal and friction forces.
 *
 * <p>The ball has a motion q of its own against its half: shift d of the centre and tilt r. Its
 * contacts put a load L on it, about its centre, and {@code q = C L} with C the compliance of the
 * mounting. A contact whose arm from the centre is a moves by {@code G q = d + r x a} more than the
 * half does. In Newton's method q is eliminated: with T the derivative of a contact's force over
 * the displacement of its point, J the displacement of that point per motion of the half, {@code S
 * = Σ Gᵀ T G} and {@code H = Σ Gᵀ T J} over the ball's contacts,
 *
 * <pre>Δq = (I - C S)⁻¹ (C L - q + C H Δx).</pre>
 *
 * <p>Motions are in the axes of the ball half. Derivatives are taken as if the ball half stood
 * straight; it is turned by milliradians at most, which may cost a round and no accuracy, since
 * {@code C L - q} itself is exact. Storage is reused; not for use by several threads.
 */
final class MountedBall {

  private static final int N = 6;

  /** Shift and tilt of the ball, ball half's axes, m and rad. */
  final double[] motion = new double[N];

  /** The motion at the last accepted state. */
  final double[] held = new double[N];

  private final int[] contacts;
  private final double[] compliance;
  private final Lu6 relief = new Lu6();
  private final double[] misfit = new double[N];
  private final double[] load = new double[N];
  private final double[] turned = new double[N];
  private final double[] arm = new double[3];
  private final double[] lever = new double[3];
  private final double[] three = new double[3];
  private final double[] perArm = new double[3 * N];
  private final double[] perLever = new double[3 * N];
  private final double[] stiff = new double[N * N];
  private final double[] moved = new double[N * N];
  private final double[] onHalf = new double[N * N];
  private final double[] matrix = new double[N * N];
  private final double[] atOnce = new double[N];
  private final double[] perMove = new double[N * N];
  private final double[] column = new double[N];

  /**
   * A ball at rest on its mounting.
   *
   * @param compliance of its mounting at its centre, ball half's axes
   * @param contacts numbers of its contacts
   */
  MountedBall(Matrix6 compliance, int[] contacts) {
    this.compliance = compliance.toArray();
    this.contacts = contacts;
  }

  /** Displacement of a contact against the ball half since the last accepted state, seat axes. */
  void copyDisplacement(int contact, MountState s, double[] out) {
    takeArm(contact, s);
    s.pose.rotate(motion[3] - held[3], motion[4] - held[4], motion[5] - held[5], three);
    s.pose.rotate(motion[0] - held[0], motion[1] - held[1], motion[2] - held[2], out);
    out[0] += three[1] * arm[2] - three[2] * arm[1];
    out[1] += three[2] * arm[0] - three[0] * arm[2];
    out[2] += three[0] * arm[1] - three[1] * arm[0];
  }

  private void takeArm(int contact, MountState s) {
    for (int k = 0; k < 3; k++) {
      lever[k] = s.at.lever[3 * contact + k];
      arm[k] = lever[k] - s.at.centre[3 * contact + k];
    }
  }

  /**
   * Finds what is missing for q = C L under the normal forces and the trial friction.
   *
   * @return the shift that is missing, greatest component, m
   */
  double takeMisfit(MountState s) {
    Arrays.fill(load, 0);
    for (int i : contacts) {
      takeArm(i, s);
      int v = 3 * i;
      double tx = s.friction.trial[v];
      double ty = s.friction.trial[v + 1];
      double tz = s.friction.trial[v + 2];
      load[0] += s.force[i] * s.at.normal[v] + tx;
      load[1] += s.force[i] * s.at.normal[v + 1] + ty;
      load[2] += s.force[i] * s.at.normal[v + 2] + tz;
      // the normal force passes through the centre
      load[3] += arm[1] * tz - arm[2] * ty;
      load[4] += arm[2] * tx - arm[0] * tz;
      load[5] += arm[0] * ty - arm[1] * tx;
    }
    s.pose.rotateBack(load[0], load[1], load[2], three);
    System.arraycopy(three, 0, turned, 0, 3);
    s.pose.rotateBack(load[3], load[4], load[5], three);
    System.arraycopy(three, 0, turned, 3, 3);
    for (int i = 0; i < N; i++) {
      misfit[i] = dot(compliance, i, turned) - motion[i];
    }
    return Math.max(Math.abs(misfit[0]), Math.max(Math.abs(misfit[1]), Math.abs(misfit[2])));
  }

  /** Sets the motion to what the forces of the last {@link #takeMisfit} make of it. */
  void follow() {
    for (int i = 0; i < N; i++) {
      motion[i] += misfit[i];
    }
  }

  /**
   * Eliminates the ball's motion from the equations of the pose.
   *
   * @param s the state of the last {@link #takeMisfit}
   * @param tangent derivatives of the contact forces; its matrix is changed
   * @param residual load and contact forces on the ball half; changed
   * @return false if that cannot be done
   */
  boolean eliminate(MountState s, ContactTangent tangent, double[] residual) {
    Arrays.fill(stiff, 0);
    Arrays.fill(moved, 0);
    Arrays.fill(onHalf, 0);
    for (int i : contacts) {
      takeArm(i, s);
      takeTimesArm(tangent.perPoint, 9 * i, arm, perArm);
      takeTimesArm(tangent.perPoint, 9 * i, lever, perLever);
      addWrench(arm, perArm, stiff);
      addWrench(arm, perLever, moved);
      addWrench(lever, perArm, onHalf);
    }
    multiply(compliance, stiff, matrix);
    for (int i = 0; i < N * N; i++) {
      matrix[i] = (i % (N + 1) == 0 ? 1 : 0) - matrix[i];
    }
    if (!relief.factor(matrix)) {
      return false;
    }
    relief.solve(misfit, atOnce);
    multiply(compliance, moved, matrix);
    for (int j = 0; j < N; j++) {
      for (int k = 0; k < N; k++) {
        column[k] = matrix[N * k + j];
      }
      relief.solve(column, column);
      for (int k = 0; k < N; k++) {
        perMove[N * k + j] = column[k];
      }
    }
    multiply(onHalf, perMove, matrix);
    for (int i = 0; i < N * N; i++) {
      tangent.matrix[i] -= matrix[i];
    }
    for (int i = 0; i < N; i++) {
      residual[i] += dot(onHalf, i, atOnce);
    }
    return true;
  }

  /**
   * Moves the ball along with a step of the pose.
   *
   * @param step full step of the half, x y z rx ry rz
   * @param part part of the step that is taken
   */
  void advance(double[] step, double part) {
    for (int i = 0; i < N; i++) {
      motion[i] += part * (atOnce[i] + dot(perMove, i, step));
    }
  }

  /** T G for a point at an arm: 3 rows, 6 columns. */
  private static void takeTimesArm(double[] t, int from, double[] a, double[] out) {
    for (int row = 0; row < 3; row++) {
      double x = t[from + 3 * row];
      double y = t[from + 3 * row + 1];
      double z = t[from + 3 * row + 2];
      int r = N * row;
      out[r] = x;
      out[r + 1] = y;
      out[r + 2] = z;
      out[r + 3] = z * a[1] - y * a[2];
      out[r + 4] = x * a[2] - z * a[0];
      out[r + 5] = y * a[0] - x * a[1];
    }
  }

  /** Adds the wrench, by an arm, of forces given in 3 rows and 6 columns. */
  private static void addWrench(double[] a, double[] f, double[] out) {
    for (int c = 0; c < N; c++) {
      double x = f[c];
      double y = f[N + c];
      double z = f[2 * N + c];
      out[c] += x;
      out[N + c] += y;
      out[2 * N + c] += z;
      out[3 * N + c] += a[1] * z - a[2] * y;
      out[4 * N + c] += a[2] * x - a[0] * z;
      out[5 * N + c] += a[0] * y - a[1] * x;
    }
  }

  private static void multiply(double[] a, double[] b, double[] out) {
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double sum = 0;
        for (int k = 0; k < N; k++) {
          sum += a[N * i + k] * b[N * k + j];
        }
        out[N * i + j] = sum;
      }
    }
  }

  private static double dot(double[] matrix, int row, double[] x) {
    double sum = 0;
    for (int k = 0; k < N; k++) {
      sum += matrix[N * row + k] * x[k];
    }
    return sum;
  }
}
