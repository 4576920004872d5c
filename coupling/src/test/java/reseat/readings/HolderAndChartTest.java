package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Holders with unequal numbers of mounts, offset tables, control charts, temperature. */
class HolderAndChartTest {

  @Test
  void unequalGroupsGiveBackTheVariancesThatMadeThem() {
    long seed = 91;
    System.out.println("unbalanced holders, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    int[] sizes = {2, 3, 5, 8, 12};
    double within = 0;
    double among = 0;
    int trials = 4000;
    for (int k = 0; k < trials; k++) {
      List<String> names = new ArrayList<>();
      double[] y = new double[30];
      int i = 0;
      for (int h = 0; h < sizes.length; h++) {
        double place = 2 * random.nextGaussian();
        for (int j = 0; j < sizes[h]; j++) {
          names.add("holder " + h);
          y[i++] = place + random.nextGaussian();
        }
      }
      BetweenHolders b = BetweenHolders.of(names, y);
      within += b.within() / trials;
      among += (b.between() - b.within()) / b.effective() / trials;
    }
    // Estimates of variances are unbiased however unequal the groups: 1 and 4.
    assertThat(within).isCloseTo(1, within(0.02));
    assertThat(among).isCloseTo(4, within(0.2));
  }

  @Test
  void holdersThatDoNotDifferHaveNoSpreadRatherThanANegativeOne() {
    BetweenHolders b = BetweenHolders.of(List.of("1", "2", "1", "2"), new double[] {1, 1, 3, 3});
    assertThat(b.interchangeability()).isZero();
    assertThat(b.chanceThatAlike()).isEqualTo(1);
  }

  @Test
  void oneHolderOrNoRepeatIsRefused() {
    assertThatThrownBy(() -> BetweenHolders.of(List.of("1", "1"), new double[] {1, 2}))
        .hasMessageContaining("at least 2");
    assertThatThrownBy(() -> BetweenHolders.of(List.of("1", "2"), new double[] {1, 2}))
        .hasMessageContaining("mounted twice");
  }

  @Test
  void diameterModeDoublesTheOffsetAndItsUncertaintyAndTheSignTurnsTheOffsetOnly() {
    List<String> names = List.of("1", "1", "1", "2", "2", "2");
    BetweenHolders x = BetweenHolders.of(names, new double[] {0, 1e-6, 2e-6, 11e-6, 12e-6, 10e-6});
    OffsetTable table =
        OffsetTable.of(
            List.of(
                new OffsetTable.AxisRule("X", 1, false), new OffsetTable.AxisRule("X", -1, true)),
            List.of(x, x),
            "1",
            0.95,
            OffsetTable.Conditions.NONE);
    OffsetTable.Entry plain = table.rows().get(1).entries().get(0);
    OffsetTable.Entry doubled = table.rows().get(1).entries().get(1);
    assertThat(plain.offset()).isCloseTo(10e-6, within(1e-18));
    assertThat(doubled.offset()).isCloseTo(-20e-6, within(1e-18));
    assertThat(doubled.uncertainty()).isCloseTo(2 * plain.uncertainty(), within(1e-18));
    // t(0.975, 4) = 2.776445, pooled s 1 um, two means of three mounts.
    assertThat(plain.uncertainty()).isCloseTo(2.776445e-6 * Math.sqrt(2.0 / 3), within(1e-11));
    assertThat(plain.nextMount()).isCloseTo(2.776445e-6 * Math.sqrt(5.0 / 3), within(1e-11));
    assertThat(table.rows().get(0).entries().get(0).offset()).isZero();
    assertThat(table.rows().get(0).entries().get(0).uncertainty()).isZero();
  }

  @Test
  void anUnknownReferenceHolderIsNamed() {
    BetweenHolders x = BetweenHolders.of(List.of("1", "1", "2"), new double[] {0, 1, 2});
    assertThatThrownBy(
            () ->
                OffsetTable.of(
                    List.of(new OffsetTable.AxisRule("X", 1, false)),
                    List.of(x),
                    "7",
                    0.95,
                    OffsetTable.Conditions.NONE))
        .hasMessageContaining("reference holder 7 is not among the holders [1, 2]");
  }

  @Test
  void newReadingsAreHeldToTheOldLimitsAndTheRuleSaysWhatChanged() {
    double[] base = {0, 1, -1, 0.5, -0.5, 0.8, -0.9, 0.2, -0.3, 0.6};
    ControlChart c = ControlChart.of(base);
    assertThat(c.with(9).signals())
        .extracting(ControlChart.Signal::rule)
        .contains(ControlChart.Rule.OUT_OF_LIMITS, ControlChart.Rule.JUMP);
    double up = c.mean() + 0.4 * c.sigma();
    double higher = c.mean() + 0.6 * c.sigma();
    assertThat(c.with(up, higher, up, up, higher, higher, up, higher, up).signals())
        .extracting(ControlChart.Signal::rule)
        .contains(ControlChart.Rule.NEW_LEVEL);
    assertThat(c.with(0.1, 0.2, 0.3, 0.4, 0.5, 0.7).signals())
        .extracting(ControlChart.Signal::rule)
        .contains(ControlChart.Rule.TREND);
    assertThat(c.with(9).upperLimit()).isEqualTo(c.upperLimit());
  }

  @Test
  void alternatingHoldersAndAStickingGaugeAreSeen() {
    double[] base = {0, 1, -1, 0.5, -0.5, 0.8, -0.9, 0.2, -0.3, 0.6};
    ControlChart c = ControlChart.of(base);
    double[] two = IntStream.range(0, 16).mapToDouble(i -> i % 2 == 0 ? 2 : -2).toArray();
    assertThat(c.with(two).signals())
        .extracting(ControlChart.Signal::rule)
        .contains(ControlChart.Rule.ALTERNATION, ControlChart.Rule.TWO_PLACES);
    double[] quiet = new double[16];
    Arrays.fill(quiet, c.mean());
    assertThat(c.with(quiet).signals())
        .extracting(ControlChart.Signal::rule)
        .contains(ControlChart.Rule.TOO_QUIET)
        .doesNotContain(ControlChart.Rule.TREND, ControlChart.Rule.ALTERNATION);
  }

  @Test
  void theSlopeOnTemperatureIsRecoveredBesideADrift() {
    SplittableRandom random = new SplittableRandom(92);
    int n = 200;
    double[] t = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      t[i] = 293.15 + random.nextGaussian();
      y[i] = 0.8e-6 * (t[i] - 293.15) + 2e-9 * i + 0.1e-6 * random.nextGaussian();
    }
    TemperatureRegression r = TemperatureRegression.of(y, t);
    assertThat(r.jointSlope()).isCloseTo(0.8e-6, within(4 * r.jointSlopeError()));
    assertThat(r.jointSlopeError()).isLessThan(r.alone().slopeError());
    assertThat(r.jointP()).isLessThan(1e-6);
    assertThat(r.isConfounded()).isFalse();
  }

  @Test
  void aRoomThatWarmsThroughTheTestCannotBeToldFromDrift() {
    double[] t = IntStream.range(0, 20).mapToDouble(i -> 20 + 0.1 * i).toArray();
    double[] y = IntStream.range(0, 20).mapToDouble(i -> 1e-7 * i + (i % 3) * 1e-8).toArray();
    TemperatureRegression r = TemperatureRegression.of(y, t);
    assertThat(r.isConfounded()).isTrue();
    assertThat(r.jointSlope()).isEqualTo(r.alone().slope());
  }
}
