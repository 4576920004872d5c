package reseat.space;

import reseat.elementary.Elementary;

/**
 * Where a body stands in a frame: a rotation followed by a translation, {@code inFrame = R inBody +
 * t}.
 *
 * <p>The name of a variable says of what, in what: {@code holderInBase}. The rotation is kept as a
 * matrix; it is built from a rotation vector by Rodrigues' formula, so it is orthogonal to
 * rounding.
 */
public final class Pose {

  private static final Pose IDENTITY =
      new Pose(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1}, Vec3.ZERO);

  private final double[] r;
  private final Vec3 translation;

  private Pose(double[] rotation, Vec3 translation) {
    this.r = rotation;
    this.translation = translation;
  }

  /**
   * Returns the pose of a body that stands in its frame unmoved.
   *
   * @return the identity
   */
  public static Pose identity() {
    return IDENTITY;
  }

  /**
   * Returns a pose from a rotation vector and a translation.
   *
   * @param rotation rotation vector, rad: its direction is the axis, its length the angle
   * @param translation position of the body's origin in the frame, m
   * @return the pose
   */
  public static Pose of(Vec3 rotation, Vec3 translation) {
    double[] m = new double[9];
    rotationMatrix(rotation.x(), rotation.y(), rotation.z(), m);
    return new Pose(m, translation);
  }

  /**
   * Returns a pose from a rotation matrix that is already orthogonal.
   *
   * @param rotation 9 values, row by row; copied
   * @param translation position of the body's origin in the frame, m
   * @return the pose
   * @throws IllegalArgumentException if the matrix is not a rotation to 1e-9
   */
  public static Pose ofMatrix(double[] rotation, Vec3 translation) {
    double[] m = rotation.clone();
    for (int i = 0; i < 3; i++) {
      for (int j = i; j < 3; j++) {
        double s = m[3 * i] * m[3 * j] + m[3 * i + 1] * m[3 * j + 1] + m[3 * i + 2] * m[3 * j + 2];
        if (!(Math.abs(s - (i == j ? 1 : 0)) < 1e-9)) {
          throw new IllegalArgumentException("the matrix is not a rotation");
        }
      }
    }
    Vec3 third = new Vec3(m[0], m[1], m[2]).cross(new Vec3(m[3], m[4], m[5]));
    if (!(third.dot(new Vec3(m[6], m[7], m[8])) > 0)) {
      throw new IllegalArgumentException("the matrix is a reflection, not a rotation");
    }
    return new Pose(m, translation);
  }

  /**
   * Writes the rotation matrix of a rotation vector (Rodrigues), without allocating.
   *
   * @param rx x component, rad
   * @param ry y component, rad
   * @param rz z component, rad
   * @param out 9 values, row by row, overwritten
   */
  public static void rotationMatrix(double rx, double ry, double rz, double[] out) {
    double t2 = rx * rx + ry * ry + rz * rz;
    double a; // sin(t)/t
    double b; // (1-cos(t))/t^2
    if (t2 < 1e-8) {
      a = 1 - t2 / 6;
      b = 0.5 - t2 / 24;
    } else {
      double t = Math.sqrt(t2);
      double h = Elementary.sin(t / 2);
      a = Elementary.sin(t) / t;
      b = 2 * h * h / t2;
    }
    out[0] = 1 - b * (ry * ry + rz * rz);
    out[1] = b * rx * ry - a * rz;
    out[2] = b * rx * rz + a * ry;
    out[3] = b * rx * ry + a * rz;
    out[4] = 1 - b * (rx * rx + rz * rz);
    out[5] = b * ry * rz - a * rx;
    out[6] = b * rx * rz - a * ry;
    out[7] = b * ry * rz + a * rx;
    out[8] = 1 - b * (rx * rx + ry * ry);
  }

  /**
   * Returns where the body's origin stands.
   *
   * @return translation, m
   */
  public Vec3 translation() {
    return translation;
  }

  /**
   * Turns a direction of the body into the frame.
   *
   * @param v direction in body axes
   * @return the same direction in frame axes
   */
  public Vec3 rotate(Vec3 v) {
    return new Vec3(
        r[0] * v.x() + r[1] * v.y() + r[2] * v.z(),
        r[3] * v.x() + r[4] * v.y() + r[5] * v.z(),
        r[6] * v.x() + r[7] * v.y() + r[8] * v.z());
  }

  /**
   * Takes a point of the body into the frame.
   *
   * @param point point in body axes, m
   * @return the same point in the frame, m
   */
  public Vec3 apply(Vec3 point) {
    return rotate(point).plus(translation);
  }

  /**
   * Returns the pose seen the other way round.
   *
   * @return the pose of the frame in the body
   */
  public Pose inverse() {
    double[] m = {r[0], r[3], r[6], r[1], r[4], r[7], r[2], r[5], r[8]};
    Pose turned = new Pose(m, Vec3.ZERO);
    return new Pose(m, turned.rotate(translation).negated());
  }

  /**
   * Chains two poses.
   *
   * @param inner pose of a body in this pose's body
   * @return pose of the inner body in this pose's frame
   */
  public Pose compose(Pose inner) {
    double[] m = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        m[3 * i + j] =
            r[3 * i] * inner.r[j] + r[3 * i + 1] * inner.r[3 + j] + r[3 * i + 2] * inner.r[6 + j];
      }
    }
    return new Pose(m, apply(inner.translation));
  }

  /**
   * Returns the rotation as a rotation vector.
   *
   * @return rotation vector, rad; accurate for small angles and up to just under half a turn
   */
  public Vec3 rotationVector() {
    double sx = (r[7] - r[5]) / 2;
    double sy = (r[2] - r[6]) / 2;
    double sz = (r[3] - r[1]) / 2;
    double s = Math.sqrt(sx * sx + sy * sy + sz * sz);
    double c = (r[0] + r[4] + r[8] - 1) / 2;
    if (s < 1e-300) {
      if (c < 0) {
        throw new ArithmeticException("the axis of a half turn is not defined by its sine");
      }
      return Vec3.ZERO;
    }
    double scale = Elementary.atan2(s, c) / s;
    return new Vec3(scale * sx, scale * sy, scale * sz);
  }

  /**
   * Returns how far the body has moved from an earlier pose, told at a point of the body.
   *
   * @param earlier the earlier pose in the same frame
   * @param point point of the body, in body axes, m
   * @return displacement of that point and the rotation, in frame axes; exact translation
   */
  public Twist motionFrom(Pose earlier, Vec3 point) {
    Vec3 before = earlier.apply(point);
    Vec3 rotation = compose(new Pose(earlier.inverse().r, Vec3.ZERO)).rotationVector();
    return new Twist(apply(point).minus(before), rotation, before);
  }
}
