package reseat.units;

import java.util.Optional;

/** What to write instead of an unknown unit or of a unit for something else. */
final class UnitAdvice {

  private static final Dimension ACCELERATION = QuantityKind.ACCELERATION.dimension();

  private UnitAdvice() {}

  /** Advice for a unit nobody knows. */
  static String forUnknown(String name, QuantityKind expected) {
    return switch (name) {
      case "C" -> "write °C or degC";
      case "F" -> "write °F or degF";
      case "pound", "pounds", "#" -> "write lbf for a force or lb for a mass";
      default -> nearest(name, expected);
    };
  }

  private static String nearest(String name, QuantityKind expected) {
    Optional<String> near =
        NearestWord.to(name, UnitCatalog.spellings(expected.dimension()))
            .or(() -> NearestWord.to(name, UnitCatalog.spellings(null)));
    return near.map(word -> "did you mean " + UnitCatalog.explained(word) + '?')
        .orElse("write " + expected.allowed());
  }

  /**
   * Advice for a known unit of the wrong dimension.
   *
   * @param number as typed
   * @param si value in SI units of the unit found
   * @param unit the unit found
   * @param expected what was wanted
   */
  static String forWrong(String number, double si, Unit unit, QuantityKind expected) {
    Dimension found = unit.dimension();
    if (found.times(ACCELERATION).equals(expected.dimension()) && found.mass() == 1) {
      return massForForce(unit.symbol());
    }
    if (expected == QuantityKind.MASS && found.equals(Dimension.FORCE)) {
      return "a weight of this force is a mass of "
          + QuantityFormat.both(si / 9.80665, QuantityKind.MASS);
    }
    if (expected == QuantityKind.TORQUE && unit.symbol().equals("nm")) {
      return "nm is a nanometre; write N·m or Nm";
    }
    if (expected == QuantityKind.TORQUE && found.equals(Dimension.FORCE)) {
      return "a torque is a force times a lever; write N·m or in·lbf";
    }
    return "write " + expected.offer(number);
  }

  private static String massForForce(String symbol) {
    String force = symbol.replaceAll("lb[sm]?(?![a-z])", "lbf").replaceAll("kg(?![a-z])", "kgf");
    force = force.replaceAll("(?<![a-z])oz(?![a-z])", "ozf");
    return force.equals(symbol)
        ? "this unit counts mass; write N, kgf or lbf for force"
        : "this unit counts mass; write " + force + " for force";
  }
}
