package reseat.making;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import reseat.design.ShopFloor;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.elementary.Elementary;
import reseat.seat.SeatClearance;

/**
 * Which gauges a seat is measured with: those the shop owns, else the design's own ball and two
 * round sizes that touch the flanks well inside their edges.
 *
 * @param heightGauges diameters for the height, m, the smallest first
 * @param anglePair two gauges for the angle; empty where there is no angle or no two gauges fit
 * @param unusable gauges of the shop that do not rest on the flanks alone, with the reason
 */
public record GaugeStock(
    List<Double> heightGauges, Optional<Pair> anglePair, List<Unusable> unusable) {

  /** Steps of proposed sizes, m. */
  private static final double METRIC_STEP = 0.5e-3;

  private static final double INCH_STEP = 25.4e-3 / 32;

  /** Least ratio of two gauges that tell an angle. */
  private static final double SPREAD = 1.15;

  /**
   * Two gauges.
   *
   * @param small diameter of the smaller one, m
   * @param large diameter of the larger one, m
   */
  public record Pair(double small, double large) {}

  /**
   * A gauge that must not be used in a seat.
   *
   * @param support name of the support
   * @param diameter its diameter, m
   * @param features what it reaches over; none if it falls through or does not go in
   */
  public record Unusable(String support, double diameter, List<SeatClearance.Feature> features) {

    /** Copies the list. */
    public Unusable {
      features = List.copyOf(features);
    }
  }

  /** Copies the lists. */
  public GaugeStock {
    heightGauges = List.copyOf(heightGauges);
    unusable = List.copyOf(unusable);
  }

  /**
   * Chooses the gauges.
   *
   * @param support ball and seat as designed
   * @param shop gauges owned; pins go into grooves only
   * @param inchSizes whether sizes that are proposed come in inches
   * @return the gauges
   */
  public static GaugeStock of(Support support, ShopFloor shop, boolean inchSizes) {
    TreeSet<Double> owned = new TreeSet<>(shop.gaugeBalls());
    if (support.seat().isGroove()) {
      owned.addAll(shop.gaugePins());
    }
    List<Double> heights = new ArrayList<>();
    List<Unusable> unusable = new ArrayList<>();
    for (double d : owned) {
      Optional<GaugeReading> reading = GaugeReading.of(support, Tolerances.NONE, d);
      if (reading.isPresent() && reading.get().fits()) {
        heights.add(d);
      } else {
        unusable.add(
            new Unusable(support.name(), d, reading.map(GaugeReading::misfits).orElse(List.of())));
      }
    }
    if (heights.isEmpty()) {
      heights.add(support.ball().diameter());
    }
    if (ToleranceKind.FLANK_ANGLE.partsOf(support.seat()).isEmpty()) {
      return new GaugeStock(heights, Optional.empty(), unusable);
    }
    double small = Collections.min(heights);
    double large = Collections.max(heights);
    if (large >= SPREAD * small) {
      return new GaugeStock(heights, Optional.of(new Pair(small, large)), unusable);
    }
    return new GaugeStock(
        heights, proposal(support, inchSizes ? INCH_STEP : METRIC_STEP), unusable);
  }

  private static boolean fits(Support support, double diameter) {
    return GaugeReading.of(support, Tolerances.NONE, diameter)
        .map(GaugeReading::fits)
        .orElse(false);
  }

  /** Down and up from the design's ball, as far as edges and half its size let go. */
  private static Optional<Pair> proposal(Support support, double step) {
    double ball = support.ball().diameter();
    long middle = Elementary.round(ball / step);
    double small = 0;
    double large = 0;
    for (long k = middle; k > 1 && k * step > 0.5 * ball; k--) {
      if (!fits(support, k * step - step)) {
        break;
      }
      small = k * step;
    }
    for (long k = middle; k * step < 1.5 * ball; k++) {
      if (!fits(support, k * step + step)) {
        break;
      }
      large = k * step;
    }
    return small > 0 && large >= SPREAD * small
        ? Optional.of(new Pair(small, large))
        : Optional.empty();
  }
}
