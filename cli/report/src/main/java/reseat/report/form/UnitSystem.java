package reseat.report.form;

/** The unit system that a screen, page or paper is printed in. */
public enum UnitSystem {
  /** Millimetres, newtons, pascals. */
  METRIC,
  /** Inches, pounds-force, pounds per square inch. */
  INCH,
  /** Metric, and the inch value in brackets. */
  BOTH
}
