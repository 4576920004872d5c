package reseat.remount;

import java.util.Arrays;
import reseat.ballmount.StudCompliance;
import reseat.design.BallMounting;
import reseat.numerics.BlockSolve6;
import reseat.space.Vec3;

/**
 * How one ball gives way on its mounting under normal and friction forces.
 *
 * <p>The ball has a motion q of its own against its half: shift d of the centre and tilt r. Its
 * contacts put a load L on it, about its centre, and {@code q = C L} with C the compliance of the
 * mounting. A contact whose arm from the centre is a moves by {@code G q = d + r x a} more than the
 * half does. With T the derivative of a contact's force over the displacement of its point, {@code
 * S = Σ Gᵀ T G} over the ball's contacts is the derivative of L over a motion of the ball, and
 *
 * <pre>Y = (I - S C)⁻¹ S</pre>
 *
 * <p>that over a motion w of the half at the ball's centre, the mounting giving way. In Newton's
 * method q is eliminated: a missing {@code m = C L - q} adds {@code Y m} to the load on the half,
 * and a step w of the half moves the ball by {@code m + C Y (m + w)}.
 *
 * <p>Motions are in the axes of the ball half. Derivatives are taken as if the ball half stood
 * straight; it is turned by milliradians at most, which may cost a round and no accuracy, since
 * {@code C L - q} itself is exact. Storage is reused; not for use by several threads.
 */
final class ElasticBallSupport {

  private static final int N = 6;

  /** Shift and tilt of the ball, ball half's axes, m and rad. */
  final double[] motion = new double[N];

  /** The motion at the last accepted state. */
  final double[] held = new double[N];

  private final int[] contacts;
  private final StudCompliance stud;
  private final double axisX;
  private final double axisY;
  private final double axisZ;
  private final BlockSolve6 blocks = new BlockSolve6();
  private final double[] misfit = new double[N];
  private final double[] load = new double[N];
  private final double[] loadInHalf = new double[N];
  private final double[] shift = new double[3];
  private final double[] tilt = new double[3];
  private final double[] arm = new double[3];
  private final double[] perArm = new double[3 * N];
  private final double[] stiff = new double[N * N];
  private final double[] matrix = new double[N * N];
  private final double[] mounted = new double[N * N];
  private final double[] column = new double[N];

  /**
   * A ball at rest on its mounting.
   *
   * @param mounting what it stands on
   * @param contacts numbers of its contacts
   */
  ElasticBallSupport(BallMounting mounting, int[] contacts) {
    this.contacts = contacts;
    stud = mounting.compliance();
    Vec3 axis = mounting.axis();
    axisX = axis.x();
    axisY = axis.y();
    axisZ = axis.z();
  }

  /** Takes the motion since the last accepted state into the seat half's axes. */
  void computeMotion(ToolChangeState s) {
    s.pose.rotate(motion[0] - held[0], motion[1] - held[1], motion[2] - held[2], shift);
    s.pose.rotate(motion[3] - held[3], motion[4] - held[4], motion[5] - held[5], tilt);
  }

  /** Displacement of a contact by the motion last taken, seat half's axes. */
  void copyDisplacement(int contact, ToolChangeState s, double[] out) {
    computeArm(contact, s);
    out[0] = shift[0] + tilt[1] * arm[2] - tilt[2] * arm[1];
    out[1] = shift[1] + tilt[2] * arm[0] - tilt[0] * arm[2];
    out[2] = shift[2] + tilt[0] * arm[1] - tilt[1] * arm[0];
  }

  private void computeArm(int contact, ToolChangeState s) {
    int v = 3 * contact;
    arm[0] = s.at.lever[v] - s.at.centre[v];
    arm[1] = s.at.lever[v + 1] - s.at.centre[v + 1];
    arm[2] = s.at.lever[v + 2] - s.at.centre[v + 2];
  }

