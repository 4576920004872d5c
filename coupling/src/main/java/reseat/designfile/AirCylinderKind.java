package reseat.designfile;

import java.util.Optional;
import reseat.preload.AirCylinder;
import reseat.units.QuantityKind;

/** Reads an air cylinder. */
final class AirCylinderKind implements DeviceKind {

  @Override
  public String settingKey() {
    return "pressure";
  }

  @Override
  public String stronger() {
    return "use a larger bore";
  }

  @Override
  public Optional<AirCylinder> read(Section s, MaterialReader materials) {
    double bore = s.positive("bore", QuantityKind.LENGTH, 20e-3);
    double rod = s.quantity("rod", QuantityKind.LENGTH, 0);
    double pressure = s.positiveOr("pressure", QuantityKind.PRESSURE, 4e5);
    double scatter = s.ratio("pressure_scatter", -1);
    if (!s.has("pressure_scatter")) {
      s.error("pressure_scatter", "is missing; write how well the supply is regulated, \"2 %\"");
    }
    double friction = s.required("seal_friction", QuantityKind.FORCE, 0);
    double stroke = s.quantity("stroke", QuantityKind.LENGTH, 0);
    double regulated = Math.max(0, scatter);
    try {
      return Optional.of(new AirCylinder(bore, rod, pressure, regulated, friction, stroke));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }
}
