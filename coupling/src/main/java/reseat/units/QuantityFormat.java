package reseat.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes SI values for people: a decimal point whatever the locale, never an exponent for common
 * sizes, both unit systems side by side.
 *
 * <p>Decimals follow the shop: inch to 4, millimetre to 3, micrometre to 2, microinch to 0,
 * pound-force to 0, newton to 3 figures, degrees to 0.01 with the minutes beside it. Common
 * practice, no source.
 */
public final class QuantityFormat {

  /** Below this a length is written in µm and µin, m. */
  private static final double SMALL_LENGTH = 0.1e-3;

  /** Below this a length in µm has two figures in place of two decimals, m. */
  private static final double TINY_LENGTH = 0.095e-6;

  /** Below this a length is written as nothing, m. */
  private static final double NOTHING = 1e-9;

  private QuantityFormat() {}

  /**
   * Writes a value with a fixed number of decimals.
   *
   * @param si SI value; infinite gives {@code ∞}
   * @param unit unit to write
   * @param decimals digits after the point
   * @return for instance {@code 12.700 mm}
   */
  public static String fixed(double si, Unit unit, int decimals) {
    return joined(fixedNumber(si, unit, decimals), unit);
  }

  /**
   * Writes a value with a fixed number of decimals that must not be more, or not be less.
   *
   * @param si SI value, finite
   * @param unit unit to write
   * @param decimals digits after the point
   * @param upward true to round up, false to round down; what is a whole digit but for the error of
   *     a double, to six further digits, stays that digit
   * @return for instance {@code 12.700 mm}
   */
  public static String bounded(double si, Unit unit, int decimals, boolean upward) {
    BigDecimal exact = unit.decimalFromSi(si).setScale(decimals + 6, RoundingMode.HALF_UP);
    RoundingMode mode = upward ? RoundingMode.CEILING : RoundingMode.FLOOR;
    return joined(exact.setScale(decimals, mode).toPlainString(), unit);
  }

  /**
   * Writes the number of {@link #fixed} without its unit, for tables.
   *
   * @param si SI value; infinite gives {@code ∞}
   * @param unit unit to write
   * @param decimals digits after the point
   * @return for instance {@code 12.700}
   */
  public static String fixedNumber(double si, Unit unit, int decimals) {
    if (!Double.isFinite(si)) {
      return infinite(si);
    }
    BigDecimal rounded = unit.decimalFromSi(si).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.toPlainString();
  }

  /**
   * Writes a value rounded to significant figures; trailing zeros are kept.
   *
   * @param si SI value; infinite gives {@code ∞}
   * @param unit unit to write
   * @param figures significant figures, at least 1
   * @return for instance {@code 27.0 N/µm}
   */
  public static String significant(double si, Unit unit, int figures) {
    return joined(significantNumber(si, unit, figures), unit);
  }

  /**
   * Writes the number of {@link #significant} without its unit, for tables.
   *
   * @param si SI value; infinite gives {@code ∞}
   * @param unit unit to write
   * @param figures significant figures, at least 1
   * @return for instance {@code 27.0}; with an exponent only below 1e-6 or from 1e12
   */
  public static String significantNumber(double si, Unit unit, int figures) {
    if (!Double.isFinite(si)) {
      return infinite(si);
    }
    BigDecimal number = unit.decimalFromSi(si);
    if (number.signum() == 0) {
      return "0";
    }
    BigDecimal rounded = number.round(new MathContext(figures, RoundingMode.HALF_UP));
    int exponent = rounded.precision() - rounded.scale() - 1;
    if (exponent < -6 || exponent >= 12) {
      String digits =
          rounded
              .scaleByPowerOfTen(-exponent)
              .setScale(figures - 1, RoundingMode.HALF_UP)
              .toPlainString();
      return digits + 'e' + exponent;
    }
    return rounded
        .setScale(Math.max(0, figures - 1 - exponent), RoundingMode.HALF_UP)
        .toPlainString();
  }

