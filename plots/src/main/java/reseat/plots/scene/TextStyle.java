package reseat.plots.scene;

import reseat.units.PrintedNumber;

/**
 * How words are set.
 *
 * @param size font size, sheet units
 * @param bold whether bold
 * @param tone colour
 */
public record TextStyle(double size, boolean bold, Tone tone) {

  /** Labels in drawings, and keys. */
  public static final TextStyle LABEL = new TextStyle(12, false, Tone.INK);

  /** Dimensions and numbers along axes. */
  public static final TextStyle SMALL = new TextStyle(11, false, Tone.INK);

  /** Remarks. */
  public static final TextStyle NOTE = new TextStyle(11, false, Tone.MUTED);

  /** Headings of panels. */
  public static final TextStyle HEADING = new TextStyle(13, true, Tone.INK);

  /** Refuses letters too small to read. */
  public TextStyle {
    if (!(size >= 6 && size <= 60)) {
      throw new IllegalArgumentException(
          "font size must lie between 6 and 60, found " + PrintedNumber.shortest(size));
    }
  }

  /**
   * Returns the style in another colour.
   *
   * @param other colour
   * @return the changed copy
   */
  public TextStyle in(Tone other) {
    return new TextStyle(size, bold, other);
  }

  /**
   * Returns the distance from one line to the next.
   *
   * @return sheet units
   */
  public double lineHeight() {
    return 1.3 * size;
  }
}
