package reseat.units;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The units the program knows, by every spelling it accepts.
 *
 * <p>Exact by definition: inch 25.4 mm and pound 0.453 592 37 kg (international yard and pound,
 * 1959), standard gravity 9.806 65 m/s², 0 °C = 273.15 K, 0 °F = 459.67/1.8 K. Follow from them:
 * lbf = 0.453 592 37 × 9.806 65 N, psi = lbf/in². Values recalled from memory, as in the SI
 * brochure of the BIPM and in NIST SP 811; π to 40 digits.
 *
 * <p>Symbols tell capitals apart. There are no free prefixes: each prefixed unit is listed, so that
 * {@code Mmm} or {@code kin} stay unknown.
 */
public final class UnitCatalog {

  private static final Map<String, Unit> GENERAL = new HashMap<>(512);
  private static final Map<String, Unit> IN_ANGLES = new HashMap<>();
  private static final Map<String, Unit> IN_ACCELERATIONS = new HashMap<>();

  /** Metre. */
  public static final Unit METRE = unit(Dimension.LENGTH, "1", "m", "metre", "metres", "meter");

  /** Millimetre. */
  public static final Unit MM =
      unit(Dimension.LENGTH, "1e-3", "mm", "millimetre", "millimetres", "millimeter");

  /** Micrometre. */
  public static final Unit UM =
      unit(Dimension.LENGTH, "1e-6", "µm", "um", "micron", "microns", "micrometre", "micrometer");

  /** Nanometre. */
  public static final Unit NM = unit(Dimension.LENGTH, "1e-9", "nm");

  /** Inch. */
  public static final Unit INCH =
      unit(Dimension.LENGTH, "0.0254", "in", "inch", "inches", "\"", "in.");

  /** Microinch. */
  public static final Unit UIN =
      unit(Dimension.LENGTH, "25.4e-9", "µin", "uin", "microinch", "microinches");

  /** Newton. */
  public static final Unit NEWTON = unit(Dimension.FORCE, "1", "N", "newton", "newtons");

  /** Pound-force. */
  public static final Unit LBF = unit(Dimension.FORCE, "4.4482216152605", "lbf");

  /** Gigapascal. */
  public static final Unit GPA = unit(Dimension.PRESSURE, "1e9", "GPa");

  /** Megapascal. */
  public static final Unit MPA = unit(Dimension.PRESSURE, "1e6", "MPa");

  /** Thousand pounds-force per square inch. */
  public static final Unit KSI = named("ksi", LBF.times(INCH, -2), "1000");

  /** Newton metre. */
  public static final Unit NEWTON_METRE = named("N·m", NEWTON.times(METRE, 1), "1");

  /** Inch pound-force. */
  public static final Unit INCH_LBF = named("in·lbf", INCH.times(LBF, 1), "1");

  /** Newton per micrometre. */
  public static final Unit N_PER_UM = named("N/µm", NEWTON.times(UM, -1), "1");

  /** Pound-force per inch. */
  public static final Unit LBF_PER_INCH = named("lbf/in", LBF.times(INCH, -1), "1");

  /** Kilogram. */
  public static final Unit KG = unit(Dimension.MASS, "1", "kg");

  /** Pound, a mass. */
  public static final Unit LB = unit(Dimension.MASS, "0.45359237", "lb", "lbs", "lbm");

  /** Degree of angle. */
  public static final Unit DEGREE =
      unit(Dimension.ANGLE, pi("180"), "°", "deg", "degree", "degrees");

  /** Minute of angle. */
  public static final Unit ARC_MINUTE = unit(Dimension.ANGLE, pi("10800"), "arcmin");

  /** Second of angle. */
  public static final Unit ARC_SECOND = unit(Dimension.ANGLE, pi("648000"), "arcsec");

  /** Microradian. */
  public static final Unit URAD = unit(Dimension.ANGLE, "1e-6", "µrad", "urad");