  /**
   * Finds what is missing for q = C L under the normal forces and the trial friction.
   *
   * @return the shift that is missing, greatest component, m
   */
  double computeMisfit(ToolChangeState s) {
    Arrays.fill(load, 0);
    double[] friction = s.friction.trial;
    for (int i : contacts) {
      computeArm(i, s);
      int v = 3 * i;
      double tx = friction[v];
      double ty = friction[v + 1];
      double tz = friction[v + 2];
      load[0] += s.force[i] * s.at.normal[v] + tx;
      load[1] += s.force[i] * s.at.normal[v + 1] + ty;
      load[2] += s.force[i] * s.at.normal[v + 2] + tz;
      // the normal force passes through the centre
      load[3] += arm[1] * tz - arm[2] * ty;
      load[4] += arm[2] * tx - arm[0] * tz;
      load[5] += arm[0] * ty - arm[1] * tx;
    }
    s.pose.rotateBack(load[0], load[1], load[2], shift);
    s.pose.rotateBack(load[3], load[4], load[5], tilt);
    System.arraycopy(shift, 0, loadInHalf, 0, 3);
    System.arraycopy(tilt, 0, loadInHalf, 3, 3);
    multiplyByCompliance(loadInHalf, 0, misfit, 0);
    for (int i = 0; i < N; i++) {
      misfit[i] -= motion[i];
    }
    return Math.max(Math.abs(misfit[0]), Math.max(Math.abs(misfit[1]), Math.abs(misfit[2])));
  }

  /** Writes C l for a load l at the centre, ball half's axes. */
  private void multiplyByCompliance(double[] l, int from, double[] out, int to) {
    double fx = l[from];
    double fy = l[from + 1];
    double fz = l[from + 2];
    double mx = l[from + 3];
    double my = l[from + 4];
    double mz = l[from + 5];
    double along = (stud.axial() - stud.lateral()) * (fx * axisX + fy * axisY + fz * axisZ);
    double about = (stud.torsion() - stud.tilt()) * (mx * axisX + my * axisY + mz * axisZ);
    double lateral = stud.lateral();
    double tiltPerMoment = stud.tilt();
    double both = stud.coupling();
    out[to] = lateral * fx + along * axisX + both * (my * axisZ - mz * axisY);
    out[to + 1] = lateral * fy + along * axisY + both * (mz * axisX - mx * axisZ);
    out[to + 2] = lateral * fz + along * axisZ + both * (mx * axisY - my * axisX);
    out[to + 3] = tiltPerMoment * mx + about * axisX + both * (axisY * fz - axisZ * fy);
    out[to + 4] = tiltPerMoment * my + about * axisY + both * (axisZ * fx - axisX * fz);
    out[to + 5] = tiltPerMoment * mz + about * axisZ + both * (axisX * fy - axisY * fx);
  }

  /** Sets the motion to what the forces of the last {@link #computeMisfit} make of it. */
  void follow() {
    for (int i = 0; i < N; i++) {
      motion[i] += misfit[i];
    }
  }

  /**
   * Adds the contacts of this ball to the equations of the half.
   *
   * @param s the state
   * @param perPoint derivative of each contact's force over its point's displacement
   * @param half minus the derivative of the forces over a twist of the half; added to
   * @return false if the mounting has no answer
   */
  boolean assemble(ToolChangeState s, double[] perPoint, double[] half) {
    Arrays.fill(stiff, 0);
    for (int i : contacts) {
      computeArm(i, s);
      multiplyByArm(perPoint, 9 * i);
      addWrench();
    }
    // C is symmetric, so a row of S C is C times that row of S
    for (int i = 0; i < N; i++) {
      multiplyByCompliance(stiff, N * i, matrix, N * i);
    }
    for (int i = 0; i < N * N; i++) {
      matrix[i] = -matrix[i];
    }
    for (int i = 0; i < N; i++) {
      matrix[(N + 1) * i] += 1;
    }
    if (!blocks.solve(matrix, stiff, mounted)) {
      return false;
    }
    addAtOrigin(s, half);
    return true;
  }

