package reseat.cli.report;

import java.util.Locale;
import reseat.readings.CauseFit;
import reseat.readings.PredictionTest;
import reseat.study.PredictionStudy;

/** Measured scatter beside the simulated one, as text. */
final class PredictionText {

  private PredictionText() {}

  static String of(PredictionStudy study) {
    StringBuilder out = new StringBuilder();
    out.append("Against the prediction (" + study.mounts() + " simulated tool changes)\n");
    TextTable table =
        new TextTable(
            "lrrrrl",
            "axis",
            "measured s, um",
            "predicted s, um",
            "ratio",
            "true ratio between",
            "verdict");
    for (PredictionTest t : study.tests()) {
      table.row(
          t.axis(),
          Shown.micrometres(t.measured()),
          Shown.micrometres(t.predicted()),
          String.format(Locale.ROOT, "%.2g", t.ratio()),
          String.format(Locale.ROOT, "%.2g to %.2g", t.ratioLow(), t.ratioHigh()),
          verdict(t));
    }
    out.append(table.text());
    study.fit().ifPresent(f -> out.append(fit(f)));
    return out.toString();
  }

  private static String verdict(PredictionTest t) {
    return switch (t.verdict()) {
      case AS_PREDICTED -> "as predicted";
      case MORE -> "scatters more; excess s " + Shown.micrometres(t.excess()) + " um";
      case LESS -> "scatters less than predicted";
    };
  }

  private static String fit(CauseFit fit) {
    StringBuilder out = new StringBuilder("Amounts of each cause that best explain the readings\n");
    TextTable table = new TextTable("lrrl", "cause", "times the assumed scatter", "share", "");
    String advice = "";
    double most = 0;
    for (CauseFit.Share s : fit.shares()) {
      table.row(
          s.signature().cause().words(),
          String.format(Locale.ROOT, "%.2g (%.2g to %.2g)", s.multiplier(), s.low(), s.high()),
          Shown.percent(s.share()),
          s.separable() ? "" : "not told apart from another");
      if (s.share() > most) {
        most = s.share();
        advice = s.signature().cause().advice();
      }
    }
    out.append(table.text());
    return advice.isEmpty()
        ? out.toString()
        : out.append(Paragraph.of("", "What to do first: " + advice + ".")).toString();
  }
}
