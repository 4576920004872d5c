package reseat.readings;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.space.Vec3;

/** Figures from which nothing can be computed are refused with one message that holds them. */
class RefusedFiguresTest {

  private static final double[] FIVE = {1, 2, 4, 3, 5};
  private static final double INF = Double.POSITIVE_INFINITY;

  private static Arguments refused(String message, ThrowingCallable made) {
    return Arguments.of(message, made);
  }

  private static AcceptancePlan plan(double expected, double confidence, int mounts, int wearIn) {
    return new AcceptancePlan("X", 1, expected, confidence, 0.8, mounts, wearIn, List.of());
  }

  private static ScatterMatrix square(double... v) {
    return ScatterMatrix.of(List.of("X", "Z"), new double[][] {{v[0], v[1]}, {v[2], v[3]}});
  }

  private static CauseFit fit(int mounts, int causes, ScatterMatrix measured) {
    CauseSignature one = new CauseSignature(ScatterCause.OTHER, "a", square(1, 0, 0, 1));
    return CauseFit.of(
        measured,
        mounts,
        square(0, 0, 0, 0),
        Stream.generate(() -> one).limit(causes).toList(),
        0.9);
  }

  private static OffsetTable offsets(int axes, BetweenHolders... readings) {
    List<OffsetTable.AxisRule> rules =
        Stream.generate(() -> new OffsetTable.AxisRule("X", 1, false)).limit(axes).toList();
    return OffsetTable.of(rules, List.of(readings), "", 0.95, OffsetTable.Conditions.NONE);
  }

  private static BetweenHolders holders(String... names) {
    return BetweenHolders.of(List.of(names), new double[] {1, 2, 3});
  }

  static Stream<Arguments> plansAndBounds() {
    return Stream.of(
        refused("found expected 0.0, target 1.0, mounts 9, wear-in 3", () -> plan(0, 0.9, 9, 3)),
        refused("found expected 1.0, target 1.0", () -> plan(1, 0.9, 9, 3)),
        refused("mounts 1, wear-in 3", () -> plan(0.5, 0.9, 1, 3)),
        refused("mounts 9, wear-in -1", () -> plan(0.5, 0.9, 9, -1)),
        refused("confidence must be between 0 and 1", () -> plan(0.5, 1, 9, 3)),
        refused("found 1.5", () -> new AcceptancePlan("X", 1, 0.5, 0.9, 1.5, 9, 3, List.of())),
        refused(
            "axis X: the expected scatter is 0.999 of the target, too near",
            () -> AcceptancePlan.of("X", 1, 0.999, 0.95, 0.9, List.of())),
        refused("found 0.0", () -> new AnalysisOptions(0, 0.9, 0.05, 0)),
        refused("found 1.0", () -> new AnalysisOptions(0.9, 1, 0.05, 0)),
        refused("found -0.1", () -> new AnalysisOptions(0.9, 0.9, -0.1, 0)),
        refused("found -1.0, 2.0, 3.0", () -> new ColumnFacts(-1, 2, 3)),
        refused("found 1.0, -2.0, 3.0", () -> new ColumnFacts(1, -2, 3)),
        refused("found 1.0, 2.0, -3.0", () -> new ColumnFacts(1, 2, -3)),
        refused("found -1.0, 0.0, 0.0, 2", () -> new GaugeNoise(-1, 2, 0, 0)),
        refused("found 0.0, -1.0, 0.0, 2", () -> new GaugeNoise(0, 2, -1, 0)),
        refused("found 0.0, 0.0, -1.0, 2", () -> new GaugeNoise(0, 2, 0, -1)),
        refused("found 0.0, 0.0, 0.0, 1", () -> new GaugeNoise(0, 1, 0, 0)),
        refused("0 or more, found -1.0", () -> ScatterBounds.of(-1, 5, 0.9)),
        refused("0 or more, found Infinity", () -> ScatterBounds.of(INF, 5, 0.9)),
        refused("at least 2 mounts, found 1", () -> ScatterBounds.of(1, 1, 0.9)),
        refused("found 1.5", () -> ScatterBounds.of(1, 5, 1.5)),
        refused("step of the gauge", () -> ScatterBounds.ofEqualReadings(0, 5, 0.9)),
        refused("at least 2 mounts", () -> ScatterBounds.ofEqualReadings(1, 1, 0.9)),
        refused("found 0.0", () -> ScatterBounds.ofEqualReadings(1, 5, 0)),
        refused("found 1.0", () -> ScatterBounds.upperFactor(5, 1)),
        refused("found 0.0", () -> ScatterBounds.studentFactor(0, 5)),
        refused("at least 2 mounts", () -> ScatterBounds.meanOfS(1)),
        refused("at least 2 mounts", () -> ScatterBounds.halfWidthOfMean(1, 1, 0.9)),
        refused("from 0 to below 1, found 1.0", () -> ProofOfTarget.mountsFor(1, 0.9)),
        refused("found -0.1", () -> ProofOfTarget.mountsFor(-0.1, 0.9)),
        refused("must be positive, found 0.0", () -> ProofOfTarget.chanceOfProof(5, 0, 0.9)),
        refused("found 0.0", () -> ProofOfTarget.of(ScatterBounds.of(1, 5, 0.9), 0)),
        refused("found Infinity", () -> ProofOfTarget.of(ScatterBounds.of(1, 5, 0.9), INF)),
        refused("found 1.0", () -> Requalification.of(Repeatability.of(FIVE), 5, 1)),
        refused("axis X: a prediction needs", () -> PredictionTest.of("X", 1, 5, 0, 9, 0.9)),
        refused("found 2.0 from 1", () -> PredictionTest.of("X", 1, 5, 2, 1, 0.9)),
        refused("found 1.0", () -> PredictionTest.of("X", 1, 5, 1, 9, 1)),
        refused("at least 2 mounts", () -> ToleranceInterval.twoSided(1, 0.9, 0.9)),
        refused("share of mounts must be", () -> ToleranceInterval.howe(5, 1, 0.9)),
        refused("share of mounts must be", () -> ToleranceInterval.howe(5, 0, 0.9)),
        refused("found 1.0", () -> ToleranceInterval.natrella(5, 0.9, 1)),
        refused("found 0.4 and 0.9", () -> ToleranceInterval.oneSided(5, 0.4, 0.9)),
        refused("found 0.9 and 0.4", () -> ToleranceInterval.oneSided(5, 0.9, 0.4)),
        refused("at least 2 mounts", () -> ToleranceInterval.oneSided(1, 0.9, 0.9)),
        // z = 1.645: 1 - z^2 / (2 (n - 1)) is below 0 for 2 mounts
        refused("so few mounts (2)", () -> ToleranceInterval.natrella(2, 0.9, 0.95)));
  }

