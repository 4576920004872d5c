package reseat.designfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.design.CouplingDesign;
import reseat.design.Holder;
import reseat.design.LoadCase;
import reseat.design.MachineAxes;
import reseat.design.Preload;
import reseat.numerics.Distribution;
import reseat.preload.PreloadDevice;
import reseat.space.Vec3;
import reseat.space.Wrench;
import reseat.units.QuantityKind;

/** Reads preloads, the holder's mass and the load cases. */
final class LoadReader {

  private static final Map<String, LoadCase.Demand> DEMANDS =
      Map.of(
          "hold position",
          LoadCase.Demand.HOLD_POSITION,
          "stay seated",
          LoadCase.Demand.STAY_SEATED,
          "survive",
          LoadCase.Demand.SURVIVE);

  private LoadReader() {}

  static List<Preload> preloads(List<Section> sections, MaterialReader materials) {
    List<Preload> preloads = new ArrayList<>();
    for (Section s : sections) {
      Optional<Preload> preload = preload(s, "preload " + (preloads.size() + 1), materials);
      if (preload.isPresent()) {
        preloads.add(preload.get());
      }
      s.close();
    }
    return preloads;
  }

  private static Optional<Preload> preload(Section s, String number, MaterialReader materials) {
    String name = s.text("name", number);
    boolean described = s.isTable("device");
    OptionalDouble asked =
        s.has("force") || !described
            ? OptionalDouble.of(s.positive("force", QuantityKind.FORCE, 100))
            : OptionalDouble.empty();
    Optional<DeviceReader.Device> device =
        described
            ? DeviceReader.read(s.child("device").orElseThrow(), asked, materials)
            : Optional.empty();
    double force =
        asked.orElse(device.isPresent() ? device.get().mechanics().nominalForce() : 100.0);
    Vec3 direction = s.direction("direction").orElse(Vec3.Z.negated());
    Vec3 at = s.vector("at", QuantityKind.LENGTH).orElse(Vec3.ZERO);
    Distribution scatter = scatter(s, device, described);
    Distribution wander =
        SpreadReader.read(s, "line_wander", QuantityKind.LENGTH, Distribution.NONE);
    Distribution tilt =
        SpreadReader.read(s, "direction_wander", QuantityKind.ANGLE, Distribution.NONE);
    String words = described ? "" : s.text("device", "");
    Optional<PreloadDevice> mechanics = Optional.empty();
    if (device.isPresent()) {
      words = device.get().words();
      mechanics = Optional.of(device.get().mechanics());
    }
    try {
      return Optional.of(
          new Preload(name, force, direction, at, scatter, wander, tilt, words, mechanics));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static Distribution scatter(
      Section s, Optional<DeviceReader.Device> device, boolean described) {
    Distribution ofDevice =
        device.isPresent() ? device.get().mechanics().scatter().spread() : Distribution.NONE;
    if (!s.has("scatter")) {
      if (!described) {
        s.error(
            "scatter",
            "is missing; write how far the force differs from mount to mount, for instance \"2 %\""
                + " for a spring stack or \"30 %\" for a screw set by torque, or describe the"
                + " device in a table, from which it follows");
      }
      return ofDevice;
    }
    return SpreadReader.read(s, "scatter", QuantityKind.RATIO, Distribution.NONE);
  }

  static Holder holder(Section s) {
    double mass = s.quantity("mass", QuantityKind.MASS, 0);
    if (s.has("weight")) {
      if (s.has("mass")) {
        s.error("weight", "mass and weight are both given; leave one out");
      }
      mass = s.quantity("weight", QuantityKind.FORCE, 0) / CouplingDesign.STANDARD_GRAVITY;
    } else if (!s.has("mass")) {
      s.error("mass", "is missing; write the mass (or the weight) of the holder with its tool");
    }
    Vec3 centre = s.vector("centre_of_mass", QuantityKind.LENGTH).orElse(Vec3.ZERO);
    Vec3 gyration = s.vector("radii_of_gyration", QuantityKind.LENGTH).orElse(Vec3.ZERO);
    s.close();
    try {
      return new Holder(mass, centre, gyration);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return new Holder(0, Vec3.ZERO, Vec3.ZERO);
    }
  }

  static List<LoadCase> cases(List<Section> sections, Vec3 toolPoint, MachineAxes axes) {
    List<LoadCase> cases = new ArrayList<>();
    for (Section s : sections) {
      String name = s.requiredText("name", "case " + (cases.size() + 1));
      Vec3 at = s.vector("at", QuantityKind.LENGTH).orElse(toolPoint);
      Vec3 force = MachineReader.vector(s, "force", QuantityKind.FORCE, axes).orElse(Vec3.ZERO);
      Vec3 moment = MachineReader.vector(s, "moment", QuantityKind.TORQUE, axes).orElse(Vec3.ZERO);
      if (!s.has("force") && !s.has("moment")) {
        s.error("force", "is missing; write [\"x\", \"y\", \"z\"] or a table by machine axis");
      }
      LoadCase.Demand demand = s.choice("must", DEMANDS).orElse(LoadCase.Demand.STAY_SEATED);
      try {
        cases.add(new LoadCase(name, new Wrench(force, moment, at), demand));
      } catch (IllegalArgumentException e) {
        s.refused(e);
      }
      s.close();
    }
    return cases;
  }
}
