package reseat.plots.chart;

/** The unit system of the axes and captions of a picture. */
public enum PictureUnits {
  /** Micrometres, millimetres, newtons. */
  METRIC,
  /** Microinches, inches, pounds-force. */
  INCH;

  /** One pound-force, N. */
  private static final double LBF = 4.4482216152605;

  /** One inch, m. */
  private static final double INCH_LENGTH = 0.0254;

  /**
   * Tells a quantity of the metric system in these units.
   *
   * @param metric the quantity as the charts know it
   * @return the same quantity in the unit that a shop of this system would take; unchanged if both
   *     systems share it
   */
  public AxisQuantity of(AxisQuantity metric) {
    if (this == METRIC) {
      return metric;
    }
    String name = metric.name();
    return switch (metric.unit()) {
      case "N" -> new AxisQuantity(name, "lbf", LBF);
      case "N\u00b7m" -> new AxisQuantity(name, "lbf\u00b7in", LBF * INCH_LENGTH);
      case "\u00b5m" -> new AxisQuantity(name, "\u00b5in", 1e-6 * INCH_LENGTH);
      case "mm" -> new AxisQuantity(name, "in", INCH_LENGTH);
      case "GPa" -> new AxisQuantity(name, "ksi", 1e3 * LBF / (INCH_LENGTH * INCH_LENGTH));
      case "MPa" -> new AxisQuantity(name, "psi", LBF / (INCH_LENGTH * INCH_LENGTH));
      case "N/\u00b5m" -> new AxisQuantity(name, "lbf/in", LBF / INCH_LENGTH);
      case "kg" -> new AxisQuantity(name, "lb", 0.45359237);
      default -> metric;
    };
  }
}
