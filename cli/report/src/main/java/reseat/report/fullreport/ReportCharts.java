package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.budget.BudgetLine;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.NaturalFrequencies;
import reseat.interchange.LinearStack;
import reseat.plots.Picture;
import reseat.plots.chart.BallSizeCurves;
import reseat.plots.chart.BudgetBars;
import reseat.plots.chart.ComplianceShares;
import reseat.plots.chart.CurveRow;
import reseat.plots.chart.FrequencyList;
import reseat.plots.chart.PictureUnits;
import reseat.plots.chart.PreloadCurves;
import reseat.plots.chart.RepeatEllipse;
import reseat.plots.chart.SensitivityRanking;
import reseat.space.Vec3;
import reseat.study.DesignCurve;
import reseat.study.ReportStudy;
import reseat.study.SeatedCheck;

/** The charts of a report, from its results. */
public final class ReportCharts {

  private static final int LEAST_CLOUD = 30;

  /** Contributions below this are rounding, m. */
  private static final double LEAST_SHOWN = 1e-11;

  private ReportCharts() {}

  public static List<Picture> of(ReportStudy study, PictureUnits units) {
    List<Picture> charts = new ArrayList<>();
    SeatedCheck check = study.check();
    charts.add(compliance(check, units));
    frequencies(check).ifPresent(charts::add);
    clouds(study, units).forEach(charts::add);
    study
        .interchange()
        .ifPresent(several -> ranking(check.design(), several.stack(), units).forEach(charts::add));
    budget(study, units).ifPresent(charts::add);
    preloadCurves(study, units).ifPresent(charts::add);
    ballCurves(study, units).ifPresent(charts::add);
    return charts;
  }

