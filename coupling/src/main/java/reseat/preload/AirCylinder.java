package reseat.preload;

import java.util.List;
import java.util.Optional;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * An air cylinder on a regulated supply: pressure times piston area. The seal holds the force back
 * or keeps it up by its friction, so the force may lie anywhere within that friction from one
 * mounting to the next.
 *
 * @param bore piston diameter, m
 * @param rod rod diameter if the air acts on the rod side, otherwise zero, m
 * @param pressure gauge pressure, Pa
 * @param pressureScatter relative half range of the regulated pressure
 * @param sealFriction friction of the seals, N
 * @param stroke length through which the piston can move if let go, m
 */
public record AirCylinder(
    double bore,
    double rod,
    double pressure,
    double pressureScatter,
    double sealFriction,
    double stroke)
    implements PreloadDevice {

  /** Checks that the rod fits the bore and the friction leaves a force. */
  public AirCylinder {
    Bounds.positive("bore of the cylinder", bore, "m");
    Bounds.notNegative("rod of the cylinder", rod, "m");
    Bounds.positive("air pressure", pressure, "Pa");
    Bounds.notNegative("relative scatter of the pressure", pressureScatter, "");
    Bounds.notNegative("friction of the seals", sealFriction, "N");
    Bounds.notNegative("stroke of the cylinder", stroke, "m");
    if (!(rod < bore)) {
      throw new IllegalArgumentException(
          "rod of the cylinder "
              + PrintedNumber.shortest(rod)
              + " m is not thinner than its bore "
              + PrintedNumber.shortest(bore)
              + " m");
    }
  }

  private double area() {
    return Math.PI / 4 * (bore * bore - rod * rod);
  }

  @Override
  public double force(double opening) {
    return pressure * area();
  }

  @Override
  public double axialStiffness() {
    return 0;
  }

  @Override
  public ForceScatter scatter() {
    return ForceScatter.uniform(
        Math.min(0.999, pressureScatter + sealFriction / nominalForce()),
        "stated pressure scatter plus stated seal friction, added");
  }

  @Override
  public ForceScatter accuracy() {
    return ForceScatter.NONE;
  }

  @Override
  public double relativeChangePerKelvin() {
    return 0;
  }

  @Override
  public double storedEnergy() {
    return pressure * area() * stroke;
  }

  @Override
  public List<DeviceCaution> cautions() {
    return List.of(DeviceCaution.PRESSURE_LOSS);
  }

  @Override
  public Optional<BenchSetting> settingFor(double wanted) {
    return Optional.of(new BenchSetting(BenchSetting.Kind.PRESSURE, wanted / area()));
  }

  @Override
  public Optional<AirCylinder> setTo(double wanted) {
    return Optional.of(
        new AirCylinder(bore, rod, wanted / area(), pressureScatter, sealFriction, stroke));
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.airCylinder(this);
  }
}
