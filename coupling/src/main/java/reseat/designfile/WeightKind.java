package reseat.designfile;

import java.util.Optional;
import reseat.preload.DeadWeight;
import reseat.units.QuantityKind;

/** Reads a weight. */
final class WeightKind implements DeviceKind {

  @Override
  public String settingKey() {
    return "mass";
  }

  @Override
  public String stronger() {
    return "use a larger mass";
  }

  @Override
  public Optional<DeadWeight> read(Section s, MaterialReader materials) {
    double mass = s.positiveOr("mass", QuantityKind.MASS, 1);
    double drop = s.required("drop", QuantityKind.LENGTH, 0);
    try {
      return Optional.of(new DeadWeight(mass, DeadWeight.STANDARD_GRAVITY, drop));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }
}
