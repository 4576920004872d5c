package reseat.report.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.elementary.Elementary;
import reseat.study.SweepAxis;
import reseat.study.SweepStudy;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** The unit system of a sweep: that of the first quantity which the user typed. */
public final class SweepUnits {

  private SweepUnits() {}

  /** Whether inch units were typed. */
  public static boolean inch(SweepStudy study) {
    for (SweepAxis axis : study.plan().axes()) {
      if (axis.unit().isPresent()) {
        return isInch(axis.unit().get());
      }
    }
    return false;
  }

  /** A unit that is a round number of none of the metric system's. */
  private static boolean isInch(Unit unit) {
    if (unit.dimension().equals(QuantityKind.ANGLE.dimension())
        || unit.dimension().equals(QuantityKind.RATIO.dimension())) {
      return false;
    }
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

  /** A typed value in the other unit system, if it is a quantity that has one. */
  public static Optional<String> other(SweepAxis axis, int value) {
    Optional<QuantityKind> kind = axis.key().kind().filter(k -> k != QuantityKind.RATIO);
    if (axis.unit().isEmpty() || kind.isEmpty() || kind.get() == QuantityKind.ANGLE) {
      return Optional.empty();
    }
    double si = axis.numbers().get(value);
    String metric = QuantityFormat.metric(si, kind.get());
    String inch = QuantityFormat.inch(si, kind.get());
    return metric.equals(inch)
        ? Optional.empty()
        : Optional.of(isInch(axis.unit().get()) ? metric : inch);
  }

  /** One column for each output. */
  public static List<OutputColumn> columns(SweepStudy study) {
    boolean inch = inch(study);
    List<OutputColumn> columns = new ArrayList<>();
    for (int i = 0; i < study.plan().outputs().size(); i++) {
      columns.add(OutputColumn.of(study.plan().outputs().get(i), study.points(), i, inch));
    }
    return columns;
  }
}
