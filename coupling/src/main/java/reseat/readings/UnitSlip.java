package reseat.readings;

import java.util.Optional;

/** A slip of units that would explain why one reading is far from the others. */
public enum UnitSlip {
  /** Millimetres where micrometres belong, or the other way round. */
  THOUSAND(1000, "mm and µm taken for one another"),
  /** Inches where millimetres belong, or microinches for thousandths of a millimetre. */
  INCH(25.4, "inch and metric taken for one another"),
  /** A decimal point one place to the left or right. */
  TEN(10, "a decimal point one place off");

  private static final double NEAR = 0.05;
  private static final double FAR = 0.2;

  private final double factor;
  private final String words;

  UnitSlip(double factor, String words) {
    this.factor = factor;
    this.words = words;
  }

  /**
   * Looks for a slip.
   *
   * @param reading the reading that stands out
   * @param usual what the others read, their median
   * @param scatter standard deviation of the others
   * @return the slip whose factor, up or down, is within 5 % of the ratio of the two, or within
   *     twice the scatter but not more than 20 %
   */
  public static Optional<UnitSlip> between(double reading, double usual, double scatter) {
    if (reading == 0 || usual == 0) {
      return Optional.empty();
    }
    double ratio = reading / usual;
    double near = Math.max(NEAR, Math.min(FAR, 2 * scatter / Math.abs(usual)));
    for (UnitSlip slip : values()) {
      boolean up = Math.abs(ratio / slip.factor - 1) < near;
      boolean down = Math.abs(ratio * slip.factor - 1) < near;
      if (up || down) {
        return Optional.of(slip);
      }
    }
    return Optional.empty();
  }

  /**
   * Returns the slip in words.
   *
   * @return a clause
   */
  public String words() {
    return words;
  }
}
