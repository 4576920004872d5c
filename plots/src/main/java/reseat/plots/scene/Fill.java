package reseat.plots.scene;

import reseat.units.PrintedNumber;

/**
 * How an area is filled.
 *
 * @param tone colour
 * @param opacity 0 for empty to 1 for full
 */
public record Fill(Tone tone, double opacity) {

  /** Empty. */
  public static final Fill NONE = new Fill(Tone.PAPER, 0);

  /** The colour of the sheet, hiding what lies under it. */
  public static final Fill PAPER = new Fill(Tone.PAPER, 1);

  /** Refuses opacities outside 0 to 1. */
  public Fill {
    if (!(opacity >= 0 && opacity <= 1)) {
      throw new IllegalArgumentException(
          "opacity must lie between 0 and 1, found " + PrintedNumber.shortest(opacity));
    }
  }

  /**
   * Returns a full fill.
   *
   * @param tone colour
   * @return the fill
   */
  public static Fill full(Tone tone) {
    return new Fill(tone, 1);
  }

  /**
   * Says whether there is anything to draw.
   *
   * @return true if the opacity is not zero
   */
  public boolean visible() {
    return opacity > 0;
  }
}
