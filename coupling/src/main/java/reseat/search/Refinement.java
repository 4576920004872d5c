package reseat.search;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Local search over continuous inputs for the least value of a function that need not be smooth:
 * the simplex of Nelder and Mead, begun again where it ended until that helps no more.
 */
public final class Refinement {

  private static final int MOST_EVALUATIONS = 250;
  private static final int MOST_STARTS = 3;

  /** First step as a part of the range of an input. */
  private static final double STEP = 0.12;

  private final ToDoubleFunction<double[]> objective;
  private double[] best;
  private double least;

  private Refinement(ToDoubleFunction<double[]> objective, double[] start) {
    this.objective = objective;
    best = start.clone();
    least = objective.applyAsDouble(start);
  }

  /**
   * Searches.
   *
   * @param objective function of inputs that run from 0 to 1; infinite where there is no design
   * @param start where to begin, each from 0 to 1
   * @return inputs of the least value met
   */
  public static double[] from(ToDoubleFunction<double[]> objective, double[] start) {
    if (start.length == 0) {
      return start.clone();
    }
    Refinement search = new Refinement(objective, start);
    double before = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST_STARTS && search.least < before; i++) {
      before = search.least;
      search.descend(i % 2 == 0 ? STEP : -STEP / 3);
    }
    return search.best;
  }

  private void descend(double step) {
    double[] steps = new double[best.length];
    for (int i = 0; i < steps.length; i++) {
      // inward, for an optimum often lies on an end of a range
      steps[i] = best[i] + step > 1 || best[i] + step < 0 ? -step : step;
    }
    try {
      new SimplexOptimizer(new SimpleValueChecker(1e-7, 1e-12))
          .optimize(
              new MaxEval(MOST_EVALUATIONS),
              GoalType.MINIMIZE,
              new ObjectiveFunction(this::valueAt),
              new InitialGuess(best.clone()),
              new NelderMeadSimplex(steps));
    } catch (TooManyEvaluationsException e) {
      // the best point met so far counts all the same
      return;
    }
  }

  private double valueAt(double[] x) {
    double[] inside = Arrays.stream(x).map(v -> Math.min(1, Math.max(0, v))).toArray();
    double value = objective.applyAsDouble(inside);
    if (value < least) {
      least = value;
      best = inside;
    }
    return value;
  }
}
