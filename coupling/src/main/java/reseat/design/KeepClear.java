package reseat.design;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.numerics.Bounds;
import reseat.space.Vec3;

/**
 * Something on one half that must not touch the other: a bolt shank in its hole, a seal, a dowel, a
 * cable, the faces of magnets.
 *
 * @param name what the user calls it
 * @param at where the two come closest, coupling frame, m
 * @param gap distance drawn between them, m; empty if it is not stated
 * @param across direction in which the gap lies between them, as unit vector; empty if it lies all
 *     round, as about a shank
 */
public record KeepClear(String name, Vec3 at, OptionalDouble gap, Optional<Vec3> across) {

  /** Refuses the nameless and a gap below zero, and makes the direction a unit vector. */
  public KeepClear {
    Objects.requireNonNull(name, "name of a keep clear must be given, found null");
    Objects.requireNonNull(at, "at of a keep clear must be given, found null");
    Objects.requireNonNull(gap, "gap of a keep clear must be given, found null");
    Objects.requireNonNull(across, "across of a keep clear must be given, found null");
    if (across.isPresent()) {
      across = Optional.of(across.get().unit());
    }
    if (name.isBlank()) {
      throw new IllegalArgumentException("what is to be kept clear needs a name");
    }
    if (gap.isPresent()) {
      Bounds.notNegative("gap of " + name, gap.getAsDouble(), "m");
    }
  }
}
