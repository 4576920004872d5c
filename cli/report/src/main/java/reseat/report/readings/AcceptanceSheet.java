package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import reseat.readings.ColumnAnalysis;
import reseat.readings.Repeatability;
import reseat.readings.Requalification;
import reseat.readings.SeriesAnalysis;
import reseat.readings.SeriesDecision;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** The acceptance test on paper: verdict, limits for later checks, readings. */
public final class AcceptanceSheet {

  /** Mounts of a later check. */
  private static final int CHECK_MOUNTS = 5;

  /** Readings beyond which the sheet names their file instead. */
  private static final int MOST_ROWS = 2000;

  private static final double CHECK_CONFIDENCE = 0.99;

  private AcceptanceSheet() {}

  /**
   * Writes the filled sheet.
   *
   * @param report a series with its analysis
   * @return text of whole lines
   */
  public static String filled(ReadingsReport report) {
    SeriesAnalysis analysis = report.analysis();
    StringBuilder out = new StringBuilder("Acceptance test: remount repeatability\n\n");
    out.append(ReadingsText.of(report)).append('\n');
    SeriesDecision decision = report.decision();
    out.append("Verdict\n");
    for (ColumnAnalysis c : analysis.columns()) {
      out.append(
          Paragraph.of("  ", c.column().name() + ": " + verdict(decision.of(c.column().name()))));
    }
    out.append("\nLimits for later checks\n");
    List<String> limits = limits(analysis);
    limits.forEach(t -> out.append(Paragraph.of("  ", t)));
    if (limits.isEmpty()) {
      out.append("  none: they need readings of one holder that scatter\n");
    }
    out.append("\nReadings\n");
    out.append(
        analysis.series().mounts() > MOST_ROWS
            ? "  " + analysis.series().mounts() + " mounts, in " + analysis.series().source() + "\n"
            : readings(analysis).text());
    out.append("\nDate, name: ______________\n");
    return out.toString();
  }

  private static String verdict(SeriesDecision.OfColumn decision) {
    return switch (decision.word()) {
      case PROVEN -> "PASS";
      case MISSED -> "FAIL";
      case NOT_PROVEN -> "NOT PROVEN: " + DecisionText.lacks(decision);
      case NO_TARGET -> "no target stated";
    };
  }

  /**
   * Sets limits for later checks.
   *
   * @param analysis the accepted series
   * @return one sentence per probe that scatters; none with several holders
   */
  public static List<String> limits(SeriesAnalysis analysis) {
    List<String> out = new ArrayList<>();
    for (ColumnAnalysis c : analysis.columns()) {
      if (c.settled().isEmpty() || c.scatter().s() == 0 || c.holders().isPresent()) {
        continue;
      }
      Repeatability base = c.settled().get();
      Requalification q = Requalification.of(base, CHECK_MOUNTS, CHECK_CONFIDENCE);
      out.add(
          c.column().name()
              + ": mean of "
              + CHECK_MOUNTS
              + " mounts within "
              + ReadingFigures.level(c, base.mean() - q.meanShift())
              + " to "
              + ReadingFigures.level(c, base.mean() + q.meanShift())
              + ", their s at most "
              + ReadingFigures.scatter(c, q.scatter())
              + " (an unchanged mount passes each with "
              + ReadingsRemarks.percent(CHECK_CONFIDENCE)
              + ")");
    }
    return out;
  }

  /** All readings, as read. */
  public static TextTable readings(SeriesAnalysis analysis) {
    List<ColumnAnalysis> columns = analysis.columns();
    boolean warm = analysis.series().temperatures().isPresent();
    double[] temperatures = analysis.series().temperatures().orElse(new double[0]);
    int width = columns.size() + (warm ? 1 : 0);
    String[] head = new String[width + 1];
    head[0] = "mount";
    double[][] values = new double[columns.size()][];
    int[] decimals = new int[columns.size()];
    for (int i = 0; i < columns.size(); i++) {
      values[i] = columns.get(i).column().values();
      decimals[i] = ReadingFigures.readingDecimals(columns.get(i));
      head[i + 1] = columns.get(i).column().name() + ", " + columns.get(i).column().unit().symbol();
    }
    if (warm) {
      head[width] = "temperature, °C";
    }
    TextTable table = new TextTable("r".repeat(width + 1), head);
    for (int m = 0; m < analysis.series().mounts(); m++) {
      String[] cells = new String[width + 1];
      cells[0] = String.valueOf(analysis.series().cycle(m));
      for (int i = 0; i < columns.size(); i++) {
        cells[i + 1] =
            Double.isNaN(values[i][m])
                ? "-"
                : QuantityFormat.fixedNumber(
                    values[i][m], columns.get(i).column().unit(), decimals[i]);
      }
      if (warm) {
        cells[width] =
            Double.isNaN(temperatures[m])
                ? "-"
                : QuantityFormat.fixedNumber(temperatures[m], UnitCatalog.CELSIUS, 2);
      }
      table.row(cells);
    }
    return table;
  }
}
