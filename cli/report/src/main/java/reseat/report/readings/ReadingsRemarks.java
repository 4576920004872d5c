package reseat.report.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import reseat.elementary.Elementary;
import reseat.readings.BoundsGround;
import reseat.readings.ColumnAnalysis;
import reseat.readings.ControlChart;
import reseat.readings.Drift;
import reseat.readings.GaugeNoise;
import reseat.readings.OutlierCause;
import reseat.readings.Outliers;
import reseat.readings.ProofOfTarget;
import reseat.readings.Repeatability;
import reseat.readings.ScatterBounds;
import reseat.readings.SeriesAnalysis;
import reseat.readings.SeriesDecision;
import reseat.readings.SeriesVersion;
import reseat.readings.ShapelessBound;
import reseat.readings.TemperatureRegression;
import reseat.readings.UnitSlip;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;
import reseat.units.QuantityKind;

/** What stands out in a remount series, one sentence each, and what to do about it. */
public final class ReadingsRemarks {

  /** Below this the bound on the scatter is near to what was found. */
  private static final double FEW = 1.1;

  /** Mounts that stand out and are named one by one on the short screen. */
  private static final int NAMED = 4;

  private final ReadingsReport report;
  private final SeriesAnalysis analysis;
  private final SeriesDecision decision;
  private final List<String> out = new ArrayList<>();

  private final boolean brief;

  private ReadingsRemarks(ReadingsReport report, boolean brief) {
    this.report = report;
    this.brief = brief;
    this.analysis = report.analysis();
    this.decision = report.decision();
  }

  /**
   * Lists the remarks.
   *
   * @param report what is reported
   * @return one text each
   */
  public static List<String> of(ReadingsReport report) {
    ReadingsRemarks remarks = new ReadingsRemarks(report, false);
    remarks.analysis.columns().forEach(remarks::about);
    remarks.aboutTheBound();
    remarks.analysis.columns().forEach(remarks::aboutLaterChecks);
    return remarks.out;
  }

  /**
   * Lists the remarks in short: readings that stand out by their mount, no target that is proven,
   * no limits that are kept; what is said of several probes is said once.
   *
   * @param report what is reported
   * @return one text each
   */
  public static List<String> brief(ReadingsReport report) {
    ReadingsRemarks remarks = new ReadingsRemarks(report, true);
    remarks.flaggedMounts();
    remarks.analysis.columns().forEach(remarks::about);
    remarks.aboutTheBound();
    remarks.analysis.columns().forEach(remarks::aboutLaterChecks);
    return joined(remarks.out);
  }

  /** Joins remarks that differ only in the name before their colon. */
  private static List<String> joined(List<String> remarks) {
    Map<String, String> names = new LinkedHashMap<>();
    for (String remark : remarks) {
      int colon = remark.indexOf(": ");
      String name = colon < 0 ? "" : remark.substring(0, colon);
      names.merge(remark.substring(colon < 0 ? 0 : colon + 2), name, (a, b) -> a + ", " + b);
    }
    List<String> out = new ArrayList<>();
    names.forEach((text, name) -> out.add(name.isEmpty() ? text : name + ": " + text));
    return out;
  }

  private void flaggedMounts() {
    Map<Integer, List<String>> mounts = new TreeMap<>();
    for (ColumnAnalysis c : analysis.columns()) {
      for (Outliers.Flag f : c.flagged()) {
        mounts
            .computeIfAbsent(f.index(), i -> new ArrayList<>())
            .add(c.column().name() + " " + ReadingFigures.reading(c, f.value()) + slip(c, f));
      }
    }
    if (mounts.isEmpty()) {
      return;
    }
    List<String> told = new ArrayList<>();
    mounts.forEach(
        (index, read) ->
            told.add(
                (told.isEmpty() ? "Mount " : "mount ")
                    + analysis.series().cycle(index)
                    + " (line "
                    + analysis.series().line(index)
                    + (told.isEmpty() ? ") stands out in " : ") in ")
                    + String.join(", ", read)));
    int more = told.size() - NAMED;
    out.add(
        String.join("; ", told.subList(0, Math.min(NAMED, told.size())))
            + (more > 0 ? "; and " + more + " more" : "")
            + (told.size() == 1 ? "; it is counted, and makes" : "; they are counted, and make")
            + " the bounds rough. Look for a chip or a misreading before leaving "
            + (told.size() == 1
                ? "it out (put # before its line)."
                : "one out (put # before its line)."));
  }