  static Stream<Arguments> series() {
    return Stream.of(
        refused("at least 2 mounts, found 1", () -> new Repeatability(1, 0, 1, 0, 1)),
        refused("found mean NaN", () -> new Repeatability(2, Double.NaN, 1, 0, 1)),
        refused("deviation Infinity", () -> new Repeatability(2, 0, INF, 0, 1)),
        refused("deviation -1.0", () -> new Repeatability(2, 0, -1, 0, 1)),
        refused("readings must be finite", () -> new Repeatability(2, 0, 1, 1, 0)),
        refused("readings must be finite", () -> Repeatability.of(new double[] {1, INF})),
        refused("at least 3 readings, found 2", () -> ControlChart.of(new double[] {1, 2})),
        refused("all are 1.0", () -> ControlChart.of(new double[] {1, 1, 1})),
        refused("at least 3 readings, found 2", () -> MonotonicTrend.of(new double[] {1, 2})),
        refused("at least 3 readings", () -> SuccessiveDifferences.of(new double[] {1, 2})),
        refused("found 2, 2", () -> LinearTrend.perMount(new double[] {1, 2})),
        refused("found 5, 4", () -> LinearTrend.of(new double[4], FIVE, Groups.one(5))),
        refused("that varies", () -> LinearTrend.of(new double[5], FIVE, Groups.one(5))),
        refused("found 1.0", () -> Drift.of(FIVE, 1)),
        refused("found 1.0", () -> Settling.of(FIVE, 1)),
        refused(
            "at least 5 readings with a temperature each, found 5 readings, 4 temperatures",
            () -> TemperatureRegression.of(FIVE, new double[4])),
        refused("found 4", () -> TemperatureRegression.of(new double[4], new double[4])),
        refused("at least 8 readings, found 5", () -> NormalShape.of(FIVE)),
        refused("readings that scatter", () -> NormalShape.of(new double[8])),
        refused("readings that scatter", () -> Outliers.statistic(new double[8])),
        refused("at least 3 readings, found 2", () -> Outliers.grubbsOneSided(2, 0.05)),
        refused("of 5 readings at most 2 can be tested, asked 3", () -> Outliers.of(FIVE, 0.1, 3)),
        refused("asked -1", () -> Outliers.of(FIVE, 0.1, -1)),
        refused("found 0.0", () -> Outliers.of(FIVE, 0, 1)),
        refused("5 readings need as many", () -> Groups.of(List.of("1", "2"), 5)));
  }

