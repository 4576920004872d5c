package reseat.preload;

import java.util.Objects;
import java.util.Optional;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * The band to aim for at a device so that the force, whatever its scatter, stays within the band
 * the coupling allows.
 *
 * <p>With relative half range x the aim lies between {@code low/(1 - x)} and {@code high/(1 + x)}.
 *
 * @param allowedLow smallest force the coupling allows, N
 * @param allowedHigh largest force the coupling allows, N
 * @param aimLow smallest force to aim for, N
 * @param aimHigh largest force to aim for, N; below {@code aimLow} if the device scatters too much
 * @param settingAtLow what to set for {@code aimLow}; empty if the device cannot be set to it or
 *     the band is empty
 * @param settingAtHigh what to set for {@code aimHigh}; empty likewise
 * @param scatterAllowed relative half range at which the band would just close to one point
 */
public record BenchBand(
    double allowedLow,
    double allowedHigh,
    double aimLow,
    double aimHigh,
    Optional<BenchSetting> settingAtLow,
    Optional<BenchSetting> settingAtHigh,
    double scatterAllowed) {

  /** Refuses what is missing. */
  public BenchBand {
    Objects.requireNonNull(
        settingAtLow, "setting at low of a bench band must be given, found null");
    Objects.requireNonNull(
        settingAtHigh, "setting at high of a bench band must be given, found null");
  }

  /**
   * The band of a device.
   *
   * @param device the device
   * @param low smallest force the coupling allows, N
   * @param high largest force the coupling allows, N
   * @return the band
   */
  static BenchBand of(PreloadDevice device, double low, double high) {
    Bounds.positive("smallest allowed preload", low, "N");
    Bounds.positive("largest allowed preload", high, "N");
    if (!(low < high)) {
      throw new IllegalArgumentException(
          "smallest allowed preload "
              + PrintedNumber.shortest(low)
              + " N is not below the largest, "
              + PrintedNumber.shortest(high)
              + " N: no preload meets both limits");
    }
    double x = device.scatter().halfRange() + device.accuracy().halfRange();
    double aimLow = x < 1 ? low / (1 - x) : high;
    double aimHigh = high / (1 + x);
    boolean open = aimLow <= aimHigh;
    return new BenchBand(
        low,
        high,
        aimLow,
        aimHigh,
        open ? device.settingFor(aimLow) : Optional.empty(),
        open ? device.settingFor(aimHigh) : Optional.empty(),
        (high - low) / (high + low));
  }

  /**
   * Whether any aim keeps the force within the allowed band.
   *
   * @return false if the scatter of the device is too large for the band
   */
  public boolean feasible() {
    return aimLow <= aimHigh;
  }
}
