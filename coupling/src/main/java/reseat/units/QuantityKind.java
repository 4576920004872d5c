package reseat.units;

/**
 * What a place in a file or on the command line expects: a dimension, the trade's word for it and
 * the units to offer.
 *
 * <p>Two kinds may share a dimension: a temperature on the thermometer and a temperature difference
 * are read differently.
 */
// A record of five ints and an array that never leaves the constant: the checker cannot see it.
@SuppressWarnings("ImmutableEnumChecker")
public enum QuantityKind {
  /** Length, m. */
  LENGTH("a length", Dimension.LENGTH, "mm", "in", "um", "uin", "thou", "tenth"),
  /** Area, m². */
  AREA("an area", Dimension.LENGTH.power(2), "mm^2", "in^2"),
  /** Plane angle, rad. */
  ANGLE("an angle", Dimension.ANGLE, "deg", "arcmin", "arcsec", "mrad", "urad"),
  /** Force, N. */
  FORCE("a force", Dimension.FORCE, "N", "lbf", "kN", "kgf", "ozf"),
  /** Moment of a force, N·m. */
  TORQUE("a torque", Dimension.FORCE.times(Dimension.LENGTH), "N·m", "in·lbf", "ft·lbf", "in·oz"),
  /** Pressure, stress or elastic modulus, Pa. */
  PRESSURE("a pressure, stress or modulus", Dimension.PRESSURE, "GPa", "MPa", "ksi", "Mpsi", "psi"),
  /** Stiffness, N/m. */
  STIFFNESS("a stiffness", Dimension.FORCE.per(Dimension.LENGTH), "N/um", "lbf/in", "N/mm"),
  /** Turning stiffness, N·m/rad. */
  TURNING_STIFFNESS(
      "a turning stiffness",
      Dimension.FORCE.times(Dimension.LENGTH).per(Dimension.ANGLE),
      "N·m/rad",
      "N·m/mrad",
      "in·lbf/deg"),
  /** Mass, kg. */
  MASS("a mass", Dimension.MASS, "kg", "lb", "g"),
  /** Mass per volume, kg/m³. */
  DENSITY(
      "a density", Dimension.MASS.per(Dimension.LENGTH.power(3)), "kg/m^3", "g/cm^3", "lb/in^3"),
  /** Moment of inertia, kg·m². */
  INERTIA(
      "a moment of inertia",
      Dimension.MASS.times(Dimension.LENGTH.power(2)),
      "kg·m^2",
      "kg·mm^2",
      "lb·in^2"),
  /** Temperature on the thermometer, K. */
  TEMPERATURE("a temperature", Dimension.TEMPERATURE, "°C", "°F", "K"),
  /** Difference of two temperatures, K. */
  TEMPERATURE_DIFFERENCE("a temperature difference", Dimension.TEMPERATURE, "K", "mK"),
  /** Thermal expansion, 1/K. */
  EXPANSION("a thermal expansion", Dimension.TEMPERATURE.power(-1), "um/m/K", "ppm/K", "uin/in/°F"),
  /** A share or ratio, a pure number. */
  RATIO("a ratio", Dimension.NONE, "%", "ppm"),
  /** Time, s. */
  TIME("a time", Dimension.TIME, "s", "min", "h"),
  /** Frequency, Hz. */
  FREQUENCY("a frequency", Dimension.TIME.power(-1), "Hz", "kHz"),
  /** Speed, m/s. */
  VELOCITY("a speed", Dimension.LENGTH.per(Dimension.TIME), "m/s", "mm/s", "m/min", "in/min"),
  /** Acceleration, m/s². */
  ACCELERATION(
      "an acceleration", Dimension.LENGTH.per(Dimension.TIME.power(2)), "m/s^2", "g", "mm/s^2");

  private final String words;
  private final Dimension dimension;
  private final String[] units;

  QuantityKind(String words, Dimension dimension, String... units) {
    this.words = words;
    this.dimension = dimension;
    this.units = units;
  }

  /**
   * Returns the trade's word with its article.
   *
   * @return for instance {@code a force}
   */
  public String words() {
    return words;
  }

  /**
   * Returns the dimension.
   *
   * @return exponents
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * Says what may stand here, for messages.
   *
   * @return for instance {@code a force in N, lbf, kN, kgf or ozf}
   */
  public String allowed() {
    StringBuilder text = new StringBuilder(words).append(" in ");
    for (int i = 0; i < units.length; i++) {
      text.append(i == 0 ? "" : i == units.length - 1 ? " or " : ", ");
      text.append(UnitCatalog.explained(units[i]));
    }
    return this == ANGLE ? text.append(", or as 44 deg 30 min").toString() : text.toString();
  }

  /**
   * Offers a number with the units people mean most often.
   *
   * @param number the number as typed
   * @return for instance {@code "12.7 mm" or "12.7 in"}
   */
  String offer(String number) {
    String first = '"' + number + ' ' + units[0] + '"';
    return this == ANGLE ? first : first + " or \"" + number + ' ' + units[1] + '"';
  }

  /**
   * Names a dimension in trade words.
   *
   * @param dimension exponents
   * @return for instance {@code a torque}, or the formula in SI base units
   */
  static String wordsFor(Dimension dimension) {
    for (QuantityKind kind : values()) {
      if (kind.dimension.equals(dimension)) {
        return kind == RATIO ? "a pure number" : kind.words;
      }
    }
    return "a quantity in " + dimension.formula();
  }
}
