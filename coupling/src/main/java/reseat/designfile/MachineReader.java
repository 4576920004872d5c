package reseat.designfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.MachineAxes;
import reseat.design.MachineAxis;
import reseat.design.TurningRoles;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/** Reads the machine's axes, and vectors told along them. */
final class MachineReader {

  private MachineReader() {}

  /** Reads the axes of [machine]. */
  static MachineAxes axes(Section s) {
    Optional<Section> t = s.child("axes");
    if (t.isEmpty()) {
      return MachineAxes.ofCoupling();
    }
    List<String> names = t.get().names();
    if (names.size() != 3) {
      s.error(
          "axes",
          "found "
              + names.size()
              + " axes; three are wanted, for instance { X = \"+x\", Z = \"+y\", height = \"+z\" }");
      return standIn(names);
    }
    List<MachineAxis> axes = new ArrayList<>();
    for (String name : names) {
      Optional<MachineAxis> axis = axis(t.get(), name);
      if (axis.isPresent()) {
        axes.add(axis.get());
      }
    }
    if (axes.size() < 3) {
      return standIn(names);
    }
    try {
      return new MachineAxes(axes.get(0), axes.get(1), axes.get(2));
    } catch (IllegalArgumentException e) {
      t.get().refused(e);
      return standIn(names);
    }
  }

  private static Optional<MachineAxis> axis(Section s, String name) {
    Optional<Vec3> direction = s.direction(name);
    if (direction.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new MachineAxis(name, direction.get()));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  /** Axes under the names of the file, so that each use of a name is not called wrong as well. */
  private static MachineAxes standIn(List<String> names) {
    if (names.size() < 3 || names.stream().anyMatch(String::isBlank)) {
      return MachineAxes.ofCoupling();
    }
    return new MachineAxes(
        new MachineAxis(names.get(0), Vec3.X),
        new MachineAxis(names.get(1), Vec3.Y),
        new MachineAxis(names.get(2), Vec3.Z));
  }

  /** Reads which axis is radial, axial and height on a lathe, if the file says so. */
  static Optional<TurningRoles> turning(Section s, MachineAxes axes) {
    Optional<Section> t = s.child("turning");
    if (t.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Integer> names = new LinkedHashMap<>();
    for (int k = 0; k < 3; k++) {
      names.put(axes.axis(k).name(), k);
    }
    Optional<Integer> radial = t.get().requiredChoice("radial", names);
    Optional<Integer> axial = t.get().requiredChoice("axial", names);
    Optional<Integer> height = t.get().requiredChoice("height", names);
    t.get().close();
    if (radial.isEmpty() || axial.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new TurningRoles(radial.get(), axial.get(), height.get()));
    } catch (IllegalArgumentException e) {
      return t.get().refused(e);
    }
  }

  /**
   * Reads a vector given as a list along x, y, z, or as a table by the names of machine axes.
   *
   * @return the vector in the coupling frame
   */
  static Optional<Vec3> vector(Section s, String key, QuantityKind kind, MachineAxes axes) {
    if (!s.isTable(key)) {
      return s.vector(key, kind);
    }
    Section t = s.child(key).orElseThrow();
    double first = t.quantity(axes.first().name(), kind, 0);
    double second = t.quantity(axes.second().name(), kind, 0);
    double third = t.quantity(axes.third().name(), kind, 0);
    t.close();
    return Optional.of(axes.toCoupling(new Vec3(first, second, third)));
  }
}
