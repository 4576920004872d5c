package reseat.plots.scene;

import reseat.units.PrintedNumber;

/**
 * How a line is drawn.
 *
 * @param tone colour
 * @param width width, sheet units; zero for no line
 * @param dash how it is broken
 */
public record LineStyle(Tone tone, double width, Dash dash) {

  /** No line. */
  public static final LineStyle NONE = new LineStyle(Tone.INK, 0, Dash.SOLID);

  /** Outlines of parts: the wide line of an engineering drawing. */
  public static final LineStyle OUTLINE = new LineStyle(Tone.INK, 1.4, Dash.SOLID);

  /** Dimension, leader and projection lines: the narrow line. */
  public static final LineStyle THIN = new LineStyle(Tone.MUTED, 0.7, Dash.SOLID);

  /** Centre lines. */
  public static final LineStyle CENTRE = new LineStyle(Tone.MUTED, 0.7, Dash.CHAIN);

  /** Hatching of cut material. */
  public static final LineStyle HATCH = new LineStyle(Tone.FAINT, 0.7, Dash.SOLID);

  /** Limits. */
  public static final LineStyle LIMIT = new LineStyle(Tone.VERMILLION, 1.4, Dash.LONG);

  /** Refuses negative widths. */
  public LineStyle {
    if (!(width >= 0) || Double.isInfinite(width)) {
      throw new IllegalArgumentException(
          "line width must not be negative, found " + PrintedNumber.shortest(width));
    }
  }

  /**
   * Returns an unbroken line.
   *
   * @param tone colour
   * @param width width, sheet units
   * @return the style
   */
  public static LineStyle solid(Tone tone, double width) {
    return new LineStyle(tone, width, Dash.SOLID);
  }

  /**
   * Says whether there is anything to draw.
   *
   * @return true if the width is not zero
   */
  public boolean visible() {
    return width > 0;
  }
}
