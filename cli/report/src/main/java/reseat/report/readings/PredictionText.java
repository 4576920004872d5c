package reseat.report.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import reseat.readings.MeasuredSeries;
import reseat.readings.PredictionTest;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.study.CauseCalibration;
import reseat.study.CauseCalibration.Amount;
import reseat.study.PredictionStudy;
import reseat.units.FilledText;
import reseat.units.QuantityKind;
import reseat.units.UnitCatalog;

/** Measured scatter beside the simulated one, as text. */
public final class PredictionText {

  /** Probability of a misfit below which the causes are said not to explain the readings. */
  private static final double MISFIT = 0.01;

  private PredictionText() {}

  /**
   * Writes the comparison.
   *
   * @param study the series beside the simulated one
   * @param series the series
   * @param figures how numbers are written
   * @param all whether the causes are told too
   * @return lines with their ends
   */
  public static String of(
      PredictionStudy study, MeasuredSeries series, FigureText figures, boolean all) {
    StringBuilder out = new StringBuilder();
    if (all) {
      out.append("Against the prediction (" + study.mounts() + " simulated tool changes)\n");
      out.append(tests(study, figures).text());
      study.fit().ifPresent(f -> out.append(fit(f, study, figures)));
    } else {
      out.append(brief(study, figures).text());
    }
    List<String> advice = advice(study, series);
    for (int i = 0; i < advice.size(); i++) {
      out.append(Paragraph.of("", (i == 0 ? "What to do first: " : "Then: ") + advice.get(i)));
    }
    return out.toString();
  }

  /**
   * Makes the comparison, axis by axis.
   *
   * @param study the series beside the simulated one
   * @param figures how numbers are written
   * @return a row for each axis, and for each without its flagged readings
   */
  public static TextTable tests(PredictionStudy study, FigureText figures) {
    TextTable table = table(figures, "axis");
    study.tests().forEach(t -> row(table, t, "", figures));
    study.typical().forEach(t -> row(table, t, ", without flagged", figures));
    return table;
  }

  /** Without the flagged readings where there are some, since these have been told. */
  private static TextTable brief(PredictionStudy study, FigureText figures) {
    boolean flagged = !study.typical().isEmpty();
    TextTable table = table(figures, flagged ? "without flagged" : "beside simulated");
    (flagged ? study.typical() : study.tests()).forEach(t -> row(table, t, "", figures));
    return table;
  }

  private static TextTable table(FigureText figures, String first) {
    String unit = figures.column(QuantityKind.LENGTH).symbol();
    return new TextTable(
        "lrrrrl",
        first,
        "measured s, " + unit,
        "predicted",
        "ratio",
        "true ratio between",
        "verdict");
  }

  private static void row(TextTable table, PredictionTest t, String which, FigureText figures) {
    table.row(
        t.axis() + which,
        number(t.measured(), figures),
        number(t.predicted(), figures),
        PageNumbers.figures(t.ratio(), 2),
        PageNumbers.figures(t.ratioLow(), 2) + " to " + PageNumbers.figures(t.ratioHigh(), 2),
        verdict(t, figures));
  }

  private static String number(double metres, FigureText figures) {
    return figures.number(metres, QuantityKind.LENGTH, 2);
  }

  private static String verdict(PredictionTest t, FigureText figures) {
    return switch (t.verdict()) {
      case AS_PREDICTED -> "as predicted";
      case MORE -> "scatters more, by s " + number(t.excess(), figures);
      case LESS -> "scatters less than predicted";
    };
  }

  private static String fit(CauseCalibration fit, PredictionStudy study, FigureText figures) {
    StringBuilder out = new StringBuilder();
    out.append("\nAmounts with which the simulation scatters as measured");
    out.append(study.flagged().isEmpty() ? "\n" : " without the flagged mounts\n");
    out.append(amounts(fit, figures).text());
    told(fit, study, figures).forEach(t -> out.append(Paragraph.of("", t)));
    return out.toString();
  }

  /**
   * Makes the table of causes.
   *
   * @param fit amounts that fit the readings best
   * @param figures how numbers are written
   * @return a row for each cause
   */
  public static TextTable amounts(CauseCalibration fit, FigureText figures) {
    TextTable table =
        new TextTable("lrrrrl", "cause", "assumed", "fits best", "between", "share", "direction");
    for (Amount a : fit.amounts()) {
      table.row(
          a.cause().words(),
          amount(a, a.assumed(), figures),
          amount(a, a.fitted(), figures),
          number(a, a.low(), figures)
              + " to "
              + number(a, a.high(), figures)
              + " "
              + unit(a, figures),
          PageNumbers.percent(a.share()),
          direction(a));
    }
    return table;
  }

  /**
   * Says what the amounts are worth.
   *
   * @param fit amounts that fit the readings best
   * @param study the series beside the simulated one
   * @param figures how numbers are written
   * @return sentences
   */
  public static List<String> told(CauseCalibration fit, PredictionStudy study, FigureText figures) {
    List<String> out = new ArrayList<>();
    List<String> axes = new ArrayList<>();
    for (int i = 0; i < study.axes().size(); i++) {
      axes.add(study.axes().get(i) + " " + number(fit.simulated().get(i), figures));
    }
    out.add(
        "Simulated with these amounts together, s is "
            + String.join(", ", axes)
            + " "
            + figures.column(QuantityKind.LENGTH).symbol()
            + ". Direction: 1 if the cause alone scatters the tool point along the measured"
            + " direction, less the further it is off.");
    String twins =
        fit.amounts().stream()
            .filter(a -> !a.separable())
            .map(a -> a.cause().words())
            .collect(Collectors.joining(", "));
    boolean all = fit.amounts().stream().noneMatch(Amount::separable);
    if (!twins.isEmpty()) {
      out.add(
          (all
                  ? "The axes measured do not tell these causes apart."
                  : "Not told apart by the axes measured: " + twins + ".")
              + " Their amounts can be traded for one another, within the bounds given.");
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

  private static String amount(Amount a, double si, FigureText figures) {
    return "±" + number(a, si, figures) + " " + unit(a, figures);
  }

  private static String number(Amount a, double si, FigureText figures) {
    boolean inch = figures.system() == UnitSystem.INCH;
    return switch (a.cause()) {
      case FRICTION, PRELOAD -> PageNumbers.figures(100 * si, 2);
      case PRELOAD_LINE ->
          PageNumbers.figures((inch ? UnitCatalog.INCH : UnitCatalog.MM).fromSi(si), 2);
      case DIRT -> number(si, figures);
      case TEMPERATURE, GAUGE, OTHER -> PageNumbers.figures(si, 2);
    };
  }

  private static String unit(Amount a, FigureText figures) {
    boolean inch = figures.system() == UnitSystem.INCH;
    return switch (a.cause()) {
      case FRICTION, PRELOAD -> "%";
      case PRELOAD_LINE -> (inch ? UnitCatalog.INCH : UnitCatalog.MM).symbol();
      case DIRT -> figures.column(QuantityKind.LENGTH).symbol();
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
              + ", which the modelled causes cannot explain.");
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
      advice.add("nothing to fix: measured scatter agrees with the prediction.");
    }
    return advice;
  }
}