  /** Hundredth. */
  public static final Unit PERCENT = unit(Dimension.NONE, "0.01", "%", "percent");

  /** Kelvin. */
  public static final Unit KELVIN = unit(Dimension.TEMPERATURE, "1", "K", "kelvin");

  /** Degree Celsius; by itself a point on the thermometer. */
  public static final Unit CELSIUS =
      add(
          new Unit("°C", "°C", Dimension.TEMPERATURE, BigDecimal.ONE, new BigDecimal("273.15")),
          "degC");

  /** Second. */
  public static final Unit SECOND = unit(Dimension.TIME, "1", "s", "sec", "second", "seconds");

  /** Hertz. */
  public static final Unit HERTZ = unit(Dimension.TIME.power(-1), "1", "Hz");

  static {
    restOfLengths();
    unit(Dimension.FORCE, "1e3", "kN");
    unit(Dimension.FORCE, "1e-3", "mN");
    unit(Dimension.FORCE, "9.80665", "kgf");
    unit(Dimension.FORCE, "0.27801385095378125", "ozf");
    unit(Dimension.PRESSURE, "1", "Pa");
    unit(Dimension.PRESSURE, "1e3", "kPa");
    unit(Dimension.PRESSURE, "1e5", "bar");
    named("psi", LBF.times(INCH, -2), "1");
    named("Mpsi", LBF.times(INCH, -2), "1000000");
    torques();
    unit(Dimension.MASS, "1e-3", "g", "gram", "grams");
    unit(Dimension.MASS, "0.028349523125", "oz");
    unit(Dimension.ANGLE, "1", "rad");
    unit(Dimension.ANGLE, "1e-3", "mrad");
    unit(Dimension.NONE, "1e-6", "ppm");
    unit(Dimension.TEMPERATURE, "1e-3", "mK");
    BigDecimal fahrenheit = BigDecimal.ONE.divide(new BigDecimal("1.8"), Unit.DIGITS);
    BigDecimal zero = new BigDecimal("459.67").multiply(fahrenheit, Unit.DIGITS);
    add(new Unit("°F", "°F", Dimension.TEMPERATURE, fahrenheit, zero), "degF");
    unit(Dimension.TIME, "1e-3", "ms");
    unit(Dimension.TIME, "60", "min", "minute", "minutes");
    unit(Dimension.TIME, "3600", "h", "hour", "hours");
    unit(Dimension.TIME.power(-1), "1e3", "kHz");
    overlays();
  }

  private UnitCatalog() {}

  private static void restOfLengths() {
    unit(Dimension.LENGTH, "0.01", "cm");
    unit(Dimension.LENGTH, "0.3048", "ft", "foot", "feet", "'");
    explained("thou", "0.001 in", "0.0000254", "thous", "thousandth", "thousandths");
    explained("tenth", "0.0001 in", "0.00000254", "tenths");
    explained("millionth", "0.000001 in", "0.0000000254", "millionths");
  }

  private static void torques() {
    alias(NEWTON_METRE, "Nm", "N.m");
    Unit millinewtonMetre = named("mN·m", NEWTON_METRE, "0.001");
    alias(millinewtonMetre, "mNm", "mN.m");
    alias(named("cN·m", NEWTON_METRE, "0.01"), "cNm", "cN.m");
    alias(named("N·cm", NEWTON_METRE, "0.01"), "Ncm", "N.cm");
    alias(named("N·mm", NEWTON_METRE, "0.001"), "Nmm", "N.mm");
    alias(named("kN·m", NEWTON_METRE, "1000"), "kNm", "kN.m");
    // The trade's torque "inch ounce" is an ounce of force; as a mass times a length it means
    // nothing.
    alias(named("in·ozf", INCH_LBF, "0.0625"), "in·oz", "oz·in", "in-oz", "oz-in", "in*oz");
  }

