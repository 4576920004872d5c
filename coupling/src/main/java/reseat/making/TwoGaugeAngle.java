package reseat.making;

import java.util.List;
import java.util.Optional;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * The angle of a seat from the heights over two gauges of different diameter, one after the other.
 *
 * <p>The tops of gauges of radii r &lt; R in a seat with flanks at angle a to the coupling plane
 * differ by D = (R - r)(1 + 1/cos a), so cos a = (R - r)/(D - (R - r)); the depth of the seat drops
 * out. Two pins serve in a vee groove, two balls in a trihedral seat. It follows from the height of
 * one gauge; the sine of half the included angle of a vee is that cosine.
 *
 * @param support name of the support
 * @param small diameter of the smaller gauge, m
 * @param large diameter of the larger gauge, m
 * @param difference expected difference of the two heights, m
 * @param flankAngle mean angle of the flanks to the coupling plane as drawn, rad
 * @param perDifference change of the flank angle with the difference of heights, rad/m
 * @param band worst departure of the difference by the tolerances of angles, m; zero without any
 */
public record TwoGaugeAngle(
    String support,
    double small,
    double large,
    double difference,
    double flankAngle,
    double perDifference,
    double band) {

  /**
   * Plans the check.
   *
   * @param support ball and seat as designed
   * @param tolerances tolerances of the coupling
   * @param small diameter of the smaller gauge, m
   * @param large diameter of the larger gauge, m
   * @return what to expect; empty if the seat has no pair of plane flanks
   */
  public static Optional<TwoGaugeAngle> of(
      Support support, Tolerances tolerances, double small, double large) {
    Bounds.positive("diameter of the smaller gauge", small, "m");
    if (!(large > small)) {
      throw new IllegalArgumentException(
          "gauges of "
              + PrintedNumber.shortest(small)
              + " m and "
              + PrintedNumber.shortest(large)
              + " m: the second must be the larger");
    }
    List<String> flanks = ToleranceKind.FLANK_ANGLE.partsOf(support.seat());
    if (flanks.isEmpty()) {
      return Optional.empty();
    }
    RestingHeight low = RestingHeight.of(support.seat(), small / 2);
    RestingHeight high = RestingHeight.of(support.seat(), large / 2);
    double difference = high.centre() - low.centre() + (large - small) / 2;
    double band = 0;
    double together = 0;
    for (int k = 0; k < flanks.size(); k++) {
      double per = high.perFlankAngle().get(k) - low.perFlankAngle().get(k);
      together += per;
      band += Math.abs(per) * limit(tolerances, support.name(), flanks.get(k), false);
    }
    band += Math.abs(together) * limit(tolerances, support.name(), flanks.get(0), true);
    return Optional.of(
        new TwoGaugeAngle(
            support.name(),
            small,
            large,
            difference,
            flankAngle(small, large, difference),
            1 / together,
            band));
  }

  private static double limit(Tolerances tolerances, String support, String flank, boolean shared) {
    return tolerances
        .governing(ToleranceKind.FLANK_ANGLE, support, flank, shared)
        .map(t -> t.spread().limit())
        .orElse(0.0);
  }

  /**
   * Finds the angle from what was read.
   *
   * @param small diameter of the smaller gauge, m
   * @param large diameter of the larger gauge, m
   * @param difference height over the larger less height over the smaller, m
   * @return angle of the flanks to the coupling plane if they are alike, rad
   * @throws IllegalArgumentException if no flank angle gives that difference
   */
  public static double flankAngle(double small, double large, double difference) {
    double radii = (large - small) / 2;
    double cosine = radii / (difference - radii);
    if (!(cosine > 0 && cosine < 1)) {
      throw new IllegalArgumentException(
          "heights over gauges of "
              + PrintedNumber.shortest(small)
              + " m and "
              + PrintedNumber.shortest(large)
              + " m that differ by "
              + PrintedNumber.shortest(difference)
              + " m fit no groove: they must differ by more than the diameters do");
    }
    return Elementary.acos(cosine);
  }
}