  public static String percent(double share) {
    return FilledText.of("%s %%", number(100 * share));
  }

  private static String number(double value) {
    double rounded = Elementary.rint(value * 1e6) / 1e6;
    return rounded == Elementary.rint(rounded)
        ? String.valueOf((long) rounded)
        : PrintedNumber.shortest(rounded);
  }

  private static String p(double p) {
    return p < 0.001 ? "p below 0.001" : FilledText.of("p %.3f", p);
  }

  private void about(ColumnAnalysis c) {
    String name = c.column().name() + ": ";
    if (c.scatter().freedom() > 0 && c.scatter().s() == 0) {
      out.add(
          name
              + "all settled readings are equal: the gauge cannot resolve this mount. "
              + c.bounds()
                  .map(
                      b ->
                          "From its step the true s is below "
                              + ReadingFigures.scatter(c, b.upperOneSided())
                              + " with "
                              + percent(b.confidence())
                              + " confidence.")
                  .orElse("Give its step with --resolution, or use a finer gauge."));
      aboutTarget(c);
      return;
    }
    for (Outliers.Flag f : brief ? List.<Outliers.Flag>of() : c.flagged()) {
      out.add(
          name
              + "mount "
              + analysis.series().cycle(f.index())
              + " (line "
              + analysis.series().line(f.index())
              + ", "
              + ReadingFigures.reading(c, f.value())
              + ") stands out: "
              + FilledText.of("%.2f", f.statistic())
              + " s from the mean, limit "
              + FilledText.of("%.2f", f.limit())
              + slip(c, f)
              + ". It is counted; look for a chip or a misreading before leaving it out (put #"
              + " before its line).");
    }
    c.drift().ifPresent(d -> aboutDrift(c, d));
    c.temperature().ifPresent(t -> aboutTemperature(c, t));
    c.gauge().ifPresent(g -> aboutGauge(c, g));
    c.ground().ifPresent(g -> aboutGround(c, g));
    aboutTarget(c);
  }

  private static String slip(ColumnAnalysis c, Outliers.Flag flag) {
    Optional<OutlierCause> cause = c.cause(flag);
    if (cause.isEmpty()) {
      return "";
    }
    String meant = ReadingFigures.reading(c, cause.get().meant());
    return switch (cause.get().slip()) {
      case SIGN -> ", which fits as " + meant + " with the other sign";
      case DIGITS -> ", which fits as " + meant + " with two digits exchanged";
      case UNIT ->
          ", such a multiple of the others as comes from "
              + cause.get().unit().map(UnitSlip::words).orElse("");
    };
  }

  private void aboutDrift(ColumnAnalysis c, Drift d) {
    if (d.verdict() == Drift.Verdict.STEADY) {
      return;
    }
    String name = c.column().name() + ": ";
    if (d.hasDirection()) {
      out.add(
          name
              + "the settled readings still drift, "
              + ReadingFigures.scatter(c, d.change())
              + " over the test ("
              + p(Math.min(d.line().p(), d.monotonic().p()))
              + "). From mount to mount s is only "
              + ReadingFigures.scatter(c, d.differences().sigma())
              + "; find the drift before quoting the scatter.");
    } else if (d.verdict() == Drift.Verdict.WANDERING) {
      out.add(
          name
              + "neighbouring mounts are more alike than chance allows ("
              + p(d.differences().p())
              + "): something wanders, for instance temperature.");
    } else {
      out.add(
          name
              + "neighbouring mounts alternate more than chance allows ("
              + p(d.differences().p())
              + "): look for two states, for instance two ways of tightening.");
    }
  }

  private void aboutTemperature(ColumnAnalysis c, TemperatureRegression t) {
    if (t.alone().p() >= analysis.options().falseAlarm()) {
      return;
    }
    out.add(
        c.column().name()
            + ": follows the temperature by "
            + ReadingFigures.scatter(c, t.alone().slope())
            + "/K ("
            + p(t.alone().p())
            + ")"
            + (t.isConfounded()
                ? "; but the temperature ran one way through the test, so drift would look the"
                    + " same."
                : "; without it s is " + ReadingFigures.scatter(c, t.alone().residual()) + "."));
  }

