package reseat.report.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import reseat.readings.MeasuredSeries;
import reseat.readings.PredictionTest;
import reseat.report.form.Paragraph;
import reseat.report.form.Shown;
import reseat.report.form.TextTable;
import reseat.study.AmountFit;
import reseat.study.AmountFit.Amount;
import reseat.study.PredictionStudy;
import reseat.units.FilledText;

/** Measured scatter beside the simulated one, as text. */
public final class PredictionText {

  /** Probability of a misfit below which the causes are said not to explain the readings. */
  private static final double MISFIT = 0.01;

  private PredictionText() {}

  public static String of(PredictionStudy study, MeasuredSeries series) {
    StringBuilder out = new StringBuilder();
    out.append("Against the prediction (" + study.mounts() + " simulated tool changes)\n");
    out.append(tests(study).text());
    study.fit().ifPresent(f -> out.append(fit(f, study)));
    List<String> advice = advice(study, series);
    for (int i = 0; i < advice.size(); i++) {
      out.append(Paragraph.of("", (i == 0 ? "What to do first: " : "Then: ") + advice.get(i)));
    }
    return out.toString();
  }

  /** The comparison, axis by axis. */
  public static TextTable tests(PredictionStudy study) {
    TextTable table =
        new TextTable(
            "lrrrrl",
            "axis",
            "measured s, µm",
            "predicted s, µm",
            "ratio",
            "true ratio between",
            "verdict");
    study.tests().forEach(t -> row(table, t, ""));
    study.typical().forEach(t -> row(table, t, ", without flagged"));
    return table;
  }

  private static void row(TextTable table, PredictionTest t, String which) {
    table.row(
        t.axis() + which,
        Shown.micrometres(t.measured()),
        Shown.micrometres(t.predicted()),
        Shown.figures(t.ratio(), 2),
        Shown.figures(t.ratioLow(), 2) + " to " + Shown.figures(t.ratioHigh(), 2),
        verdict(t));
  }

  public static String verdict(PredictionTest t) {
    return switch (t.verdict()) {
      case AS_PREDICTED -> "as predicted";
      case MORE -> "scatters more; excess s " + Shown.micrometres(t.excess()) + " µm";
      case LESS -> "scatters less than predicted";
    };
  }

  private static String fit(AmountFit fit, PredictionStudy study) {
    StringBuilder out = new StringBuilder();
    out.append("\nAmounts from mount to mount with which the simulation scatters as measured");
    out.append(study.flagged().isEmpty() ? "\n" : " (without the flagged mounts)\n");
    out.append(amounts(fit).text());
    told(fit, study).forEach(t -> out.append(Paragraph.of("", t)));
    return out.toString();
  }

  /** The amounts of each cause. */
  public static TextTable amounts(AmountFit fit) {
    TextTable table =
        new TextTable("lrrrrl", "cause", "assumed", "fits best", "between", "share", "direction");
    for (Amount a : fit.amounts()) {
      table.row(
          a.cause().words(),
          amount(a, a.assumed()),
          amount(a, a.fitted()),
          number(a, a.low()) + " to " + amount(a, a.high()),
          Shown.percent(a.share()),
          direction(a));
    }
    return table;
  }

  /** What the amounts are worth. */
  public static List<String> told(AmountFit fit, PredictionStudy study) {
    List<String> out = new ArrayList<>();
    List<String> axes = new ArrayList<>();
    for (int i = 0; i < study.axes().size(); i++) {
      axes.add(study.axes().get(i) + " " + Shown.micrometres(fit.simulated().get(i)) + " µm");
    }
    out.add(
        "Simulated with these amounts together, s is "
            + String.join(", ", axes)
            + ". Direction: how much the cause alone scatters the tool point the way it was"
            + " measured, 1 for just so.");
    String twins =
        fit.amounts().stream()
            .filter(a -> !a.separable())
            .map(a -> a.cause().words())
            .collect(Collectors.joining(", "));
    boolean all = fit.amounts().stream().noneMatch(Amount::separable);
    if (!twins.isEmpty()) {
      out.add(
          "Not told apart by these axes: "
              + (all ? "any of them" : twins)
              + ". Their amounts can be traded for one another, within the bounds given.");
    }
    if (fit.fit().p() < MISFIT) {
      out.add(
          "No amounts of these causes give the directions that were measured ("
              + (fit.fit().p() < 0.001 ? "p below 0.001" : FilledText.of("p %.3f", fit.fit().p()))
              + "): look for a cause that the prediction does not hold, such as a loose ball, a"
              + " burr, a gauge stand that moves, or drift.");
    }
    return out;
  }

  private static String direction(Amount a) {
    return FilledText.of("%.2f", a.alignment()) + (a.separable() ? "" : ", not told apart");
  }

  private static String amount(Amount a, double si) {
    return "± " + number(a, si) + " " + unit(a);
  }

  private static String number(Amount a, double si) {
    return Shown.figures(
        switch (a.cause()) {
          case FRICTION, PRELOAD -> 100 * si;
          case PRELOAD_LINE -> 1e3 * si;
          case DIRT -> 1e6 * si;
          case TEMPERATURE, GAUGE, OTHER -> si;
        },
        2);
  }

  private static String unit(Amount a) {
    return switch (a.cause()) {
      case FRICTION, PRELOAD -> "%";
      case PRELOAD_LINE -> "mm";
      case DIRT -> "µm";
      case TEMPERATURE, GAUGE, OTHER -> "K";
    };
  }

  /** What to do, most urgent first. */
  public static List<String> advice(PredictionStudy study, MeasuredSeries series) {
    List<String> advice = new ArrayList<>();
    if (!study.flagged().isEmpty()) {
      String mounts =
          study.flagged().stream()
              .limit(5)
              .map(i -> String.valueOf(series.cycle(i)))
              .collect(Collectors.joining(", "));
      advice.add(
          "find out what happened at mount "
              + mounts
              + (study.flagged().size() > 5 ? " and others" : "")
              + ", which no scatter of the kind foretold explains.");
    }
    if (study.exceeds()) {
      study
          .fit()
          .flatMap(
              f ->
                  f.amounts().stream()
                      .filter(a -> a.fitted() > a.assumed())
                      .max(Comparator.comparingDouble(Amount::share)))
          .ifPresent(a -> advice.add(a.cause().advice() + "."));
    }
    if (advice.isEmpty()) {
      advice.add("nothing; the mount scatters no more than the design lets expect.");
    }
    return advice;
  }
}
