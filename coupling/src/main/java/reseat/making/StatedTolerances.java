package reseat.making;

import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.seat.Flank;

/**
 * Tolerances of a design as a drawing states them: what one dimension may be, whatever the others
 * are.
 *
 * <p>A dimension that departs on its own and together with others of its lot may depart by both, so
 * the limits add.
 */
final class StatedTolerances {

  private final Tolerances tolerances;

  StatedTolerances(CouplingDesign design) {
    tolerances = design.tolerances();
  }

  /** Half-width between the limits, m or rad; infinite if the design states none. */
  double of(ToleranceKind kind, String support, String part) {
    double own = limit(kind, support, part, false);
    double shared = limit(kind, support, part, true);
    if (Double.isInfinite(own) || Double.isInfinite(shared)) {
      return Math.min(own, shared);
    }
    return own + shared;
  }

  double of(ToleranceKind kind, Support support) {
    return of(kind, support.name(), "");
  }

  /** The widest of the limits of a seat's flanks, if all flanks have one. */
  double ofFlanks(ToleranceKind kind, Support support) {
    double widest = 0;
    for (Flank flank : support.seat().flanks()) {
      widest = Math.max(widest, of(kind, support.name(), flank.name()));
    }
    return widest;
  }

  private double limit(ToleranceKind kind, String support, String part, boolean shared) {
    return tolerances
        .governing(kind, support, part, shared)
        .map(t -> t.spread().limit())
        .orElse(Double.POSITIVE_INFINITY);
  }

  PlaceTolerance ofSeat(Support s) {
    return new PlaceTolerance(
        of(ToleranceKind.SEAT_ACROSS, s),
        of(ToleranceKind.SEAT_ALONG, s),
        of(ToleranceKind.SEAT_DEPTH, s),
        of(ToleranceKind.SEAT_DIRECTION, s),
        of(ToleranceKind.SEAT_PITCH, s),
        of(ToleranceKind.SEAT_ROLL, s));
  }

  PlaceTolerance ofBall(Support s) {
    double none = Double.POSITIVE_INFINITY;
    return new PlaceTolerance(
        of(ToleranceKind.BALL_ACROSS, s),
        of(ToleranceKind.BALL_ALONG, s),
        of(ToleranceKind.BALL_HEIGHT, s),
        none,
        none,
        none);
  }
}
