package reseat.report.interchange;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  /** What a length in millimetres within a name looks like. */
  private static final Pattern LENGTH = Pattern.compile("\\(([0-9.]+) mm\\)");

  private ToleranceWords() {}

  /**
   * Names a toleranced dimension.
   *
   * @param c which
   * @param system the units asked for
   * @return its name, with a size in it written in those units
   */
  public static String name(Contributor c, UnitSystem system) {
    Matcher size = LENGTH.matcher(c.name());
    return size.find()
        ? c.name().substring(0, size.start(1))
            + new FigureText(system)
                .dimension(UnitCatalog.MM.toSi(Double.parseDouble(size.group(1))))
            + c.name().substring(size.end() - 1)
        : c.name();
  }

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