  private static void overlays() {
    Unit minute = new Unit("'", "arcmin", Dimension.ANGLE, ARC_MINUTE.scale(), BigDecimal.ZERO);
    Unit second = new Unit("\"", "arcsec", Dimension.ANGLE, ARC_SECOND.scale(), BigDecimal.ZERO);
    for (String spelling : new String[] {"'", "min", "minute", "minutes"}) {
      IN_ANGLES.put(spelling, minute);
    }
    for (String spelling : new String[] {"\"", "sec", "second", "seconds"}) {
      IN_ANGLES.put(spelling, second);
    }
    IN_ANGLES.put("d", DEGREE);
    Unit gravity =
        new Unit(
            "g",
            "g (9.80665 m/s^2)",
            QuantityKind.ACCELERATION.dimension(),
            new BigDecimal("9.80665"),
            BigDecimal.ZERO);
    IN_ACCELERATIONS.put("g", gravity);
  }

  private static BigDecimal pi(String partsOfHalfTurn) {
    return new BigDecimal("3.141592653589793238462643383279502884197169")
        .divide(new BigDecimal(partsOfHalfTurn), Unit.DIGITS);
  }

  private static Unit unit(Dimension dimension, String scale, String symbol, String... spellings) {
    return unit(dimension, new BigDecimal(scale), symbol, spellings);
  }

  private static Unit unit(
      Dimension dimension, BigDecimal scale, String symbol, String... spellings) {
    return add(new Unit(symbol, symbol, dimension, scale, BigDecimal.ZERO), spellings);
  }

  private static void explained(String word, String inches, String metres, String... spellings) {
    String full = word + " (" + inches + ")";
    add(new Unit(word, full, Dimension.LENGTH, new BigDecimal(metres), BigDecimal.ZERO), spellings);
  }

  private static Unit named(String symbol, Unit compound, String factor) {
    BigDecimal scale = compound.scale().multiply(new BigDecimal(factor), Unit.DIGITS);
    return add(new Unit(symbol, symbol, compound.dimension(), scale, BigDecimal.ZERO));
  }

  private static Unit add(Unit unit, String... spellings) {
    GENERAL.put(unit.symbol(), unit);
    alias(unit, spellings);
    return unit;
  }

  private static void alias(Unit unit, String... spellings) {
    for (String spelling : spellings) {
      GENERAL.put(spelling, unit);
    }
  }

  /**
   * Finds a unit.
   *
   * <p>Where an angle is expected, {@code min}, {@code sec}, {@code '} and {@code "} are parts of a
   * degree; elsewhere they are time, foot and inch. Where an acceleration is expected, {@code g} is
   * standard gravity; elsewhere it is the gram.
   *
   * @param spelling one unit, not a product
   * @param expected what is to be read
   * @return the unit or null if it is unknown
   */
  static Unit find(String spelling, QuantityKind expected) {
    Unit special = null;
    if (expected == QuantityKind.ANGLE) {
      special = IN_ANGLES.get(spelling);
    } else if (expected == QuantityKind.ACCELERATION) {
      special = IN_ACCELERATIONS.get(spelling);
    }
    return special != null ? special : GENERAL.get(spelling);
  }

  /**
   * Explains a trade word where it needs it.
   *
   * @param symbol spelling of a unit or of a product
   * @return the symbol, with its meaning for thou and tenth
   */
  static String explained(String symbol) {
    Unit unit = GENERAL.get(symbol);
    return unit == null || unit.inFull().equals(unit.symbol()) ? symbol : unit.inFull();
  }

  /**
   * Lists spellings for suggestions.
   *
   * @param dimension only units of this dimension; null for all
   * @return spellings in no order
   */
  static List<String> spellings(Dimension dimension) {
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, Unit> entry : GENERAL.entrySet()) {
      if (dimension == null || entry.getValue().dimension().equals(dimension)) {
        found.add(entry.getKey());
      }
    }
    return found;
  }
}
