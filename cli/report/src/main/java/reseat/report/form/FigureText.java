package reseat.report.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import reseat.check.Argument.Amount;
import reseat.check.Measure;
import reseat.elementary.Elementary;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * Values as people read them, in one unit system: three figures for what was computed, two below a
 * micrometre, and a unit behind every number.
 *
 * @param system the unit system
 */
public record FigureText(UnitSystem system) {

  /** Metric units. */
  public static final FigureText METRIC = new FigureText(UnitSystem.METRIC);

  /** Both unit systems side by side. */
  public static final FigureText BOTH = new FigureText(UnitSystem.BOTH);

  /** Below this a length is written in µm or µin, m. */
  private static final double SMALL = 0.1e-3;

  /** From this on a length has hundredths of a millimetre, m. */
  private static final double LARGE = 1e-2;

  /** Most figures that keep a value and its limit apart. */
  private static final int MOST_FIGURES = 8;

  private static final double LARGEST_FACTOR = 1000;

  /**
   * Writes an amount.
   *
   * @param amount the amount
   * @return number and unit
   */
  public String of(Amount amount) {
    return of(amount.measure(), amount.si(), amount.computed());
  }

  /**
   * Writes a value.
   *
   * @param measure what it measures
   * @param si the value, SI; may be infinite
   * @return number and unit
   */
  public String of(Measure measure, double si) {
    return of(measure, si, false);
  }

  /**
   * Writes a value.
   *
   * @param measure what it measures
   * @param si the value, SI; may be infinite
   * @param computed whether it was computed, so that a factor keeps the nought it ends with
   * @return number and unit
   */
  public String of(Measure measure, double si, boolean computed) {
    return switch (measure) {
      case FACTOR -> factor(si, computed);
      case SHARE -> percent(si);
      case COUNT -> Long.toString(Elementary.round(si));
      case LENGTH -> length(si);
      case FORCE -> quantity(si, QuantityKind.FORCE);
      case PRESSURE -> quantity(si, QuantityKind.PRESSURE);
      case STIFFNESS -> quantity(si, QuantityKind.STIFFNESS);
      case TORQUE -> quantity(si, QuantityKind.TORQUE);
      case MASS -> quantity(si, QuantityKind.MASS);
      case AREA -> quantity(si, QuantityKind.AREA);
      case EXPANSION -> quantity(si, QuantityKind.EXPANSION);
      case TEMPERATURE -> quantity(si, QuantityKind.TEMPERATURE_DIFFERENCE);
      case ANGLE ->
          Math.abs(si) < UnitCatalog.ARC_MINUTE.toSi(1)
              ? QuantityFormat.significant(si, UnitCatalog.URAD, 3)
              : QuantityFormat.significant(si, UnitCatalog.DEGREE, 3);
    };
  }

  /**
   * Writes a value that stands beside another, for instance its limit, so that the two can be told
   * apart: by more figures where the usual ones would read alike.
   *
   * @param measure what both measure
   * @param si the value, SI; may be infinite
   * @param other the other value, SI; may be infinite
   * @param computed whether the value was computed
   * @return number and unit
   */
  public String beside(Measure measure, double si, double other, boolean computed) {
    double apart = Math.abs(si - other);
    boolean alike = of(measure, si, true).equals(of(measure, other, true));
    if (!alike || apart <= 1e-9 * Math.abs(si) || !(apart < Double.POSITIVE_INFINITY)) {
      return of(measure, si, computed);
    }
    for (int figures = 3; figures <= MOST_FIGURES; figures++) {
      String one = fine(measure, si, other, figures);
      if (!one.equals(fine(measure, other, si, figures))) {
        return one;
      }
    }
    return of(measure, si, computed);
  }

