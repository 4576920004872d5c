package reseat.design;

import java.util.Objects;
import reseat.space.Vec3;

/**
 * The three axes of the machine, at right angles; right- or left-handed, as the machine has them.
 *
 * @param first first axis
 * @param second second axis
 * @param third third axis
 */
public record MachineAxes(MachineAxis first, MachineAxis second, MachineAxis third) {

  /** Refuses axes that are not at right angles and names used twice. */
  public MachineAxes {
    Objects.requireNonNull(first, "first of machine axes must be given, found null");
    Objects.requireNonNull(second, "second of machine axes must be given, found null");
    Objects.requireNonNull(third, "third of machine axes must be given, found null");
    checkRight(first, second);
    checkRight(second, third);
    checkRight(third, first);
  }

  private static void checkRight(MachineAxis a, MachineAxis b) {
    if (a.name().equals(b.name())) {
      throw new IllegalArgumentException("two machine axes are both called " + a.name());
    }
    if (Math.abs(a.direction().dot(b.direction())) > 1e-9) {
      throw new IllegalArgumentException(
          "machine axes " + a.name() + " and " + b.name() + " are not at right angles");
    }
  }

  /**
   * Returns axes that coincide with the coupling frame.
   *
   * @return axes named x, y and z
   */
  public static MachineAxes ofCoupling() {
    return new MachineAxes(
        new MachineAxis("x", Vec3.X), new MachineAxis("y", Vec3.Y), new MachineAxis("z", Vec3.Z));
  }

  /**
   * Returns an axis by its place.
   *
   * @param index 0, 1 or 2
   * @return the axis
   */
  public MachineAxis axis(int index) {
    return switch (index) {
      case 0 -> first;
      case 1 -> second;
      case 2 -> third;
      default -> throw new IllegalArgumentException("axis 0, 1 or 2, found " + index);
    };
  }

  /**
   * Tells a vector of the coupling frame in machine axes.
   *
   * @param v vector in the coupling frame
   * @return components along the first, second and third machine axis
   */
  public Vec3 of(Vec3 v) {
    return new Vec3(v.dot(first.direction()), v.dot(second.direction()), v.dot(third.direction()));
  }

  /**
   * Tells a vector given in machine axes in the coupling frame.
   *
   * @param v components along the first, second and third machine axis
   * @return the vector in the coupling frame
   */
  public Vec3 toCoupling(Vec3 v) {
    return first
        .direction()
        .times(v.x())
        .plus(second.direction().times(v.y()))
        .plus(third.direction().times(v.z()));
  }
}
