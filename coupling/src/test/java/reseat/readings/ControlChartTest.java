package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.readings.ControlChart.Rule;

/** Limits by hand, and every rule at the edge of its run: one reading less and it keeps still. */
class ControlChartTest {

  /** What a chart of centre 5 and sigma 2 says of readings so many sigma off: rule and place. */
  private static List<String> signals(double... z) {
    ControlChart chart =
        new ControlChart(
            5, 2, 2 * ControlChart.D2, 3, Arrays.stream(z).map(v -> 5 + 2 * v).boxed().toList());
    return chart.signals().stream().map(s -> s.rule() + " " + s.index()).toList();
  }

  private static double[] repeated(int n, double... pattern) {
    return IntStream.range(0, n).mapToDouble(i -> pattern[i % pattern.length]).toArray();
  }

  private static double[] after(double first, double... rest) {
    return DoubleStream.concat(DoubleStream.of(first), Arrays.stream(rest)).toArray();
  }

  @Test
  void theLimitsComeFromTheMeanMovingRange() {
    ControlChart c = ControlChart.of(new double[] {1, 3, 2});
    // Constants of charts of single values, from memory: d2 = 1.128, D4 = 3.267.
    assertThat(c.mean()).isEqualTo(2);
    assertThat(c.meanMovingRange()).isEqualTo(1.5);
    assertThat(c.sigma()).isCloseTo(1.5 / 1.128, within(1e-3));
    assertThat(c.upperLimit()).isCloseTo(2 + 4.5 / 1.128, within(2e-3));
    assertThat(c.lowerLimit()).isCloseTo(2 - 4.5 / 1.128, within(2e-3));
    assertThat(c.movingRangeLimit()).isCloseTo(3.267 * 1.5, within(1e-3));
    assertThat(c.baseline()).isEqualTo(3);
    assertThat(c.with(4, 5).readings()).containsExactly(1.0, 3.0, 2.0, 4.0, 5.0);
    assertThat(c.with(4, 5).baseline()).isEqualTo(3);
    assertThat(c.with(4, 5).sigma()).isEqualTo(c.sigma());
  }

  @Test
  void everyMountOutsideThreeSigmaIsTold() {
    assertThat(signals(3, -3)).doesNotContain("OUT_OF_LIMITS 0", "OUT_OF_LIMITS 1");
    assertThat(signals(3.01, 3.01, 0, -3.01))
        .contains("OUT_OF_LIMITS 0", "OUT_OF_LIMITS 1", "OUT_OF_LIMITS 3")
        .doesNotContain("OUT_OF_LIMITS 2");
  }

  @Test
  void aJumpIsTakenFromNeighbourToNeighbourEitherWay() {
    // D2 D4 = 3.686
    assertThat(signals(-1.9, 1.78)).isEmpty();
    assertThat(signals(-1.9, 1.79)).containsExactly("JUMP 1");
    assertThat(signals(1.9, -1.79)).containsExactly("JUMP 1");
  }

  @Test
  void aRuleThatStaysBrokenSignalsOnceAndAgainOnlyAfterItHeld() {
    assertThat(signals(-1.9, 1.79, -1.9)).containsExactly("JUMP 1");
    assertThat(signals(-1.9, 1.79, 1.79, -1.9)).containsExactly("JUMP 1", "JUMP 3");
  }

  @ParameterizedTest
  @CsvSource({
    "0 2.1 2.2, LARGE_SHIFT 2",
    "2.1 0 2.2, LARGE_SHIFT 2",
    "0 -2.1 -2.2, LARGE_SHIFT 2",
    "2.1 2.2, ''",
    "2.1 2.2 0, ''",
    "0 2.1 1.9, ''",
    "0 1.0 2.0 2.0, ''",
    "0 1.1 1.2 1.1 1.2, SHIFT 4",
    "1.1 1.2 0 1.1 1.2, SHIFT 4",
    "1.1 0 -1.1 1.2 1.1, ''",
    "0 -1.1 -1.2 -1.1 -1.2, SHIFT 4",
    "1.1 1.2 1.1 1.2, ''",
    "0 1.1 1.2 0.9 1.1, ''",
    "1.2 1.2 1.1 1.2 0, ''",
    "0 1.0 1.0 1.0 1.0, ''",
    "0 0.1 0.2 0.3 0.4 0.5, TREND 5",
    "0 -0.1 -0.2 -0.3 -0.4 -0.5, TREND 5",
    "0.5 0.4 0.3 0.2 0.1 0.05, TREND 5",
    "0 0.1 0.2 0.3 0.4, ''",
    "0.2 0.1 0.2 0.3 0.4 0.5, ''",
    "0 0.1 0.2 0.3 0.4 0.4, ''",
    "0 0.1 0.2 0.2 0.3 0.4, ''",
  })
  void runsOnOneSideAndSteadyRunsEndWhereTheyAreComplete(String readings, String signal) {
    double[] z = Arrays.stream(readings.split(" ")).mapToDouble(Double::parseDouble).toArray();
    assertThat(signals(z)).isEqualTo(signal.isEmpty() ? List.of() : List.of(signal));
  }

  @Test
  void nineMountsOnOneSideAreANewLevel() {
    double[] nine = repeated(9, 0.5, 0.4, 0.4);
    assertThat(signals(nine)).containsExactly("NEW_LEVEL 8");
    assertThat(signals(Arrays.copyOf(nine, 8))).isEmpty();
    assertThat(signals(Arrays.stream(nine).map(v -> -v).toArray())).containsExactly("NEW_LEVEL 8");
    nine[3] = 0;
    assertThat(signals(nine)).isEmpty();
  }

  @Test
  void fourteenMountsToAndFroAreTwoStates() {
    double[] fourteen = repeated(14, 0.5, -0.5);
    assertThat(signals(fourteen)).containsExactly("ALTERNATION 13");
    assertThat(signals(Arrays.copyOf(fourteen, 13))).isEmpty();
    assertThat(signals(after(0.5, Arrays.copyOf(fourteen, 13)))).isEmpty();
    // The whole run may begin anywhere.
    assertThat(signals(after(1.1, after(1.1, fourteen)))).containsExactly("ALTERNATION 15");
  }

  @Test
  void eightMountsAwayFromTheMiddleAreTwoRestingPlaces() {
    assertThat(signals(repeated(8, 1, -1))).containsExactly("TWO_PLACES 7");
    assertThat(signals(repeated(7, 1, -1))).isEmpty();
    assertThat(signals(after(0.9, repeated(7, 1, -1)))).isEmpty();
    assertThat(signals(after(0.9, repeated(8, 1, -1)))).containsExactly("TWO_PLACES 8");
  }

  @Test
  void fifteenMountsNearTheMiddleAreTooQuiet() {
    assertThat(signals(repeated(15, 0.5, 0.5, -0.5, -0.5))).containsExactly("TOO_QUIET 14");
    assertThat(signals(repeated(14, 0.5, 0.5, -0.5, -0.5))).isEmpty();
    assertThat(signals(after(1, repeated(14, 0.5, 0.5, -0.5, -0.5)))).isEmpty();
    assertThat(signals(after(1, repeated(15, 0.5, 0.5, -0.5, -0.5))))
        .containsExactly("TOO_QUIET 15");
  }

  @Test
  void everyRuleSaysWhatItDetects() {
    assertThat(Arrays.stream(Rule.values()).map(Rule::words))
        .doesNotHaveDuplicates()
        .allSatisfy(w -> assertThat(w).hasSizeGreaterThan(20));
  }
}
