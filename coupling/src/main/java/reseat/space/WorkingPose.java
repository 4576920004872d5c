package reseat.space;

import java.util.Arrays;

/**
 * A pose that is moved again and again, in storage of its own.
 *
 * <p>For the inner loops of solvers, where {@link Pose} would allocate. Not for use by several
 * threads.
 */
public final class WorkingPose {

  private final double[] r = new double[9];
  private final double[] t = new double[3];
  private final double[] turn = new double[9];
  private final double[] scratch = new double[9];

  /** Starts at the identity. */
  public WorkingPose() {
    reset();
  }

  /** Goes back to the identity. */
  public void reset() {
    Arrays.fill(r, 0);
    r[0] = 1;
    r[4] = 1;
    r[8] = 1;
    Arrays.fill(t, 0);
  }

  /**
   * Takes over another pose.
   *
   * @param other the pose to copy
   */
  public void copyFrom(WorkingPose other) {
    System.arraycopy(other.r, 0, r, 0, 9);
    System.arraycopy(other.t, 0, t, 0, 3);
  }

  /**
   * Moves the body by a small twist about the frame's origin, told in frame axes.
   *
   * @param step x, y, z, m, then rx, ry, rz, rad
   */
  public void move(double[] step) {
    Pose.rotationMatrix(step[3], step[4], step[5], turn);
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        scratch[3 * i + j] =
            turn[3 * i] * r[j] + turn[3 * i + 1] * r[3 + j] + turn[3 * i + 2] * r[6 + j];
      }
    }
    System.arraycopy(scratch, 0, r, 0, 9);
    double x = t[0];
    double y = t[1];
    double z = t[2];
    for (int i = 0; i < 3; i++) {
      t[i] = turn[3 * i] * x + turn[3 * i + 1] * y + turn[3 * i + 2] * z + step[i];
    }
  }

  /**
   * Takes a point of the body into the frame.
   *
   * @param x point in the body, m
   * @param y its y, m
   * @param z its z, m
   * @param out the point in the frame, m; written from {@code at} on
   * @param at first index written
   */
  public void apply(double x, double y, double z, double[] out, int at) {
    out[at] = r[0] * x + r[1] * y + r[2] * z + t[0];
    out[at + 1] = r[3] * x + r[4] * y + r[5] * z + t[1];
    out[at + 2] = r[6] * x + r[7] * y + r[8] * z + t[2];
  }

  /**
   * Turns a direction of the body into the frame.
   *
   * @param x direction in body axes
   * @param y its y
   * @param z its z
   * @param out the same direction in frame axes, 3 values overwritten
   */
  public void rotate(double x, double y, double z, double[] out) {
    out[0] = r[0] * x + r[1] * y + r[2] * z;
    out[1] = r[3] * x + r[4] * y + r[5] * z;
    out[2] = r[6] * x + r[7] * y + r[8] * z;
  }

  /**
   * Turns a direction of the frame into the body.
   *
   * @param x direction in frame axes
   * @param y its y
   * @param z its z
   * @param out the same direction in body axes, 3 values overwritten
   */
  public void rotateBack(double x, double y, double z, double[] out) {
    out[0] = r[0] * x + r[3] * y + r[6] * z;
    out[1] = r[1] * x + r[4] * y + r[7] * z;
    out[2] = r[2] * x + r[5] * y + r[8] * z;
  }

  /**
   * Tells a wrench of the body, about the body's origin, in the frame, about the frame's origin.
   *
   * @param w wrench in body axes, 6 values
   * @param out the same wrench in frame axes, 6 values overwritten; not the same array
   */
  public void wrenchToFrame(double[] w, double[] out) {
    for (int i = 0; i < 3; i++) {
      out[i] = r[3 * i] * w[0] + r[3 * i + 1] * w[1] + r[3 * i + 2] * w[2];
      out[i + 3] = r[3 * i] * w[3] + r[3 * i + 1] * w[4] + r[3 * i + 2] * w[5];
    }
    out[3] += t[1] * out[2] - t[2] * out[1];
    out[4] += t[2] * out[0] - t[0] * out[2];
    out[5] += t[0] * out[1] - t[1] * out[0];
  }

  /**
   * Finds how far a point of the body stands from the same coordinates in the frame.
   *
   * @param x point in the body, m
   * @param y its y, m
   * @param z its z, m
   * @param out displacement, frame axes, m; 3 values overwritten
   */
  public void displacement(double x, double y, double z, double[] out) {
    out[0] = (r[0] - 1) * x + r[1] * y + r[2] * z + t[0];
    out[1] = r[3] * x + (r[4] - 1) * y + r[5] * z + t[1];
    out[2] = r[6] * x + r[7] * y + (r[8] - 1) * z + t[2];
  }

  /**
   * Finds how far a point of the frame stands from the same coordinates in the body.
   *
   * @param x point in the frame, m
   * @param y its y, m
   * @param z its z, m
   * @param out displacement of the frame as seen from the body, body axes, m; 3 values overwritten
   */
  public void inverseDisplacement(double x, double y, double z, double[] out) {
    rotateBack(x - t[0], y - t[1], z - t[2], out);
    out[0] -= x;
    out[1] -= y;
    out[2] -= z;
  }

  /**
   * Writes the rotation of a body that has hardly turned.
   *
   * @param out rotation vector, rad; 3 values overwritten; wrong by the cube of the angle
   */
  public void smallRotation(double[] out) {
    out[0] = (r[7] - r[5]) / 2;
    out[1] = (r[2] - r[6]) / 2;
    out[2] = (r[3] - r[1]) / 2;
  }

  /**
   * Returns the pose as a value.
   *
   * @return the pose of the body in the frame
   */
  public Pose toPose() {
    return Pose.ofMatrix(r, new Vec3(t[0], t[1], t[2]));
  }
}