  private void aboutGauge(ColumnAnalysis c, GaugeNoise g) {
    String name = c.column().name() + ": ";
    boolean stated = c.isGaugeStated();
    if (g.mount().isEmpty()) {
      out.add(
          name
              + (stated
                  ? "not resolvable: the gauge noise is as large as the scatter"
                  : "not resolvable: the rounding of the readings, to steps of "
                      + ReadingFigures.reading(c, g.resolution())
                      + ", is as large as the scatter")
              + "; the mount is below "
              + ReadingFigures.scatter(
                  c,
                  c.bounds()
                      .map(ScatterBounds::upperOneSided)
                      .orElse(g.mountBelow(analysis.options().confidence())))
              + ". Use a finer gauge.");
    } else if (g.isCoarse()) {
      out.add(
          name
              + (stated ? "the gauge reads in steps of " : "the readings are rounded to steps of ")
              + ReadingFigures.reading(c, g.resolution())
              + ", coarser than the scatter; the bound holds the step.");
    }
  }

  private void aboutGround(ColumnAnalysis c, BoundsGround g) {
    String name = c.column().name() + ": ";
    String bounds = percent(analysis.options().confidence()) + " bounds";
    if (c.isSkewed()) {
      aboutSkew(c);
      return;
    }
    boolean rounded = c.step() > c.scatter().s(); // steps are no shape
    if (!rounded
        && g.isNotNormal(analysis.options().falseAlarm())
        && !(brief && !c.flagged().isEmpty())) {
      // A flagged reading alone makes the rest look not normal, and has been told already.
      String look =
          c.flagged().isEmpty()
              ? "the settled readings do not look normal ("
                  + p(g.shapeP().getAsDouble())
                  + FilledText.of(", skewness %.1f", g.skewness())
                  + "): perhaps two resting places. The "
              : "with the flagged reading the shape is not normal. The ";
      out.add(
          name
              + look
              + bounds
              + " and intervals assume normal readings and are rough: of readings as skewed as"
              + " waiting times an upper 95 % bound holds 77 to 80 % of the time.");
    }
    boolean drifts = c.trend() == Drift.Verdict.RISING || c.trend() == Drift.Verdict.FALLING;
    if (g.isNotIndependent(analysis.options().falseAlarm()) && !(brief && drifts)) {
      out.add(
          name
              + FilledText.of("neighbouring mounts are correlated by %.2f (", g.neighbours())
              + p(g.orderP().getAsDouble())
              + (brief
                  ? "); the " + bounds + " assume that they are not."
                  : "). The "
                      + bounds
                      + " assume mounts that know nothing of each other and are too narrow: at a"
                      + " correlation of 0.5 an upper 95 % bound holds 86 to 88 % of the time."));
    }
  }

  /** Too skewed for a bound: what the extreme readings bound without any shape. */
  private void aboutSkew(ColumnAnalysis c) {
    int n = c.settled().map(Repeatability::n).orElse(0);
    double confidence = analysis.options().confidence();
    out.add(
        c.column().name()
            + FilledText.of(
                ": the readings are skewed (%.1f), and no bound on s holds. ", c.skewness())
            + "Their range is "
            + ReadingFigures.reading(c, c.settled().map(Repeatability::range).orElse(0.0))
            + "; with "
            + percent(confidence)
            + " confidence "
            + FilledText.of("%.0f %%", 100 * ShapelessBound.between(n, confidence))
            + " of all mounts lie between the smallest and the largest, "
            + FilledText.of("%.0f %%", 100 * ShapelessBound.belowLargest(n, confidence))
            + " below the largest.");
  }

