package reseat.design;

import java.util.List;
import java.util.Objects;
import reseat.numerics.Bounds;

/**
 * What the shop that makes a coupling has to do with besides the coupling itself; it changes no
 * result of a check.
 *
 * @param gaugeBalls diameters of the gauge balls it owns, m
 * @param gaugePins diameters of the gauge pins it owns, m
 * @param keepClear what must not touch
 */
public record ShopFloor(
    List<Double> gaugeBalls, List<Double> gaugePins, List<KeepClear> keepClear) {

  /** Nothing is said about the shop. */
  public static final ShopFloor UNKNOWN = new ShopFloor(List.of(), List.of(), List.of());

  /** Copies the lists and refuses gauges without size. */
  public ShopFloor {
    Objects.requireNonNull(gaugeBalls, "gauge balls of a shop floor must be given, found null");
    Objects.requireNonNull(gaugePins, "gauge pins of a shop floor must be given, found null");
    Objects.requireNonNull(keepClear, "keep clear of a shop floor must be given, found null");
    gaugeBalls = List.copyOf(gaugeBalls);
    gaugePins = List.copyOf(gaugePins);
    keepClear = List.copyOf(keepClear);
    for (double d : gaugeBalls) {
      Bounds.positive("diameter of a gauge ball", d, "m");
    }
    for (double d : gaugePins) {
      Bounds.positive("diameter of a gauge pin", d, "m");
    }
  }

  /**
   * Returns the same shop with other gauges.
   *
   * @param balls diameters of balls, m
   * @param pins diameters of pins, m
   * @return the changed copy
   */
  public ShopFloor withGauges(List<Double> balls, List<Double> pins) {
    return new ShopFloor(balls, pins, keepClear);
  }
}
