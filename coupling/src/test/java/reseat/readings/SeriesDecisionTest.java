package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import reseat.readings.SeriesDecision.Missing;
import reseat.readings.SeriesDecision.Word;

/** What is decided of planted series, and the coverage of the bounds behind it. */
class SeriesDecisionTest {

  private static final int SERIES = Boolean.getBoolean("full") ? 20_000 : 2_000;

  private static double[] noise(long seed, int n) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      y[i] = 0.1 * random.nextGaussian();
    }
    return y;
  }

  private static SeriesAnalysis analysis(int n, double target, IntToDoubleFunction um)
      throws Exception {
    StringBuilder text = new StringBuilder("cycle,X [um]\n");
    for (int i = 0; i < n; i++) {
      text.append(String.format(Locale.ROOT, "%d,%.4f%n", i + 1, um.applyAsDouble(i)));
    }
    return WrittenReadings.analysed(
        text.toString(), -1, Map.of("X", new ColumnFacts(0, 0, target * 1e-6)));
  }

  private static SeriesDecision decide(int n, double target, IntToDoubleFunction um)
      throws Exception {
    return SeriesDecision.of(analysis(n, target, um), false);
  }

  @Test
  void aCleanSeriesProvesOrMissesOrWantsMounts() throws Exception {
    double[] y = noise(4, 30);
    assertThat(decide(30, 0.2, i -> y[i]).word()).isEqualTo(Word.PROVEN);
    assertThat(decide(30, 0.05, i -> y[i]).word()).isEqualTo(Word.MISSED);
    SeriesDecision open = decide(30, 0.115, i -> y[i]);
    assertThat(open.word()).isEqualTo(Word.NOT_PROVEN);
    assertThat(open.columns().get(0).missing()).containsExactly(Missing.MOUNTS);
    assertThat(open.columns().get(0).furtherMounts()).isPositive();
    SeriesDecision none = decide(30, 0, i -> y[i]);
    assertThat(none.word()).isEqualTo(Word.NO_TARGET);
  }

  @Test
  void whatSpoilsASeriesIsWhatIsMissing() throws Exception {
    double[] y = noise(4, 30);
    assertThat(decide(30, 0.4, i -> y[i] + (i == 17 ? 0.9 : 0)).columns().get(0).missing())
        .containsExactly(Missing.OUTLIER);
    assertThat(decide(30, 0.4, i -> y[i] + 0.02 * i).columns().get(0).missing())
        .contains(Missing.DRIFT);
    assertThat(decide(8, 0.4, i -> y[i]).columns().get(0).missing()).contains(Missing.TOO_FEW);
    SeriesDecision unit = decide(30, 400, i -> 1000 * y[i]);
    assertThat(unit.columns().get(0).missing()).contains(Missing.UNIT);
  }

  @Test
  void aSeriesWithAChipIsCountedWithAndWithoutAndAsksForNoMounts() throws Exception {
    double[] y = noise(4, 30);
    SeriesAnalysis a = analysis(30, 0.15, i -> y[i] + (i == 17 ? 0.9 : 0));
    ColumnAnalysis c = a.columns().get(0);
    assertThat(c.versions())
        .extracting(SeriesVersion::way)
        .containsExactly(SeriesVersion.Way.AS_READ, SeriesVersion.Way.WITHOUT_FLAGGED);
    // second road: s of the 29 others, from the planted numbers
    double mean = 0;
    double squares = 0;
    for (int i = 0; i < 30; i++) {
      mean += i == 17 ? 0 : y[i] / 29;
    }
    for (int i = 0; i < 30; i++) {
      squares += i == 17 ? 0 : (y[i] - mean) * (y[i] - mean);
    }
    assertThat(1e6 * c.versions().get(1).scatter().s())
        .isCloseTo(Math.sqrt(squares / 28), within(1e-4));
    SeriesDecision.OfColumn decided = SeriesDecision.of(a, false).columns().get(0);
    assertThat(decided.missing()).containsExactly(Missing.OUTLIER);
    assertThat(decided.furtherMounts()).isZero();
  }

  @Test
  void trendAndChipTogetherGiveFourWays() throws Exception {
    double[] y = noise(4, 30);
    SeriesAnalysis a = analysis(30, 0.2, i -> y[i] + 0.03 * i + (i == 17 ? 1.2 : 0));
    ColumnAnalysis c = a.columns().get(0);
    assertThat(c.versions()).hasSize(4);
    assertThat(c.versions().get(3).way()).isEqualTo(SeriesVersion.Way.BOTH);
    assertThat(1e6 * c.versions().get(3).scatter().s()).isBetween(0.06, 0.14);
    assertThat(c.versions().get(3).scatter().freedom()).isEqualTo(27);
  }

  @Test
  void skewedReadingsGetNoBound() throws Exception {
    SplittableRandom random = new SplittableRandom(7);
    int declined = 0;
    for (int k = 0; k < 40; k++) {
      // squares of normal readings: skewness 2.8
      SeriesAnalysis a = analysis(40, 5, i -> Math.pow(random.nextGaussian(), 2));
      ColumnAnalysis c = a.columns().get(0);
      declined += c.isSkewed() || !c.flagged().isEmpty() ? 1 : 0;
      if (c.isSkewed()) {
        assertThat(c.bounds()).isEmpty();
        assertThat(SeriesDecision.of(a, false).columns().get(0).missing()).contains(Missing.SKEW);
      }
    }
    assertThat(declined).isGreaterThan(32);
  }

  @Test
  void ninetyFiveOfAHundredBoundsHoldOnCleanNormalSeries() {
    long seed = 95;
    System.out.println("coverage of bounds, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    int held = 0;
    for (int i = 0; i < SERIES; i++) {
      double[] y = new double[20];
      for (int k = 0; k < y.length; k++) {
        y[k] = random.nextGaussian();
      }
      KeptReadings of = KeptReadings.of(y, java.util.List.of(), java.util.Set.of());
      held += StepBound.of(of.scatter(), of, 0, 0, 0.95).orElseThrow().upperOneSided() > 1 ? 1 : 0;
    }
    double three = Math.max(0.005, 3 * Math.sqrt(0.95 * 0.05 / SERIES));
    assertThat(held / (double) SERIES).isCloseTo(0.95, within(three));
  }

  @Test
  void aCleanSeriesIsSeldomCalledAnythingElse() throws Exception {
    int obstacles = 0;
    int series = 200;
    for (int k = 0; k < series; k++) {
      double[] y = noise(1000 + k, 30);
      obstacles += decide(30, 1, i -> y[i]).columns().get(0).word() == Word.PROVEN ? 0 : 1;
    }
    System.out.println("clean series not proven: " + obstacles + " of " + series);
    // chances of a false alarm: outlier 5 %, drift 5 %, order within it, run-in 5 %, skew 2 %
    assertThat(obstacles / (double) series).isLessThan(0.17);
  }
}
