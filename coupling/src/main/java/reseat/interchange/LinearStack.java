package reseat.interchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import reseat.elementary.Elementary;
import reseat.space.Vec3;

/**
 * The tolerances added up to first order, along each machine axis.
 *
 * <p>Worst case: every contributor at its limit with the sign that hurts. Root-sum-square: the
 * standard deviation of the sum of independent contributors, each with the standard deviation of
 * its shape. The errors of the post, those of a holder and those of the occasion are summed apart.
 */
public final class LinearStack {

  /** The owners that make holders differ on one post. */
  public static final Set<Owner> BETWEEN_HOLDERS =
      Set.copyOf(EnumSet.of(Owner.HOLDER, Owner.OCCASION));

  /** All owners: where a holder stands against the drawing. */
  public static final Set<Owner> EVERYTHING = Set.copyOf(EnumSet.allOf(Owner.class));

  private final Sensitivity sensitivity;

  /**
   * Adds up.
   *
   * @param sensitivity effects of the contributors
   */
  public LinearStack(Sensitivity sensitivity) {
    this.sensitivity = sensitivity;
  }

  /**
   * A sum over contributors, along the machine axes.
   *
   * @param worstCase largest possible shift of the tool point to either side, m
   * @param deviation standard deviation of the shift, m
   * @param covariances covariances of first with second, second with third, third with first axis,
   *     m²
   * @param kurtosis excess kurtosis of the shift, which is zero for a normal distribution
   * @param rotationDeviation standard deviation of the rotation about the machine axes, rad
   */
  public record Sum(
      Vec3 worstCase, Vec3 deviation, Vec3 covariances, Vec3 kurtosis, Vec3 rotationDeviation) {}

  /**
   * One line of a ranking.
   *
   * @param effect contributor and effect
   * @param sensitivity shift along the axis per unit of deviation, signed (m per m, rad or K)
   * @param deviation shift along the axis by one standard deviation, signed, m
   * @param worst shift along the axis at the limit, not signed, m
   * @param share share of the variance along the axis, 0 to 1
   */
  public record Line(
      Sensitivity.Effect effect,
      double sensitivity,
      double deviation,
      double worst,
      double share) {}

  /**
   * Returns the effects that are added up.
   *
   * @return the sensitivity
   */
  public Sensitivity sensitivity() {
    return sensitivity;
  }

  /**
   * Adds up the contributors of some owners.
   *
   * @param owners whose errors count
   * @return their sum; zeros if they own none
   */
  public Sum sum(Set<Owner> owners) {
    double[] worst = new double[3];
    double[] variance = new double[6];
    double[] fourth = new double[3];
    Vec3 products = Vec3.ZERO;
    for (Sensitivity.Effect e : sensitivity.effects()) {
      if (!owners.contains(e.contributor().owner())) {
        continue;
      }
      double limit = e.contributor().spread().limit();
      double sd = e.contributor().spread().standardDeviation();
      double kurtosis = e.contributor().spread().shape().excessKurtosis();
      Vec3 s = e.shiftInMachineAxes();
      Vec3 turns = sensitivity.model().design().axes().of(e.rotation());
      for (int k = 0; k < 3; k++) {
        double shift = s.component(k) * sd;
        worst[k] += Math.abs(s.component(k)) * limit;
        variance[k] += shift * shift;
        fourth[k] += kurtosis * shift * shift * shift * shift;
        double turn = turns.component(k);
        variance[k + 3] += turn * turn * sd * sd;
      }
      products =
          products.plus(new Vec3(s.x() * s.y(), s.y() * s.z(), s.z() * s.x()).times(sd * sd));
    }
    for (int k = 0; k < 3; k++) {
      fourth[k] = variance[k] > 0 ? fourth[k] / (variance[k] * variance[k]) : 0;
    }
    return new Sum(vector(worst), roots(variance, 0), products, vector(fourth), roots(variance, 3));
  }

  private static Vec3 vector(double[] v) {
    return new Vec3(v[0], v[1], v[2]);
  }

  private static Vec3 roots(double[] v, int from) {
    return new Vec3(Math.sqrt(v[from]), Math.sqrt(v[from + 1]), Math.sqrt(v[from + 2]));
  }

  /**
   * Ranks the contributors of some owners by what they do along one machine axis.
   *
   * @param owners whose errors count
   * @param axis machine axis, 0, 1 or 2
   * @return one line per contributor, greatest share of the variance first; in the model's order
   *     where shares are alike
   */
  public List<Line> ranking(Set<Owner> owners, int axis) {
    double all = sum(owners).deviation().component(axis);
    List<Line> lines = new ArrayList<>();
    for (Sensitivity.Effect e : sensitivity.effects()) {
      if (owners.contains(e.contributor().owner())) {
        double deviation = e.standardShift().component(axis);
        double ratio = all > 0 ? deviation / all : 0;
        lines.add(
            new Line(
                e,
                e.shiftInMachineAxes().component(axis),
                deviation,
                Math.abs(e.limitShift().component(axis)),
                ratio * ratio));
      }
    }
    // rounded, so that lines alike by symmetry stay in the order of their contributors
    lines.sort(Comparator.comparingDouble((Line l) -> -Elementary.rint(1e9 * l.share())));
    return List.copyOf(lines);
  }
}
