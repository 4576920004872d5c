package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.stat.inference.OneWayAnova;
import org.junit.jupiter.api.Test;
import reseat.readings.OffsetTable.AxisRule;
import reseat.readings.OffsetTable.Conditions;

/** Three unequal holders by hand, and by a second road. */
class HolderComparisonTest {

  /** A: 2, 4 (mean 3, s sqrt 2). B: 10, 11, 12 (mean 11, s 1). C: 7, once. */
  private static final List<String> NAMES = List.of("A", "B", "A", "B", "C", "B");

  private static final double[] READINGS = {2, 10, 4, 11, 7, 12};

  private static final BetweenHolders THREE = BetweenHolders.of(NAMES, READINGS);

  @Test
  void theMeanSquaresOfUnequalHoldersAreThoseOfTheHand() {
    assertThat(THREE.holders())
        .extracting(BetweenHolders.Holder::name)
        .containsExactly("A", "B", "C");
    assertThat(THREE.holders()).extracting(BetweenHolders.Holder::n).containsExactly(2, 3, 1);
    assertThat(THREE.holders())
        .extracting(BetweenHolders.Holder::mean)
        .containsExactly(3.0, 11.0, 7.0);
    assertThat(THREE.holders().get(1).s()).isEqualTo(1);
    assertThat(THREE.holders().get(2).s()).isZero();
    assertThat(THREE.mounts()).isEqualTo(6);
    assertThat(THREE.freedomWithin()).isEqualTo(3);
    // Within: (2 + 2) / 3. Mean of all 46/6; between: (2 (14/3)^2 + 3 (10/3)^2 + (2/3)^2) / 2.
    assertThat(THREE.within()).isCloseTo(4 / 3.0, within(1e-12));
    assertThat(THREE.between()).isCloseTo((2 * 196 + 3 * 100 + 4) / 9.0 / 2, within(1e-12));
    // n0 = (6 - (4 + 9 + 1) / 6) / 2
    assertThat(THREE.effective()).isCloseTo(11 / 6.0, within(1e-12));
    double apart = (THREE.between() - 4 / 3.0) * 6 / 11;
    assertThat(THREE.repeatability()).isCloseTo(Math.sqrt(4 / 3.0), within(1e-12));
    assertThat(THREE.interchangeability()).isCloseTo(Math.sqrt(apart), within(1e-12));
    assertThat(THREE.overall()).isCloseTo(Math.sqrt(apart + 4 / 3.0), within(1e-12));
    // Upper bound of three means: chi-square with two degrees of freedom is exponential.
    assertThat(THREE.interchangeabilityBelow(0.9))
        .isCloseTo(Math.sqrt(THREE.between() * 6 / 11 / -Math.log(0.9)), within(1e-7));
  }

  @Test
  void theChanceOfLikeHoldersIsThatOfTheAnalysisOfVariance() {
    List<String> names = List.of("A", "B", "A", "B", "C", "B", "C");
    double[] y = {2, 10, 4, 11, 7, 12, 3};
    double p =
        new OneWayAnova()
            .anovaPValue(
                List.of(new double[] {2, 4}, new double[] {10, 11, 12}, new double[] {7, 3}));
    assertThat(BetweenHolders.of(names, y).chanceThatAlike()).isCloseTo(p, within(1e-9));
    double[] moved = Arrays.stream(y).map(v -> 1e6 - v).toArray();
    assertThat(BetweenHolders.of(names, moved).chanceThatAlike()).isCloseTo(p, within(1e-7));
  }

  @Test
  void withoutScatterOfTheirOwnHoldersAreAlikeOrNot() {
    List<String> two = List.of("A", "A", "B", "B");
    assertThat(BetweenHolders.of(two, new double[] {1, 1, 1, 1}).chanceThatAlike()).isEqualTo(1);
    assertThat(BetweenHolders.of(two, new double[] {1, 1, 2, 2}).chanceThatAlike()).isZero();
    assertThat(BetweenHolders.of(two, new double[] {1, 1, 2, 2}).chanceOfOneScatter()).isEqualTo(1);
    assertThat(BetweenHolders.of(two, new double[] {1, 1, 2, 2}).bartlett()).isZero();
  }

