package reseat.designfile;

import java.util.Optional;
import reseat.preload.DiscSpring;
import reseat.preload.DiscSpringStack;
import reseat.units.QuantityKind;

/** Reads a stack of disc springs. */
final class DiscSpringKind implements DeviceKind {

  @Override
  public String settingKey() {
    return "deflection";
  }

  @Override
  public String stronger() {
    return "use more discs in parallel, or thicker ones";
  }

  @Override
  public Optional<DiscSpringStack> read(Section s, MaterialReader materials) {
    double outer = s.positive("outer_diameter", QuantityKind.LENGTH, 20e-3);
    double inner = s.positive("inner_diameter", QuantityKind.LENGTH, 10.2e-3);
    double thickness = s.positive("thickness", QuantityKind.LENGTH, 1.1e-3);
    double height = s.positive("free_height", QuantityKind.LENGTH, 1.55e-3);
    int parallel = s.count("parallel", 1, 1, 20);
    int series = s.count("series", 1, 1, 200);
    double anyDeflection = series * Math.max(1e-6, height - thickness) / 2;
    double deflection = s.positiveOr("deflection", QuantityKind.LENGTH, anyDeflection);
    double tolerance = s.required("deflection_tolerance", QuantityKind.LENGTH, 0);
    double friction = s.ratio("friction_per_face", DiscSpringStack.USUAL_FRICTION);
    double accuracy = s.ratio("force_accuracy", DiscSpringStack.USUAL_ACCURACY);
    try {
      return Optional.of(
          new DiscSpringStack(
              DiscSpring.ofSteel(outer, inner, thickness, height),
              parallel,
              series,
              deflection,
              tolerance,
              friction,
              accuracy,
              DiscSpringStack.STEEL_MODULUS_PER_KELVIN));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }
}
