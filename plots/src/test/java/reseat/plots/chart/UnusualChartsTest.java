package reseat.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.plots.Picture;
import reseat.plots.scene.Mark;

/** Data that are allowed but rare: nothing varies, all is zero, names are long or strange. */
class UnusualChartsTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private static Picture sound(Picture p) {
    assertThat(p.svgElement()).doesNotContain("NaN");
    for (Mark.Text t : p.scene().texts()) {
      assertThat(p.scene().frame().contains(t.box())).as(t.words()).isTrue();
    }
    assertThat(p.png(1)).isNotEmpty();
    return p;
  }

  @Test
  void aConstantSeriesIsDrawnAsALevelLine() {
    sound(
        SeriesChart.draw(
            List.of(
                column(AxisQuantity.micrometres("X"), Collections.nCopies(20, 3e-6)),
                column(AxisQuantity.micrometres("Z"), Collections.nCopies(20, 0.0))),
            "limit"));
  }

  private static SeriesChart.Column column(AxisQuantity quantity, List<Double> values) {
    return new SeriesChart.Column(quantity, values, NONE, NONE, 0, NONE, NONE);
  }

  @Test
  void valuesThatAllAgreeGiveOneBar() {
    sound(
        HistogramChart.draw(
            "one",
            AxisQuantity.micrometres("X"),
            new double[] {0, 0, 0},
            HistogramChart.Marked.NOTHING));
  }

  @Test
  void aBudgetOfZerosHasBarsWithoutLength() {
    Picture p =
        sound(
            BudgetBars.draw(
                List.of(
                    new BudgetBars.Axis(
                        "X", List.of(new BudgetBars.Line("friction", 0)), 0, NONE))));
    assertThat(p.scene().texts()).anyMatch(t -> t.words().startsWith("0"));
  }

  @Test
  void whatIsLostInRoundingIsNotToldToTheLastDigit() {
    Picture p =
        sound(
            ComplianceShares.draw(
                List.of(
                    new ComplianceShares.Direction(
                        "X",
                        3e7,
                        List.of(
                            new ComplianceShares.Part("front", 0.9999),
                            new ComplianceShares.Part("rear", 1e-4),
                            new ComplianceShares.Part("pad", 2.7e-15))))));
    assertThat(p.scene().texts().stream().map(Mark.Text::words))
        .contains("under 0.1\u00a0%")
        .noneMatch(w -> w.contains("000"));
    Picture budget =
        sound(
            BudgetBars.draw(
                List.of(
                    new BudgetBars.Axis(
                        "X",
                        List.of(
                            new BudgetBars.Line("friction", 1e-7),
                            new BudgetBars.Line("dirt", 3e-21)),
                        2e-7,
                        NONE))));
    assertThat(budget.scene().texts()).anyMatch(t -> t.words().startsWith("under "));
  }

  @Test
  void namesUsedTwiceKeepTheirBars() {
    Picture p =
        sound(
            BudgetBars.draw(
                List.of(
                    new BudgetBars.Axis(
                        "X",
                        List.of(
                            new BudgetBars.Line("ball", 7e-7), new BudgetBars.Line("ball", 3e-7)),
                        1e-6,
                        NONE))));
    assertThat(p.scene().texts().stream().filter(t -> t.words().equals("ball"))).hasSize(2);
  }

  @Test
  void longAndStrangeNamesAreShortenedAndHarmless() {
    String name = "$\\frac{a}{b}$ <b>" + "very ".repeat(40) + "long \u65e5\u672c";
    Picture p =
        sound(
            SensitivityRanking.draw(
                "sensitivity-x",
                "X",
                List.of(new SensitivityRanking.Row(name, "1 \u00b5m", 1e-6))));
    assertThat(p.svgElement()).doesNotContain("<b>");
  }

  @Test
  void aCloudWithoutSpreadIsAPoint() {
    sound(
        RepeatEllipse.draw(
            "still",
            "mounts",
            new RepeatEllipse.Plane("X", "Z", 1e-6, NONE),
            new double[] {1e-7, 1e-7, 1e-7},
            new double[] {0, 0, 0}));
  }

  @Test
  void aSweepWithoutResultsIsDrawnEmpty() {
    sound(
        ResponseCurve.draw(
            AxisQuantity.PRELOAD,
            List.of(1.0, 2.0),
            AxisQuantity.PRESSURE,
            List.of(new ResponseCurve.Curve("", List.of(NONE, NONE))),
            new ResponseCurve.Marked(NONE, NONE, NONE),
            false));
  }

  @Test
  void aSearchWithoutDesignsSaysSo() {
    Picture p =
        sound(
            ParetoChart.draw(
                AxisQuantity.SCATTER,
                AxisQuantity.PRESSURE,
                new double[0],
                new double[0],
                List.of(),
                new ParetoChart.Limits(NONE, NONE),
                false));
    assertThat(p.caption()).isEqualTo("No candidate keeps all limits.");
  }

  @Test
  void axesCarryRoundNumbersEvenWhereDataAreEvenlySpaced() {
    List<Double> inputs = List.of(0.0, 13.7, 27.4, 41.1, 54.8);
    Picture p =
        sound(
            ResponseCurve.draw(
                new AxisQuantity("angle", "deg", 1),
                inputs,
                new AxisQuantity("answer", "mm", 1),
                List.of(new ResponseCurve.Curve("", inputs)),
                new ResponseCurve.Marked(NONE, NONE, NONE),
                false));
    assertThat(p.scene().texts().stream().map(Mark.Text::words)).contains("10", "20", "50");
  }

  @Test
  void wordsAlongAxesAreWordsAndNotOutlines() {
    Picture p =
        ControlChart.draw(
            "c",
            AxisQuantity.micrometres("X"),
            List.of(1e-6, 2e-6, -3e-6),
            new ControlChart.Control(0, -4e-6, 4e-6),
            new ControlChart.Life(0, List.of()));
    assertThat(p.scene().texts().stream().map(Mark.Text::words)).contains("\u22122", "2", "0");
    assertThat(p.scene().marks())
        .noneMatch(
            m ->
                m instanceof Mark.Path path
                    && path.fill().visible()
                    && path.box().height() < 12
                    && path.parts().get(0).size() > 6);
  }

  @Test
  void wrongNumbersOfThingsAreRefusedInWords() {
    assertThatThrownBy(
            () ->
                RepeatEllipse.draw(
                    "x",
                    "mounts",
                    new RepeatEllipse.Plane("X", "Z", NONE, NONE),
                    new double[2],
                    new double[2]))
        .hasMessageContaining("at least three points");
    assertThatThrownBy(() -> column(AxisQuantity.micrometres("X"), List.of(1.0)))
        .hasMessageContaining("at least two readings");
    assertThatThrownBy(() -> new ControlChart.Control(0, 1, 2)).hasMessageContaining("centre line");
  }
}
