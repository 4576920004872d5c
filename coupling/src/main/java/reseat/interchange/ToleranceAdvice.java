package reseat.interchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import reseat.space.Vec3;

/**
 * The cheapest limits under which the tool point keeps to a wanted standard deviation.
 *
 * <p>Minimise the sum of a_i/t_i^p_i subject to Σ (s_ij r_i t_i)² ≤ T_j² along each machine axis j,
 * with s the sensitivity and r the standard deviation per limit of the shape. With multipliers λ_j
 * the best limits are, in closed form,
 *
 * <pre>t_i^(p_i+2) = p_i a_i / (2 Σ_j λ_j (s_ij r_i)²), kept within tightest and loosest</pre>
 *
 * <p>and each λ_j is zero or makes its sum equal to the target. In u = t² the cost is convex and
 * the sums are linear, so these conditions are sufficient. The multipliers are found one at a time
 * by halving an interval, in rounds, until all conditions hold to {@value #ACCURACY} of the
 * targets.
 *
 * @param lines one per contributor that may be changed
 * @param wanted standard deviation wanted along the machine axes, m; infinite where nothing is
 *     asked
 * @param reached standard deviation with the advised limits, m, what cannot be changed included
 * @param feasible false if even the tightest limits miss the target; the lines are then the
 *     tightest
 * @param cost cost of the advised limits
 * @param costNow cost of the present limits
 */
public record ToleranceAdvice(
    List<Line> lines, Limits wanted, Vec3 reached, boolean feasible, double cost, double costNow) {

  /** Relative accuracy to which the conditions of the optimum hold. */
  public static final double ACCURACY = 1e-10;

  /** Copies the list. */
  public ToleranceAdvice {
    lines = List.copyOf(lines);
  }

  /**
   * Standard deviations wanted along the machine axes.
   *
   * @param first along the first axis, m; infinite if nothing is asked
   * @param second along the second axis, m
   * @param third along the third axis, m
   */
  public record Limits(double first, double second, double third) {

    /** Refuses targets that nothing can meet. */
    public Limits {
      if (!(first > 0) || !(second > 0) || !(third > 0)) {
        throw new IllegalArgumentException("a wanted standard deviation must be positive");
      }
    }

    double of(int axis) {
      return axis == 0 ? first : axis == 1 ? second : third;
    }
  }

  /**
   * Advice for one contributor.
   *
   * @param contributor which
   * @param law its cost law
   * @param limit advised limit, m, rad or K
   */
  public record Line(Contributor contributor, CostLaw law, double limit) {

    /**
     * Returns how the advised limit compares with the present one.
     *
     * @return above 1 where the limit may be opened, below 1 where it must be tightened
     */
    public double ratio() {
      return limit / contributor.spread().limit();
    }
  }

  /**
   * Finds the cheapest limits.
   *
   * @param stack tolerances as they are now
   * @param owners whose errors count toward the target
   * @param wanted standard deviation wanted along the machine axes
   * @param laws gives the cost law of a contributor; errors of the occasion are not asked for and
   *     stay as they are
   * @return the advice
   */
  public static ToleranceAdvice cheapest(
      LinearStack stack, Set<Owner> owners, Limits wanted, Function<Contributor, CostLaw> laws) {
    List<Sensitivity.Effect> open = new ArrayList<>();
    double[] fixed = new double[3];
    for (Sensitivity.Effect e : stack.sensitivity().effects()) {
      if (!owners.contains(e.contributor().owner())) {
        continue;
      }
      if (e.contributor().owner() == Owner.OCCASION) {
        for (int j = 0; j < 3; j++) {
          fixed[j] += square(e.standardShift().component(j));
        }
      } else {
        open.add(e);
      }
    }
    List<CostLaw> costs = open.stream().map(e -> laws.apply(e.contributor())).toList();
    double[][] weight = new double[open.size()][3];
    for (int i = 0; i < weight.length; i++) {
      Sensitivity.Effect e = open.get(i);
      double perLimit = e.contributor().spread().shape().standardDeviationPerLimit();
      for (int j = 0; j < 3; j++) {
        weight[i][j] = square(e.shiftInMachineAxes().component(j) * perLimit);
      }
    }
    CheapestLimits search = new CheapestLimits(weight, costs);
    double[] room = new double[3];
    for (int j = 0; j < 3; j++) {
      room[j] = square(wanted.of(j)) - fixed[j];
    }
    boolean feasible = search.solve(room);
    return result(open, costs, search, fixed, wanted, feasible);
  }

  private static ToleranceAdvice result(
      List<Sensitivity.Effect> open,
      List<CostLaw> costs,
      CheapestLimits search,
      double[] fixed,
      Limits wanted,
      boolean feasible) {
    List<Line> lines = new ArrayList<>();
    double cost = 0;
    double costNow = 0;
    for (int i = 0; i < costs.size(); i++) {
      Contributor c = open.get(i).contributor();
      lines.add(new Line(c, costs.get(i), search.limit(i)));
      cost += costs.get(i).cost(search.limit(i));
      costNow += costs.get(i).cost(c.spread().limit());
    }
    double[] sum = search.sums();
    return new ToleranceAdvice(
        lines,
        wanted,
        new Vec3(
            Math.sqrt(sum[0] + fixed[0]),
            Math.sqrt(sum[1] + fixed[1]),
            Math.sqrt(sum[2] + fixed[2])),
        feasible,
        cost,
        costNow);
  }

  private static double square(double v) {
    return v * v;
  }
}
