package reseat.plots.scene;

import java.util.Locale;
import reseat.units.FilledText;

/**
 * A colour by its part in the picture, with one value for light and one for dark surroundings.
 *
 * <p>The hues follow Okabe and Ito, "Color Universal Design" (values recalled from memory); those
 * for dark surroundings are lighter mixes of the same hues, chosen by eye.
 */
public enum Tone {
  /** Words and outlines of parts. */
  INK(0x1B1B1B, 0xEDEDED),
  /** Words and lines of second rank: dimensions, centre lines. */
  MUTED(0x595959, 0xB8B8B8),
  /** Grid and hatching. */
  FAINT(0xBDBDBD, 0x5A5F66),
  /** The sheet itself. */
  PAPER(0xFFFFFF, 0x15181C),
  /** First series. */
  BLUE(0x0072B2, 0x5DB3E8),
  /** Limits, and what is beyond them. */
  VERMILLION(0xC04F00, 0xFF8F57),
  /** What is allowed. */
  GREEN(0x00805F, 0x3CC9A0),
  /** Third series. */
  PURPLE(0xA3527C, 0xE3A0C6),
  /** Fourth series. */
  ORANGE(0xA86F00, 0xF0B341),
  /** Fifth series. */
  SKY(0x2F86B5, 0x8CCBF2);

  private final int light;
  private final int dark;

  Tone(int light, int dark) {
    this.light = light;
    this.dark = dark;
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

  /**
   * Returns the colour on a dark page as CSS writes it.
   *
   * @return for instance {@code #5db3e8}
   */
  public String darkHex() {
    return FilledText.of("#%06x", dark);
  }

  /**
   * Returns the name of the CSS variable that carries this tone.
   *
   * @return for instance {@code --picture-blue}
   */
  public String cssVariable() {
    return "--picture-" + name().toLowerCase(Locale.ROOT);
  }
}
