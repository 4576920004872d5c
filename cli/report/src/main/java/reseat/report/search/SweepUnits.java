package reseat.report.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.elementary.Elementary;
import reseat.report.form.UnitSystem;
import reseat.study.SweepAxis;
import reseat.study.SweepStudy;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** The values of a sweep in the unit system that is asked for, whatever units were typed. */
public final class SweepUnits {

  private SweepUnits() {}

  /** A unit that is a round number of none of the metric system's. */
  private static boolean isInch(Unit unit) {
    double si = unit.toSi(1) - unit.toSi(0);
    for (Unit base : List.of(UnitCatalog.INCH, UnitCatalog.LBF, UnitCatalog.LB)) {
      double power = Elementary.log10(si / base.toSi(1));
      if (unit.dimension().equals(base.dimension())
          && Math.abs(power - Elementary.rint(power)) < 1e-9) {
        return true;
      }
    }
    String symbol = unit.symbol();
    return symbol.contains("lbf")
        || symbol.contains("in")
        || symbol.contains("psi")
        || symbol.contains("ksi");
  }

  /** What a key holds, if that is written otherwise in the other unit system. */
  private static Optional<QuantityKind> kind(SweepAxis axis) {
    return axis.unit().isEmpty()
        ? Optional.empty()
        : axis.key().kind().filter(k -> k != QuantityKind.RATIO && k != QuantityKind.ANGLE);
  }

  /**
   * Gives a typed value in the units that are asked for.
   *
   * @param axis a key that is varied
   * @param value which of its values
   * @param system the units asked for
   * @return number and unit; empty if it was typed so
   */
  public static Optional<String> other(SweepAxis axis, int value, UnitSystem system) {
    Optional<QuantityKind> kind = kind(axis);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    double si = axis.numbers().get(value);
    String metric = QuantityFormat.metric(si, kind.get());
    String inch = QuantityFormat.inch(si, kind.get());
    boolean typedInch = isInch(axis.unit().get());
    boolean wanted = system == UnitSystem.BOTH || (system == UnitSystem.INCH) != typedInch;
    return metric.equals(inch) || !wanted
        ? Optional.empty()
        : Optional.of(typedInch ? metric : inch);
  }

  /**
   * Chooses the unit of a key for the axis of a picture.
   *
   * @param axis a key that is varied
   * @param system the units asked for
   * @return the typed unit if it is of that system, else a usual one; empty for a plain number
   */
  public static Optional<Unit> ofAxis(SweepAxis axis, UnitSystem system) {
    Optional<QuantityKind> kind = kind(axis);
    boolean inch = system == UnitSystem.INCH;
    if (kind.isEmpty() || isInch(axis.unit().get()) == inch) {
      return axis.unit();
    }
    return switch (kind.get()) {
      case LENGTH -> Optional.of(inch ? UnitCatalog.INCH : UnitCatalog.MM);
      case FORCE -> Optional.of(inch ? UnitCatalog.LBF : UnitCatalog.NEWTON);
      case STIFFNESS -> Optional.of(inch ? UnitCatalog.LBF_PER_INCH : UnitCatalog.N_PER_UM);
      case PRESSURE -> Optional.of(inch ? UnitCatalog.KSI : UnitCatalog.GPA);
      default -> axis.unit();
    };
  }

  /**
   * Makes one column for each output.
   *
   * @param study a sweep
   * @param system the units asked for
   * @return columns in the order of the outputs
   */
  public static List<OutputColumn> columns(SweepStudy study, UnitSystem system) {
    List<OutputColumn> columns = new ArrayList<>();
    for (int i = 0; i < study.plan().outputs().size(); i++) {
      columns.add(OutputColumn.of(study.plan().outputs().get(i), study.points(), i, system));
    }
    return columns;
  }
}