  /** A value by so many figures, in the unit of the larger of two. */
  private String fine(Measure measure, double si, double other, int figures) {
    double larger = Math.max(Math.abs(si), Math.abs(other));
    return switch (measure) {
      case COUNT -> of(measure, si);
      case FACTOR -> QuantityFormat.significantNumber(si, Unit.ONE, figures);
      case SHARE -> QuantityFormat.significantNumber(100 * si, Unit.ONE, figures) + " %";
      case LENGTH ->
          in(si, metric(larger), larger < SMALL ? UnitCatalog.UIN : UnitCatalog.INCH, figures);
      case ANGLE ->
          QuantityFormat.significant(
              si,
              larger < UnitCatalog.ARC_MINUTE.toSi(1) ? UnitCatalog.URAD : UnitCatalog.DEGREE,
              figures);
      case PRESSURE ->
          in(si, larger < 1e9 ? UnitCatalog.MPA : UnitCatalog.GPA, UnitCatalog.KSI, figures);
      case FORCE -> in(si, UnitCatalog.NEWTON, UnitCatalog.LBF, figures);
      case STIFFNESS -> in(si, UnitCatalog.N_PER_UM, UnitCatalog.LBF_PER_INCH, figures);
      case TORQUE, MASS, AREA, EXPANSION, TEMPERATURE -> of(measure, si);
    };
  }

  private String in(double si, Unit metric, Unit inch, int figures) {
    return joined(
        QuantityFormat.significant(si, metric, figures),
        QuantityFormat.significant(si, inch, figures));
  }

  /**
   * Writes a quantity of any kind by three figures.
   *
   * @param si the value, SI
   * @param kind what it is
   * @return number and unit
   */
  public String quantity(double si, QuantityKind kind) {
    if (kind == QuantityKind.LENGTH) {
      return length(si);
    }
    String metric = QuantityFormat.metric(si, kind);
    String inch = QuantityFormat.inch(si, kind);
    return joined(metric, inch);
  }

  /**
   * Returns the unit of a column of numbers, metric where both systems are wanted.
   *
   * @param kind what the column holds; small motions under {@code LENGTH}
   * @return its unit
   */
  public Unit column(QuantityKind kind) {
    boolean inch = system == UnitSystem.INCH;
    return switch (kind) {
      case LENGTH -> inch ? UnitCatalog.UIN : UnitCatalog.UM;
      case FORCE -> inch ? UnitCatalog.LBF : UnitCatalog.NEWTON;
      case STIFFNESS -> inch ? UnitCatalog.LBF_PER_INCH : UnitCatalog.N_PER_UM;
      case PRESSURE -> inch ? UnitCatalog.KSI : UnitCatalog.GPA;
      default -> throw new IllegalArgumentException("no column of " + kind);
    };
  }

  /**
   * Writes a number of such a column.
   *
   * @param si the value, SI
   * @param kind what the column holds
   * @param figures how many figures
   * @return without its unit
   */
  public String number(double si, QuantityKind kind, int figures) {
    return QuantityFormat.significantNumber(nothing(si), column(kind), figures);
  }

  /**
   * Writes a length.
   *
   * @param si m
   * @return in µm or µin below a tenth of a millimetre, else in mm or in
   */
  public String length(double si) {
    return joined(
        QuantityFormat.significantNumber(nothing(si), metric(si), metricFigures(si))
            + " "
            + metric(si).symbol(),
        inchLength(si));
  }

  /**
   * Writes a length of which little is known, by one figure.
   *
   * @param si m
   * @return in µm or µin below a tenth of a millimetre, else in mm or in
   */
  public String rough(double si) {
    Unit inch = Math.abs(si) < SMALL ? UnitCatalog.UIN : UnitCatalog.INCH;
    return joined(
        QuantityFormat.significant(nothing(si), metric(si), 1),
        QuantityFormat.significant(nothing(si), inch, 1));
  }

  /**
   * Writes a scatter by two figures of the largest beside it, without its unit.
   *
   * @param si m
   * @param largest the largest of those that stand together, m
   * @return for instance {@code 0.24}; in both systems the metric number
   */
  public String scatterNumber(double si, double largest) {
    Unit unit = scatterIn(largest);
    double size = unit.fromSi(largest);
    int decimals =
        size <= 0 ? 0 : (int) Math.max(0, Math.min(4, 1 - Math.floor(Elementary.log10(size))));
    return QuantityFormat.fixedNumber(si, unit, decimals);
  }

