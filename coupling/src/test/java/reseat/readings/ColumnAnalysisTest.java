package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static reseat.readings.WrittenReadings.analysed;
import static reseat.readings.WrittenReadings.rows;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a column says and from how many mounts on it says it, in whole micrometres by hand. */
class ColumnAnalysisTest {

  private static final Offset<Double> CLOSE = within(1e-15);

  /** Ten mounts that scatter without a trend. */
  private static final int[] TEN = {3, 1, 4, 1, 5, 2, 6, 5, 3, 5};

  private static ColumnAnalysis column(String text, int wearIn, ColumnFacts facts)
      throws Exception {
    return analysed(text, wearIn, Map.of("X", facts)).columns().get(0);
  }

  private static ColumnAnalysis column(String text) throws Exception {
    return column(text, 0, ColumnFacts.NONE);
  }

  private static String ten(int n) {
    return rows("X [um]", n, i -> String.valueOf(TEN[i % 10]));
  }

  @Test
  void driftAndChartBeginWithThreeMountsTheToleranceIntervalWithTwo() throws Exception {
    ColumnAnalysis two = column(ten(2));
    assertThat(two.all().orElseThrow().n()).isEqualTo(2);
    assertThat(two.settled().orElseThrow().n()).isEqualTo(2);
    assertThat(two.drift()).isEmpty();
    assertThat(two.chart()).isEmpty();
    assertThat(two.toleranceFactor()).isPresent();
    assertThat(two.bounds()).isPresent();
    ColumnAnalysis three = column(ten(3));
    assertThat(three.drift()).isPresent();
    assertThat(three.chart().orElseThrow().readings()).hasSize(3);
    assertThat(three.toleranceFactor().orElseThrow())
        .isCloseTo(ToleranceInterval.twoSided(3, 0.95, 0.95), within(1e-9));
  }

  @Test
  void theChanceOfAFalseAlarmIsSharedByTheColumns() throws Exception {
    SeriesAnalysis a = analysed(rows("X [um],Z [um]", 5, i -> i % 2 + "," + i % 3), 0, Map.of());
    assertThat(a.columns().get(1).drift().orElseThrow().significance()).isEqualTo(0.025);
  }

  @Test
  void theSettledPartBeginsAfterTheWearIn() throws Exception {
    ColumnAnalysis x = column("X [um],direction\n90,b\n1,a\n3,b\n2,a\n6,b\n", 1, ColumnFacts.NONE);
    assertThat(x.usual()).isCloseTo(2.5e-6, CLOSE);
    assertThat(x.settled().orElseThrow().n()).isEqualTo(4);
    assertThat(x.all().orElseThrow().max()).isCloseTo(90e-6, CLOSE);
    assertThat(x.deviations()).hasSize(4);
    assertThat(x.deviations().get(3)).isCloseTo(3e-6, CLOSE);
    // Mean of the a (1, 2) less mean of the b (3, 6): the way met first counts as up.
    assertThat(x.directions().orElseThrow().meanReversal()).isCloseTo(-3e-6, CLOSE);
    assertThat(x.directions().orElseThrow().positions().get(0).up().max()).isCloseTo(2e-6, CLOSE);
  }

  @Test
  void aFlaggedMountIsToldByItsPlaceInTheWholeSeries() throws Exception {
    ColumnAnalysis x =
        column(rows("X [um]", 22, i -> i == 14 ? "40" : "" + TEN[i % 10]), 4, ColumnFacts.NONE);
    assertThat(x.flagged()).extracting(Outliers.Flag::index).containsExactly(14);
    assertThat(x.flagged().get(0).value()).isCloseTo(40e-6, CLOSE);
    assertThat(x.scatterWithoutFlagged().readings()).isEqualTo(17);
  }

  @Test
  void anOutlierOfARisingSeriesIsSeenAgainstTheRise() throws Exception {
    // It lies in the middle of all readings, and fifteen from the line through them.
    ColumnAnalysis x = column(rows("X [um]", 30, i -> "" + (i == 3 ? 20 : i + 0.1 * TEN[i % 10])));
    assertThat(x.drift().orElseThrow().verdict()).isEqualTo(Drift.Verdict.RISING);
    assertThat(x.flagged()).extracting(Outliers.Flag::index).containsExactly(3);
    assertThat(x.flagged().get(0).value()).isCloseTo(20e-6, CLOSE);
  }

