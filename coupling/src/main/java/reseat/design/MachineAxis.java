package reseat.design;

import java.util.Objects;
import reseat.space.Vec3;

/**
 * An axis of the machine in which results are told.
 *
 * @param name name on the machine, for instance {@code X}
 * @param direction unit vector in the coupling frame
 */
public record MachineAxis(String name, Vec3 direction) {

  /** Makes the direction a unit vector. */
  public MachineAxis {
    Objects.requireNonNull(name, "name of machine axis must be given, found null");
    Objects.requireNonNull(direction, "direction of machine axis must be given, found null");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a machine axis needs a name");
    }
    direction = direction.unit();
  }
}
