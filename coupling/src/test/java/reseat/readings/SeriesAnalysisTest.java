package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static reseat.readings.WrittenReadings.read;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A whole series: wear-in common to all probes, nothing removed silently, holders pooled. */
class SeriesAnalysisTest {

  private static SeriesAnalysis analysed(String text) throws Exception {
    return WrittenReadings.analysed(text, -1, Map.of());
  }

  /** 40 mounts; X wears in over about 8 mounts, Z does not, mount 25 is off in X. */
  private static String wearingIn() {
    SplittableRandom random = new SplittableRandom(101);
    StringBuilder text = new StringBuilder("cycle,X [um],Z [um],temperature [degC]\n");
    for (int i = 1; i <= 40; i++) {
      double x = 3 * Math.exp(-i / 3.0) + 0.1 * random.nextGaussian() + (i == 25 ? 1.5 : 0);
      double z = 0.2 * random.nextGaussian();
      text.append(
          String.format(
              Locale.ROOT, "%d,%.3f,%.3f,%.2f%n", i, x, z, 20 + 0.1 * random.nextGaussian()));
    }
    return text.toString();
  }

  @Test
  void theWearInOfOneProbeHoldsForAll() throws Exception {
    SeriesAnalysis a = analysed(wearingIn());
    assertThat(a.hasSettled()).isTrue();
    assertThat(a.wearIn()).isBetween(6, 16);
    ColumnAnalysis x = a.columns().get(0);
    ColumnAnalysis z = a.columns().get(1);
    assertThat(x.settling().wearIn()).isEqualTo(a.wearIn());
    assertThat(z.settling().wearIn()).isZero();
    assertThat(x.all().orElseThrow().n()).isEqualTo(40);
    assertThat(z.settled().orElseThrow().n()).isEqualTo(40 - a.wearIn());
    assertThat(x.scatter().s()).isLessThan(x.all().orElseThrow().s());
  }

  @Test
  void aFlaggedReadingStaysInAndIsCountedASecondTimeWithout() throws Exception {
    SeriesAnalysis a = analysed(wearingIn());
    ColumnAnalysis x = a.columns().get(0);
    assertThat(x.flagged()).hasSize(1);
    assertThat(x.flagged().get(0).index()).isEqualTo(24);
    assertThat(x.flagged().get(0).value()).isEqualTo(x.column().values()[24]);
    assertThat(x.scatter().readings()).isEqualTo(40 - a.wearIn());
    assertThat(x.scatterWithoutFlagged().readings()).isEqualTo(39 - a.wearIn());
    assertThat(x.scatterWithoutFlagged().s()).isLessThan(0.5 * x.scatter().s());
    assertThat(x.drift().orElseThrow().verdict()).isEqualTo(Drift.Verdict.STEADY);
    assertThat(x.temperature()).isPresent();
    assertThat(x.holders()).isEmpty();
    assertThat(x.toleranceFactor()).isPresent();
    assertThat(a.scatter(Set.of()).orElseThrow().get(0, 0))
        .isCloseTo(Math.pow(x.scatter().s(), 2), within(1e-22));
  }

  @Test
  void aGivenWearInIsTakenAsGiven() throws Exception {
    SeriesAnalysis a = WrittenReadings.analysed(wearingIn(), 3, Map.of());
    assertThat(a.wearIn()).isEqualTo(3);
    assertThatThrownBy(() -> WrittenReadings.analysed(wearingIn(), 40, Map.of()))
        .hasMessageContaining("leaves none of the 40 made");
  }

  @Test
  void oneRowAndNoScatterGiveEmptyFiguresRatherThanWrongOnes() throws Exception {
    ColumnAnalysis one = analysed("X [um]\n1.5\n").columns().get(0);
    assertThat(one.all()).isEmpty();
    assertThat(one.bounds()).isEmpty();
    assertThat(one.drift()).isEmpty();
    assertThat(one.gauge()).isEmpty();
    assertThat(one.chart()).isEmpty();
    ColumnAnalysis same = analysed("X [um]\n1.5\n1.5\n1.5\n1.5\n1.5\n").columns().get(0);
    assertThat(same.all().orElseThrow().isWithoutScatter()).isTrue();
    assertThat(same.shape()).isEmpty();
    assertThat(same.chart()).isEmpty();
    assertThat(same.bounds()).isEmpty();
    assertThat(same.toleranceFactor()).isEmpty();
    assertThat(same.gauge().orElseThrow().mount()).isEmpty();
  }

  @Test
  void scatterOfSeveralHoldersIsTakenAboutTheirOwnMeans() throws Exception {
    SplittableRandom random = new SplittableRandom(102);
    StringBuilder text = new StringBuilder("holder,X [um],Z [um]\n");
    for (int i = 0; i < 60; i++) {
      int h = i % 3;
      text.append(
          String.format(
              Locale.ROOT,
              "%d,%.4f,%.4f%n",
              h + 1,
              50 * h + 0.1 * random.nextGaussian(),
              -20 * h + 0.1 * random.nextGaussian()));
    }
    SeriesAnalysis a = analysed(text.toString());
    ColumnAnalysis x = a.columns().get(0);
    assertThat(a.wearIn()).isZero();
    assertThat(x.scatter().s()).isCloseTo(0.1e-6, within(0.03e-6));
    assertThat(x.scatter().freedom()).isEqualTo(57);
    BetweenHolders b = x.holders().orElseThrow();
    assertThat(b.repeatability()).isCloseTo(x.scatter().s(), within(1e-16));
    assertThat(b.interchangeability()).isCloseTo(50e-6, within(1e-6));
    assertThat(x.drift().orElseThrow().verdict()).isEqualTo(Drift.Verdict.STEADY);
    assertThat(x.toleranceFactor()).isEmpty();
    assertThat(Math.sqrt(a.scatter(Set.of()).orElseThrow().get(0, 0)))
        .isCloseTo(x.scatter().s(), within(1e-15));
  }

  @Test
  void twoDirectionsOfApproachShowTheirReversal() throws Exception {
    ColumnAnalysis x =
        analysed(
                "X [um],direction\n1.0,left\n0.0,right\n1.2,left\n0.2,right\n1.1,left\n0.1,right\n")
            .columns()
            .get(0);
    assertThat(x.directions().orElseThrow().meanReversal()).isCloseTo(1e-6, within(1e-15));
  }

  @Test
  void aTargetIsProvenOrNotByTheBound() throws Exception {
    Map<String, ColumnFacts> facts = Map.of("Z", new ColumnFacts(0, 0, 0.5e-6));
    SeriesAnalysis a = SeriesAnalysis.of(read(wearingIn()), facts, AnalysisOptions.USUAL);
    assertThat(a.columns().get(0).proof()).isEmpty();
    assertThat(a.columns().get(1).proof().orElseThrow().verdict())
        .isEqualTo(ProofOfTarget.Verdict.PROVEN);
    double[] z = a.columns().get(1).column().values();
    double s = Repeatability.of(Arrays.copyOfRange(z, a.wearIn(), 40)).s();
    assertThat(a.columns().get(1).scatter().s()).isCloseTo(s, within(1e-18));
  }
}
