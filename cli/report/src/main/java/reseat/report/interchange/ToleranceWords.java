package reseat.report.interchange;

import reseat.design.ToleranceKind;
import reseat.interchange.Contributor;
import reseat.report.form.Shown;
import reseat.units.UnitCatalog;

/** Limits and sensitivities in the units of the workshop. */
public final class ToleranceWords {

  private ToleranceWords() {}

  /** What a deviation is told in. */
  public static String unit(ToleranceKind.Measure measure) {
    return switch (measure) {
      case LENGTH -> "µm";
      case ANGLE -> "arcmin";
      case TEMPERATURE -> "K";
    };
  }

  /** A limit by three figures, with its unit. */
  public static String limit(Contributor c, double limit) {
    double inUnit =
        switch (c.kind().measure()) {
          case LENGTH -> UnitCatalog.UM.fromSi(limit);
          case ANGLE -> UnitCatalog.ARC_MINUTE.fromSi(limit);
          case TEMPERATURE -> limit;
        };
    return "± " + Shown.figures(inUnit, 3) + " " + unit(c.kind().measure());
  }

  /** A sensitivity in µm per unit of the deviation, signed, by three figures. */
  public static String sensitivity(Contributor c, double metresPerSi) {
    double perUnit =
        switch (c.kind().measure()) {
          case LENGTH -> metresPerSi;
          case ANGLE -> UnitCatalog.UM.fromSi(metresPerSi * UnitCatalog.ARC_MINUTE.toSi(1));
          case TEMPERATURE -> UnitCatalog.UM.fromSi(metresPerSi);
        };
    return (perUnit > 0 ? "+" : "") + Shown.figures(perUnit, 3);
  }

  /** What a sensitivity is told in. */
  public static String perUnit(Contributor c) {
    return "µm/" + unit(c.kind().measure());
  }
}
