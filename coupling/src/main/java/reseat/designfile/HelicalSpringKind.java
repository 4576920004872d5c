package reseat.designfile;

import java.util.Optional;
import reseat.preload.DiscSpringStack;
import reseat.preload.HelicalSpring;
import reseat.units.QuantityKind;

/** Reads a helical compression spring of steel wire. */
final class HelicalSpringKind implements DeviceKind {

  /** Shear modulus of spring steel, Pa. */
  private static final double STEEL_SHEAR_MODULUS = 79.3e9;

  /** Usual accuracy of the maker's rate; common practice, no source. */
  private static final double USUAL_RATE_ACCURACY = 0.10;

  @Override
  public String settingKey() {
    return "deflection";
  }

  @Override
  public String stronger() {
    return "use thicker wire or a smaller coil";
  }

  @Override
  public Optional<HelicalSpring> read(Section s, MaterialReader materials) {
    double wire = s.positive("wire", QuantityKind.LENGTH, 2e-3);
    double mean = s.positive("mean_diameter", QuantityKind.LENGTH, 16e-3);
    double active = s.number("active_coils", 6);
    double total = s.has("total_coils") ? s.number("total_coils", active + 2) : active + 2;
    double free = s.positive("free_length", QuantityKind.LENGTH, 40e-3);
    double anyDeflection = Math.max(1e-6, (free - wire * total) / 2);
    double deflection = s.positiveOr("deflection", QuantityKind.LENGTH, anyDeflection);
    double tolerance = s.required("deflection_tolerance", QuantityKind.LENGTH, 0);
    double shear = s.positiveOr("shear_modulus", QuantityKind.PRESSURE, STEEL_SHEAR_MODULUS);
    double accuracy = s.ratio("rate_accuracy", USUAL_RATE_ACCURACY);
    double strength = s.positive("shear_strength", QuantityKind.PRESSURE, 700e6);
    try {
      return Optional.of(
          new HelicalSpring(
              wire,
              mean,
              active,
              total,
              free,
              deflection,
              tolerance,
              shear,
              accuracy,
              DiscSpringStack.STEEL_MODULUS_PER_KELVIN,
              strength));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }
}
