package reseat.plots.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import reseat.elementary.Elementary;
import reseat.making.MadeDimension;
import reseat.units.QuantityFormat;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * Figures as a shop writes them, the user's unit first and the other in brackets: millimetres to
 * three decimals, inches to four, degrees to two with the minutes beside them (common practice, no
 * source). A tolerance has two figures and is cut, never rounded up: the drawing must not allow
 * more than the design.
 *
 * @param inchFirst whether inches come first
 */
public record ShopFigures(boolean inchFirst) {

  private static final int MM = 3;
  private static final int INCH = 4;

  /**
   * Writes a length without its unit.
   *
   * @param metres m
   * @return for instance {@code 12.700 (0.5000)}
   */
  public String length(double metres) {
    return first(metres) + " (" + second(metres) + ")";
  }

  /**
   * Writes a length with its tolerance.
   *
   * @param metres m
   * @param tolerance to either side, m; infinite if not stated
   * @return for instance {@code 12.700 ±0.008 (0.5000 ±0.00031)}
   */
  public String length(double metres, double tolerance) {
    return Double.isFinite(tolerance)
        ? first(metres, tolerance) + " (" + second(metres, tolerance) + ")"
        : length(metres);
  }

  /**
   * Writes a length in the first unit.
   *
   * @param metres m
   * @return for instance {@code 12.700}
   */
  public String first(double metres) {
    return inchFirst ? inch(metres) : millimetres(metres);
  }

  /**
   * Writes a length in the second unit.
   *
   * @param metres m
   * @return for instance {@code 0.5000}
   */
  public String second(double metres) {
    return inchFirst ? millimetres(metres) : inch(metres);
  }

  String first(double metres, double tolerance) {
    return first(metres) + plusMinus(tolerance, inchFirst);
  }

  String second(double metres, double tolerance) {
    return second(metres) + plusMinus(tolerance, !inchFirst);
  }

  private static String plusMinus(double tolerance, boolean inch) {
    return Double.isFinite(tolerance) ? " \u00b1" + cut(tolerance, inch) : "";
  }

  /**
   * Writes a tolerance of a length by itself.
   *
   * @param tolerance to either side, m; infinite if not stated
   * @return for instance {@code ±0.008 (0.00031)}, or a dash
   */
  public String tolerance(double tolerance) {
    return Double.isFinite(tolerance)
        ? "\u00b1" + cut(tolerance, inchFirst) + " (" + cut(tolerance, !inchFirst) + ")"
        : "\u2013";
  }

  /**
   * Writes an angle.
   *
   * @param rad rad
   * @return for instance {@code 30.96° (30°58')}
   */
  public static String angle(double rad) {
    return degrees(rad) + " (" + QuantityFormat.degreesMinutes(rad) + ")";
  }

  /**
   * Writes a tolerance of an angle by itself.
   *
   * @param tolerance to either side, rad; infinite if not stated
   * @return for instance {@code ±0.16° (10')}, or a dash
   */
  public static String angleTolerance(double tolerance) {
    return Double.isFinite(tolerance)
        ? "\u00b1"
            + cut(tolerance, UnitCatalog.DEGREE, 2)
            + "\u00b0 ("
            + cut(tolerance, UnitCatalog.ARC_MINUTE, 0)
            + "')"
        : "\u2013";
  }

  /**
   * Writes a size with its tolerance.
   *
   * @param d the size
   * @return for instance {@code mouth width 10.490 (0.4130)}
   */
  public String sized(MadeDimension d) {
    String part = d.part().isEmpty() ? "" : d.part() + " ";
    String words = part + d.kind().words() + " ";
    if (d.kind() == MadeDimension.Kind.FLANK_POSITION) {
      return words + tolerance(d.tolerance());
    }
    if (!d.kind().isAngle()) {
      return words + length(d.value(), d.tolerance());
    }
    String angle = words + angle(d.value());
    return d.isToleranced() ? angle + " " + angleTolerance(d.tolerance()) : angle;
  }

  static String degrees(double rad) {
    return QuantityFormat.fixed(rad, UnitCatalog.DEGREE, 2);
  }

  /** Words for the units, for a heading: first and second. */
  String units() {
    return inchFirst ? "inches (millimetres)" : "millimetres (inches)";
  }

  private static String millimetres(double metres) {
    return unsigned(QuantityFormat.fixedNumber(clean(metres), UnitCatalog.MM, MM));
  }

  private static String inch(double metres) {
    return unsigned(QuantityFormat.fixedNumber(clean(metres), UnitCatalog.INCH, INCH));
  }

  /** Without the dust of binary fractions, which would round equal sizes differently. */
  private static double clean(double metres) {
    return Elementary.rint(metres * 1e12) / 1e12;
  }

  /** Nothing has no sign. */
  private static String unsigned(String number) {
    boolean nothing = number.startsWith("-") && number.matches("-[0.]*");
    return nothing ? number.substring(1) : number;
  }

  private static String cut(double metres, boolean inch) {
    return cut(metres, inch ? UnitCatalog.INCH : UnitCatalog.MM, inch ? INCH : MM);
  }

  /**
   * Writes a tolerance to two figures, cut: never more than it is.
   *
   * @param si the tolerance, SI, finite
   * @param unit unit to write
   * @param decimals decimals that it has at least; at most two more
   * @return for instance {@code 0.0032}
   */
  public static String cut(double si, Unit unit, int decimals) {
    // dust of binary fractions first, so that 0.003 does not become 0.0029
    BigDecimal number =
        new BigDecimal(si / unit.toSi(1)).round(new MathContext(9, RoundingMode.HALF_UP));
    BigDecimal figures = number.round(new MathContext(2, RoundingMode.DOWN));
    int finest = Math.min(figures.scale(), decimals + 2);
    BigDecimal cut = figures.setScale(Math.max(finest, 0), RoundingMode.DOWN);
    BigDecimal plain = cut.signum() == 0 ? BigDecimal.ZERO : cut.stripTrailingZeros();
    return plain.setScale(Math.max(decimals, plain.scale())).toPlainString();
  }
}
