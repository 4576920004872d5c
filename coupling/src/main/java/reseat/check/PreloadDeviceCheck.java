package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.PreloadBand;
import reseat.preload.BenchBand;
import reseat.preload.BenchSetting;
import reseat.preload.CautionFigure;
import reseat.preload.DeviceCaution;
import reseat.preload.PreloadDevice;

/** What to set on each preload device, how far it may be trusted, and what to beware of. */
public final class PreloadDeviceCheck {

  private PreloadDeviceCheck() {}

  /**
   * Looks at the devices that are described.
   *
   * @param design the coupling
   * @param band the band of preload in which every check holds; empty if it was not looked for
   * @param inFull whether more is told than what the coupling is judged by
   * @return a finding for each device with its setting, and a finding for each of its cautions;
   *     devices that are equal are told once
   */
  public static List<Finding> of(
      CouplingDesign design, Optional<AllowedPreload> band, boolean inFull) {
    List<Finding> found = new ArrayList<>();
    List<PreloadDevice> seen = new ArrayList<>();
    for (Preload p : design.preloads()) {
      Optional<PreloadDevice> device = p.modelled();
      if (device.isPresent() && !seen.contains(device.get())) {
        seen.add(device.get());
        if (inFull) {
          found.add(setting(p, device.get(), band));
        }
        for (DeviceCaution c : device.get().cautions()) {
          if (inFull || device.get().figureOf(c).isPresent()) {
            found.add(caution(p, device.get(), c));
          }
        }
      }
    }
    return found;
  }

  private static Finding setting(
      Preload p, PreloadDevice device, Optional<AllowedPreload> allowed) {
    Optional<BenchBand> band = band(p, device, allowed);
    Statement said =
        Statement.of(
            Said.DEVICE_SETTING,
            p.name(),
            amount(Measure.FORCE, device.nominalForce()),
            told(device.settingFor(device.nominalForce()), Said.NOTHING),
            band.isEmpty() ? Statement.NOTHING : aim(device, band.get()),
            amount(Measure.SHARE, device.scatter().halfRange()),
            device.scatter().basis(),
            amount(Measure.SHARE, device.accuracy().halfRange()),
            amount(Measure.FACTOR, device.relativeChangePerKelvin()));
    if (band.isPresent() && !band.get().feasible()) {
      return tooNarrow(p, device, band.get().scatterAllowed(), said);
    }
    return band.isPresent() && outOfReach(device, band.get())
        ? outOfReach(p, device, band.get(), said)
        : advice(p, device.nominalForce(), said);
  }

  private static Finding tooNarrow(
      Preload p, PreloadDevice device, double allowed, Statement said) {
    return new Finding(
        CheckKind.PRELOAD_DEVICE,
        Judged.DECIDE,
        Subject.preload(p.name()),
        device.scatter().halfRange() + device.accuracy().halfRange(),
        allowed,
        Sense.AT_MOST,
        LimitBasis.COMMON_PRACTICE,
        Measure.SHARE,
        said,
        Statement.of(Said.MEASURE_FORCE, amount(Measure.SHARE, allowed)));
  }

  private static boolean outOfReach(PreloadDevice device, BenchBand band) {
    return device.nominalForce() < band.aimLow() && band.settingAtLow().isEmpty();
  }

  private static Finding outOfReach(
      Preload p, PreloadDevice device, BenchBand band, Statement said) {
    return new Finding(
        CheckKind.PRELOAD_DEVICE,
        Judged.FAILS,
        Subject.preload(p.name()),
        device.mostForce().orElse(device.nominalForce()),
        band.aimLow(),
        Sense.AT_LEAST,
        LimitBasis.MECHANICS,
        Measure.FORCE,
        said,
        Statement.NOTHING);
  }

