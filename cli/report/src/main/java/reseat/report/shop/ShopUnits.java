package reseat.report.shop;

import reseat.space.Vec3;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * How a shop writes sizes: in its own units, with the other in brackets where both are wanted,
 * millimetres to three decimals and inches to four, over a gauge to five, small motions to two
 * figures.
 *
 * @param inchFirst whether inches come first
 * @param both whether the other system stands beside it in brackets
 */
public record ShopUnits(boolean inchFirst, boolean both) {

  /** Both systems. */
  public ShopUnits(boolean inchFirst) {
    this(inchFirst, true);
  }

  /** What a motion or an error below is written as, m. */
  private static final double NOTHING = 0.5e-9;

  /** Breaks only between the two, never between a number and its unit. */
  public String pair(String metric, String inch) {
    String first = whole(inchFirst ? inch : metric);
    return metric.equals(inch) || !both
        ? first
        : first + " (" + whole(inchFirst ? metric : inch) + ")";
  }

  private static String whole(String text) {
    return text.replace(' ', '\u00a0');
  }

  /** A size of a part. */
  public String size(double metres) {
    return pair(
        QuantityFormat.fixed(metres, UnitCatalog.MM, 3),
        QuantityFormat.fixed(metres, UnitCatalog.INCH, 4));
  }

  /** A height over a gauge. */
  public String height(double metres) {
    return pair(
        QuantityFormat.fixed(metres, UnitCatalog.MM, 3),
        QuantityFormat.fixed(metres, UnitCatalog.INCH, 5));
  }

  /** A height over a gauge that must not be passed: rounded to the inside of its band. */
  public String limit(double metres, boolean upper) {
    return pair(
        QuantityFormat.bounded(metres, UnitCatalog.MM, 3, !upper),
        QuantityFormat.bounded(metres, UnitCatalog.INCH, 5, !upper));
  }

  /**
   * A gap that must not be less: rounded up to a hundredth of a millimetre, to a tenth of a thou.
   */
  public String gap(double metres) {
    return pair(
        QuantityFormat.bounded(metres, UnitCatalog.MM, 2, true),
        QuantityFormat.bounded(metres, UnitCatalog.INCH, 4, true));
  }

  /** A motion or an error that a model gives: two figures. */
  public String small(double metres) {
    return pair(two(metres, UnitCatalog.UM) + " µm", two(metres, UnitCatalog.UIN) + " µin");
  }

  /** A motion with what it may be off either way, both to two figures. */
  public String small(double metres, double either) {
    return pair(
        plusMinus(metres, either, UnitCatalog.UM), plusMinus(metres, either, UnitCatalog.UIN));
  }

  private static String plusMinus(double metres, double either, Unit unit) {
    return two(metres, unit) + " ± " + two(either, unit) + " " + unit.symbol();
  }

  /** The number alone in the small unit that comes first, with its sign. */
  public String signed(double metres) {
    String number = two(metres, inchFirst ? UnitCatalog.UIN : UnitCatalog.UM);
    return metres > 0 && !number.equals("0") ? "+" + number : number;
  }

  /** Two figures; below half a nanometre nothing. */
  private static String two(double metres, Unit unit) {
    return Math.abs(metres) < NOTHING ? "0" : QuantityFormat.significantNumber(metres, unit, 2);
  }

  /** A length to two figures, in the larger units from 0.1 mm. */
  public String coarse(double metres) {
    return Math.abs(metres) < 1e-4
        ? small(metres)
        : pair(
            QuantityFormat.significant(metres, UnitCatalog.MM, 2),
            QuantityFormat.significant(metres, UnitCatalog.INCH, 2));
  }

  /** A tolerance: as many digits as it was given. */
  public String tolerance(double metres) {
    return pair(
        QuantityFormat.significantNumber(metres, UnitCatalog.UM, 3) + " µm",
        QuantityFormat.significantNumber(metres, UnitCatalog.UIN, 3) + " µin");
  }

  public String force(double newtons) {
    return either(newtons, QuantityKind.FORCE);
  }

  public String either(double si, QuantityKind kind) {
    return pair(QuantityFormat.metric(si, kind), QuantityFormat.inch(si, kind));
  }

  /** A point in the coupling frame, in one unit to save room. */
  public String point(Vec3 p) {
    Unit unit = inchFirst ? UnitCatalog.INCH : UnitCatalog.MM;
    int decimals = inchFirst ? 3 : 2;
    return QuantityFormat.fixedNumber(p.x(), unit, decimals)
        + ", "
        + QuantityFormat.fixedNumber(p.y(), unit, decimals)
        + ", "
        + QuantityFormat.fixedNumber(p.z(), unit, decimals)
        + " "
        + unit.symbol();
  }

  /** The step in which a setting is told: 1 µm, or 10 µin. */
  public double step() {
    return inchFirst ? UnitCatalog.UIN.toSi(10) : UnitCatalog.UM.toSi(1);
  }

  /** Moves to be set, small to large. */
  public double[] moves() {
    Unit unit = inchFirst ? UnitCatalog.UIN : UnitCatalog.UM;
    double[] numbers =
        inchFirst
            ? new double[] {50, 100, 200, 500, 1000, 2000, 5000, 10_000}
            : new double[] {1, 2, 5, 10, 20, 50, 100, 200};
    double[] moves = new double[numbers.length];
    for (int i = 0; i < moves.length; i++) {
      moves[i] = unit.toSi(numbers[i]);
    }
    return moves;
  }

  /** A move of that list, written as it is meant. */
  public String move(double metres) {
    return inchFirst
        ? FilledText.of("%.0f µin", UnitCatalog.UIN.fromSi(metres))
        : FilledText.of("%.0f µm", UnitCatalog.UM.fromSi(metres));
  }

  /** An angle in degrees to 0.01, and in degrees and minutes. */
  public static String angle(double radians) {
    return QuantityFormat.fixed(radians, UnitCatalog.DEGREE, 2)
        + " ("
        + QuantityFormat.degreesMinutes(radians)
        + ")";
  }
}
