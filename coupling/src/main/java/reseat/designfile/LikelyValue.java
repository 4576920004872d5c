package reseat.designfile;

import java.util.ArrayList;
import java.util.List;
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

  private static final double STANDARD_GRAVITY = 9.80665;

  /** Nothing is near. */
  static final LikelyValue NONE = new LikelyValue("", Double.NaN);

  boolean isNone() {
    return text.isEmpty();
  }

  /**
   * Finds the same number with another unit.
   *
   * @param written what is doubted
   * @param low least usual size, SI
   * @param high greatest usual size, SI
   * @return the value nearest to the middle of the usual sizes; none if all lie outside
   */
  static LikelyValue withOtherUnit(Written written, double low, double high) {
    List<LikelyValue> others = new ArrayList<>();
    Quantity q = written.quantity();
    if (q.unit().hasOffset()) {
      return NONE;
    }
    String number = number(written.text());
    double typed = q.unit().fromSi(q.value());
    for (String unit : units(q.kind())) {
      String text = number + ' ' + unit;
      if (QuantityText.read(text, q.kind()) instanceof Quantity other
          && !sameUnit(other.unit(), q.unit())) {
        others.add(new LikelyValue(text, other.unit().toSi(typed)));
      }
    }
    if (q.kind() == QuantityKind.MASS) {
      others.add(new LikelyValue(number + " N", typed / STANDARD_GRAVITY));
    }
    return nearest(others, low, high);
  }

  /** Finds twice the value, of which the radius may have been written. */
  static LikelyValue doubled(Written written, double low, double high) {
    return nearest(List.of(scaled(written, 2)), low, high);
  }

  /** Finds the value with its decimal point moved by up to six places. */
  static LikelyValue shifted(Written written, double low, double high) {
    List<LikelyValue> others = new ArrayList<>();
    for (double factor : new double[] {0.1, 10, 0.01, 100, 1e-3, 1e3, 1e-6, 1e6}) {
      others.add(scaled(written, factor));
    }
    return nearest(others, low, high);
  }

  private static LikelyValue scaled(Written written, double factor) {
    Unit unit = written.quantity().unit();
    double number = unit.fromSi(written.value()) * factor;
    String shown = Double.toString(Double.parseDouble(Float.toString((float) number)));
    String whole = shown.endsWith(".0") ? shown.substring(0, shown.length() - 2) : shown;
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    return new LikelyValue(whole + symbol, written.value() * factor);
  }

  private static boolean sameUnit(Unit a, Unit b) {
    return a.scale().compareTo(b.scale()) == 0;
  }

  private static LikelyValue nearest(List<LikelyValue> others, double low, double high) {
    double middle = Math.sqrt(Math.max(low, high * 1e-4) * high);
    LikelyValue best = NONE;
    double least = Double.POSITIVE_INFINITY;
    for (LikelyValue other : others) {
      double size = Math.abs(other.value);
      double away = Math.abs(Math.log(size / middle));
      if (size >= low && size <= high && away < least) {
        best = other;
        least = away;
      }
    }
    return best;
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
      case LENGTH -> new String[] {"mm", "in", "um", "uin", "thou", "nm"};
      case AREA -> new String[] {"mm^2", "in^2"};
      case FORCE -> new String[] {"N", "lbf", "kN", "kgf", "mN", "ozf"};
      case TORQUE -> new String[] {"N·m", "in·lbf", "ft·lbf", "N·mm", "N·cm", "in·oz"};
      case PRESSURE -> new String[] {"GPa", "MPa", "kPa", "Mpsi", "ksi", "psi", "bar"};
      case STIFFNESS -> new String[] {"N/um", "N/mm", "N/m", "lbf/in"};
      case MASS -> new String[] {"kg", "g", "lb", "oz"};
      case DENSITY -> new String[] {"kg/m^3", "g/cm^3", "lb/in^3"};
      case TEMPERATURE_DIFFERENCE -> new String[] {"K", "mK"};
      case EXPANSION -> new String[] {"um/m/K", "1/K", "uin/in/°F"};
      case ANGLE -> new String[] {"deg", "arcmin", "arcsec", "mrad", "urad"};
      default -> new String[0];
    };
  }
}
