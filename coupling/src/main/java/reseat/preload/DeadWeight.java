package reseat.preload;

import java.util.List;
import java.util.Optional;
import reseat.numerics.Bounds;

/**
 * A weight that presses the halves together by gravity; a hanging weight over a pulley counts the
 * same.
 *
 * @param mass mass, kg
 * @param gravity acceleration of fall along the line of the device, m/s²; 9.80665 when vertical
 * @param drop height it can fall if let go, m
 */
public record DeadWeight(double mass, double gravity, double drop) implements PreloadDevice {

  /** Standard acceleration of fall, m/s² (exact by definition). */
  public static final double STANDARD_GRAVITY = 9.80665;

  /** Checks mass, gravity and drop. */
  public DeadWeight {
    Bounds.positive("mass of the preload weight", mass, "kg");
    Bounds.positive("acceleration of fall", gravity, "m/s^2");
    Bounds.notNegative("height the weight can fall", drop, "m");
  }

  @Override
  public double force(double opening) {
    return mass * gravity;
  }

  @Override
  public double axialStiffness() {
    return 0;
  }

  @Override
  public ForceScatter scatter() {
    return ForceScatter.NONE;
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
    return mass * gravity * drop;
  }

  @Override
  public List<DeviceCaution> cautions() {
    return List.of(DeviceCaution.FALLING_WEIGHT);
  }

  @Override
  public Optional<BenchSetting> settingFor(double wanted) {
    return Optional.of(new BenchSetting(BenchSetting.Kind.MASS, wanted / gravity));
  }

  @Override
  public Optional<DeadWeight> setTo(double wanted) {
    return Optional.of(new DeadWeight(wanted / gravity, gravity, drop));
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.deadWeight(this);
  }
}