  static Stream<Arguments> holdersAndCauses() {
    Probe probe = new Probe("a", Vec3.ZERO, Vec3.Z, 1e-8);
    List<String> axes = List.of("X", "Z");
    return Stream.of(
        refused("at least 2, found 1", () -> holders("1", "1", "1")),
        refused("3 readings need as many holder names, found 2", () -> holders("1", "2")),
        refused("sign must be +1 or -1, found 2", () -> new OffsetTable.AxisRule("X", 2, true)),
        refused("0 axes need as many analyses, found 0", () -> offsets(0)),
        refused("2 axes need as many analyses, found 1", () -> offsets(2, holders("1", "1", "2"))),
        refused(
            "on the same holders",
            () -> offsets(2, holders("1", "1", "2"), holders("1", "1", "3"))),
        refused("0 causes, 5 mounts", () -> fit(5, 0, square(1, 0, 0, 1))),
        refused("9 causes, 5 mounts", () -> fit(5, 9, square(1, 0, 0, 1))),
        refused("1 causes, 2 mounts", () -> fit(2, 1, square(1, 0, 0, 1))),
        refused("does not scatter", () -> fit(5, 1, square(0, 0, 0, 0))),
        refused("is not a covariance", () -> fit(5, 1, square(5, 0, 0, -1))),
        refused(
            "cause b moves none of the axes",
            () -> new CauseSignature(ScatterCause.OTHER, "b", square(0, 0, 0, 0))),
        refused("finite and symmetric, found 1.0 and 2.0 for X, Z", () -> square(4, 1, 2, 4)),
        refused("finite and symmetric", () -> square(4, 1, 1, Double.NaN)),
        refused("0 axes need as many rows", () -> ScatterMatrix.of(List.of(), new double[0][0])),
        refused("2 axes need as many rows", () -> ScatterMatrix.of(axes, new double[1][2])),
        refused("must be square", () -> ScatterMatrix.of(axes, new double[2][1])),
        refused("2 axes need as many series", () -> ScatterMatrix.ofSeries(axes, List.of(FIVE))),
        refused("0 axes", () -> ScatterMatrix.ofSeries(List.of(), List.of())),
        refused(
            "the same length",
            () -> ScatterMatrix.ofSeries(axes, List.of(FIVE, new double[] {1, 2}))),
        refused(
            "[X, Z] cannot be combined with scatter over [Z, X]",
            () -> square(1, 0, 0, 1).plus(1, square(1, 0, 0, 1).over(List.of("Z", "X")))),
        refused("no scatter over [Y]", () -> square(1, 0, 0, 1).over(List.of("Y"))),
        refused("probe a: the noise", () -> new Probe("a", Vec3.ZERO, Vec3.Z, 0)),
        refused("probe a: the noise", () -> new Probe("a", Vec3.ZERO, Vec3.Z, INF)),
        refused("one probe and one motion", () -> ProbeLayout.of(List.of(), Set.of(), Vec3.ZERO)),
        refused(
            "one probe and one motion",
            () -> ProbeLayout.of(List.of(), EnumSet.of(RigidMotion.X), Vec3.ZERO)),
        refused(
            "1 probes need as many readings, found 2",
            () ->
                ProbeLayout.of(List.of(probe), EnumSet.of(RigidMotion.Z), Vec3.ZERO)
                    .solve(new double[2])));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({"plansAndBounds", "series", "holdersAndCauses"})
  void figuresThatMakeNoSenseAreRefused(String message, ThrowingCallable made) {
    assertThatThrownBy(made)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message);
  }

  @Test
  void theLeastThatMakesSenseIsTaken() {
    assertThatCode(
            () -> {
              plan(0.5, 0.9, 2, 0);
              new ColumnFacts(0, 0, 0);
              new GaugeNoise(0, 2, 0, 0);
              ScatterBounds.of(0, 2, 0.9);
              new Repeatability(2, 0, 0, 1, 1);
              PredictionTest.of("X", 1, 1, 1, 2, 0.9);
              ToleranceInterval.natrella(3, 0.9, 0.9);
              fit(3, 1, square(1, 0, 0, 1));
              fit(3, 8, square(1, 0, 0, 1));
              NormalShape.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8});
              MonotonicTrend.of(new double[] {1, 2, 3});
              SuccessiveDifferences.of(new double[] {1, 2, 3});
              LinearTrend.perMount(new double[] {1, 2, 3});
              TemperatureRegression.of(FIVE, new double[] {1, 2, 1, 2, 2});
              Outliers.of(FIVE, 0.1, 2);
              Outliers.of(FIVE, 0.1, 0);
              Outliers.grubbsOneSided(3, 0.05);
            })
        .doesNotThrowAnyException();
  }
}
