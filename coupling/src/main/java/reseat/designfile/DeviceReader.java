package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.design.Preload;
import reseat.preload.PreloadDevice;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/**
 * Reads what makes a preload. The device is set either by its own setting (torque, deflection, gap,
 * mass, pressure), from which the force follows, or by the force, from which the setting follows;
 * with both, the two are held against each other.
 */
final class DeviceReader {

  private static final Map<String, DeviceKind> KINDS = kinds();

  private DeviceReader() {}

  private static Map<String, DeviceKind> kinds() {
    Map<String, DeviceKind> words = new LinkedHashMap<>();
    words.put("screw", new ScrewKind());
    words.put("torque wrench", new ScrewKind());
    words.put("disc-springs", new DiscSpringKind());
    words.put("spring", new HelicalSpringKind());
    words.put("magnets", new MagnetKind());
    words.put("weight", new WeightKind());
    words.put("air-cylinder", new AirCylinderKind());
    return words;
  }

  /** A device that was read, with the words for it. */
  record Device(PreloadDevice mechanics, String words) {}

  /**
   * Reads a device.
   *
   * @param s its table
   * @param force force asked for, N; empty if the setting decides
   * @param materials the file's materials
   * @return the device set to its force, unless something is wrong
   */
  static Optional<Device> read(Section s, OptionalDouble force, MaterialReader materials) {
    Optional<DeviceKind> kind = s.requiredChoice("kind", KINDS);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    boolean set = s.has(kind.get().settingKey());
    if (!set && force.isEmpty()) {
      s.error(
          kind.get().settingKey(),
          "is missing; write it, or the force of the preload, from which it follows");
    }
    Optional<? extends PreloadDevice> described = kind.get().read(s, materials);
    String words = s.text("name", s.text("kind", ""));
    s.close();
    if (described.isEmpty() || (!set && force.isEmpty())) {
      return Optional.empty();
    }
    PreloadDevice device = described.get();
    if (!set) {
      return setTo(s, kind.get(), new Device(device, words), force.getAsDouble());
    }
    if (force.isPresent() && !agree(s, kind.get(), device, force.getAsDouble())) {
      return Optional.empty();
    }
    return Optional.of(new Device(device, words));
  }

  private static Optional<Device> setTo(Section s, DeviceKind kind, Device device, double force) {
    Optional<? extends PreloadDevice> set = device.mechanics().setTo(force);
    if (set.isPresent()) {
      return Optional.of(new Device(set.get(), device.words()));
    }
    s.error(
        kind.settingKey(),
        "no "
            + kind.settingKey()
            + " of this device gives "
            + QuantityFormat.both(force, QuantityKind.FORCE)
            + "; "
            + kind.stronger());
    return Optional.empty();
  }

  private static boolean agree(Section s, DeviceKind kind, PreloadDevice device, double force) {
    double made = device.nominalForce();
    if (Math.abs(made - force) <= Preload.SETTING_SLACK * force) {
      return true;
    }
    s.error(
        kind.settingKey(),
        FilledText.of(
            "as set the device gives %s, but force says %s%s",
            QuantityFormat.both(made, QuantityKind.FORCE),
            QuantityFormat.both(force, QuantityKind.FORCE),
            device
                .settingFor(force)
                .map(b -> "; for that force set " + b.inBothUnits() + ", or leave one of the two out")
                .orElse("; leave one of the two out")));
    return false;
  }
}
