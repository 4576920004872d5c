package reseat.preload;

import java.util.List;
import java.util.Optional;

/**
 * A device that pulls the two halves of a coupling together along a line.
 *
 * <p>Force is in N, positive pulling together. Opening is the distance by which the halves are
 * parted from their nominal place, m, positive apart.
 */
public sealed interface PreloadDevice
    permits PlainForce,
        TightenedScrew,
        DiscSpringStack,
        HelicalSpring,
        MagnetPair,
        DeadWeight,
        AirCylinder {

  /**
   * Force at the nominal place and setting.
   *
   * @return force, N, positive
   */
  default double nominalForce() {
    return force(0);
  }

  /**
   * Force when the halves are parted.
   *
   * @param opening distance parted from the nominal place, m
   * @return force, N
   */
  double force(double opening);

  /**
   * Stiffness along the axis at the nominal place, the change of force with opening; positive if
   * the device resists opening, negative for magnets.
   *
   * @return stiffness, N/m
   */
  double axialStiffness();

  /**
   * Scatter of the force from one mounting to the next.
   *
   * @return relative scatter
   */
  ForceScatter scatter();

  /**
   * How far the mean force of one such device may lie from the nominal; constant over mountings of
   * the same device, so it does not spoil repeatability.
   *
   * @return relative uncertainty
   */
  ForceScatter accuracy();

  /**
   * Relative change of the force for one kelvin of warming of the device, its neighbours staying in
   * place.
   *
   * @return change over force, 1/K
   */
  double relativeChangePerKelvin();

  /**
   * Energy stored in the device at the nominal setting, or released if it lets go.
   *
   * @return energy, J, not negative
   */
  double storedEnergy();

  /**
   * What to know before handling or relying on the device as it is set.
   *
   * @return cautions, none if there is nothing to say
   */
  List<DeviceCaution> cautions();

  /**
   * The figure behind a caution, if there is one.
   *
   * @param caution one of {@link #cautions()}
   * @return figure and limit; empty for a caution that no number decides
   */
  default Optional<CautionFigure> figureOf(DeviceCaution caution) {
    return Optional.empty();
  }

  /**
   * The largest force that the device can be set to.
   *
   * @return force at the nominal place, N; empty if nothing in its description limits it
   */
  default Optional<Double> mostForce() {
    return Optional.empty();
  }

  /**
   * What to set at the bench for a force.
   *
   * @param force wanted force at the nominal place, N
   * @return the setting, empty if the device cannot give this force
   */
  Optional<BenchSetting> settingFor(double force);

  /**
   * The same device set to another force.
   *
   * @param force wanted force at the nominal place, N
   * @return the device, or empty if it cannot give this force
   */
  Optional<? extends PreloadDevice> setTo(double force);

  /**
   * Band to aim for so that the force stays within what the coupling allows.
   *
   * @param allowedLow smallest force the coupling allows, N
   * @param allowedHigh largest force the coupling allows, N
   * @return the band, in force and in what to set
   */
  default BenchBand band(double allowedLow, double allowedHigh) {
    return BenchBand.of(this, allowedLow, allowedHigh);
  }

  /**
   * Calls the visitor's method for this kind of device.
   *
   * @param visitor the visitor
   * @param <T> type of the answer
   * @return the visitor's answer
   */
  <T> T accept(Visitor<T> visitor);

  /**
   * One method for each kind of device, so that a new kind must be handled everywhere.
   *
   * @param <T> type of the answer
   */
  interface Visitor<T> {

    /**
     * A force without a stated origin.
     *
     * @param device the device
     * @return the answer
     */
    T plainForce(PlainForce device);

    /**
     * A screw tightened by torque.
     *
     * @param device the device
     * @return the answer
     */
    T tightenedScrew(TightenedScrew device);

    /**
     * A stack of disc springs.
     *
     * @param device the device
     * @return the answer
     */
    T discSpringStack(DiscSpringStack device);

    /**
     * A helical compression spring.
     *
     * @param device the device
     * @return the answer
     */
    T helicalSpring(HelicalSpring device);

    /**
     * Two magnets, or a magnet and iron.
     *
     * @param device the device
     * @return the answer
     */
    T magnetPair(MagnetPair device);

    /**
     * A weight.
     *
     * @param device the device
     * @return the answer
     */
    T deadWeight(DeadWeight device);

    /**
     * An air cylinder.
     *
     * @param device the device
     * @return the answer
     */
    T airCylinder(AirCylinder device);
  }
}
