package reseat.designfile;
import reseat.units.PrintedNumber;
import reseat.elementary.Elementary;

import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;
import reseat.units.Unit;

/**
 * What may have been meant by a quantity that looks like a slip: the same number with another unit,
 * twice a radius, or with its decimal point elsewhere.
 *
 * @param text as it would be written
 * @param value in SI, of the sign of what is written
 */
record LikelyValue(String text, double value) {

  /** How much farther away a unit counts that is seldom meant, as a logarithm. */
  private static final double SELDOM = 1.5;

  private static final double[] SHIFTS = {0.01, 100, 1e-3, 1e3, 1e-6, 1e6};
  private static final double STANDARD_GRAVITY = 9.80665;

  /** Nothing is near. */
  static final LikelyValue NONE = new LikelyValue("", Double.NaN);

  boolean isNone() {
    return text.isEmpty();
  }

  /**
   * Finds what was likely meant.
   *
   * @param written what is doubted
   * @param low least usual size, SI
   * @param high greatest usual size, SI
   * @param far whether it may be more than another unit: twice a radius, a decimal point
   * @return the likeliest value that is usual; none if all lie outside
   */
  static LikelyValue of(Written written, double low, double high, boolean far) {
    Quantity q = written.quantity();
    if (q.unit().hasOffset()) {
      return NONE;
    }
    Search search = new Search(low, high);
    String number = number(written.text());
    double typed = q.unit().fromSi(q.value());
    String[] units = units(q.kind());
    // the commonest three first: pounds for newtons are likelier than ounces, and only they make a
    // value doubted that is not far from usual
    for (int i = 0; i < (far ? units.length : Math.min(4, units.length)); i++) {
      double handicap = i < 3 ? 0.25 * i : SELDOM * (i - 2);
      boolean across = isInch(units[i]) != isInch(q.unit().symbol());
      boolean order = q.unit().symbol().equals("kN") && !units[i].equals("N");
      double more = order ? 1 : across && q.kind() == QuantityKind.PRESSURE ? 2.5 : 0;
      search.take(in(units[i], number, typed, q), handicap + more);
    }
    if (far && written.key().endsWith("diameter")) {
      search.take(scaled(written, 2), 1);
    }
    if (far) {
      search.take(scaled(written, 0.1), 1);
      search.take(scaled(written, 10), 1);
    }
    for (int i = 0; far && search.best.isNone() && i < SHIFTS.length; i++) {
      search.take(scaled(written, SHIFTS[i]), 0);
    }
    return search.best;
  }

  /** Keeps the candidate nearest to the middle of the usual sizes. */
  private static final class Search {
    private final double low;
    private final double high;
    private LikelyValue best = NONE;
    private double least = Double.POSITIVE_INFINITY;

    Search(double low, double high) {
      this.low = low;
      this.high = high;
    }

    void take(LikelyValue other, double handicap) {
      double size = Math.abs(other.value);
      double middle = Math.sqrt(Math.max(low, high * 1e-4) * high);
      double away = Math.abs(Elementary.log(size / middle)) + handicap;
      if (size >= low && size <= high && away < least) {
        best = other;
        least = away;
      }
    }
  }

  private static LikelyValue in(String unit, String number, double typed, Quantity q) {
    String text = number + ' ' + unit;
    if (q.kind() == QuantityKind.MASS && unit.equals("N")) {
      return new LikelyValue(text, typed / STANDARD_GRAVITY);
    }
    return QuantityText.read(text, q.kind()) instanceof Quantity other
            && !sameUnit(other.unit(), q.unit())
        ? new LikelyValue(text, other.unit().toSi(typed))
        : NONE;
  }

  private static LikelyValue scaled(Written written, double factor) {
    Unit unit = written.quantity().unit();
    double number = unit.fromSi(written.value()) * factor;
    String shown = PrintedNumber.shortest(Double.parseDouble(Float.toString((float) number)));
    String whole = shown.endsWith(".0") ? shown.substring(0, shown.length() - 2) : shown;
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    return new LikelyValue(whole + symbol, written.value() * factor);
  }

  private static boolean isInch(String symbol) {
    return symbol.endsWith("psi") || symbol.equals("ksi");
  }

  private static boolean sameUnit(Unit a, Unit b) {
    return a.scale().compareTo(b.scale()) == 0;
  }

  /** The number of a text, without its unit. */
  private static String number(String text) {
    int end = 0;
    while (end < text.length() && isOfNumber(text, end)) {
      end++;
    }
    while (end > 0 && (text.charAt(end - 1) == '/' || text.charAt(end - 1) == ' ')) {
      end--;
    }
    return text.substring(0, end);
  }

  private static boolean isOfNumber(String text, int at) {
    char c = text.charAt(at);
    if (c == 'e' || c == 'E') {
      char next = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
      return next == '-' || next == '+' || (next >= '0' && next <= '9');
    }
    return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == '/' || c == ' ';
  }

  private static String[] units(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> new String[] {"mm", "in", "um", "uin", "nm", "thou"};
      case AREA -> new String[] {"mm^2", "in^2"};
      case FORCE -> new String[] {"N", "lbf", "kN", "kgf", "ozf", "mN"};
      case TORQUE -> new String[] {"N·m", "in·lbf", "ft·lbf", "N·mm", "N·cm", "in·oz"};
      case PRESSURE -> new String[] {"GPa", "MPa", "Mpsi", "ksi", "psi", "bar", "kPa"};
      case STIFFNESS -> new String[] {"N/um", "N/mm", "N/m", "lbf/in"};
      case MASS -> new String[] {"kg", "g", "N", "lb", "oz"};
      case DENSITY -> new String[] {"kg/m^3", "g/cm^3", "lb/in^3"};
      case EXPANSION -> new String[] {"um/m/K", "1/K", "uin/in/°F"};
      case ANGLE -> new String[] {"deg", "arcmin", "arcsec", "mrad", "urad"};
      default -> new String[0];
    };
  }
}
