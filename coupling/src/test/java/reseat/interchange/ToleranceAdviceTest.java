package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;
import reseat.space.Vec3;

class ToleranceAdviceTest {

  private static final double NONE = Double.POSITIVE_INFINITY;
  private static final Set<Owner> HOLDER = EnumSet.of(Owner.HOLDER);

  private static LinearStack stack(CouplingDesign d) {
    return new LinearStack(Sensitivity.of(ToleranceModel.of(d)));
  }

  /** Five contributors with different effects on the three axes. */
  private static LinearStack few() {
    return stack(
        TolerancedCouplings.threeVees()
            .toolPoint(new Vec3(0.047, 0.004, 0.0152))
            .tolerances(
                Tolerances.of(
                    Tolerance.shared(ToleranceKind.BALL_DIAMETER, 3e-6, DistributionShape.UNIFORM),
                    Tolerance.ofEach(ToleranceKind.BALL_ACROSS, 6e-6, DistributionShape.NORMAL)
                        .at("ball 90"),
                    Tolerance.ofEach(ToleranceKind.BALL_ACROSS, 9e-6, DistributionShape.NORMAL)
                        .at("ball 210"),
                    Tolerance.ofEach(ToleranceKind.BALL_HEIGHT, 4e-6, DistributionShape.TRIANGULAR)
                        .at("ball 90"),
                    Tolerance.ofEach(ToleranceKind.BALL_HEIGHT, 5e-6, DistributionShape.TRIANGULAR)
                        .at("ball 330")))
            .build());
  }

  private static double variance(ToleranceAdvice a, LinearStack s, double[] limits, int axis) {
    double sum = 0;
    for (int i = 0; i < limits.length; i++) {
      Contributor c = a.lines().get(i).contributor();
      Sensitivity.Effect e =
          s.sensitivity().effects().stream()
              .filter(f -> f.contributor() == c)
              .findFirst()
              .orElseThrow();
      double part =
          e.shiftInMachineAxes().component(axis)
              * limits[i]
              * c.spread().shape().standardDeviationPerLimit();
      sum += part * part;
    }
    return sum;
  }

  @Test
  void withoutLimitsOneTargetFollowsTheClosedForm() {
    // t_i = T (a_i/c_i^2)^(1/(p+2)) / sqrt(sum c_k^2 (a_k/c_k^2)^(2/(p+2))), derived by Lagrange
    LinearStack s = few();
    double p = 1.5;
    Function<Contributor, CostLaw> laws =
        c -> new CostLaw(Math.pow(c.spread().limit(), p), p, 1e-12, 1);
    double target = 1.2e-6;
    ToleranceAdvice a =
        ToleranceAdvice.cheapest(s, HOLDER, new ToleranceAdvice.Limits(NONE, NONE, target), laws);
    assertThat(a.feasible()).isTrue();
    double sum = 0;
    double[] best = new double[a.lines().size()];
    for (int i = 0; i < best.length; i++) {
      double[] one = new double[best.length];
      one[i] = 1;
      double c2 = variance(a, s, one, 2);
      best[i] = c2 > 1e-20 ? Math.pow(a.lines().get(i).law().coefficient() / c2, 1 / (p + 2)) : 0;
      sum += c2 * best[i] * best[i];
    }
    for (int i = 0; i < best.length; i++) {
      if (best[i] > 0) {
        double t = target * best[i] / Math.sqrt(sum);
        assertThat(a.lines().get(i).limit()).isCloseTo(t, within(1e-9 * t));
      } else {
        // what does nothing along the axis may be as loose as it likes
        assertThat(a.lines().get(i).limit()).isEqualTo(1);
      }
    }
    assertThat(a.reached().z()).isCloseTo(target, within(1e-9 * target));
  }

