package reseat.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.elementary.Elementary;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.VectorScatter;
import reseat.readings.CauseFit;
import reseat.readings.CauseSignature;
import reseat.readings.ScatterCause;
import reseat.readings.ScatterMatrix;
import reseat.remount.Cause;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;

/**
 * The amounts of friction scatter, preload scatter, temperature and dirt with which the simulation
 * scatters as was measured.
 *
 * <p>Each cause is simulated alone at its assumed amount; the measured covariance is taken apart
 * into these (see {@link CauseFit}). Each cause is then simulated again at the amount found, since
 * friction and preload do not answer in proportion, and the fit repeated until the amounts stay.
 * Which contact closes last has no amount and counts as known, as does the noise of the gauges. At
 * last all causes are simulated together at the amounts found.
 *
 * @param fit shares of the causes; their multipliers are those of the assumed amounts
 * @param amounts one per cause, in the order of the fit
 * @param simulated standard deviation along each axis, simulated with the amounts found and the
 *     gauge noise added, m; in the order of the axes
 */
public record CauseCalibration(CauseFit fit, List<Amount> amounts, List<Double> simulated) {

  private static final int ROUNDS = 4;
  private static final double STAYS = 0.03;

  /** Copies the lists. */
  public CauseCalibration {
    amounts = List.copyOf(amounts);
    simulated = List.copyOf(simulated);
  }

  /**
   * How much of one cause there is.
   *
   * @param cause the cause
   * @param assumed half-width that the design assumes: a ratio for friction and size of the
   *     preload, m for its line and for dirt, K for temperature
   * @param fitted half-width that fits the readings best
   * @param low lower bound, one-sided at the confidence of the fit
   * @param high upper bound, one-sided
   * @param share part of the fitted variance summed over the axes
   * @param separable false if other causes could give the same scatter
   * @param alignment how much the cause's scatter points like the measured one, 0 to 1
   */
  public record Amount(
      ScatterCause cause,
      double assumed,
      double fitted,
      double low,
      double high,
      double share,
      boolean separable,
      double alignment) {}

  /**
   * Fits the amounts.
   *
   * @param measured covariance along machine axes, m²
   * @param freedom its degrees of freedom, 2 or more
   * @param gauge variance of the gauge along each axis, m²
   * @param design the coupling that was measured
   * @param places which machine axis each axis of the covariance is
   * @param plan mountings to simulate
   * @param confidence confidence of the bounds
   * @return the fit; empty if no cause with an amount moves the tool point along these axes
   * @throws InterruptedException if the thread is interrupted
   */
  static Optional<CauseCalibration> of(
      ScatterMatrix measured,
      int freedom,
      ScatterMatrix gauge,
      CouplingDesign design,
      List<Integer> places,
      RemountPlan plan,
      double confidence)
      throws InterruptedException {
    List<String> axes = measured.axes();
    ScatterMatrix known =
        gauge.plus(1, alone(design, Map.of(), Cause.APPROACH, axes, places, plan));
    Map<ScatterCause, Double> factors = new EnumMap<>(ScatterCause.class);
    Map<ScatterCause, ScatterMatrix> unit = new EnumMap<>(ScatterCause.class);
    for (Map.Entry<ScatterCause, Cause> cause : CauseAmounts.CAUSES.entrySet()) {
      ScatterMatrix scatter = alone(design, Map.of(), cause.getValue(), axes, places, plan);
      if (scatter.total() > 0) {
        factors.put(cause.getKey(), 1.0);
        unit.put(cause.getKey(), scatter);
      }
    }
    if (factors.isEmpty()) {
      return Optional.empty();
    }
    CauseFit fit = fit(measured, freedom, known, unit, confidence);
    for (int round = 1; round < ROUNDS && again(design, fit, factors); round++) {
      for (Map.Entry<ScatterCause, Double> f : factors.entrySet()) {
        Cause cause = CauseAmounts.CAUSES.get(f.getKey());
        ScatterMatrix scatter =
            alone(design, Map.of(f.getKey(), f.getValue()), cause, axes, places, plan);
        // Told for the assumed amount, as if the answer went with it: exact at the amount found.
        double perUnit = 1 / (f.getValue() * f.getValue());
        unit.put(f.getKey(), scatter.plus(perUnit - 1, scatter));
      }
      fit = fit(measured, freedom, known, unit, confidence);
    }
    return Optional.of(read(fit, measured, gauge, design, places, plan));
  }

