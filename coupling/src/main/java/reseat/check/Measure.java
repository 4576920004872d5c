package reseat.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import reseat.elementary.Elementary;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** What the value and the limit of a finding measure: their SI unit, and how people read them. */
public enum Measure {
  /** A plain factor, such as 1.5 times. */
  FACTOR("1"),
  /** A part of a whole, read in percent. */
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
  STIFFNESS("N/m");

  /**
   * A value to be read by people.
   *
   * @param measure what it measures
   * @param si value in SI
   */
  public record Amount(Measure measure, double si) {

    @Override
    public String toString() {
      return measure.show(si);
    }
  }

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
   * Writes a value for people.
   *
   * @param si value in SI
   * @return the value with its unit, in both unit systems where they differ
   */
  public String show(double si) {
    return switch (this) {
      case FACTOR -> factor(si);
      case SHARE -> percent(si);
      case COUNT -> Long.toString(Elementary.round(si));
      case LENGTH -> length(si);
      case FORCE -> QuantityFormat.both(si, QuantityKind.FORCE);
      case PRESSURE -> QuantityFormat.both(si, QuantityKind.PRESSURE);
      case ANGLE -> QuantityFormat.metric(si, QuantityKind.ANGLE);
      case STIFFNESS -> QuantityFormat.both(si, QuantityKind.STIFFNESS);
    };
  }

  /**
   * Writes a computed value for people: as {@link #show}, but a factor keeps the nought it ends
   * with, as the 3.0 of a computed lift-off factor beside the 1.5 that is wanted.
   *
   * @param si value in SI
   * @return the value with its unit
   */
  public String showComputed(double si) {
    return this == FACTOR && Double.isFinite(si) && si >= 0.01 && si < 99.5
        ? QuantityFormat.significantNumber(si, Unit.ONE, 2)
        : show(si);
  }

  /**
   * Returns a value to be written when it is read.
   *
   * @param si value in SI
   * @return the value, which says itself as {@link #show} does
   */
  Amount amount(double si) {
    return new Amount(this, si);
  }

  /** A computed length: three figures if it is small, hundredths of a millimetre if it is large. */
  private static String length(double si) {
    double size = Math.abs(si);
    if (size >= 1e-5 && size < 1e-4) {
      return QuantityFormat.significant(si, UnitCatalog.UM, 3)
          + " ("
          + QuantityFormat.significant(si, UnitCatalog.UIN, 3)
          + ')';
    }
    return size < 1e-2 || Double.isInfinite(si)
        ? QuantityFormat.both(si, QuantityKind.LENGTH)
        : QuantityFormat.fixed(si, UnitCatalog.MM, 2)
            + " ("
            + QuantityFormat.fixed(si, UnitCatalog.INCH, 3)
            + ')';
  }

  private static String factor(double si) {
    return si >= 1000 ? "over 1000" : number(si, 2);
  }

  private static String percent(double si) {
    return number(100 * si, si < 0.095 ? 1 : si < 0.995 ? 2 : 3) + " %";
  }

  /**
   * Writes a pure number.
   *
   * @param value the number, finite
   * @param figures significant figures at most
   * @return digits with a point where needed, never an exponent
   */
  static String number(double value, int figures) {
    if (Math.abs(value) < 1e-6) {
      return "0";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(figures)).stripTrailingZeros();
    return rounded.setScale(Math.max(0, rounded.scale()), RoundingMode.UNNECESSARY).toPlainString();
  }
}
