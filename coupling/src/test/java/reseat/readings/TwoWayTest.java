package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings from two ways of approach, and later checks against a baseline, by hand. */
class TwoWayTest {

  /** Means 2 and 5, standard deviations 1 and 2. */
  private static final double[] UP = {1, 2, 3};

  private static final double[] DOWN = {3, 5, 7};

  @Test
  void bothWaysOfOnePositionGiveItsRepeatability() {
    // ISO 230-2 (from memory): R = max(2 s1 + 2 s2 + |B|, 4 s1, 4 s2) = max(9, 4, 8); B = -3
    BidirectionalRepeatability.Position p = BidirectionalRepeatability.Position.of(UP, DOWN);
    assertThat(p.reversal()).isCloseTo(-3, within(1e-12));
    assertThat(p.repeatability()).isCloseTo(9, within(1e-12));
    BidirectionalRepeatability all = new BidirectionalRepeatability(List.of(p));
    assertThat(all.repeatability()).isCloseTo(9, within(1e-12));
    assertThat(all.unidirectional()).isCloseTo(8, within(1e-12));
    assertThat(all.meanReversal()).isCloseTo(-3, within(1e-12));
    assertThat(all.systematic()).isCloseTo(3, within(1e-12));
    assertThat(all.meanDeviation()).isZero();
    // from 2 - 2*1 or 5 - 2*2 to 5 + 2*2
    assertThat(all.accuracy()).isCloseTo(9, within(1e-12));
    // without reversal the wider way alone may decide
    BidirectionalRepeatability.Position same =
        BidirectionalRepeatability.Position.of(new double[] {4, 5, 6}, new double[] {-5, 5, 15});
    assertThat(same.repeatability()).isCloseTo(40, within(1e-12));
  }

  @Test
  void severalPositionsAreJudgedByTheirWorst() {
    BidirectionalRepeatability two =
        new BidirectionalRepeatability(
            List.of(
                BidirectionalRepeatability.Position.of(UP, DOWN),
                BidirectionalRepeatability.Position.of(
                    new double[] {20, 21, 22}, new double[] {20, 21, 22})));
    assertThat(two.repeatability()).isCloseTo(9, within(1e-12));
    assertThat(two.meanReversal()).isCloseTo(-1.5, within(1e-12));
    assertThat(two.systematic()).isCloseTo(19, within(1e-12));
    assertThat(two.meanDeviation()).isCloseTo(17.5, within(1e-12));
    assertThat(two.accuracy()).isCloseTo(23, within(1e-12));
    assertThatThrownBy(() -> new BidirectionalRepeatability(List.of()))
        .hasMessageContaining("at least one position");
  }

  @Test
  void readingsAreTakenApartByTheirWay() {
    List<String> ways = List.of("up", "down", "up", "down", "up", "down");
    double[] mixed = {1, 3, 2, 5, 3, 7};
    BidirectionalRepeatability found =
        BidirectionalRepeatability.ofTwoWays(ways, List.of(), mixed).orElseThrow();
    assertThat(found.repeatability()).isCloseTo(9, within(1e-12));
    assertThat(
            BidirectionalRepeatability.ofTwoWays(
                List.of("up", "up", "up", "up", "up", "down"), List.of(), mixed))
        .isEmpty();
    assertThat(
            BidirectionalRepeatability.ofTwoWays(
                List.of("a", "b", "c", "a", "b", "c"), List.of(), mixed))
        .isEmpty();
  }

  @Test
  void eachHolderIsAPositionOfItsOwnHoweverFarApartTheyStand() {
    List<String> ways =
        List.of("up", "down", "up", "down", "up", "down", "up", "up", "up", "down", "down", "down");
    List<String> holders = List.of("a", "a", "a", "a", "a", "a", "b", "b", "b", "b", "b", "b");
    double[] mixed = {1, 3, 2, 5, 3, 7, 1020, 1021, 1022, 1020, 1021, 1022};
    BidirectionalRepeatability found =
        BidirectionalRepeatability.ofTwoWays(ways, holders, mixed).orElseThrow();
    // by hand as above: a has 9 and B -3, b has max(2 + 2 + 0, 4, 4) = 4 and B 0
    assertThat(found.repeatability()).isCloseTo(9, within(1e-12));
    assertThat(found.meanReversal()).isCloseTo(-1.5, within(1e-12));
    // a holder that was not mounted twice each way says nothing
    List<String> more = new ArrayList<>(holders);
    more.set(11, "c");
    assertThat(
            BidirectionalRepeatability.ofTwoWays(ways, more, mixed)
                .orElseThrow()
                .positions()
                .get(1))
        .isEqualTo(
            BidirectionalRepeatability.Position.of(
                new double[] {1020, 1021, 1022}, new double[] {1020, 1021}));
    assertThat(
            BidirectionalRepeatability.ofTwoWays(
                List.of("up", "down", "up", "down"),
                List.of("a", "a", "b", "b"),
                new double[] {1, 2, 3, 4}))
        .isEmpty();
  }

  @Test
  void aLaterCheckMayDifferByWhatTwoSamplesOfOnePopulationDiffer() {
    double[] readings = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
    Repeatability baseline = Repeatability.of(readings);
    // Student's t, two-sided 95 %, 9 degrees of freedom: 2.2622; F at 95 % for 4 and 9: 3.6331
    // (both computed independently); s = 3.02765
    Requalification check = Requalification.of(baseline, 5, 0.95);
    assertThat(check.meanShift())
        .isCloseTo(2.2622 * 3.02765 * Math.sqrt(1 / 10.0 + 1 / 5.0), within(1e-3));
    assertThat(check.scatter()).isCloseTo(3.02765 * Math.sqrt(3.6331), within(1e-3));
    assertThatThrownBy(() -> Requalification.of(baseline, 1, 0.95))
        .hasMessageContaining("at least 2 mounts, found 1");
  }
}
