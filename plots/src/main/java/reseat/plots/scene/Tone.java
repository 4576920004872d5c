package reseat.plots.scene;

import reseat.units.FilledText;

/**
 * A colour by its part in the picture, on a white sheet.
 *
 * <p>The hues follow Okabe and Ito, "Color Universal Design" (values recalled from memory).
 */
public enum Tone {
  /** Words and outlines of parts. */
  INK(0x1B1B1B),
  /** Words and lines of second rank: dimensions, centre lines. */
  MUTED(0x595959),
  /** Grid and hatching. */
  FAINT(0xBDBDBD),
  /** The sheet itself. */
  PAPER(0xFFFFFF),
  /** First series. */
  BLUE(0x0072B2),
  /** Limits, and what is beyond them. */
  VERMILLION(0xC04F00),
  /** What is allowed. */
  GREEN(0x00805F),
  /** Third series. */
  PURPLE(0xA3527C),
  /** Fourth series. */
  ORANGE(0xA86F00),
  /** Fifth series. */
  SKY(0x2F86B5);

  private final int light;

  Tone(int light) {
    this.light = light;
  }

  /**
   * Returns the colour on a white sheet.
   *
   * @return red, green, blue in 24 bits
   */
  public int rgb() {
    return light;
  }

  /**
   * Returns the colour on a white sheet as CSS writes it.
   *
   * @return for instance {@code #0072b2}
   */
  public String lightHex() {
    return FilledText.of("#%06x", light);
  }
}
