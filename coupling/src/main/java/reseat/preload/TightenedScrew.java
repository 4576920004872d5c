package reseat.preload;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadTorque;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * A screw tightened by torque, drawing the halves together.
 *
 * <p>Force is torque over torque-per-force: {@code K d} with a nut factor, or the full sum of lift,
 * flank friction and head friction. The stretched part of the screw is a spring of {@code E As /
 * L}. Warming of the screw alone lets it grow and lose force: the relative change is {@code -alpha
 * k L / F}; a screw that warms with halves of the same growth keeps its force.
 *
 * @param thread the thread
 * @param torquePerForce torque for each newton of preload, m
 * @param torque torque applied, N m
 * @param gripLength length of screw stretched, m
 * @param youngModulus of the screw, Pa
 * @param expansion thermal expansion of the screw less that of the parts it clamps, 1/K
 * @param scatter scatter of the preload at constant torque
 */
public record TightenedScrew(
    ScrewThread thread,
    double torquePerForce,
    double torque,
    double gripLength,
    double youngModulus,
    double expansion,
    ForceScatter scatter)
    implements PreloadDevice {

  /** Checks the quantities. */
  public TightenedScrew {
    Objects.requireNonNull(thread, "thread of a tightened screw must be given, found null");
    Objects.requireNonNull(scatter, "scatter of a tightened screw must be given, found null");
    Bounds.positive("torque for each newton of preload", torquePerForce, "m");
    Bounds.positive("tightening torque", torque, "N m");
    Bounds.positive("stretched length of the screw", gripLength, "m");
    Bounds.positive("Young's modulus of the screw", youngModulus, "Pa");
    if (!Double.isFinite(expansion)) {
      throw new IllegalArgumentException(
          "difference of thermal expansion is "
              + PrintedNumber.shortest(expansion)
              + " 1/K: it must be finite");
    }
  }

  /**
   * Torque for each newton by the nut factor, {@code K d}.
   *
   * @param thread the thread
   * @param nutFactor nut factor K: 0.1 to 0.3 for steel, up to 0.5 for stainless steel
   * @return torque over force, m
   */
  public static double byNutFactor(ScrewThread thread, double nutFactor) {
    return Bounds.positive("nut factor", nutFactor, "") * thread.diameter();
  }

  /**
   * Torque for each newton by the friction of thread and head.
   *
   * @param friction thread with its friction
   * @return torque over force, m
   */
  public static double byFriction(ThreadTorque friction) {
    return friction.perForce();
  }

  @Override
  public double force(double opening) {
    return torque / torquePerForce + axialStiffness() * opening;
  }

  @Override
  public double axialStiffness() {
    return youngModulus * thread.stressArea() / gripLength;
  }

  @Override
  public ForceScatter accuracy() {
    return ForceScatter.NONE;
  }

  @Override
  public double relativeChangePerKelvin() {
    return -expansion * gripLength * axialStiffness() / nominalForce();
  }

  @Override
  public double storedEnergy() {
    double f = nominalForce();
    return f * f / (2 * axialStiffness());
  }

  /**
   * Tensile stress in the screw over its stress area.
   *
   * @return stress, Pa
   */
  public double stress() {
    return nominalForce() / thread.stressArea();
  }

  @Override
  public List<DeviceCaution> cautions() {
    return List.of(DeviceCaution.SCREW_LOCATES, DeviceCaution.TORQUE_IS_LOOSE);
  }

  @Override
  public Optional<BenchSetting> settingFor(double wanted) {
    return Optional.of(new BenchSetting(BenchSetting.Kind.TORQUE, wanted * torquePerForce));
  }

  @Override
  public Optional<TightenedScrew> setTo(double wanted) {
    return Optional.of(
        new TightenedScrew(
            thread,
            torquePerForce,
            wanted * torquePerForce,
            gripLength,
            youngModulus,
            expansion,
            scatter));
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.tightenedScrew(this);
  }
}
