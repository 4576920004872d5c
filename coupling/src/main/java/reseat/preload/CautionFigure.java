package reseat.preload;

/**
 * The figure that calls for a caution, and the limit that it passes.
 *
 * @param value the figure, SI
 * @param limit its limit, SI
 * @param atMost whether the limit is an upper one
 */
public record CautionFigure(double value, double limit, boolean atMost) {

  static CautionFigure atMost(double value, double limit) {
    return new CautionFigure(value, limit, true);
  }

  static CautionFigure atLeast(double value, double limit) {
    return new CautionFigure(value, limit, false);
  }
}
