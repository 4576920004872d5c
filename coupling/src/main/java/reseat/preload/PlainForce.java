package reseat.preload;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.numerics.Bounds;

/**
 * A constant force whose origin is not modelled: measured on a load cell, or still to be decided.
 *
 * @param force force, N, positive
 * @param scatter scatter from one mounting to the next, as stated by the user
 */
public record PlainForce(double force, ForceScatter scatter) implements PreloadDevice {

  /** Checks the force. */
  public PlainForce {
    Objects.requireNonNull(scatter, "scatter of a plain force must be given, found null");
    Bounds.positive("preload", force, "N");
  }

  @Override
  public double force(double opening) {
    return force;
  }

  @Override
  public double axialStiffness() {
    return 0;
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
    return 0;
  }

  @Override
  public List<DeviceCaution> cautions() {
    return List.of();
  }

  @Override
  public Optional<BenchSetting> settingFor(double wanted) {
    return Optional.of(new BenchSetting(BenchSetting.Kind.FORCE, wanted));
  }

  @Override
  public Optional<PlainForce> setTo(double wanted) {
    return Optional.of(new PlainForce(wanted, scatter));
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.plainForce(this);
  }
}
