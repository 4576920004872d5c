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
      t.get()
          .direction(name)
          .flatMap(d -> t.get().build(() -> new MachineAxis(name, d)))
          .ifPresent(axes::add);
    }
    if (axes.size() < 3) {
      return standIn(names);
    }
    return t.get()
        .build(() -> new MachineAxes(axes.get(0), axes.get(1), axes.get(2)))
        .orElseGet(() -> standIn(names));
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
    return t.get().build(() -> new TurningRoles(radial.get(), axial.get(), height.get()));
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
    return s.child(key)
        .map(
            t -> {
              Vec3 told =
                  new Vec3(
                      t.quantity(axes.first().name(), kind, 0),
                      t.quantity(axes.second().name(), kind, 0),
                      t.quantity(axes.third().name(), kind, 0));
              t.close();
              return axes.toCoupling(told);
            });
  }
}
