package reseat.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.RemountConditions;
import reseat.readings.ScatterCause;
import reseat.remount.Cause;

/**
 * How much of each cause a design assumes from mount to mount, and the same design with other
 * amounts.
 */
final class CauseAmounts {

  /** Friction and preload cannot scatter by all of themselves. */
  static final double MOST_RATIO = 0.95;

  /** Causes with an amount, and what the simulation calls them. */
  static final Map<ScatterCause, Cause> CAUSES =
      new EnumMap<>(
          Map.of(
              ScatterCause.FRICTION, Cause.FRICTION,
              ScatterCause.PRELOAD, Cause.PRELOAD_SIZE,
              ScatterCause.PRELOAD_LINE, Cause.PRELOAD_LINE,
              ScatterCause.TEMPERATURE, Cause.TEMPERATURE,
              ScatterCause.DIRT, Cause.FILM));

  private CauseAmounts() {}

  /**
   * Returns the amount that a design assumes.
   *
   * @param design the design
   * @param cause one with an amount
   * @return half-width of the scatter: a ratio for friction and preload, m for the line of the
   *     preload (greatest of all preloads) and for dirt, K for temperature
   */
  static double of(CouplingDesign design, ScatterCause cause) {
    RemountConditions r = design.remount();
    return switch (cause) {
      case FRICTION -> r.friction().limit();
      case PRELOAD ->
          design.preloads().stream().mapToDouble(p -> p.forceSpread().limit()).max().orElse(0);
      case PRELOAD_LINE ->
          design.preloads().stream().mapToDouble(p -> p.lineSpread().limit()).max().orElse(0);
      case TEMPERATURE -> r.temperature().limit();
      case DIRT -> r.film().limit();
      case GAUGE, OTHER -> throw new IllegalArgumentException(cause + " is no cause of a design");
    };
  }

  /**
   * Returns the greatest factor by which an amount can be raised.
   *
   * @param design the design
   * @param cause one with an amount
   * @return infinite where nothing stands against it
   */
  static double most(CouplingDesign design, ScatterCause cause) {
    boolean ratio = cause == ScatterCause.FRICTION || cause == ScatterCause.PRELOAD;
    double assumed = of(design, cause);
    return ratio && assumed > 0 ? MOST_RATIO / assumed : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns a design with other amounts.
   *
   * @param design the design
   * @param factors factor of the assumed amount by cause; 1 where there is none
   * @return the changed design; friction and preload scatter by 95 % at most
   */
  static CouplingDesign scaled(CouplingDesign design, Map<ScatterCause, Double> factors) {
    RemountConditions r = design.remount();
    double none = Double.POSITIVE_INFINITY;
    List<Preload> preloads = new ArrayList<>();
    for (Preload p : design.preloads()) {
      double line = factors.getOrDefault(ScatterCause.PRELOAD_LINE, 1.0);
      preloads.add(
          p.withScatter(
              p.forceSpread().times(factors.getOrDefault(ScatterCause.PRELOAD, 1.0), MOST_RATIO),
              p.lineSpread().times(line, none),
              p.tiltSpread().times(line, none)));
    }
    return design.toBuilder()
        .preloads(preloads)
        .remount(
            r.withScatter(
                r.friction().times(factors.getOrDefault(ScatterCause.FRICTION, 1.0), MOST_RATIO),
                r.temperature().times(factors.getOrDefault(ScatterCause.TEMPERATURE, 1.0), none),
                r.film().times(factors.getOrDefault(ScatterCause.DIRT, 1.0), none)))
        .build();
  }
}
