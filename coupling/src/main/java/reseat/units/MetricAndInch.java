package reseat.units;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The metric and the inch unit in which the trade writes each kind of quantity.
 *
 * <p>A unit is read when it is first written, for a short run writes few kinds.
 */
final class MetricAndInch {

  private static final Map<QuantityKind, Unit> METRIC = new ConcurrentHashMap<>();
  private static final Map<QuantityKind, Unit> INCH = new ConcurrentHashMap<>();

  private MetricAndInch() {}

  static Unit metric(QuantityKind kind) {
    Unit known = METRIC.get(kind);
    return known != null ? known : read(METRIC, kind, metricSymbol(kind));
  }

  static Unit inch(QuantityKind kind) {
    Unit known = INCH.get(kind);
    return known != null ? known : read(INCH, kind, inchSymbol(kind));
  }

  private static Unit read(Map<QuantityKind, Unit> units, QuantityKind kind, String symbol) {
    Unit unit = UnitExpression.at(symbol, 0, kind).read();
    units.put(kind, unit);
    return unit;
  }

  private static String metricSymbol(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> "mm";
      case AREA -> "mm²";
      case ANGLE -> "°";
      case FORCE -> "N";
      case TORQUE -> "N·m";
      case PRESSURE -> "MPa";
      case STIFFNESS -> "N/µm";
      case TURNING_STIFFNESS -> "N·m/mrad";
      case MASS -> "kg";
      case DENSITY -> "g/cm³";
      case INERTIA -> "kg·mm²";
      case TEMPERATURE -> "°C";
      case TEMPERATURE_DIFFERENCE -> "K";
      case EXPANSION -> "µm/m/K";
      case RATIO -> "%";
      case TIME -> "s";
      case FREQUENCY -> "Hz";
      case VELOCITY -> "mm/s";
      case ACCELERATION -> "m/s²";
    };
  }

  private static String inchSymbol(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> "in";
      case AREA -> "in²";
      case FORCE -> "lbf";
      case TORQUE -> "in·lbf";
      case PRESSURE -> "ksi";
      case STIFFNESS -> "lbf/in";
      case TURNING_STIFFNESS -> "in·lbf/mrad";
      case MASS -> "lb";
      case DENSITY -> "lb/in³";
      case INERTIA -> "lb·in²";
      case TEMPERATURE -> "°F";
      case EXPANSION -> "µin/in/°F";
      case VELOCITY -> "in/s";
      case ACCELERATION -> "g";
      case ANGLE, TEMPERATURE_DIFFERENCE, RATIO, TIME, FREQUENCY -> metricSymbol(kind);
    };
  }
}
