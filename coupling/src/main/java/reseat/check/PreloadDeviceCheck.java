package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.preload.BenchSetting;
import reseat.preload.DeviceCaution;
import reseat.preload.PreloadDevice;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/** What to set on each preload device, how far it may be trusted, and what to beware of. */
public final class PreloadDeviceCheck {

  private static final String CHECK = "preload device";

  private PreloadDeviceCheck() {}

  /**
   * Looks at the devices that are described.
   *
   * @param design the coupling
   * @return a note for each device with its setting, and a finding for each of its cautions;
   *     devices that are equal are told once
   */
  public static List<Finding> of(CouplingDesign design) {
    List<Finding> found = new ArrayList<>();
    List<PreloadDevice> seen = new ArrayList<>();
    for (Preload p : design.preloads()) {
      Optional<PreloadDevice> device = p.modelled();
      if (device.isPresent() && !seen.contains(device.get())) {
        seen.add(device.get());
        found.add(setting(p, device.get()));
        for (DeviceCaution c : device.get().cautions()) {
          found.add(caution(p, device.get(), c));
        }
      }
    }
    return found;
  }

  private static Finding setting(Preload p, PreloadDevice device) {
    Optional<BenchSetting> set = device.settingFor(device.nominalForce());
    String words =
        p.name()
            + ": for "
            + Measure.FORCE.show(device.nominalForce())
            + set.map(b -> " set " + b.told()).orElse("")
            + String.format(
                Locale.ROOT,
                "; from mount to mount ±%s (%s), from device to device ±%s, %s for each kelvin",
                Measure.SHARE.show(device.scatter().halfRange()),
                device.scatter().basis(),
                Measure.SHARE.show(device.accuracy().halfRange()),
                QuantityFormat.metric(device.relativeChangePerKelvin(), QuantityKind.RATIO))
            + ".";
    return note(p, device.nominalForce(), words, "");
  }

  private static Finding caution(Preload p, PreloadDevice device, DeviceCaution c) {
    boolean design =
        switch (c) {
          case SNAPS_THROUGH, NEARLY_FLAT, HARDLY_COMPRESSED, OVERSTRESSED -> true;
          case STORED_SPRING_ENERGY,
              MAGNET_PINCH,
              MAGNET_NEVER_TOUCHES,
              SCREW_LOCATES,
              TORQUE_IS_LOOSE,
              FALLING_WEIGHT,
              PRESSURE_LOSS ->
              false;
        };
    String energy =
        device.storedEnergy() > 0
            ? String.format(Locale.ROOT, " (%.2g J are stored)", device.storedEnergy())
            : "";
    String words = p.name() + ": " + c.text() + (hurts(c) ? energy : "");
    return design
        ? new Finding(
            CHECK,
            Severity.WARNING,
            p.name(),
            device.nominalForce(),
            device.nominalForce(),
            Sense.AT_MOST,
            Measure.FORCE,
            words,
            "")
        : note(p, device.nominalForce(), words, "");
  }

  private static boolean hurts(DeviceCaution c) {
    return c == DeviceCaution.STORED_SPRING_ENERGY
        || c == DeviceCaution.MAGNET_PINCH
        || c == DeviceCaution.FALLING_WEIGHT
        || c == DeviceCaution.PRESSURE_LOSS;
  }

  private static Finding note(Preload p, double force, String words, String advice) {
    return new Finding(
        CHECK, Severity.NOTE, p.name(), force, 0, Sense.AT_LEAST, Measure.FORCE, words, advice);
  }
}