  /** Subtracts Y, moved from the ball's centre to the origin on both sides. */
  private void addAtOrigin(ToolChangeState s, double[] half) {
    int v = 3 * contacts[0];
    double x = s.at.centre[v];
    double y = s.at.centre[v + 1];
    double z = s.at.centre[v + 2];
    for (int row = 0; row < N; row++) {
      int r = N * row;
      double a = mounted[r];
      double b = mounted[r + 1];
      double c = mounted[r + 2];
      matrix[r] = a;
      matrix[r + 1] = b;
      matrix[r + 2] = c;
      matrix[r + 3] = mounted[r + 3] + c * y - b * z;
      matrix[r + 4] = mounted[r + 4] + a * z - c * x;
      matrix[r + 5] = mounted[r + 5] + b * x - a * y;
    }
    for (int c = 0; c < N; c++) {
      double fx = matrix[c];
      double fy = matrix[N + c];
      double fz = matrix[2 * N + c];
      half[c] -= fx;
      half[N + c] -= fy;
      half[2 * N + c] -= fz;
      half[3 * N + c] -= matrix[3 * N + c] + y * fz - z * fy;
      half[4 * N + c] -= matrix[4 * N + c] + z * fx - x * fz;
      half[5 * N + c] -= matrix[5 * N + c] + x * fy - y * fx;
    }
  }

  /** Adds what the missing motion makes of the load on the half, about the origin. */
  void addMisfit(ToolChangeState s, double[] residual) {
    multiplyByMountedStiffness(misfit, column);
    int v = 3 * contacts[0];
    double x = s.at.centre[v];
    double y = s.at.centre[v + 1];
    double z = s.at.centre[v + 2];
    residual[0] += column[0];
    residual[1] += column[1];
    residual[2] += column[2];
    residual[3] += column[3] + y * column[2] - z * column[1];
    residual[4] += column[4] + z * column[0] - x * column[2];
    residual[5] += column[5] + x * column[1] - y * column[0];
  }

  /**
   * Moves the ball along with a step of the half.
   *
   * @param s the state before the step
   * @param step full step of the half, x y z rx ry rz
   * @param part part of the step that is taken
   */
  void advance(ToolChangeState s, double[] step, double part) {
    int v = 3 * contacts[0];
    double x = s.at.centre[v];
    double y = s.at.centre[v + 1];
    double z = s.at.centre[v + 2];
    column[0] = misfit[0] + step[0] + step[4] * z - step[5] * y;
    column[1] = misfit[1] + step[1] + step[5] * x - step[3] * z;
    column[2] = misfit[2] + step[2] + step[3] * y - step[4] * x;
    column[3] = misfit[3] + step[3];
    column[4] = misfit[4] + step[4];
    column[5] = misfit[5] + step[5];
    multiplyByMountedStiffness(column, load);
    multiplyByCompliance(load, 0, column, 0);
    for (int i = 0; i < N; i++) {
      motion[i] += part * (misfit[i] + column[i]);
    }
  }

  /** Y x. */
  private void multiplyByMountedStiffness(double[] x, double[] out) {
    for (int i = 0; i < N; i++) {
      int r = N * i;
      out[i] =
          mounted[r] * x[0]
              + mounted[r + 1] * x[1]
              + mounted[r + 2] * x[2]
              + mounted[r + 3] * x[3]
              + mounted[r + 4] * x[4]
              + mounted[r + 5] * x[5];
    }
  }

  /** T G for a point at the present arm: 3 rows, 6 columns. */
  private void multiplyByArm(double[] t, int from) {
    for (int row = 0; row < 3; row++) {
      double x = t[from + 3 * row];
      double y = t[from + 3 * row + 1];
      double z = t[from + 3 * row + 2];
      int r = N * row;
      perArm[r] = x;
      perArm[r + 1] = y;
      perArm[r + 2] = z;
      perArm[r + 3] = z * arm[1] - y * arm[2];
      perArm[r + 4] = x * arm[2] - z * arm[0];
      perArm[r + 5] = y * arm[0] - x * arm[1];
    }
  }

  /** Adds the wrenches, by the present arm, of the forces T G to S. */
  private void addWrench() {
    for (int c = 0; c < N; c++) {
      double x = perArm[c];
      double y = perArm[N + c];
      double z = perArm[2 * N + c];
      stiff[c] += x;
      stiff[N + c] += y;
      stiff[2 * N + c] += z;
      stiff[3 * N + c] += arm[1] * z - arm[2] * y;
      stiff[4 * N + c] += arm[2] * x - arm[0] * z;
      stiff[5 * N + c] += arm[0] * y - arm[1] * x;
    }
  }
}
