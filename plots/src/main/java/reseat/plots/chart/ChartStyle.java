package reseat.plots.chart;

import java.awt.BasicStroke;
import java.util.Locale;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import reseat.plots.scene.Tone;

/** How all charts look. */
final class ChartStyle {

  /** The library's own sign for no line. */
  static final BasicStroke NO_STROKE = SeriesLines.NONE;

  private ChartStyle() {}

  static void apply(AxesChartStyler style, KnownWords words) {
    style.setLocale(Locale.ROOT);
    style.setChartBackgroundColor(PlotPanel.color(Tone.PAPER, 1));
    style.setPlotBackgroundColor(PlotPanel.color(Tone.PAPER, 1));
    style.setPlotBorderVisible(false);
    style.setChartTitleVisible(false);
    style.setChartPadding(4);
    style.setPlotMargin(0);
    style.setXAxisTitleVisible(false).setYAxisTitleVisible(false);
    style.setAxisTickLabelsFont(words.font());
    style.setAxisTickLabelsColor(PlotPanel.color(Tone.INK, 1));
    style.setAxisTickMarksColor(PlotPanel.color(Tone.MUTED, 1));
    style.setAxisTickMarksStroke(new BasicStroke(1));
    style.setAxisTickMarkLength(4).setAxisTickPadding(4);
    style.setPlotGridLinesColor(PlotPanel.color(Tone.FAINT, 1));
    style.setPlotGridLinesStroke(new BasicStroke(0.7f));
    style.setYAxisLabelAlignment(AxesChartStyler.TextAlignment.Right);
    style.setXAxisTickLabelsFormattingFunction(words::tick);
    style.setYAxisTickLabelsFormattingFunction(words::tick);
  }
}
