package reseat.space;

import reseat.units.PrintedNumber;

/**
 * A 6x6 stiffness or compliance matrix of a rigid body, with the point it is told at.
 *
 * <p>Row and column order x, y, z, rx, ry, rz. A stiffness takes a {@link Twist} to the {@link
 * Wrench} that causes it: N/m, N/rad, N·m/m, N·m/rad. The reference point is part of the value,
 * because the same stiffness has other numbers at another point.
 */
public final class Matrix6 {

  private final double[] m;
  private final Vec3 at;

  private Matrix6(double[] m, Vec3 at) {
    this.m = m;
    this.at = at;
  }

  /**
   * Returns a matrix from its 36 values.
   *
   * @param values 36 values, row by row; copied
   * @param at reference point, m
   * @return the matrix
   * @throws IllegalArgumentException if there are not 36 finite values
   */
  public static Matrix6 of(double[] values, Vec3 at) {
    if (values.length != 36) {
      throw new IllegalArgumentException("36 values wanted, found " + values.length);
    }
    for (double v : values) {
      if (!Double.isFinite(v)) {
        throw new IllegalArgumentException(
            "matrix entries must be finite, found " + PrintedNumber.shortest(v));
      }
    }
    return new Matrix6(values.clone(), at);
  }

  /**
   * Returns one entry.
   *
   * @param row 0 to 5
   * @param column 0 to 5
   * @return the entry
   */
  public double get(int row, int column) {
    return m[6 * row + column];
  }

  /**
   * Returns the reference point.
   *
   * @return point, m
   */
  public Vec3 at() {
    return at;
  }

  /**
   * Copies the entries.
   *
   * @return 36 values, row by row
   */
  public double[] toArray() {
    return m.clone();
  }

  /**
   * Returns the sum of two matrices told at the same point.
   *
   * @param other the other matrix
   * @return this + other
   * @throws IllegalArgumentException if the reference points differ
   */
  public Matrix6 plus(Matrix6 other) {
    if (!at.equals(other.at)) {
      throw new IllegalArgumentException("matrices are told at different points");
    }
    double[] s = new double[36];
    for (int i = 0; i < 36; i++) {
      s[i] = m[i] + other.m[i];
    }
    return new Matrix6(s, at);
  }

  /**
   * Returns the wrench that a twist takes (the matrix being a stiffness).
   *
   * @param twist motion, told at any point
   * @return wrench at this matrix's reference point
   */
  public Wrench times(Twist twist) {
    double[] out = product(components(twist.movedTo(at)));
    return new Wrench(new Vec3(out[0], out[1], out[2]), new Vec3(out[3], out[4], out[5]), at);
  }

  /**
   * Returns the twist that a wrench causes (the matrix being a compliance).
   *
   * @param wrench load, told at any point
   * @return twist at this matrix's reference point
   */
  public Twist times(Wrench wrench) {
    Wrench w = wrench.movedTo(at);
    double[] out =
        product(
            new double[] {
              w.force().x(), w.force().y(), w.force().z(),
              w.moment().x(), w.moment().y(), w.moment().z()
            });
    return new Twist(new Vec3(out[0], out[1], out[2]), new Vec3(out[3], out[4], out[5]), at);
  }

  /**
   * Returns the same stiffness told at another point.
   *
   * @param point new reference point, m
   * @return the stiffness there; not for compliances
   */
  public Matrix6 stiffnessAt(Vec3 point) {
    // v_old = v_new + w x (old - new): T = [I, -[d]x; 0, I] with d = at - point, K' = T^T K T
    Vec3 d = at.minus(point);
    double[] t = {
      1, 0, 0, 0, d.z(), -d.y(),
      0, 1, 0, -d.z(), 0, d.x(),
      0, 0, 1, d.y(), -d.x(), 0,
      0, 0, 0, 1, 0, 0,
      0, 0, 0, 0, 1, 0,
      0, 0, 0, 0, 0, 1
    };
    return new Matrix6(congruent(t), point);
  }

  /**
   * Returns the same matrix in other axes, at the same point.
   *
   * @param x first new axis, unit vector in the present axes
   * @param y second new axis
   * @param z third new axis
   * @return the matrix with its entries along the new axes; the reference point stays in old axes
   */
  public Matrix6 inAxes(Vec3 x, Vec3 y, Vec3 z) {
    double[] t = new double[36];
    Vec3[] axes = {x, y, z};
    for (int j = 0; j < 3; j++) {
      for (int i = 0; i < 3; i++) {
        t[6 * i + j] = axes[j].component(i);
        t[6 * (i + 3) + j + 3] = axes[j].component(i);
      }
    }
    return new Matrix6(congruent(t), at);
  }

  private double[] congruent(double[] t) {
    double[] mt = new double[36];
    double[] out = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        for (int k = 0; k < 6; k++) {
          mt[6 * i + j] += m[6 * i + k] * t[6 * k + j];
        }
      }
    }
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        for (int k = 0; k < 6; k++) {
          out[6 * i + j] += t[6 * k + i] * mt[6 * k + j];
        }
      }
    }
    return out;
  }

  private static double[] components(Twist t) {
    return new double[] {
      t.translation().x(), t.translation().y(), t.translation().z(),
      t.rotation().x(), t.rotation().y(), t.rotation().z()
    };
  }

  private double[] product(double[] v) {
    double[] out = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        out[i] += m[6 * i + j] * v[j];
      }
    }
    return out;
  }
}
