package reseat.readings;

import reseat.space.Vec3;

/** One of the six ways a rigid body can move, in the order of a twist. */
public enum RigidMotion {
  /** Displacement along x. */
  X(0, "movement along x"),
  /** Displacement along y. */
  Y(1, "movement along y"),
  /** Displacement along z. */
  Z(2, "movement along z"),
  /** Rotation about x. */
  RX(3, "tilt about x"),
  /** Rotation about y. */
  RY(4, "tilt about y"),
  /** Rotation about z. */
  RZ(5, "turn about z");

  private final int place;
  private final String words;

  RigidMotion(int place, String words) {
    this.place = place;
    this.words = words;
  }

  /**
   * Returns the place in a twist.
   *
   * @return 0 for x to 5 for rz
   */
  public int place() {
    return place;
  }

  /**
   * Returns the axis of the motion.
   *
   * @return unit vector along which, or about which
   */
  public Vec3 axis() {
    return switch (this) {
      case X, RX -> Vec3.X;
      case Y, RY -> Vec3.Y;
      case Z, RZ -> Vec3.Z;
    };
  }

  /**
   * Returns the motion in words.
   *
   * @return for instance {@code tilt about x}
   */
  public String words() {
    return words;
  }

  /**
   * Tells rotations from displacements.
   *
   * @return true for a rotation
   */
  public boolean isRotation() {
    return place > 2;
  }
}