  @Test
  void anOptimiserThatKnowsNothingOfThisFindsNothingCheaper() {
    LinearStack s = few();
    Function<Contributor, CostLaw> laws = c -> CostLaw.unitAt(c.spread().limit(), 1, 1e9);
    double target = 1.5e-6;
    ToleranceAdvice a =
        ToleranceAdvice.cheapest(s, HOLDER, new ToleranceAdvice.Limits(NONE, target, NONE), laws);
    int n = a.lines().size();
    // any direction in the space of limits is scaled until it just meets the target
    ObjectiveFunction cost =
        new ObjectiveFunction(
            x -> {
              double[] t = new double[n];
              for (int i = 0; i < n; i++) {
                t[i] = 1e-6 * Math.exp(x[i]);
              }
              double scale = target / Math.sqrt(variance(a, s, t, 1));
              double sum = 0;
              for (int i = 0; i < n; i++) {
                sum += a.lines().get(i).law().cost(scale * t[i]);
              }
              return sum;
            });
    double found =
        new SimplexOptimizer(1e-13, 1e-13)
            .optimize(
                cost,
                GoalType.MINIMIZE,
                new InitialGuess(new double[n]),
                new NelderMeadSimplex(n, 0.5),
                new MaxEval(100_000))
            .getValue();
    assertThat(a.cost()).isCloseTo(found, within(1e-4 * found));
    assertThat(a.cost()).isLessThanOrEqualTo(found * (1 + 1e-8));
  }

  @Test
  void limitsAndSeveralTargetsAtOnceAreTheOptimisersToo() {
    LinearStack s = few();
    // narrow range: some limits end at their bounds
    Function<Contributor, CostLaw> laws = c -> CostLaw.unitAt(c.spread().limit(), 1, 1.6);
    LinearStack.Sum now = s.sum(HOLDER);
    ToleranceAdvice.Limits wanted =
        new ToleranceAdvice.Limits(
            0.85 * now.deviation().x(), 0.8 * now.deviation().y(), 0.75 * now.deviation().z());
    ToleranceAdvice a = ToleranceAdvice.cheapest(s, HOLDER, wanted, laws);
    assertThat(a.feasible()).isTrue();
    int n = a.lines().size();
    double[] low = new double[n];
    double[] high = new double[n];
    double[] start = new double[n];
    for (int i = 0; i < n; i++) {
      low[i] = Math.log(a.lines().get(i).law().tightest());
      high[i] = Math.log(a.lines().get(i).law().loosest());
      start[i] = 0.8 * low[i] + 0.2 * high[i];
      assertThat(a.lines().get(i).limit())
          .isBetween(a.lines().get(i).law().tightest(), a.lines().get(i).law().loosest());
    }
    for (int axis = 0; axis < 3; axis++) {
      assertThat(a.reached().component(axis)).isLessThanOrEqualTo(wanted.of(axis) * (1 + 1e-9));
    }
    double[] best = start;
    for (double penalty = 10; penalty <= 1e6; penalty *= 100) {
      double weight = penalty;
      best =
          new BOBYQAOptimizer(2 * n + 1, 0.05, 1e-7)
              .optimize(
                  new ObjectiveFunction(x -> penalised(a, s, x, wanted, weight)),
                  GoalType.MINIMIZE,
                  new InitialGuess(best),
                  new SimpleBounds(low, high),
                  new MaxEval(200_000))
              .getPoint();
    }
    double found = penalised(a, s, best, wanted, 0);
    assertThat(a.cost()).isCloseTo(found, within(2e-3 * found));
  }

  private static double penalised(
      ToleranceAdvice a, LinearStack s, double[] x, ToleranceAdvice.Limits wanted, double weight) {
    double[] t = new double[x.length];
    double cost = 0;
    for (int i = 0; i < x.length; i++) {
      t[i] = Math.exp(x[i]);
      cost += a.lines().get(i).law().cost(t[i]);
    }
    for (int axis = 0; axis < 3; axis++) {
      double excess = Math.sqrt(variance(a, s, t, axis)) / wanted.of(axis) - 1;
      cost += excess > 0 ? weight * excess * excess : 0;
    }
    return cost;
  }

  @Test
  void aTargetOutOfReachIsSaidToBe() {
    LinearStack s = few();
    Function<Contributor, CostLaw> laws = c -> CostLaw.unitAt(c.spread().limit(), 1, 2);
    double now = s.sum(HOLDER).deviation().x();
    ToleranceAdvice a =
        ToleranceAdvice.cheapest(
            s, HOLDER, new ToleranceAdvice.Limits(now / 2.01, NONE, NONE), laws);
    assertThat(a.feasible()).isFalse();
    assertThat(a.lines()).allMatch(l -> Math.abs(l.ratio() - 0.5) < 1e-12);
    assertThat(a.reached().x()).isCloseTo(now / 2, within(1e-12 * now));
    ToleranceAdvice loose =
        ToleranceAdvice.cheapest(s, HOLDER, new ToleranceAdvice.Limits(10 * now, NONE, NONE), laws);
    assertThat(loose.feasible()).isTrue();
    assertThat(loose.lines()).allMatch(l -> Math.abs(l.ratio() - 2) < 1e-12);
    assertThat(loose.cost()).isCloseTo(loose.costNow() / 2, within(1e-12 * loose.costNow()));
  }

