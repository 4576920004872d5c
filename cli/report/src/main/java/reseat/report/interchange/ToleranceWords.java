package reseat.report.interchange;

import reseat.design.ToleranceKind;
import reseat.interchange.Contributor;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.UnitSystem;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** Limits and sensitivities in the units of the workshop. */
public final class ToleranceWords {

  private ToleranceWords() {}

  /** What a deviation is told in. */
  private static Unit unit(ToleranceKind.Measure measure, UnitSystem system) {
    return switch (measure) {
      case LENGTH -> new FigureText(system).column(QuantityKind.LENGTH);
      case ANGLE -> UnitCatalog.ARC_MINUTE;
      case TEMPERATURE -> UnitCatalog.KELVIN;
    };
  }

  /**
   * A limit by three figures.
   *
   * @param c whose limit
   * @param limit m, rad or K
   * @param system the units asked for; metric ones where both are
   * @return with its unit
   */
  public static String limit(Contributor c, double limit, UnitSystem system) {
    Unit unit = unit(c.kind().measure(), system);
    return "± " + PageNumbers.figures(unit.fromSi(limit), 3) + " " + unit.symbol();
  }

  /**
   * How far the tool point moves for each unit of a deviation.
   *
   * @param c whose deviation
   * @param metresPerSi m for each m, rad or K
   * @param system the units asked for; metric ones where both are
   * @return signed, by three figures
   */
  public static String sensitivity(Contributor c, double metresPerSi, UnitSystem system) {
    double perUnit =
        unit(ToleranceKind.Measure.LENGTH, system)
            .fromSi(metresPerSi * unit(c.kind().measure(), system).toSi(1));
    return (perUnit > 0 ? "+" : "") + PageNumbers.figures(perUnit, 3);
  }

  /**
   * The unit of a sensitivity.
   *
   * @param c whose deviation
   * @param system the units asked for; metric ones where both are
   * @return for instance {@code µm/arcmin}
   */
  public static String perUnit(Contributor c, UnitSystem system) {
    return unit(ToleranceKind.Measure.LENGTH, system).symbol()
        + "/"
        + unit(c.kind().measure(), system).symbol();
  }
}