  @Test
  void equalReadingsAreBoundedByTheStepOfTheGaugeIfItIsKnown() throws Exception {
    String same = rows("X [um]", 5, i -> "7");
    assertThat(column(same).bounds()).isEmpty();
    assertThat(column(same, 0, new ColumnFacts(0, 1e-7, 0)).bounds())
        .contains(ScatterBounds.ofEqualReadings(1e-7, 5, 0.95));
    assertThat(column(rows("X [um]", 1, i -> "7"), 0, new ColumnFacts(0, 1e-7, 0)).bounds())
        .isEmpty();
    ColumnAnalysis three = column(ten(3), 0, new ColumnFacts(0, 1e-7, 0));
    assertThat(three.bounds()).contains(ScatterBounds.of(three.scatter().s(), 3, 0.95));
  }

  @Test
  void theNoiseOfTheGaugeIsAtLeastThatOfItsStep() throws Exception {
    GaugeNoise found = column(ten(10)).gauge().orElseThrow();
    assertThat(found.resolution()).isCloseTo(1e-6, within(1e-12));
    assertThat(found.gauge()).isCloseTo(1e-6 / Math.sqrt(12), within(1e-12));
    assertThat(found.n()).isEqualTo(10);
    GaugeNoise known = column(ten(10), 0, new ColumnFacts(0, 5e-7, 0)).gauge().orElseThrow();
    assertThat(known.resolution()).isEqualTo(5e-7);
    assertThat(known.gauge()).isCloseTo(5e-7 / Math.sqrt(12), CLOSE);
    GaugeNoise noisy = column(ten(10), 0, new ColumnFacts(9e-7, 5e-7, 0)).gauge().orElseThrow();
    assertThat(noisy.gauge()).isEqualTo(9e-7);
    assertThat(column(ten(1)).gauge()).isEmpty();
    assertThat(column(ten(2)).gauge().orElseThrow().n()).isEqualTo(2);
  }

  @Test
  void aTargetIsJudgedOnlyIfOneWasGiven() throws Exception {
    assertThat(column(ten(9)).hasTarget()).isFalse();
    assertThat(column(ten(9)).proof()).isEmpty();
    ColumnAnalysis judged = column(ten(9), 0, new ColumnFacts(0, 0, 1e-6));
    assertThat(judged.hasTarget()).isTrue();
    assertThat(judged.proof().orElseThrow().target()).isEqualTo(1e-6);
  }

  @Test
  void temperatureIsFittedFromFiveMountsOnIfItVaries() throws Exception {
    int[] warm = {20, 22, 21, 20, 23, 22};
    String text = rows("X [um],temperature [degC]", 6, i -> 3 * warm[i] + "," + warm[i]);
    assertThat(column(text, 2, ColumnFacts.NONE).temperature()).isEmpty();
    TemperatureRegression t = column(text, 1, ColumnFacts.NONE).temperature().orElseThrow();
    assertThat(t.alone().slope()).isCloseTo(3e-6, CLOSE);
    assertThat(t.alone().n()).isEqualTo(5);
    assertThat(column(rows("X [um],temperature [degC]", 6, i -> i % 4 + ",20")).temperature())
        .isEmpty();
    assertThat(column(ten(6)).temperature()).isEmpty();
  }

  @Test
  void holdersAreComparedIfThereAreTwoAndOneCameAgain() throws Exception {
    assertThat(column("X [um],holder\n1,A\n2,A\n5,A\n").holders()).isEmpty();
    assertThat(column("X [um],holder\n1,A\n2,B\n").holders()).isEmpty();
    ColumnAnalysis two = column("X [um],holder\n1,A\n2,A\n9,B\n", 0, ColumnFacts.NONE);
    assertThat(two.holders().orElseThrow().mounts()).isEqualTo(3);
    assertThat(two.chart()).isEmpty();
    assertThat(two.toleranceFactor()).isEmpty();
    assertThat(two.drift()).isEmpty();
    assertThat(column("X [um],holder\n1,A\n2,A\n9,B\n8,B\n").drift()).isPresent();
    // The wear-in takes A away.
    assertThat(column("X [um],holder\n1,A\n2,B\n9,B\n", 1, ColumnFacts.NONE).holders()).isEmpty();
  }

