package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a run ends, by trying every place with a fit of the book; groups of mounts. */
class SettlingTest {

  /** A fall from 9 over so many mounts, then readings within one, in halves so that some tie. */
  private static double[] run(long seed, int fall, int n) {
    SplittableRandom random = new SplittableRandom(seed);
    return IntStream.range(0, n)
        .mapToDouble(
            i -> (i < fall ? 1 + 8.0 * (fall - i) / fall : 0) + 0.5 * random.nextInt(-1, 2))
        .toArray();
  }

  /** Share of the variance of the ranks that a line to a place, level after it, explains. */
  private static double explained(double[] y, int place) {
    double[] ranks = new NaturalRanking().rank(y);
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < y.length; i++) {
      line.addData(Math.max(0, place - i), ranks[i]);
    }
    return line.getRSquare();
  }

  private static int bestPlace(double[] y) {
    return IntStream.rangeClosed(1, y.length - Math.max(3, y.length / 4))
        .boxed()
        .max((a, b) -> Double.compare(explained(y, a), explained(y, b)))
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(longs = {151, 152, 153, 154, 155})
  void theRunEndsWhereALineAndALevelExplainMost(long seed) {
    double[] y = run(seed, 6 + (int) (seed % 5), 30);
    Settling s = Settling.of(y);
    int place = bestPlace(y);
    double[] rest = Arrays.copyOfRange(y, place, 30);
    // The search goes on in what follows; none of 999 shuffles of the whole is as clear.
    int again = Settling.of(rest).wearIn();
    assertThat(s.wearIn()).as("seed %d", seed).isEqualTo(place + again);
    assertThat(s.p()).isEqualTo(0.001);
    assertThat(s.settled()).isTrue();
    double[] rising = Arrays.stream(y).map(v -> 7 - 2 * v).toArray();
    assertThat(Settling.of(rising).wearIn()).isEqualTo(s.wearIn());
  }

  @Test
  void theChanceIsThatOfAShuffle() {
    double[] y = {3, 2, 4, 1, 3, 0, 2, 1, 3, 0, 2, 1, 2, 3, 1, 0, 1, 2};
    double clear = explained(y, bestPlace(y));
    SplittableRandom random = new SplittableRandom(157);
    double[] shuffled = y.clone();
    int asClear = 0;
    for (int k = 0; k < 1000; k++) {
      for (int i = shuffled.length - 1; i > 0; i--) {
        int j = random.nextInt(i + 1);
        double keep = shuffled[i];
        shuffled[i] = shuffled[j];
        shuffled[j] = keep;
      }
      asClear += explained(shuffled, bestPlace(shuffled)) >= clear - 1e-12 ? 1 : 0;
    }
    assertThat(asClear / 1000.0).isBetween(0.06, 0.9);
    assertThat(Settling.of(y).p()).isCloseTo(asClear / 1000.0, within(0.06));
    assertThat(Settling.of(y).wearIn()).isZero();
    // What counts as chance decides: the same series has run if less is asked of it.
    assertThat(Settling.of(y, 0.99).wearIn()).isPositive();
  }

  @Test
  void aRunIsLookedForInTwelveMountsAndNotInEleven() {
    double[] twelve = {90, 60, 30, 1, 0, 1, 0, 0, 1, 0, 1, 0};
    assertThat(Settling.of(twelve).p()).isLessThan(0.05);
    Settling eleven = Settling.of(Arrays.copyOf(twelve, 11));
    assertThat(eleven).isEqualTo(new Settling(0, true, 1));
    // Fewer than ten follow, so it has not settled; with two more it has.
    assertThat(Settling.of(twelve).settled()).isFalse();
    double[] longer = Arrays.copyOf(twelve, 14);
    Settling s = Settling.of(longer);
    assertThat(s.settled()).isEqualTo(14 - s.wearIn() >= 10);
  }

  @Test
  void longSeriesAreAveragedInBlocks() {
    double[] y = run(158, 150, 1600);
    Settling s = Settling.of(y);
    double[] blocks = new double[800];
    Arrays.setAll(blocks, i -> (y[2 * i] + y[2 * i + 1]) / 2);
    assertThat(s.wearIn()).isEqualTo(2 * Settling.of(blocks).wearIn()).isGreaterThanOrEqualTo(140);
    assertThat(s.settled()).isTrue();
    // A thousand mounts are not averaged yet.
    double[] thousand = new double[1000];
    Arrays.setAll(thousand, i -> i < 9 ? 100 - i : i % 3);
    assertThat(Settling.of(thousand).wearIn()).isEqualTo(bestPlace(thousand));
  }

  @Test
  void holdersApartAreNoRunAndARunWithinThemIsSeen() {
    // First five mounts of A far above, then B: nothing runs within either.
    Groups groups =
        Groups.of(IntStream.range(0, 24).mapToObj(i -> i < 12 ? "A" : "B").toList(), 24);
    double[] y = new double[24];
    Arrays.setAll(y, i -> (i < 12 ? 100 : 0) + i * 5 % 7);
    assertThat(Settling.of(y, groups, 0.05).wearIn()).isZero();
    assertThat(Settling.of(y).p()).isLessThan(0.05);
    Groups turns = Groups.of(IntStream.range(0, 30).mapToObj(i -> "" + i % 2).toList(), 30);
    double[] worn = run(159, 8, 30);
    double[] apart = new double[30];
    Arrays.setAll(apart, i -> worn[i] + 500 * (i % 2));
    assertThat(Settling.of(apart, turns, 0.05).p()).isLessThan(0.01);
    assertThat(Settling.of(apart, turns, 0.05).wearIn()).isBetween(6, 12);
  }

  @Test
  void groupsAreNumberedAsTheyAppearAndOnceMoreInARest() {
    Groups g = Groups.of(List.of("B", "A", "B", "C", "A", "B"), 6);
    assertThat(IntStream.range(0, 6).map(g::groupOf)).containsExactly(0, 1, 0, 2, 1, 0);
    assertThat(g.count()).isEqualTo(3);
    assertThat(g.mounts()).isEqualTo(6);
    assertThat(g.freedom()).isEqualTo(3);
    assertThat(g.smallest()).isEqualTo(1);
    assertThat(IntStream.range(0, 6).map(g::sizeAt)).containsExactly(3, 2, 3, 1, 2, 3);
    Groups rest = g.from(3);
    assertThat(IntStream.range(0, 3).map(rest::groupOf)).containsExactly(0, 1, 2);
    assertThat(rest.mounts()).isEqualTo(3);
    assertThat(g.from(1).sizeAt(1)).isEqualTo(2);
    assertThat(g.from(0).groupOf(3)).isEqualTo(2);
    double[] y = {5, 1, 9, 4, 3, 1};
    assertThat(g.deviations(y)).containsExactly(0, -1, 4, 0, 1, -4);
    assertThat(g.split(y))
        .containsExactly(new double[] {5, 9, 1}, new double[] {1, 3}, new double[] {4});
    assertThat(Groups.one(6).split(y)).containsExactly(y);
    assertThat(Groups.of(List.of(), 6).count()).isEqualTo(1);
    assertThat(Groups.one(0).count()).isZero();
    assertThat(Groups.one(0).smallest()).isZero();
  }
}
