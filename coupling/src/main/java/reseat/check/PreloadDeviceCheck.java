package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.PreloadBand;
import reseat.preload.BenchBand;
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
   * @param band how far all preloads together may be scaled
   * @return a note for each device with its setting, and a finding for each of its cautions;
   *     devices that are equal are told once
   */
  public static List<Finding> of(CouplingDesign design, PreloadBand band) {
    List<Finding> found = new ArrayList<>();
    List<PreloadDevice> seen = new ArrayList<>();
    for (Preload p : design.preloads()) {
      Optional<PreloadDevice> device = p.modelled();
      if (device.isPresent() && !seen.contains(device.get())) {
        seen.add(device.get());
        found.add(setting(p, device.get(), band));
        for (DeviceCaution c : device.get().cautions()) {
          found.add(caution(p, device.get(), c));
        }
      }
    }
    return found;
  }

  private static Finding setting(Preload p, PreloadDevice device, PreloadBand allowed) {
    Optional<BenchBand> band = band(p, device, allowed);
    String set = told(device.settingFor(device.nominalForce()), "");
    String words =
        p.name()
            + ": for "
            + Measure.FORCE.show(device.nominalForce())
            + (set.isEmpty() ? "" : " set " + set)
            + (band.isPresent() ? aim(band.get()) : "")
            + "; from mount to mount ±"
            + Measure.SHARE.show(device.scatter().halfRange())
            + " ("
            + device.scatter().basis()
            + "), from device to device ±"
            + Measure.SHARE.show(device.accuracy().halfRange())
            + ", "
            + QuantityFormat.metric(device.relativeChangePerKelvin(), QuantityKind.RATIO)
            + " for each kelvin"
            + ".";
    if (band.isEmpty() || band.get().feasible()) {
      return note(p, device.nominalForce(), words);
    }
    double scatter = device.scatter().halfRange() + device.accuracy().halfRange();
    return new Finding(
        CHECK,
        Severity.WARNING,
        p.name(),
        scatter,
        band.get().scatterAllowed(),
        Sense.AT_MOST,
        Measure.SHARE,
        words,
        "Whatever is set, the force may leave what the coupling allows: measure the force, or take a"
            + " device that keeps it within ±"
            + Measure.SHARE.show(band.get().scatterAllowed())
            + ".");
  }

  /**
   * Finds what a device may be set to.
   *
   * @param p the preload that it makes
   * @param device the device
   * @param allowed how far all preloads together may be scaled
   * @return the band; empty if the coupling sets no upper or lower end
   */
  public static Optional<BenchBand> band(Preload p, PreloadDevice device, PreloadBand allowed) {
    boolean closed = allowed.isOpen() && allowed.least() > 0 && allowed.least() < allowed.most();
    return closed && Double.isFinite(allowed.most())
        ? Optional.of(device.band(allowed.least() * p.force(), allowed.most() * p.force()))
        : Optional.empty();
  }

  private static String aim(BenchBand b) {
    String allowed =
        " (allowed "
            + Measure.FORCE.show(b.allowedLow())
            + " to "
            + Measure.FORCE.show(b.allowedHigh());
    if (!b.feasible()) {
      return allowed + ", too narrow for its scatter)";
    }
    String low = told(b.settingAtLow(), "");
    String high = told(b.settingAtHigh(), "as much as it gives");
    return low.isEmpty()
        ? allowed + ", beyond what this device can be set to)"
        : allowed + "; aim from " + low + " to " + high + ")";
  }

  private static String told(Optional<BenchSetting> setting, String otherwise) {
    return setting.isPresent() ? setting.get().told() : otherwise;
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
        hurts(c) && device.storedEnergy() > 0
            ? " Stored: " + Measure.number(device.storedEnergy(), 2) + " J."
            : "";
    String words = p.name() + ": " + c.text() + energy;
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
        : note(p, device.nominalForce(), words);
  }

  private static boolean hurts(DeviceCaution c) {
    return c == DeviceCaution.STORED_SPRING_ENERGY
        || c == DeviceCaution.MAGNET_PINCH
        || c == DeviceCaution.FALLING_WEIGHT
        || c == DeviceCaution.PRESSURE_LOSS;
  }

  private static Finding note(Preload p, double force, String words) {
    return new Finding(
        CHECK, Severity.NOTE, p.name(), force, 0, Sense.AT_LEAST, Measure.FORCE, words, "");
  }
}