  @Test
  void theShapeWantsEightMountsOfEveryHolder() throws Exception {
    assertThat(column(ten(7)).shape()).isEmpty();
    assertThat(column(ten(8)).shape().orElseThrow().n()).isEqualTo(8);
    String two = rows("X [um],holder", 16, i -> TEN[i % 10] + 50 * (i % 2) + "," + i % 2);
    assertThat(column(two).shape().orElseThrow().n()).isEqualTo(16);
    assertThat(column(two, 1, ColumnFacts.NONE).shape()).isEmpty();
    assertThat(column(rows("X [um]", 9, i -> "7")).shape()).isEmpty();
  }

  @Test
  void fewMountsOfManyHoldersAreNotSearchedForOutliers() throws Exception {
    // Two degrees of freedom: none can be tested. Three of one holder and a fourth leave room.
    assertThat(column("X [um],holder\n1,A\n1,A\n99,A\n1,B\n1,C\n").flagged()).isEmpty();
    assertThat(column("X [um]\n1\n1\n1\n1\n99\n").flagged()).hasSize(1);
    assertThat(column("X [um]\n1\n1\n1\n99\n").flagged()).isEmpty();
  }

  @Test
  void theScatterOfLengthsIsPooledOverHoldersAndLeavesOutWhatItIsTold() throws Exception {
    String text =
        """
        X [um],tilt [urad],Z [um],holder
        0,5,0,A
        2,6,4,A
        50,7,50,B
        54,8,52,B
        99,9,99,B
        """;
    SeriesAnalysis a = analysed(text, 0, Map.of());
    ScatterMatrix m = a.scatter(Set.of(4)).orElseThrow();
    assertThat(m.axes()).containsExactly("X", "Z");
    // Deviations (1, 2) and (2, 1), each twice: squares 2 + 8 over two degrees of freedom.
    assertThat(m.get(0, 0)).isCloseTo(5e-12, within(1e-24));
    assertThat(m.get(1, 1)).isCloseTo(5e-12, within(1e-24));
    assertThat(m.get(0, 1)).isCloseTo(4e-12, within(1e-24));
    assertThat(a.freedom(Set.of(4))).isEqualTo(2);
    assertThat(a.freedom(Set.of())).isEqualTo(3);
    assertThat(a.scatter(Set.of(1, 3, 4))).isEmpty();
    assertThat(a.scatter(Set.of(3, 4))).isPresent();
    assertThat(analysed("tilt [urad]\n1\n2\n", 0, Map.of()).scatter(Set.of())).isEmpty();
  }

  @Test
  void scatterOfOneHolderIsThatOfTheMountsThatAreLeft() throws Exception {
    SeriesAnalysis a = analysed(ten(10), 2, Map.of());
    // 4, 1, 5, 2, 6, 5, 3, 5 without the first: mean 27/7
    double expected = (1 + 25 + 4 + 36 + 25 + 9 + 25 - 27 * 27 / 7.0) / 6;
    assertThat(a.scatter(Set.of(2)).orElseThrow().get(0, 0))
        .isCloseTo(expected * 1e-12, within(1e-24));
    assertThat(a.freedom(Set.of(2))).isEqualTo(6);
    assertThat(a.hasSettled()).isTrue();
    assertThat(a.options().wearIn()).isEqualTo(2);
  }

  @Test
  void aSeriesThatRunsToItsEndLeavesNothingOutUnlessTold() throws Exception {
    String running = rows("Z [um],X [um]", 30, i -> TEN[i % 10] + "," + (i * i + TEN[i % 10]));
    SeriesAnalysis a = analysed(running, -1, Map.of());
    assertThat(a.hasSettled()).isFalse();
    assertThat(a.wearIn()).isZero();
    assertThat(a.columns()).extracting(c -> c.column().name()).isEqualTo(List.of("Z", "X"));
    SeriesAnalysis told = analysed(running, 5, Map.of());
    assertThat(told.hasSettled()).isTrue();
    assertThat(analysed(running, 0, Map.of()).hasSettled()).isTrue();
    assertThat(told.wearIn()).isEqualTo(5);
    assertThat(told.columns().get(0).settled().orElseThrow().n()).isEqualTo(25);
  }
}
