package reseat.check;

import reseat.units.QuantityKind;

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
  MASS("kg"),
  /** An area, m². */
  AREA("m^2"),
  /** A thermal expansion, 1/K. */
  EXPANSION("1/K"),
  /** A temperature difference, K. */
  TEMPERATURE("K");

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

  /**
   * Says whether it measures a pure number.
   *
   * @return true for factors, shares and counts
   */
  public boolean isPureNumber() {
    return symbol.equals("1");
  }

  /**
   * Finds what a quantity of a design file measures.
   *
   * @param kind kind of quantity
   * @return its measure; that of a plain factor for kinds that no finding speaks of
   */
  public static Measure of(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> LENGTH;
      case AREA -> AREA;
      case ANGLE -> ANGLE;
      case FORCE -> FORCE;
      case TORQUE -> TORQUE;
      case PRESSURE -> PRESSURE;
      case STIFFNESS -> STIFFNESS;
      case MASS -> MASS;
      case EXPANSION -> EXPANSION;
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> TEMPERATURE;
      case RATIO -> SHARE;
      case TURNING_STIFFNESS, DENSITY, INERTIA, TIME, FREQUENCY, VELOCITY, ACCELERATION -> FACTOR;
    };
  }
}
