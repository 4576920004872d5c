package reseat.plots.scene;

import java.util.List;

/** How a line is broken: the second code beside its colour. */
public enum Dash {
  /** Unbroken: outlines, first series. */
  SOLID,
  /** Short dashes: hidden edges, second series. */
  DASHED,
  /** Long dash and dot: centre lines and axes of symmetry. */
  CHAIN,
  /** Dots: third series. */
  DOTTED,
  /** Long dashes: limits. */
  LONG,
  /** Dash, dot, dot: fourth series. */
  DOUBLE_CHAIN;

  /**
   * Returns the lengths of strokes and gaps.
   *
   * @return sheet units, stroke first; empty for an unbroken line
   */
  public List<Double> pattern() {
    return switch (this) {
      case SOLID -> List.of();
      case DASHED -> List.of(6.0, 3.5);
      case CHAIN -> List.of(11.0, 3.0, 1.5, 3.0);
      case DOTTED -> List.of(1.5, 3.0);
      case LONG -> List.of(13.0, 5.0);
      case DOUBLE_CHAIN -> List.of(9.0, 3.0, 1.5, 3.0, 1.5, 3.0);
    };
  }
}
