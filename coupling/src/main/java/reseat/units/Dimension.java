package reseat.units;

/**
 * Integer exponents of the base dimensions.
 *
 * <p>Plane angle is counted as a dimension of its own, so that a turning stiffness (N·m/rad) is not
 * taken for a torque.
 *
 * @param length exponent of length
 * @param mass exponent of mass
 * @param time exponent of time
 * @param temperature exponent of temperature
 * @param angle exponent of plane angle
 */
public record Dimension(int length, int mass, int time, int temperature, int angle) {

  /** A pure number. */
  public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0);

  /** Length. */
  public static final Dimension LENGTH = new Dimension(1, 0, 0, 0, 0);

  /** Mass. */
  public static final Dimension MASS = new Dimension(0, 1, 0, 0, 0);

  /** Time. */
  public static final Dimension TIME = new Dimension(0, 0, 1, 0, 0);

  /** Temperature. */
  public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 1, 0);

  /** Plane angle. */
  public static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 1);

  /** Force. */
  public static final Dimension FORCE = new Dimension(1, 1, -2, 0, 0);

  /** Pressure, stress and modulus. */
  public static final Dimension PRESSURE = new Dimension(-1, 1, -2, 0, 0);

  /**
   * Returns the dimension of a product.
   *
   * @param other the other factor
   * @return sum of exponents
   */
  public Dimension times(Dimension other) {
    return new Dimension(
        length + other.length,
        mass + other.mass,
        time + other.time,
        temperature + other.temperature,
        angle + other.angle);
  }

  /**
   * Returns the dimension of a quotient.
   *
   * @param other the divisor
   * @return difference of exponents
   */
  public Dimension per(Dimension other) {
    return times(other.power(-1));
  }

  /**
   * Returns the dimension of a power.
   *
   * @param exponent the power
   * @return exponents times the power
   */
  public Dimension power(int exponent) {
    return new Dimension(
        length * exponent,
        mass * exponent,
        time * exponent,
        temperature * exponent,
        angle * exponent);
  }

  /**
   * Writes the dimension in SI base units, for messages about quantities without a trade word.
   *
   * @return for instance {@code m^2·kg/s^2}; {@code 1} for a pure number
   */
  public String formula() {
    StringBuilder above = new StringBuilder();
    StringBuilder below = new StringBuilder();
    String[] symbols = {"m", "kg", "s", "K", "rad"};
    int[] exponents = {length, mass, time, temperature, angle};
    for (int i = 0; i < symbols.length; i++) {
      if (exponents[i] > 0) {
        above.append(above.isEmpty() ? "" : "·").append(symbols[i]);
        above.append(exponents[i] == 1 ? "" : "^" + exponents[i]);
      } else if (exponents[i] < 0) {
        below.append('/').append(symbols[i]);
        below.append(exponents[i] == -1 ? "" : "^" + -exponents[i]);
      }
    }
    return (above.isEmpty() ? "1" : above.toString()) + below;
  }

  // Written out: what the compiler generates for records costs milliseconds at the first call.
  @Override
  public boolean equals(Object object) {
    return object instanceof Dimension other
        && length == other.length
        && mass == other.mass
        && time == other.time
        && temperature == other.temperature
        && angle == other.angle;
  }

  @Override
  public int hashCode() {
    return (((length * 31 + mass) * 31 + time) * 31 + temperature) * 31 + angle;
  }
}
