package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import reseat.preload.MagnetPair;
import reseat.units.QuantityKind;

/** Reads a magnet opposite an equal one or opposite iron. */
final class MagnetKind implements DeviceKind {

  /** Usual accuracy of the remanence of a grade; common practice, no source. */
  private static final double USUAL_ACCURACY = 0.03;

  private static final Map<String, MagnetPair.Counterpart> OPPOSITES = opposites();

  private static Map<String, MagnetPair.Counterpart> opposites() {
    Map<String, MagnetPair.Counterpart> words = new LinkedHashMap<>();
    words.put("equal magnet", MagnetPair.Counterpart.EQUAL_MAGNET);
    words.put("soft iron", MagnetPair.Counterpart.SOFT_IRON);
    return words;
  }

  @Override
  public String settingKey() {
    return "gap";
  }

  @Override
  public String stronger() {
    return "use a larger or stronger magnet";
  }

  @Override
  public Optional<MagnetPair> read(Section s, MaterialReader materials) {
    MagnetPair.Counterpart opposite =
        s.requiredChoice("opposite", OPPOSITES).orElse(MagnetPair.Counterpart.EQUAL_MAGNET);
    double radius = s.positive("diameter", QuantityKind.LENGTH, 10e-3) / 2;
    double length = s.positive("length", QuantityKind.LENGTH, 5e-3);
    double remanence = s.number("remanence_tesla", 1.2);
    double tolerance = s.required("gap_tolerance", QuantityKind.LENGTH, 0);
    double anyGap = Math.max(radius / 5, 2 * tolerance);
    double gap = s.positiveOr("gap", QuantityKind.LENGTH, anyGap);
    double accuracy = s.ratio("remanence_accuracy", USUAL_ACCURACY);
    double perKelvin =
        s.quantity("remanence_per_kelvin", QuantityKind.EXPANSION, MagnetPair.NEODYMIUM_PER_KELVIN);
    try {
      return Optional.of(
          new MagnetPair(opposite, radius, length, remanence, gap, tolerance, accuracy, perKelvin));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }
}
