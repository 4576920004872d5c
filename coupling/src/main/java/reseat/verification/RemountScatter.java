package reseat.verification;

import java.util.List;
import java.util.function.ToDoubleFunction;
import reseat.readings.BidirectionalRepeatability;
import reseat.readings.BidirectionalRepeatability.Position;
import reseat.readings.GaugeNoise;
import reseat.readings.Repeatability;
import reseat.readings.ScatterBounds;
import reseat.readings.ToleranceInterval;
import reseat.units.PrintedNumber;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Repeatability, bounds of the true scatter and tolerance intervals. */
final class RemountScatter {

  private static final String SIGMA = "s sqrt((n - 1)/chi-square)";

  private RemountScatter() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    bidirectional(all.from("formulas of ISO 230-2 (recalled)", Standing.COMPUTED, 1e-9));
    bounds(all.from(SIGMA + ", gamma function, t", Standing.COMPUTED, 7e-7));
    quantiles(all);
    dataSets(all);
    tolerance(all);
    From noise = all.from("sqrt(s^2 - g^2)", Standing.COMPUTED, 1e-12);
    noise.add(
        "CV-150",
        "0.10 less gauge noise 0.06",
        0.08,
        "",
        () -> new GaugeNoise(0.10, 30, 0.06, 0).mount().orElseThrow());
    return all.topic("Scatter of measured mounts");
  }

  private static void bidirectional(From from) {
    BidirectionalRepeatability r =
        new BidirectionalRepeatability(
            List.of(
                Position.of(
                    new double[] {-1.2, -0.8, -1.0, -0.9, -1.1},
                    new double[] {-0.4, -0.1, -0.3, -0.2, 0}),
                Position.of(
                    new double[] {0.4, 0.1, 0.3, 0.2, 0.5}, new double[] {1.0, 1.3, 1.2, 1.1, 0.9}),
                Position.of(
                    new double[] {1.9, 2.2, 2.0, 2.1, 1.8},
                    new double[] {2.4, 2.7, 2.6, 2.8, 2.5})));
    from.add("CV-131", "s at one position", 0.1581138830, "", () -> first(r).up().s())
        .add("CV-131", "unidirectional repeatability", 0.6324555320, "", r::unidirectional)
        .add("CV-131", "reversal at one position", -0.8, "", () -> first(r).reversal())
        .add("CV-131", "bidirectional repeatability", 1.432455532, "", r::repeatability)
        .add(
            "CV-131",
            "bidirectional repeatability, third position",
            1.232455532,
            "",
            () -> r.positions().get(2).repeatability())
        .add("CV-131", "systematic deviation E", 3.6, "", r::systematic)
        .add("CV-131", "mean deviation M", 2.9, "", r::meanDeviation)
        .add("CV-131", "accuracy A", 4.232455532, "", r::accuracy)
        .add("CV-131", "mean reversal", -0.7333333333, "", r::meanReversal);
  }

  private static Position first(BidirectionalRepeatability r) {
    return r.positions().get(0);
  }

  private static void bounds(From from) {
    bounds(from, "CV-132", 5, 0.599133, 2.873556, 2.372356, 0.9399856, 2.776445);
    bounds(from, "CV-133", 10, 0.687835, 1.825610, 1.645198, 0.9726593, 2.262157);
    bounds(from, "CV-134", 20, 0.760490, 1.460572, 1.370410, 0.9869343, 2.093024);
    bounds(from, "CV-135", 30, 0.796407, 1.344315, 1.279705, 0.9914181, 2.045230);
  }

  private static void bounds(
      From from, String id, int n, double low, double high, double upper, double c4, double t) {
    String mounts = n + " mounts: ";
    from.add(id, mounts + "lower 95 % factor", low, "", () -> factor(n, ScatterBounds::lower))
        .add(id, mounts + "upper 95 % factor", high, "", () -> factor(n, ScatterBounds::upper))
        .add(
            id,
            mounts + "one-sided 95 % factor",
            upper,
            "",
            () -> ScatterBounds.upperFactor(n, 0.95))
        .add(id, mounts + "mean of s over sigma", c4, "", () -> ScatterBounds.meanOfS(n))
        .add(id, mounts + "t factor", t, "", () -> ScatterBounds.studentFactor(0.95, n - 1.0));
  }

  private static double factor(int n, ToDoubleFunction<ScatterBounds> end) {
    return end.applyAsDouble(ScatterBounds.of(1, n, 0.95));
  }

  private static void quantiles(Gatherer all) {
    From computed = all.from("chi-square distribution", Standing.COMPUTED, 5e-7);
    quantile(computed, 0.025, 9, 2.700389);
    quantile(computed, 0.975, 9, 19.022768);
    quantile(computed, 0.025, 99, 73.361080);
    quantile(computed, 0.975, 99, 128.421989);
    From printed = all.from("NIST/SEMATECH e-Handbook 7.2.6.3, worked copy", Standing.SEEN, 5e-8);
    quantile(printed, 0.01, 42, 23.650095);
  }

  private static void quantile(From from, double probability, double freedom, double printed) {
    from.add(
        "CV-136",
        "chi-square quantile "
            + PrintedNumber.shortest(probability)
            + ", "
            + (int) freedom
            + " degrees of freedom",
        printed,
        "",
        () -> ScatterBounds.chiSquareQuantile(probability, freedom));
  }

  private static void dataSets(Gatherer all) {
    Repeatability gear = Repeatability.of(HandbookSeries.GEAR.toArray());
    all.from("NIST/SEMATECH e-Handbook, gear data", Standing.RECALLED, 2e-6)
        .add("CV-137", "gear diameters: s", 0.006278908, "", gear::s)
        .add("CV-137", "gear diameters: lower bound", 0.005512924, "", () -> of(gear).lower())
        .add("CV-137", "gear diameters: upper bound", 0.007294052, "", () -> of(gear).upper())
        .add(
            "CV-137",
            "gear diameters: 99 s^2 / 0.1^2",
            0.3903044,
            "",
            () -> 99 * gear.s() * gear.s() / 0.01);
    ScatterBounds washers = ScatterBounds.of(0.005124172, 15, 0.95);
    all.from("Larsen, exercise 16 (s read), " + SIGMA, Standing.COMPUTED, 5e-7)
        .add("CV-138", "washers: lower bound", 0.003751543, "", washers::lower)
        .add("CV-138", "washers: upper bound", 0.008081327, "", washers::upper)
        .add(
            "CV-138",
            "chi-square quantile 0.975, 14 degrees of freedom",
            26.118948,
            "",
            () -> ScatterBounds.chiSquareQuantile(0.975, 14));
    double mean = 64.5666667;
    double s = 2.188997878;
    ScatterBounds heights = ScatterBounds.of(s, 75, 0.95);
    all.from("SAS example 4.9, printed interval", Standing.SEEN, 1e-4)
        .add(
            "CV-139",
            "heights: lower end of the mean",
            64.06,
            "",
            () -> mean - ScatterBounds.halfWidthOfMean(s, 75, 0.95))
        .add(
            "CV-139",
            "heights: upper end of the mean",
            65.07,
            "",
            () -> mean + ScatterBounds.halfWidthOfMean(s, 75, 0.95));
    all.from("SAS example 4.9 (s read), " + SIGMA, Standing.COMPUTED, 1e-8)
        .add("CV-139", "heights: lower bound of sigma", 1.886082922, "", heights::lower)
        .add("CV-139", "heights: upper bound of sigma", 2.608738500, "", heights::upper);
  }

  private static ScatterBounds of(Repeatability r) {
    return r.bounds(0.95);
  }

  private static void tolerance(Gatherer all) {
    From sum = all.from("exact integral; Howe; Natrella", Standing.COMPUTED, 3e-6);
    tolerance(sum, "CV-140", 43, 0.90, 0.99, 2.22283, 2.21732, 1.87395, 1.87519);
    tolerance(sum, "CV-141", 40, 0.90, 0.99, 2.25284, 2.24672, 1.90173, 1.90337);
    tolerance(sum, "CV-142", 10, 0.95, 0.95, 3.39343, 3.38191, 2.91096, 2.87480);
    tolerance(sum, "CV-143", 4, 0.95, 0.95, 6.34108, 6.39863, 5.14387, 5.29317);
    tolerance(sum, "CV-144", 5, 0.95, 0.95, 5.07687, 5.09353, 4.20268, 4.19030);
    tolerance(sum, "CV-145", 20, 0.95, 0.95, 2.76035, 2.75228, 2.39600, 2.37835);
    tolerance(sum, "CV-146", 10, 0.99, 0.95, 4.43691, 4.44459, 3.98112, 3.94000);
    tolerance(sum, "CV-147", 15, 0.95, 0.95, 2.96494, 2.95476, 2.56600, 2.54190);
    tolerance(sum, "CV-147", 30, 0.95, 0.95, 2.55489, 2.54964, 2.21984, 2.20851);
    all.from("NIST/SEMATECH e-Handbook 7.2.6.3, worked copy", Standing.SEEN, 5e-8)
        .add("CV-140", "Howe as printed", 2.2173159, "", () -> ToleranceInterval.howe(43, .9, .99))
        .add(
            "CV-140",
            "Natrella as printed",
            1.8751896,
            "",
            () -> ToleranceInterval.natrella(43, .9, .99));
    From table = all.from("Berthouex and Brown, table 21.1", Standing.SEEN, 2e-3);
    printed(table, "CV-142", 10, 0.95, 3.39);
    printed(table, "CV-143", 4, 0.95, 6.34);
    printed(table, "CV-144", 5, 0.95, 5.08);
    printed(table, "CV-145", 20, 0.95, 2.76);
    printed(table, "CV-146", 10, 0.99, 4.44);
    printed(table, "CV-147", 15, 0.95, 2.96);
    printed(table, "CV-147", 30, 0.95, 2.55);
  }

  private static void tolerance(
      From from,
      String id,
      int n,
      double share,
      double confidence,
      double exact,
      double howe,
      double one,
      double natrella) {
    String name =
        n
            + " mounts, "
            + PrintedNumber.shortest(share)
            + ", "
            + PrintedNumber.shortest(confidence)
            + ": ";
    from.add(id, name + "exact", exact, "", () -> ToleranceInterval.twoSided(n, share, confidence))
        .add(id, name + "Howe", howe, "", () -> ToleranceInterval.howe(n, share, confidence))
        .add(id, name + "one side", one, "", () -> ToleranceInterval.oneSided(n, share, confidence))
        .add(
            id,
            name + "Natrella",
            natrella,
            "",
            () -> ToleranceInterval.natrella(n, share, confidence));
  }

  private static void printed(From from, String id, int n, double share, double k) {
    from.add(
        id,
        n + " mounts, " + PrintedNumber.shortest(share) + ", as printed",
        k,
        "",
        () -> ToleranceInterval.twoSided(n, share, 0.95));
  }
}
