package reseat.report.fullreport;

import reseat.check.Measure;
import reseat.report.form.FigureText;
import reseat.report.form.UnitSystem;
import reseat.space.Vec3;
import reseat.units.QuantityFormat;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * Numbers of a report's tables in the units that were asked for; in both systems the inch value
 * stands in brackets.
 *
 * @param text how values with their units are written
 */
record PageFigures(FigureText text) {

  /** A motion below is told as nothing: no surface is known so well, m. */
  private static final double NOTHING = 0.5e-9;

  /** The unit of small lengths, for the head of a column. */
  String smallUnit() {
    return pair("µm", "µin");
  }

  /** A small length by two figures, without its unit. */
  String small(double metres) {
    return pair(two(metres, UnitCatalog.UM), two(metres, UnitCatalog.UIN));
  }

  /** A small length by two figures, with its unit. */
  String smallWithUnit(double metres) {
    return pair(two(metres, UnitCatalog.UM) + " µm", two(metres, UnitCatalog.UIN) + " µin");
  }

  /** Three small lengths along the machine axes. */
  String triple(Vec3 v) {
    return pair(triple(v, UnitCatalog.UM), triple(v, UnitCatalog.UIN));
  }

  private static String triple(Vec3 v, Unit unit) {
    return two(v.x(), unit) + ", " + two(v.y(), unit) + ", " + two(v.z(), unit);
  }

  private static String two(double metres, Unit unit) {
    return Math.abs(metres) < NOTHING ? "0" : QuantityFormat.significantNumber(metres, unit, 2);
  }

  /** Axes of a patch, both across, in one unit. */
  String patch(double first, double second) {
    return pair(
        sides(first, second, UnitCatalog.MM) + " mm",
        sides(first, second, UnitCatalog.INCH) + " in");
  }

  private static String sides(double first, double second, Unit unit) {
    return QuantityFormat.significantNumber(first, unit, 2)
        + " × "
        + QuantityFormat.significantNumber(second, unit, 2);
  }

  /** A point in the coupling frame. */
  String point(Vec3 p) {
    return pair(point(p, UnitCatalog.MM, 2), point(p, UnitCatalog.INCH, 4));
  }

  private static String point(Vec3 p, Unit unit, int decimals) {
    return coordinate(p.x(), unit, decimals)
        + ", "
        + coordinate(p.y(), unit, decimals)
        + ", "
        + coordinate(p.z(), unit, decimals)
        + " "
        + unit.symbol();
  }

  private static String coordinate(double metres, Unit unit, int decimals) {
    return QuantityFormat.fixedNumber(Math.abs(metres) < 5e-7 ? 0 : metres, unit, decimals);
  }

  String force(double newtons) {
    return text.of(Measure.FORCE, newtons);
  }

  String length(double metres) {
    return text.dimension(metres);
  }

  String pressure(double pascals) {
    return text.of(Measure.PRESSURE, pascals);
  }

  String stiffness(double newtonsPerMetre) {
    return text.of(Measure.STIFFNESS, newtonsPerMetre);
  }

  private String pair(String metric, String inch) {
    return text.system() == UnitSystem.INCH
        ? inch
        : text.system() == UnitSystem.METRIC ? metric : metric + " (" + inch + ")";
  }
}
