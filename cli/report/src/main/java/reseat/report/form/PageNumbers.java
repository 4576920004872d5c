package reseat.report.form;

import java.math.BigDecimal;
import java.math.MathContext;
import reseat.check.Measure;
import reseat.elementary.Elementary;
import reseat.space.Vec3;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** How results are written on a page: the units of the trade and no digits a model has not. */
public final class PageNumbers {

  private PageNumbers() {}

  /** A small length by two figures, in µm and µin. */
  public static String small(double metres) {
    return micrometres(metres) + " µm (" + microinches(metres) + " µin)";
  }

  /** A small length by two figures, in µm, without its unit. */
  public static String micrometres(double metres) {
    return twoFigures(1e6 * metres);
  }

  /** A small length by as many figures as its sample deserves, in µm and µin. */
  public static String small(double metres, int figures) {
    return micrometres(metres, figures) + " µm (" + figures(metres / 25.4e-9, figures) + " µin)";
  }

  /** A small length by as many figures as its sample deserves, in µm, without its unit. */
  public static String micrometres(double metres, int figures) {
    return figures(1e6 * metres, figures);
  }

  private static String microinches(double metres) {
    return twoFigures(metres / 25.4e-9);
  }

  private static String twoFigures(double number) {
    return figures(number, 2);
  }

  /** A number by significant figures, at most four decimals; above a thousand by three. */
  public static String figures(double number, int figures) {
    double size = Math.abs(number);
    if (size < 0.0005) {
      return "0";
    }
    if (size >= 1000) {
      return new BigDecimal(number).round(new MathContext(Math.max(3, figures))).toPlainString();
    }
    int decimals = (int) Math.max(0, Math.min(4, figures - 1 - Math.floor(Elementary.log10(size))));
    return FilledText.of("%." + decimals + "f", number);
  }

  /** A number by significant figures; an exponent only where the zeros would be many. */
  public static String plain(double number, int figures) {
    return QuantityFormat.significantNumber(number, Unit.ONE, figures);
  }

  public static String length(double metres) {
    return QuantityFormat.both(metres, QuantityKind.LENGTH);
  }

  /** A point in mm. */
  public static String point(Vec3 p) {
    return FilledText.of(
        "%s, %s, %s mm", millimetres(p.x()), millimetres(p.y()), millimetres(p.z()));
  }

  private static String millimetres(double metres) {
    return QuantityFormat.fixedNumber(Math.abs(metres) < 5e-7 ? 0 : metres, UnitCatalog.MM, 2);
  }

  public static String force(double newtons) {
    return QuantityFormat.both(newtons, QuantityKind.FORCE);
  }

  public static String pressure(double pascals) {
    return QuantityFormat.both(pascals, QuantityKind.PRESSURE);
  }

  public static String stiffness(double newtonsPerMetre) {
    return QuantityFormat.significantNumber(newtonsPerMetre, UnitCatalog.N_PER_UM, 2);
  }

  public static String percent(double share) {
    return FilledText.of("%.0f %%", 100 * share);
  }

  public static String factor(double value) {
    return Double.isInfinite(value)
        ? "never"
        : value >= 1000
            ? FigureText.BOTH.of(Measure.FACTOR, value)
            : value >= 99.5 ? FilledText.of("%.0f", value) : plain(value, 2);
  }
}