  /**
   * Returns the unit of {@link #scatterNumber}.
   *
   * @param largest the largest of those that stand together, m
   * @return its symbol
   */
  public String scatterUnit(double largest) {
    return scatterIn(largest).symbol();
  }

  private Unit scatterIn(double largest) {
    return system == UnitSystem.INCH
        ? UnitCatalog.UIN
        : largest < 0.05e-6 ? UnitCatalog.NM : UnitCatalog.UM;
  }

  /**
   * Writes two lengths in one unit, that of the larger.
   *
   * @param least m
   * @param most m
   * @return for instance {@code 13.2 to 117 µm}
   */
  public String range(double least, double most) {
    double larger = Math.max(Math.abs(least), Math.abs(most));
    Unit metric = larger < 1e-3 ? UnitCatalog.UM : UnitCatalog.MM;
    Unit inch = larger < 1e-3 ? UnitCatalog.UIN : UnitCatalog.INCH;
    return joined(ends(least, most, metric), ends(least, most, inch));
  }

  /**
   * Writes two forces in one unit.
   *
   * @param least N
   * @param most N
   * @return for instance {@code 156 to 1150 N}
   */
  public String forces(double least, double most) {
    return joined(ends(least, most, UnitCatalog.NEWTON), ends(least, most, UnitCatalog.LBF));
  }

  private static String ends(double least, double most, Unit unit) {
    String low = number(least, unit);
    String high = number(most, unit);
    return (low.equals(high) ? high : low + " to " + high) + " " + unit.symbol();
  }

  /** Three figures; above a thousand no digits after the third but noughts. */
  private static String number(double si, Unit unit) {
    return QuantityFormat.significantNumber(nothing(si), unit, 3);
  }

  /** A length as it stands on a drawing or as a file states it: inches to four decimals. */
  public String dimension(double si) {
    return joined(
        QuantityFormat.fixed(si, UnitCatalog.MM, 3), QuantityFormat.fixed(si, UnitCatalog.INCH, 4));
  }

  private static Unit metric(double si) {
    return Math.abs(si) < SMALL ? UnitCatalog.UM : UnitCatalog.MM;
  }

  private static int metricFigures(double si) {
    double size = Math.abs(si);
    return size < 1e-6 ? 2 : size < LARGE || Double.isInfinite(si) ? 3 : size < 0.1 ? 4 : 5;
  }

  private static String inchLength(double si) {
    double size = Math.abs(si);
    return size < SMALL
        ? QuantityFormat.significant(nothing(si), UnitCatalog.UIN, size < 1e-6 ? 2 : 3)
        : QuantityFormat.fixed(si, UnitCatalog.INCH, size < LARGE ? 4 : 3);
  }

  /** Below a thousandth of a nanometre there is nothing to tell. */
  private static double nothing(double si) {
    return Math.abs(si) < 1e-12 ? 0 : si;
  }

  private String joined(String metric, String inch) {
    return switch (system) {
      case METRIC -> metric;
      case INCH -> inch;
      case BOTH -> metric.equals(inch) ? metric : metric + " (" + inch + ")";
    };
  }

  private static String factor(double si, boolean computed) {
    if (si >= LARGEST_FACTOR) {
      return "over 1000";
    }
    return computed && si >= 0.01 && si < 99.5
        ? QuantityFormat.significantNumber(si, Unit.ONE, 2)
        : plain(si, 2);
  }

  /**
   * Writes a share in percent.
   *
   * @param share part of one
   * @return by one figure below ten, by two below a hundred, by three above
   */
  public static String percent(double share) {
    double size = Math.abs(share);
    if (Double.isInfinite(share) || size > LARGEST_FACTOR) {
      return "over 100000 %";
    }
    return plain(100 * share, size < 0.095 ? 1 : size < 0.995 ? 2 : 3) + " %";
  }

  private static String plain(double value, int figures) {
    if (Math.abs(value) < 1e-6) {
      return "0";
    }
    BigDecimal rounded =
        new BigDecimal(value)
            .round(new MathContext(figures, RoundingMode.HALF_UP))
            .stripTrailingZeros();
    return rounded.setScale(Math.max(0, rounded.scale()), RoundingMode.UNNECESSARY).toPlainString();
  }
}