  private void aboutTarget(ColumnAnalysis c) {
    SeriesDecision.OfColumn decided = decision.of(c.column().name());
    String start =
        c.column().name()
            + (brief ? ": target s " : ": the target, true s of at most ")
            + ReadingFigures.given(c, c.target());
    String confidence = percent(analysis.options().confidence());
    switch (decided.word()) {
      case PROVEN -> {
        if (!brief) {
          out.add(start + ", is proven with " + confidence + " confidence.");
        }
      }
      case MISSED ->
          out.add(
              start
                  + " is missed: the true s is above "
                  + ReadingFigures.scatter(c, least(c))
                  + " with "
                  + confidence
                  + " confidence.");
      case NOT_PROVEN -> out.add(start + " is not proven: " + lacks(c, decided));
      case NO_TARGET -> {}
    }
  }

  /** Least lower bound of all ways to count the series. */
  private static double least(ColumnAnalysis c) {
    return c.versions().stream()
        .map(SeriesVersion::bounds)
        .flatMap(Optional::stream)
        .mapToDouble(ScatterBounds::lowerOneSided)
        .min()
        .orElse(0);
  }

  private static String lacks(ColumnAnalysis c, SeriesDecision.OfColumn decision) {
    if (decision.missing().equals(Set.of(SeriesDecision.Missing.MOUNTS))) {
      return "with the same s it takes "
          + ReadingsText.counted(decision.furtherMounts(), "more mount")
          + ".";
    }
    if (decision.missing().equals(Set.of(SeriesDecision.Missing.SCATTER))) {
      return "more mounts with this s will not prove it.";
    }
    SeriesVersion last = c.versions().get(c.versions().size() - 1);
    boolean within =
        last.proof().filter(p -> p.verdict() == ProofOfTarget.Verdict.PROVEN).isPresent();
    String ways =
        switch (last.way()) {
          case AS_READ -> "";
          case WITHOUT_FLAGGED -> "without what stands out";
          case TREND_REMOVED -> "with the trend removed";
          case BOTH -> "without what stands out and the trend";
        };
    return DecisionText.lacks(decision)
        + (ways.isEmpty()
            ? ""
            : "; " + ways + (within ? " the bound is within it" : " the bound is not within it"))
        + ".";
  }

  private void aboutTheBound() {
    analysis.columns().stream()
        .map(ColumnAnalysis::bounds)
        .flatMap(Optional::stream)
        .filter(b -> b.s() > 0)
        .findFirst()
        .ifPresent(this::aboutTheBound);
  }

  private void aboutTheBound(ScatterBounds b) {
    double times = b.upperOneSided() / b.s();
    if (times < 1.005) {
      return; // the scatter is known
    }
    out.add(
        (times < FEW ? "From " : "With only ")
            + FilledText.of(
                "%d mounts the true scatter may be up to %.2f times this (%s",
                b.n(), times, percent(b.confidence()))
            + (brief ? ")." : ", for normal, independent readings)."));
  }

  private void aboutLaterChecks(ColumnAnalysis c) {
    ControlChart chart = report.later().get(c.column().name());
    if (chart == null) {
      return;
    }
    int added = chart.readings().size() - chart.baseline();
    String name = (brief ? "later " : report.laterFile() + ", ") + c.column().name() + ": ";
    List<ControlChart.Signal> signals =
        chart.signals().stream().filter(s -> s.index() >= chart.baseline()).toList();
    if (brief && !signals.isEmpty()) {
      signals.forEach(
          signal ->
              out.add(
                  "Later "
                      + c.column().name()
                      + ", reading "
                      + (signal.index() - chart.baseline() + 1)
                      + ": "
                      + signal.rule().words()
                      + "."));
      return;
    }
    out.add(
        name
            + ReadingsText.counted(added, "later reading")
            + (signals.isEmpty() ? " within " : " held to ")
            + ReadingFigures.level(c, chart.lowerLimit())
            + " to "
            + ReadingFigures.level(c, chart.upperLimit())
            + (signals.isEmpty() ? ", no run seen." : ".")
            + (c.flagged().isEmpty()
                ? ""
                : " The limits are wide: they hold the flagged reading of the first series."));
    for (ControlChart.Signal s : signals) {
      out.add(
          name + "reading " + (s.index() - chart.baseline() + 1) + ": " + s.rule().words() + ".");
    }
  }

  /**
   * Names the unit of a slope.
   *
   * @param c a column
   * @return true for a length
   */
  public static boolean isLength(ColumnAnalysis c) {
    return c.column().quantity() == QuantityKind.LENGTH;
  }
}
