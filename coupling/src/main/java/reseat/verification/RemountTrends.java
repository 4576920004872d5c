package reseat.verification;

import java.util.List;
import reseat.readings.BetweenHolders;
import reseat.readings.ControlChart;
import reseat.readings.LinearTrend;
import reseat.readings.MonotonicTrend;
import reseat.readings.Outliers;
import reseat.readings.PredictionTest;
import reseat.readings.Repeatability;
import reseat.readings.SuccessiveDifferences;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Drift, outliers, holders, control charts and the comparison of two scatters. */
final class RemountTrends {

  private RemountTrends() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    drift(all.from("formulas of the tests", Standing.COMPUTED, 1e-8));
    holders(all);
    outliers(all);
    From ratio = all.from("F distribution, 9 and 9 degrees of freedom", Standing.COMPUTED, 1e-6);
    ratio
        .add("CV-153", "p at variance ratio 4.0259942", 0.05, "", () -> chance(4.0259942))
        .add("CV-153", "p at variance ratio 3.1788931", 0.10, "", () -> chance(3.1788931));
    chart(all.from("NIST/SEMATECH e-Handbook, flow rates", Standing.RECALLED, 4e-5));
    return all.topic("Drift, outliers and holders");
  }

  private static void drift(From from) {
    double[] y = {0.42, 0.35, 0.31, 0.24, 0.22, 0.15, 0.17, 0.11, 0.13, 0.09, 0.10, 0.08};
    LinearTrend line = LinearTrend.perMount(y);
    MonotonicTrend rank = MonotonicTrend.of(y);
    SuccessiveDifferences steps = SuccessiveDifferences.of(y);
    from.add("CV-148", "slope", -0.02933566434, "", line::slope)
        .add("CV-148", "intercept", 0.3881818182, "", line::intercept)
        .add("CV-148", "correlation", -0.9449306712, "", line::correlation)
        .add("CV-148", "t of the slope", -9.130467014, "", line::t)
        .add("CV-148", "standard deviation about the line", 0.03842120263, "", line::residual)
        .add("CV-148", "Mann-Kendall S", -60, "", rank::score)
        .add("CV-148", "Mann-Kendall variance", 212.6666667, "", rank::variance)
        .add("CV-148", "Mann-Kendall Z", -4.045780340, "", rank::z)
        .add("CV-148", "Theil-Sen slope", -0.02738888889, "", rank::slope)
        .add("CV-148", "von Neumann ratio", 0.1683294032, "", steps::ratio)
        .add("CV-148", "sigma of successive differences", 0.03247376564, "", steps::sigma)
        .add("CV-148", "s", 0.1119354522, "", () -> Repeatability.of(y).s());
  }

  private static void holders(Gatherer all) {
    BetweenHolders b =
        BetweenHolders.of(
            List.of("1", "1", "1", "1", "2", "2", "2", "2", "3", "3", "3", "3"),
            new double[] {10.2, 10.4, 10.1, 10.3, 10.6, 10.5, 10.8, 10.7, 10.0, 10.1, 9.9, 10.2});
    all.from("one-way analysis, terms of ISO 5725 (recalled)", Standing.COMPUTED, 1e-9)
        .add("CV-149", "repeatability", 0.1290994449, "", b::repeatability)
        .add("CV-149", "between holders", 0.2986078811, "", b::interchangeability)
        .add("CV-149", "overall", 0.3253203549, "", b::overall)
        .add("CV-149", "2.8 times", 0.3614784456, "", () -> 2.8 * b.repeatability());
    BetweenHolders silicon =
        BetweenHolders.of(HandbookSeries.SILICON.groups(), HandbookSeries.SILICON.toArray());
    all.from("NIST statistical reference data, SiRstv", Standing.RECALLED, 1e-9)
        .add("SiRstv", "certified F", 1.18046237440224, "", () -> ratio(silicon));
    BetweenHolders gear =
        BetweenHolders.of(HandbookSeries.GEAR.groups(), HandbookSeries.GEAR.toArray());
    all.from("NIST/SEMATECH e-Handbook, gear data", Standing.RECALLED, 3e-5)
        .add("gear", "F of the batches", 2.2969, "", () -> ratio(gear))
        .add("gear", "Bartlett of the batches", 20.7858, "", gear::bartlett);
  }

  private static double ratio(BetweenHolders b) {
    return b.between() / b.within();
  }

  private static void outliers(Gatherer all) {
    all.from("(n-1)/sqrt(n) sqrt(t^2/(n-2+t^2))", Standing.COMPUTED, 5e-8)
        .add("CV-151", "Grubbs, 5 readings", 1.7150373, "", () -> limit(5))
        .add("CV-151", "Grubbs, 10 readings", 2.2899541, "", () -> limit(10))
        .add("CV-151", "Grubbs, 12 readings", 2.4115595, "", () -> limit(12))
        .add("CV-151", "Grubbs, 20 readings", 2.7082456, "", () -> limit(20));
    double[] y = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    all.from("NIST/SEMATECH e-Handbook, Grubbs' test", Standing.RECALLED, 1e-8)
        .add("CV-152", "statistic", 2.46876461, "", () -> Outliers.statistic(y))
        .add("CV-152", "one-sided limit", 2.03165200, "", () -> Outliers.grubbsOneSided(8, 0.05));
    Outliers rosner = Outliers.of(HandbookSeries.ROSNER.toArray(), 0.05, 10);
    all.from("NIST/SEMATECH e-Handbook, extreme deviates", Standing.RECALLED, 4e-4)
        .add("Rosner", "outliers found", 3, "", () -> rosner.flagged().size())
        .add("Rosner", "first statistic", 3.118, "", () -> rosner.flagged().get(0).statistic())
        .add("Rosner", "first limit", 3.158, "", () -> rosner.flagged().get(0).limit())
        .add("Rosner", "third statistic", 3.179, "", () -> rosner.flagged().get(2).statistic())
        .add("Rosner", "third limit", 3.143, "", () -> rosner.flagged().get(2).limit());
  }

  private static double limit(int n) {
    return Outliers.grubbsTwoSided(n, 0.05);
  }

  private static double chance(double varianceRatio) {
    Repeatability measured = new Repeatability(10, 0, Math.sqrt(varianceRatio), -1, 1);
    return PredictionTest.of("X", measured, 1, 10, 0.95).p();
  }

  private static void chart(From from) {
    double[] y = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
    ControlChart c = ControlChart.of(y);
    from.add("flow rate", "upper limit", 55.8041, "", c::upperLimit)
        .add("flow rate", "lower limit", 45.8159, "", c::lowerLimit)
        .add("flow rate", "mean moving range", 1.8778, "", c::meanMovingRange);
  }
}
