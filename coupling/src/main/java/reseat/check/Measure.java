package reseat.check;

/** What numbers of findings measure, and the SI unit that they stand in. */
public enum Measure {
  /** A plain factor, such as 1.5 times. */
  FACTOR("1"),
  /** A part of a whole. */
  SHARE("1"),
  /** A number of things. */
  COUNT("1"),
  /** A length, m. */
  LENGTH("m"),
  /** A force, N. */
  FORCE("N"),
  /** A pressure, Pa. */
  PRESSURE("Pa"),
  /** An angle, rad. */
  ANGLE("rad"),
  /** A stiffness, N/m. */
  STIFFNESS("N/m"),
  /** A torque, N m. */
  TORQUE("N m"),
  /** A mass, kg. */
  MASS("kg");

  private final String symbol;

  Measure(String symbol) {
    this.symbol = symbol;
  }

  /**
   * Returns the SI unit.
   *
   * @return symbol; {@code 1} for a pure number
   */
  public String symbol() {
    return symbol;
  }
}