  @Test
  void whatCannotBeChangedTakesItsPartOfTheTarget() {
    LinearStack s = stack(TolerancedCouplings.toolPost());
    double occasion = s.sum(EnumSet.of(Owner.OCCASION)).deviation().z();
    Function<Contributor, CostLaw> laws = c -> CostLaw.unitAt(c.spread().limit(), 1, 100);
    ToleranceAdvice a =
        ToleranceAdvice.cheapest(
            s, LinearStack.EVERYTHING, new ToleranceAdvice.Limits(4e-6, 4e-6, 3e-6), laws);
    assertThat(a.feasible()).isTrue();
    assertThat(a.lines()).noneMatch(l -> l.contributor().owner() == Owner.OCCASION);
    assertThat(a.reached().z()).isLessThanOrEqualTo(3e-6 * (1 + 1e-9));
    double[] limits = a.lines().stream().mapToDouble(ToleranceAdvice.Line::limit).toArray();
    double parts = variance(a, s, limits, 2);
    assertThat(a.reached().z()).isCloseTo(Math.sqrt(parts + occasion * occasion), within(1e-15));
    ToleranceAdvice hopeless =
        ToleranceAdvice.cheapest(
            s,
            LinearStack.EVERYTHING,
            new ToleranceAdvice.Limits(NONE, NONE, occasion * 0.9),
            laws);
    assertThat(hopeless.feasible()).isFalse();
  }

  @Test
  void theFirstToTightenIsTheOneWhoseHalvingGainsMost() {
    LinearStack s = stack(TolerancedCouplings.toolPost());
    List<TighteningGain> gains = TighteningGain.ranking(s, LinearStack.BETWEEN_HOLDERS, 1);
    assertThat(gains).isNotEmpty();
    assertThat(gains.get(0).contributor().name())
        .isEqualTo(s.ranking(EnumSet.of(Owner.HOLDER), 1).get(0).effect().contributor().name());
    assertThat(gains)
        .extracting(TighteningGain::gain)
        .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(gains).allMatch(g -> g.gain() >= 0 && g.gain() <= 0.5);
    // second road: a design in which that tool-point tolerance is halved, stacked again
    Contributor first = gains.get(0).contributor();
    assertThat(first.kind()).isEqualTo(ToleranceKind.TOOL_POINT);
    CouplingDesign d = TolerancedCouplings.toolPost();
    Tolerance half =
        Tolerance.ofEach(
                ToleranceKind.TOOL_POINT, first.spread().limit() / 2, DistributionShape.UNIFORM)
            .onPart("X");
    Tolerances tight = TolerancedCouplings.andMore(d.tolerances(), half);
    CouplingDesign tighter = d.toBuilder().tolerances(tight).build();
    double after = stack(tighter).sum(LinearStack.BETWEEN_HOLDERS).deviation().y();
    assertThat(gains.get(0).after()).isCloseTo(after, within(1e-9 * after));
  }

  @Test
  void lawsWithoutSenseAreRefused() {
    assertThatThrownBy(() -> new CostLaw(0, 1, 1e-6, 2e-6)).hasMessageContaining("coefficient");
    assertThatThrownBy(() -> new CostLaw(1, 0, 1e-6, 2e-6)).hasMessageContaining("exponent");
    assertThatThrownBy(() -> new CostLaw(1, 1, 2e-6, 1e-6)).hasMessageContaining("loosest");
    assertThatThrownBy(() -> new ToleranceAdvice.Limits(0, 1, 1)).hasMessageContaining("positive");
    assertThat(CostLaw.unitAt(4e-6, 2, 3).cost(2e-6)).isCloseTo(4, within(1e-12));
  }
}
