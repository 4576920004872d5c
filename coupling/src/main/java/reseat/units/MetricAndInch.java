package reseat.units;

import java.util.EnumMap;
import java.util.Map;

/** The metric and the inch unit in which the trade writes each kind of quantity. */
final class MetricAndInch {

  private static final Map<QuantityKind, Unit[]> PAIRS = pairs();

  private MetricAndInch() {}

  static Unit metric(QuantityKind kind) {
    return PAIRS.get(kind)[0];
  }

  static Unit inch(QuantityKind kind) {
    return PAIRS.get(kind)[1];
  }

  private static Map<QuantityKind, Unit[]> pairs() {
    Map<QuantityKind, Unit[]> pairs = new EnumMap<>(QuantityKind.class);
    put(pairs, QuantityKind.LENGTH, "mm", "in");
    put(pairs, QuantityKind.AREA, "mm²", "in²");
    put(pairs, QuantityKind.ANGLE, "°", "°");
    put(pairs, QuantityKind.FORCE, "N", "lbf");
    put(pairs, QuantityKind.TORQUE, "N·m", "in·lbf");
    put(pairs, QuantityKind.PRESSURE, "MPa", "ksi");
    put(pairs, QuantityKind.STIFFNESS, "N/µm", "lbf/in");
    put(pairs, QuantityKind.TURNING_STIFFNESS, "N·m/mrad", "in·lbf/mrad");
    put(pairs, QuantityKind.MASS, "kg", "lb");
    put(pairs, QuantityKind.DENSITY, "g/cm³", "lb/in³");
    put(pairs, QuantityKind.INERTIA, "kg·mm²", "lb·in²");
    put(pairs, QuantityKind.TEMPERATURE, "°C", "°F");
    put(pairs, QuantityKind.TEMPERATURE_DIFFERENCE, "K", "K");
    put(pairs, QuantityKind.EXPANSION, "µm/m/K", "µin/in/°F");
    put(pairs, QuantityKind.RATIO, "%", "%");
    put(pairs, QuantityKind.TIME, "s", "s");
    put(pairs, QuantityKind.FREQUENCY, "Hz", "Hz");
    put(pairs, QuantityKind.VELOCITY, "mm/s", "in/s");
    put(pairs, QuantityKind.ACCELERATION, "m/s²", "g");
    return pairs;
  }

  private static void put(
      Map<QuantityKind, Unit[]> pairs, QuantityKind kind, String metric, String inch) {
    pairs.put(kind, new Unit[] {unit(metric, kind), unit(inch, kind)});
  }

  private static Unit unit(String symbol, QuantityKind kind) {
    return UnitExpression.at(symbol, 0, kind).read();
  }
}
