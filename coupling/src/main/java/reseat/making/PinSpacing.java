package reseat.making;

import java.util.Optional;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.seat.CylinderPair;

/**
 * The spacing of a pair of pins, as a micrometer over both and a gauge block between them read it.
 *
 * @param support name of the support
 * @param over distance over both pins, m
 * @param between distance between the pins, m; zero if they touch
 * @param band worst departure of both distances by the tolerances of spacing and diameters, m; zero
 *     without any
 */
public record PinSpacing(String support, double over, double between, double band) {

  /**
   * Plans the check.
   *
   * @param support ball and seat as designed
   * @param tolerances tolerances of the coupling
   * @return what to expect; empty if the seat is no pair of pins
   */
  public static Optional<PinSpacing> of(Support support, Tolerances tolerances) {
    if (!(support.seat() instanceof CylinderPair pins)) {
      return Optional.empty();
    }
    double radii = pins.leftRadius() + pins.rightRadius();
    double band = 0;
    for (boolean shared : new boolean[] {false, true}) {
      band += limit(tolerances, ToleranceKind.PIN_SPACING, support.name(), "", shared);
      for (String pin : ToleranceKind.PIN_DIAMETER.partsOf(pins)) {
        band += limit(tolerances, ToleranceKind.PIN_DIAMETER, support.name(), pin, shared) / 2;
      }
    }
    return Optional.of(
        new PinSpacing(support.name(), pins.spacing() + radii, pins.spacing() - radii, band));
  }

  private static double limit(
      Tolerances tolerances, ToleranceKind kind, String support, String part, boolean shared) {
    return tolerances
        .governing(kind, support, part, shared)
        .map(Tolerance::spread)
        .map(s -> s.limit())
        .orElse(0.0);
  }
}
