package reseat.plots.drawing;

import reseat.plots.NumberText;

/** The unit system of the words in a drawing. */
public enum DrawingUnits {
  /** Millimetres and newtons. */
  METRIC,
  /** Inches and pounds-force. */
  INCH,
  /** Metric, and dimensions of parts in inches beside it. */
  BOTH;

  /** One inch, m. */
  private static final double INCH_LENGTH = 0.0254;

  /** One pound-force, N. */
  private static final double POUND = 4.4482216152605;

  /** One thousand pounds-force per square inch, Pa. */
  private static final double KSI = 1e3 * POUND / (INCH_LENGTH * INCH_LENGTH);

  /** Whether words are in inches alone. */
  boolean inch() {
    return this == INCH;
  }

  /**
   * Writes a dimension of a part.
   *
   * @param metres m
   * @return for instance {@code 69.85 mm}; in inches by four decimals
   */
  String dimension(double metres) {
    return switch (this) {
      case METRIC -> NumberText.with(1e3 * metres, 5, "mm");
      case INCH -> NumberText.decimals(metres / INCH_LENGTH, 4) + "\u00a0in";
      case BOTH -> NumberText.length(metres);
    };
  }

  /** Writes a dimension beside a name, where there is room for one system. */
  String briefly(double metres) {
    return this == BOTH ? METRIC.dimension(metres) : dimension(metres);
  }

  /**
   * Writes a length that is no dimension of a part.
   *
   * @param metres m
   * @param digits significant digits
   * @return number and unit
   */
  String length(double metres, int digits) {
    return inch()
        ? NumberText.with(metres / INCH_LENGTH, digits, "in")
        : NumberText.with(1e3 * metres, digits, "mm");
  }

  /** The number of {@link #length} alone. */
  String number(double metres, int digits) {
    return NumberText.significant(inch() ? metres / INCH_LENGTH : 1e3 * metres, digits);
  }

  /** Symbol of the unit of {@link #length}. */
  String lengthUnit() {
    return inch() ? "in" : "mm";
  }

  /**
   * Writes a force.
   *
   * @param newtons N
   * @return three significant digits with the unit
   */
  String force(double newtons) {
    return inch() ? NumberText.with(newtons / POUND, 3, "lbf") : NumberText.force(newtons);
  }

  /** A force as a number in the unit of {@link #forceUnit}. */
  double forceIn(double newtons) {
    return inch() ? newtons / POUND : newtons;
  }

  /** One unit of force, N. */
  double oneForce() {
    return inch() ? POUND : 1;
  }

  /** Symbol of the unit of force. */
  String forceUnit() {
    return inch() ? "lbf" : "N";
  }

  /** A moment as a number in the unit of {@link #momentUnit}. */
  double momentIn(double newtonMetres) {
    return inch() ? newtonMetres / (POUND * INCH_LENGTH) : newtonMetres;
  }

  /** Symbol of the unit of a moment. */
  String momentUnit() {
    return inch() ? "lbf\u00b7in" : "N\u00b7m";
  }

  /**
   * Writes a pressure in a contact.
   *
   * @param pascals Pa
   * @return three significant digits with the unit
   */
  String pressure(double pascals) {
    return inch()
        ? NumberText.with(pascals / KSI, 3, "ksi")
        : pascals < 1e8
            ? NumberText.with(1e-6 * pascals, 3, "MPa")
            : NumberText.with(1e-9 * pascals, 3, "GPa");
  }

  /**
   * Writes an area.
   *
   * @param squareMetres m²
   * @return three significant digits with the unit
   */
  String area(double squareMetres) {
    return inch()
        ? NumberText.with(squareMetres / (INCH_LENGTH * INCH_LENGTH), 3, "in\u00b2")
        : NumberText.with(1e6 * squareMetres, 3, "mm\u00b2");
  }

  /**
   * Writes how far something gives under a force.
   *
   * @param metresPerNewton m/N
   * @return three significant digits with the unit
   */
  String give(double metresPerNewton) {
    return inch()
        ? NumberText.with(metresPerNewton * POUND / (1e-6 * INCH_LENGTH), 3, "\u00b5in/lbf")
        : NumberText.with(1e9 * metresPerNewton, 3, "nm/N");
  }
}
