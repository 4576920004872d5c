package reseat.plots.drawing;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The scale of a drawing on paper: one of the round ones of ISO 5455 (recalled from memory), or
 * 1:2.5 between two of them.
 *
 * @param ratio length on paper over true length
 */
record PaperScale(double ratio) {

  /** Sheet units for a metre of paper: a sheet unit is 1/96 inch. */
  static final double UNITS_PER_METRE = 96 / 0.0254;

  private static final double[] ROUND = {20, 10, 5, 2, 1, 0.5, 0.4, 0.2, 0.1, 0.05, 0.02};

  /**
   * The largest round scale at which a thing fits.
   *
   * @param width its width, m
   * @param height its height, m
   * @param roomWidth room on the sheet, sheet units
   * @param roomHeight room on the sheet, sheet units
   * @return the scale; the smallest there is if none fits
   */
  static PaperScale fitting(double width, double height, double roomWidth, double roomHeight) {
    for (double ratio : ROUND) {
      double units = ratio * UNITS_PER_METRE;
      if (width * units <= roomWidth && height * units <= roomHeight) {
        return new PaperScale(ratio);
      }
    }
    return new PaperScale(ROUND[ROUND.length - 1]);
  }

  /** Sheet units for a metre of the true thing. */
  double unitsPerMetre() {
    return ratio * UNITS_PER_METRE;
  }

  /** For instance {@code 2:1}. */
  String words() {
    return ratio >= 1 ? plain(ratio) + ":1" : "1:" + plain(1 / ratio);
  }

  private static String plain(double number) {
    return new BigDecimal(number).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