  /**
   * Finds what a device may be set to.
   *
   * @param p the preload that it makes
   * @param device the device
   * @param allowed the band of preload in which every check holds
   * @return the band; empty if the coupling sets no upper or lower end
   */
  public static Optional<BenchBand> band(
      Preload p, PreloadDevice device, Optional<AllowedPreload> allowed) {
    if (allowed.isEmpty()) {
      return Optional.empty();
    }
    PreloadBand scales = allowed.get().scales();
    boolean closed = scales.least() > 0 && scales.least() < scales.most();
    return closed && Double.isFinite(scales.most())
        ? Optional.of(device.band(scales.least() * p.force(), scales.most() * p.force()))
        : Optional.empty();
  }

  private static Statement aim(PreloadDevice device, BenchBand b) {
    Argument low = amount(Measure.FORCE, b.allowedLow());
    Argument high = amount(Measure.FORCE, b.allowedHigh());
    if (!b.feasible()) {
      return Statement.of(Said.BAND_TOO_NARROW, low, high);
    }
    return outOfReach(device, b)
        ? Statement.of(Said.BAND_OUT_OF_REACH, low, high)
        : Statement.of(
            Said.BAND_AIM,
            low,
            high,
            told(b.settingAtLow(), Said.NOTHING),
            told(b.settingAtHigh(), Said.ALL_IT_GIVES));
  }

  private static Statement told(Optional<BenchSetting> setting, Said otherwise) {
    return setting.isEmpty()
        ? Statement.of(otherwise)
        : Statement.of(
            Said.SETTING,
            setting.get().kind(),
            amount(measure(setting.get().kind()), setting.get().value()));
  }

  private static Measure measure(BenchSetting.Kind kind) {
    return switch (kind) {
      case FORCE -> Measure.FORCE;
      case TORQUE -> Measure.TORQUE;
      case DEFLECTION, GAP -> Measure.LENGTH;
      case MASS -> Measure.MASS;
      case PRESSURE -> Measure.PRESSURE;
    };
  }

  private static Finding caution(Preload p, PreloadDevice device, DeviceCaution c) {
    double energy = hurts(c) ? device.storedEnergy() : 0;
    Statement said = Statement.of(Said.DEVICE_CAUTION, p.name(), c, amount(Measure.FACTOR, energy));
    Optional<CautionFigure> figure = device.figureOf(c);
    if (figure.isEmpty()) {
      return advice(p, device.nominalForce(), said);
    }
    CautionFigure f = figure.get();
    return new Finding(
        CheckKind.PRELOAD_DEVICE,
        Judged.DECIDE,
        Subject.preload(p.name()),
        f.value(),
        f.limit(),
        f.atMost() ? Sense.AT_MOST : Sense.AT_LEAST,
        LimitBasis.COMMON_PRACTICE,
        measure(c),
        said,
        Statement.NOTHING);
  }

  private static Measure measure(DeviceCaution c) {
    return switch (c) {
      case OVERSTRESSED -> Measure.PRESSURE;
      case SNAPS_THROUGH -> Measure.FACTOR;
      case NEARLY_FLAT,
          HARDLY_COMPRESSED,
          STORED_SPRING_ENERGY,
          MAGNET_PINCH,
          MAGNET_NEVER_TOUCHES,
          SCREW_LOCATES,
          TORQUE_IS_LOOSE,
          FALLING_WEIGHT,
          PRESSURE_LOSS ->
          Measure.SHARE;
    };
  }

  private static boolean hurts(DeviceCaution c) {
    return c == DeviceCaution.STORED_SPRING_ENERGY
        || c == DeviceCaution.MAGNET_PINCH
        || c == DeviceCaution.FALLING_WEIGHT
        || c == DeviceCaution.PRESSURE_LOSS;
  }

  private static Finding advice(Preload p, double force, Statement said) {
    return Finding.advice(
        CheckKind.PRELOAD_DEVICE,
        Subject.preload(p.name()),
        force,
        0,
        Measure.FORCE,
        said,
        Statement.NOTHING);
  }
}
