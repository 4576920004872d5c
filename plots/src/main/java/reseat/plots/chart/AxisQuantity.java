package reseat.plots.chart;

import java.util.Locale;
import reseat.elementary.Elementary;
import reseat.plots.NumberText;

/**
 * What an axis shows, and in which unit.
 *
 * @param name the quantity, for instance {@code peak pressure}
 * @param unit the unit on the axis, for instance {@code GPa}; empty for a pure number
 * @param unitInSi one such unit in SI, for instance 1e9
 */
public record AxisQuantity(String name, String unit, double unitInSi) {

  /** Preload force, N. */
  public static final AxisQuantity PRELOAD = new AxisQuantity("preload", "N", 1);

  /** Greatest contact pressure, GPa. */
  public static final AxisQuantity PRESSURE = new AxisQuantity("peak pressure", "GPa", 1e9);

  /** Stiffness at the tool point, N/&micro;m. */
  public static final AxisQuantity STIFFNESS =
      new AxisQuantity("stiffness at the tool point", "N/\u00b5m", 1e6);

  /** How far the preload sinks the holder, &micro;m. */
  public static final AxisQuantity SINK = new AxisQuantity("sink under preload", "\u00b5m", 1e-6);

  /** Scatter of the tool point over mounts, &micro;m. */
  public static final AxisQuantity SCATTER =
      new AxisQuantity("scatter at the tool point", "\u00b5m", 1e-6);

  /** Ball diameter, mm. */
  public static final AxisQuantity BALL_DIAMETER = new AxisQuantity("ball diameter", "mm", 1e-3);

  /** Refuses a nameless quantity and a unit without size. */
  public AxisQuantity {
    if (name.isBlank()) {
      throw new IllegalArgumentException("an axis needs the name of a quantity");
    }
    if (!(unitInSi > 0) || Double.isInfinite(unitInSi)) {
      throw new IllegalArgumentException("unit " + unit + " must be positive in SI");
    }
  }

  /**
   * Returns a length on an axis in micrometres.
   *
   * @param name the quantity
   * @return the axis
   */
  public static AxisQuantity micrometres(String name) {
    return new AxisQuantity(name, "\u00b5m", 1e-6);
  }

  /**
   * Returns what is written along the axis.
   *
   * @return for instance {@code peak pressure, GPa}
   */
  public String label() {
    return unit.isEmpty() ? name : name + ", " + unit;
  }

  /**
   * Returns the name as the beginning of a heading.
   *
   * @return the name with a capital
   */
  public String heading() {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /**
   * Tells an SI value in the axis's unit.
   *
   * @param si value in SI
   * @return value in the unit
   */
  public double of(double si) {
    return si / unitInSi;
  }

  /**
   * Writes an SI value in the axis's unit.
   *
   * @param si value in SI
   * @param digits significant digits
   * @return number and unit
   */
  public String text(double si, int digits) {
    return unit.isEmpty()
        ? NumberText.significant(of(si), digits)
        : NumberText.with(of(si), digits, unit);
  }

  /**
   * Writes an SI value by the decimals that a scale of differences calls for.
   *
   * @param si value in SI
   * @param scale difference that matters, SI; its second figure is the last that is written
   * @return number and unit
   */
  public String textTo(double si, double scale) {
    double size = Math.abs(of(scale));
    int decimals =
        size > 0 ? (int) Math.max(0, Math.min(9, 1 - Math.floor(Elementary.log10(size)))) : 3;
    String number = NumberText.decimals(of(si), decimals);
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
