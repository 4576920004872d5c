package reseat.report.search;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.check.Measure;
import reseat.plots.chart.AxisQuantity;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.UnitSystem;
import reseat.study.Output;
import reseat.study.OutputValue;
import reseat.study.SweepPoint;
import reseat.units.QuantityFormat;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * One output of a sweep as people read it: one unit for all its values, three figures.
 *
 * @param output the output
 * @param unit its unit; empty for a plain factor
 */
public record OutputColumn(Output output, Optional<Unit> unit) {

  /** Below this a column of lengths is written in µm or µin, m. */
  private static final double SMALL = 0.5e-3;

  /**
   * Chooses the unit.
   *
   * @param output the output
   * @param points all points of the sweep
   * @param index place of the output in each point
   * @param system the units asked for; metric ones where both are
   * @return the column
   */
  public static OutputColumn of(
      Output output, List<SweepPoint> points, int index, UnitSystem system) {
    boolean inch = system == UnitSystem.INCH;
    double most = 0;
    for (SweepPoint p : points) {
      double value = p.outputs().get(index).map(OutputValue::value).orElse(0.0);
      most = Double.isFinite(value) ? Math.max(most, Math.abs(value)) : most;
    }
    Optional<Unit> unit =
        switch (output.kind()) {
          case LENGTH ->
              Optional.of(
                  most < SMALL
                      ? (inch ? UnitCatalog.UIN : UnitCatalog.UM)
                      : (inch ? UnitCatalog.INCH : UnitCatalog.MM));
          case PRESSURE -> Optional.of(inch ? UnitCatalog.KSI : UnitCatalog.GPA);
          case FORCE -> Optional.of(inch ? UnitCatalog.LBF : UnitCatalog.NEWTON);
          case STIFFNESS -> Optional.of(inch ? UnitCatalog.LBF_PER_INCH : UnitCatalog.N_PER_UM);
          case FREQUENCY -> Optional.of(UnitCatalog.HERTZ);
          default -> Optional.empty();
        };
    return new OutputColumn(output, unit);
  }

  /** The unit for a heading. */
  public String unitText() {
    return unit.map(Unit::symbol).orElse("");
  }

  /** A value without its unit. */
  public String number(double si) {
    if (Double.isInfinite(si)) {
      return "never";
    }
    return unit.map(u -> QuantityFormat.significantNumber(si, u, 3))
        .orElseGet(
            () -> si >= 1000 ? FigureText.BOTH.of(Measure.FACTOR, si) : PageNumbers.figures(si, 3));
  }

  /**
   * Writes a limit or the ends of a range.
   *
   * @param least SI
   * @param most SI
   * @return one number or two, with the unit behind
   */
  public String range(double least, double most) {
    String low = number(least);
    String high = number(most);
    String numbers = low.equals(high) ? high : low + " to " + high;
    return unit.isEmpty() || high.equals("never") ? numbers : numbers + " " + unitText();
  }

  /** The axis of a picture. */
  public AxisQuantity axis() {
    return new AxisQuantity(
        KeyWords.ofOutput(output.name()), unitText(), unit.map(u -> u.toSi(1)).orElse(1.0));
  }

  /** The SI unit for programs. */
  public String si() {
    return switch (output.kind()) {
      case LENGTH -> "m";
      case PRESSURE -> "Pa";
      case FORCE -> "N";
      case STIFFNESS -> "N/m";
      case FREQUENCY -> "Hz";
      case RATIO -> "1";
      default -> output.kind().name().toLowerCase(Locale.ROOT);
    };
  }
}