  private static Picture compliance(SeatedCheck check, PictureUnits units) {
    CouplingDesign d = check.design();
    List<ComplianceShares.Direction> directions = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      List<ComplianceShares.Part> parts = new ArrayList<>();
      for (CouplingStiffness.Share s :
          check
              .frictionless()
              .stiffness()
              .shares(check.frictionless().toolPoint().point(), d.axes().axis(k).direction())) {
        parts.add(new ComplianceShares.Part(s.name(), s.share()));
      }
      directions.add(
          new ComplianceShares.Direction(
              d.axes().axis(k).name(),
              check.frictionless().toolPoint().alongAxes().component(k),
              parts));
    }
    return ComplianceShares.draw(directions, units);
  }

  private static Optional<Picture> frequencies(SeatedCheck check) {
    NaturalFrequencies stuck = check.sticking().frequencies();
    NaturalFrequencies sliding = check.frictionless().frequencies();
    if (stuck.hertz().isEmpty()) {
      return Optional.empty();
    }
    List<FrequencyList.Mode> modes = new ArrayList<>();
    for (int i = 0; i < stuck.hertz().size(); i++) {
      modes.add(new FrequencyList.Mode(stuck.hertz().get(i), sliding.hertz().get(i)));
    }
    return Optional.of(FrequencyList.draw(modes));
  }

  /** The cloud of mounts in the planes of the first with each other machine axis. */
  private static List<Picture> clouds(ReportStudy study, PictureUnits units) {
    CouplingDesign d = study.check().design();
    List<Picture> clouds = new ArrayList<>();
    List<Vec3> positions = study.positions();
    if (positions.size() < LEAST_CLOUD) {
      return clouds;
    }
    for (int other = 1; other <= 2; other++) {
      int k = other;
      clouds.add(
          RepeatEllipse.draw(
              "repeat-" + k,
              "simulated tool changes of one holder",
              new RepeatEllipse.Plane(
                  d.axes().first().name(),
                  d.axes().axis(k).name(),
                  d.targets().repeatability().limit(0),
                  d.targets().repeatability().limit(k),
                  units),
              positions.stream().mapToDouble(Vec3::x).toArray(),
              positions.stream().mapToDouble(p -> p.component(k)).toArray()));
    }
    return clouds;
  }

  private static List<Picture> ranking(CouplingDesign d, LinearStack stack, PictureUnits units) {
    List<Picture> charts = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      List<SensitivityRanking.Row> rows = new ArrayList<>();
      for (LinearStack.Line l : stack.ranking(LinearStack.EVERYTHING, axis)) {
        rows.add(
            new SensitivityRanking.Row(
                l.effect().contributor().name(), "one standard deviation", l.deviation()));
      }
      if (!rows.isEmpty()) {
        charts.add(
            SensitivityRanking.draw(
                "sensitivity-" + (axis + 1), d.axes().axis(axis).name(), rows, units));
      }
    }
    return charts;
  }

  private static Optional<Picture> budget(ReportStudy study, PictureUnits units) {
    CouplingDesign d = study.check().design();
    List<BudgetBars.Axis> axes = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      List<BudgetBars.Line> lines = new ArrayList<>();
      for (BudgetLine l : study.budget().lines()) {
        double contribution = l.contribution().component(axis);
        // what stays with a holder goes into its offset, and would dwarf what an offset cannot hold
        if (l.nature() == BudgetLine.Nature.RANDOM && contribution > LEAST_SHOWN) {
          lines.add(new BudgetBars.Line(l.source(), contribution));
        }
      }
      if (lines.isEmpty()) {
        continue;
      }
      axes.add(
          new BudgetBars.Axis(
              d.axes().axis(axis).name(),
              lines,
              study.budget().expanded(BudgetLine.Nature.RANDOM).component(axis),
              d.targets().repeatability().limit(axis)));
    }
    return axes.isEmpty() ? Optional.empty() : Optional.of(BudgetBars.draw(axes, units));
  }

  private static Optional<Picture> preloadCurves(ReportStudy study, PictureUnits units) {
    List<CurveRow> rows = new ArrayList<>();
    for (DesignCurve.Point p : study.overPreload().points()) {
      rows.add(row(p));
    }
    return rows.size() < 2
        ? Optional.empty()
        : Optional.of(PreloadCurves.draw(rows, band(study.check()), limits(study.check()), units));
  }

  private static Optional<Picture> ballCurves(ReportStudy study, PictureUnits units) {
    List<CurveRow> rows = new ArrayList<>();
    for (DesignCurve.Point p : study.overBalls().points()) {
      rows.add(row(p));
    }
    double chosen = study.check().design().supports().get(0).ball().diameter();
    return rows.size() < 2
        ? Optional.empty()
        : Optional.of(BallSizeCurves.draw(rows, chosen, limits(study.check()), units));
  }

  private static CurveRow row(DesignCurve.Point p) {
    double scatter = p.scatter().map(Vec3::norm).orElse(Double.POSITIVE_INFINITY);
    return new CurveRow(p.value(), p.peakPressure(), softest(p), p.sink(), scatter);
  }

  private static double softest(DesignCurve.Point p) {
    return Math.min(p.stiffness().x(), Math.min(p.stiffness().y(), p.stiffness().z()));
  }

  /** The band in which every check holds. */
  private static PreloadCurves.Band band(SeatedCheck check) {
    double nominal = check.design().preloads().stream().mapToDouble(Preload::force).sum();
    return check
        .preload()
        .get()
        .map(b -> new PreloadCurves.Band(b.least().force(), b.most().force(), nominal))
        .orElse(new PreloadCurves.Band(nominal, nominal, nominal));
  }

  private static CurveRow.Limits limits(SeatedCheck check) {
    double pressure = Double.POSITIVE_INFINITY;
    for (ContactLimits limits : check.limits()) {
      pressure =
          Math.min(
              pressure,
              limits
                  .governing()
                  .map(l -> check.design().targets().pressureShare() * l.peakPressure())
                  .orElse(Double.POSITIVE_INFINITY));
    }
    return new CurveRow.Limits(pressure, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }
}