  @Test
  void bartlettComparesTheScatterOfHoldersThatWereMountedAgain() {
    // f ln s^2 less the sum over A and B of f_i ln s_i^2, over 1 + (1 + 1/2 - 1/3) / 3
    double statistic = (3 * Math.log(4 / 3.0) - Math.log(2)) / (1 + (1.5 - 1 / 3.0) / 3);
    assertThat(THREE.bartlett()).isCloseTo(statistic, within(1e-12));
    assertThat(THREE.chanceOfOneScatter())
        .isCloseTo(
            1 - new ChiSquaredDistribution(null, 1).cumulativeProbability(statistic), within(1e-9));
    // Three holders leave two degrees of freedom, where the chance is exp(-x / 2).
    BetweenHolders more =
        BetweenHolders.of(List.of("A", "A", "B", "B", "C", "C"), new double[] {0, 1, 0, 2, 0, 9});
    assertThat(more.chanceOfOneScatter()).isCloseTo(Math.exp(-more.bartlett() / 2), within(1e-9));
  }

  @Test
  void aHolderThatDoesNotScatterBesideOneThatDoesIsNoChance() {
    BetweenHolders b = BetweenHolders.of(List.of("A", "A", "B", "B"), new double[] {1, 1, 2, 5});
    assertThat(b.bartlett()).isEqualTo(Double.MAX_VALUE);
    assertThat(b.chanceOfOneScatter()).isZero();
    BetweenHolders one = BetweenHolders.of(List.of("A", "A", "B"), new double[] {1, 3, 2});
    assertThat(one.bartlett()).isZero();
    assertThat(one.chanceOfOneScatter()).isEqualTo(1);
  }

  @Test
  void offsetsFromTheZeroOfTheGaugeKnowNoReference() {
    OffsetTable table =
        OffsetTable.of(
            List.of(new AxisRule("X", 1, false)),
            List.of(THREE),
            "",
            0.9,
            new Conditions("Monday", true, 293.15));
    // t(0.95, 3) = 2.353363; the mean of A is good to s_r / sqrt 2
    double half = 2.353363 * Math.sqrt(4 / 3.0);
    OffsetTable.Entry a = table.rows().get(0).entries().get(0);
    assertThat(a.offset()).isEqualTo(3);
    assertThat(a.uncertainty()).isCloseTo(half * Math.sqrt(0.5), within(1e-5));
    assertThat(a.nextMount()).isCloseTo(half * Math.sqrt(1.5), within(1e-5));
    assertThat(table.rows()).extracting(OffsetTable.Row::holder).containsExactly("A", "B", "C");
    assertThat(table.rows()).extracting(OffsetTable.Row::mounts).containsExactly(2, 3, 1);
    assertThat(table.conditions().date()).isEqualTo("Monday");
  }

  @Test
  void offsetsFromAReferenceAddItsOwnUncertainty() {
    OffsetTable table =
        OffsetTable.of(
            List.of(new AxisRule("X", -1, false)), List.of(THREE), "B", 0.9, Conditions.NONE);
    double half = 2.353363 * Math.sqrt(4 / 3.0);
    OffsetTable.Entry a = table.rows().get(0).entries().get(0);
    assertThat(a.offset()).isEqualTo(8);
    assertThat(a.uncertainty()).isCloseTo(half * Math.sqrt(1 / 2.0 + 1 / 3.0), within(1e-5));
    assertThat(a.nextMount()).isCloseTo(half * Math.sqrt(1 + 1 / 2.0 + 1 / 3.0), within(1e-5));
    OffsetTable.Entry b = table.rows().get(1).entries().get(0);
    assertThat(b.offset()).isZero();
    assertThat(b.uncertainty()).isZero();
    assertThat(b.nextMount()).isCloseTo(half * Math.sqrt(1 + 1 / 3.0), within(1e-5));
    assertThat(new AxisRule("X", -1, true).factor()).isEqualTo(-2);
    assertThat(new AxisRule("X", 1, false).factor()).isEqualTo(1);
  }
}