  /** Takes over the amounts of a fit; tells whether one of them has changed. */
  private static boolean again(
      CouplingDesign design, CauseFit fit, Map<ScatterCause, Double> factors) {
    boolean changed = false;
    for (CauseFit.Share s : fit.shares()) {
      ScatterCause cause = s.signature().cause();
      if (s.multiplier() > 0) {
        double now = Math.min(s.multiplier(), CauseAmounts.most(design, cause));
        changed |= Math.abs(now / factors.get(cause) - 1) > STAYS;
        factors.put(cause, now);
      }
    }
    return changed;
  }

  private static CauseFit fit(
      ScatterMatrix measured,
      int freedom,
      ScatterMatrix known,
      Map<ScatterCause, ScatterMatrix> unit,
      double confidence) {
    List<CauseSignature> signatures = new ArrayList<>();
    unit.forEach((cause, s) -> signatures.add(new CauseSignature(cause, cause.words(), s)));
    return CauseFit.of(measured, freedom + 1, known, signatures, confidence);
  }

  private static CauseCalibration read(
      CauseFit fit,
      ScatterMatrix measured,
      ScatterMatrix gauge,
      CouplingDesign design,
      List<Integer> places,
      RemountPlan plan)
      throws InterruptedException {
    List<Amount> amounts = new ArrayList<>();
    Map<ScatterCause, Double> found = new EnumMap<>(ScatterCause.class);
    for (CauseFit.Share s : fit.shares()) {
      ScatterCause cause = s.signature().cause();
      double assumed = CauseAmounts.of(design, cause);
      double most = CauseAmounts.most(design, cause);
      found.put(cause, s.multiplier());
      amounts.add(
          new Amount(
              cause,
              assumed,
              assumed * Math.min(most, s.multiplier()),
              assumed * Math.min(most, s.low()),
              assumed * Math.min(most, s.high()),
              s.share(),
              s.separable(),
              s.signature().scatter().alignment(measured)));
    }
    VectorScatter all =
        new RemountSimulation(CouplingModel.of(CauseAmounts.scaled(design, found)))
            .run(plan)
            .toolPoint();
    List<Double> simulated = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      simulated.add(
          Elementary.hypot(all.deviation().component(places.get(i)), Math.sqrt(gauge.get(i, i))));
    }
    return new CauseCalibration(fit, amounts, simulated);
  }

  private static ScatterMatrix alone(
      CouplingDesign design,
      Map<ScatterCause, Double> factors,
      Cause cause,
      List<String> axes,
      List<Integer> places,
      RemountPlan plan)
      throws InterruptedException {
    VectorScatter scatter =
        new RemountSimulation(CouplingModel.of(CauseAmounts.scaled(design, factors)))
            .run(plan, c -> c == cause, done -> {})
            .toolPoint();
    double[][] c = new double[axes.size()][axes.size()];
    for (int i = 0; i < axes.size(); i++) {
      for (int j = 0; j < axes.size(); j++) {
        c[i][j] = covariance(scatter, places.get(i), places.get(j));
      }
    }
    return ScatterMatrix.of(axes, c);
  }

  /** Covariances are told of first with second, second with third, third with first axis. */
  private static double covariance(VectorScatter scatter, int i, int j) {
    if (i == j) {
      double s = scatter.deviation().component(i);
      return s * s;
    }
    int sum = i + j;
    return scatter.covariances().component(sum == 1 ? 0 : sum == 3 ? 1 : 2);
  }
}