  /**
   * Writes a value in the metric and the inch unit of the trade.
   *
   * @param si SI value
   * @param kind what it is
   * @return for instance {@code 12.700 mm (0.5000 in)}
   */
  public static String both(double si, QuantityKind kind) {
    String metric = metric(si, kind);
    String inch = inch(si, kind);
    return metric.equals(inch) ? metric : metric + " (" + inch + ')';
  }

  /**
   * Writes a value in the metric unit of the trade.
   *
   * @param si SI value
   * @param kind what it is
   * @return for instance {@code 5.08 µm}
   */
  public static String metric(double si, QuantityKind kind) {
    return switch (kind) {
      case LENGTH ->
          tiny(si)
              ? significant(si, UnitCatalog.UM, 2)
              : small(si) ? fixed(si, UnitCatalog.UM, 2) : fixed(si, UnitCatalog.MM, 3);
      case ANGLE ->
          Math.abs(si) < UnitCatalog.ARC_MINUTE.toSi(1)
              ? significant(si, UnitCatalog.URAD, 3)
              : fixed(si, UnitCatalog.DEGREE, 2);
      case PRESSURE ->
          Math.abs(si) < 1e9
              ? significant(si, UnitCatalog.MPA, 3)
              : significant(si, UnitCatalog.GPA, 3);
      case TEMPERATURE -> fixed(si, UnitCatalog.CELSIUS, 1);
      default -> significant(si, MetricAndInch.metric(kind), 3);
    };
  }

  /**
   * Writes a value in the inch unit of the trade; what has none stays metric.
   *
   * @param si SI value
   * @param kind what it is
   * @return for instance {@code 200 µin}
   */
  public static String inch(double si, QuantityKind kind) {
    return switch (kind) {
      case LENGTH ->
          tiny(si)
              ? significant(si, UnitCatalog.UIN, 2)
              : small(si) ? fixed(si, UnitCatalog.UIN, 0) : fixed(si, UnitCatalog.INCH, 4);
      case FORCE ->
          betweenTenAndThousand(si / UnitCatalog.LBF.toSi(1))
              ? fixed(si, UnitCatalog.LBF, 0)
              : significant(si, UnitCatalog.LBF, 3);
      case ANGLE ->
          Math.abs(si) < UnitCatalog.ARC_MINUTE.toSi(1)
              ? significant(si, UnitCatalog.ARC_SECOND, 3)
              : degreesMinutes(si);
      case TEMPERATURE -> fixed(si, MetricAndInch.inch(kind), 1);
      default -> significant(si, MetricAndInch.inch(kind), 3);
    };
  }

  /**
   * Writes an angle in degrees and whole minutes.
   *
   * @param radians the angle, rad
   * @return for instance {@code 44°30'}
   */
  public static String degreesMinutes(double radians) {
    if (!Double.isFinite(radians)) {
      return infinite(radians);
    }
    BigDecimal minutes =
        UnitCatalog.ARC_MINUTE.decimalFromSi(radians).setScale(0, RoundingMode.HALF_UP);
    BigDecimal[] parts = minutes.abs().divideAndRemainder(new BigDecimal(60));
    String sign = minutes.signum() < 0 ? "-" : "";
    String rest = parts[1].toPlainString();
    return sign + parts[0].toPlainString() + '°' + (rest.length() == 1 ? "0" : "") + rest + '\'';
  }

  private static boolean betweenTenAndThousand(double number) {
    return Math.abs(number) >= 10 && Math.abs(number) < 1000;
  }

  /** A length of which two decimals of a micrometre would leave one figure or none. */
  private static boolean tiny(double metres) {
    return Math.abs(metres) >= NOTHING && Math.abs(metres) < TINY_LENGTH;
  }

  private static boolean small(double metres) {
    return metres != 0 && Math.abs(metres) < SMALL_LENGTH;
  }

  private static String joined(String number, Unit unit) {
    boolean close = unit.symbol().equals("°") || unit.symbol().isEmpty();
    return close ? number + unit.symbol() : number + ' ' + unit.symbol();
  }

  private static String infinite(double value) {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("a quantity to be written must be a number, found NaN");
    }
    return value < 0 ? "-∞" : "∞";
  }
}
