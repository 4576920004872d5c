package reseat.interchange;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.ToleranceKind;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.Lu6;
import reseat.space.Pose;
import reseat.space.Vec3;

/**
 * What each contributor does to the tool point and to the rotation of the holder, to first order.
 *
 * <p>Exact derivatives at the rest pose without load: Wᵀ X = -dg, where column i of W is the wrench
 * of a unit force along contact normal i and dg the change of the gaps with the dimension, the
 * holder standing still. The load changes them by parts in ten thousand (approach over coupling
 * radius), which the simulation counts and this does not.
 */
public final class Sensitivity {

  /**
   * The effect of one contributor.
   *
   * @param contributor the contributor
   * @param shift displacement of the tool point, base axes, m per unit of deviation (m, rad or K)
   * @param shiftInMachineAxes the same along the machine axes
   * @param rotation rotation of the holder, base axes, rad per unit of deviation
   */
  public record Effect(
      Contributor contributor, Vec3 shift, Vec3 shiftInMachineAxes, Vec3 rotation) {

    /**
     * Returns the standard deviation along the machine axes, signed as the shift.
     *
     * @return shift of one standard deviation of the contributor, m
     */
    public Vec3 standardShift() {
      return shiftInMachineAxes.times(contributor.spread().standardDeviation());
    }

    /**
     * Returns the shift at the limit of the tolerance along the machine axes, signed.
     *
     * @return shift at the upper limit, m
     */
    public Vec3 limitShift() {
      return shiftInMachineAxes.times(contributor.spread().limit());
    }
  }

  private final ToleranceModel model;
  private final List<Effect> effects;

  private Sensitivity(ToleranceModel model, List<Effect> effects) {
    this.model = model;
    this.effects = List.copyOf(effects);
  }

  /**
   * Finds the effects of all contributors.
   *
   * @param model the coupling with its tolerances
   * @return one effect per contributor, in their order
   * @throws reseat.equilibrium.NoEquilibriumException if the contacts do not constrain the holder
   */
  public static Sensitivity of(ToleranceModel model) {
    Response response = new Response(model.design());
    List<Effect> effects = new ArrayList<>();
    for (Contributor c : model.contributors()) {
      Vec3 shift = Vec3.ZERO;
      Vec3 rotation = Vec3.ZERO;
      for (int i = 0; i < c.count(); i++) {
        Vec3[] motion = response.to(model.layout().at(c.place(i)));
        shift = shift.plus(motion[0]);
        rotation = rotation.plus(motion[1]);
      }
      effects.add(new Effect(c, shift, model.design().axes().of(shift), rotation));
    }
    return new Sensitivity(model, effects);
  }

  /**
   * Returns the tolerances the effects belong to.
   *
   * @return the model
   */
  public ToleranceModel model() {
    return model;
  }

  /**
   * Returns the effects.
   *
   * @return one per contributor, in their order
   */
  public List<Effect> effects() {
    return effects;
  }

  /** The motion of the holder that closes given gaps. */
  private static final class Response {
    private final CouplingDesign design;
    private final boolean ballsOnHolder;
    private final Pose holderInBase;
    private final GapDerivative gaps;
    private final Lu6 lu = new Lu6();

    Response(CouplingDesign design) {
      this.design = design;
      ballsOnHolder = design.ballsOn() == Half.HOLDER;
      holderInBase = CouplingModel.of(design).restPose();
      gaps = new GapDerivative(design, ballsOnHolder ? holderInBase : holderInBase.inverse());
      double[] w = new double[36];
      for (int i = 0; i < 6; i++) {
        Vec3 n = gaps.normals().get(i);
        Vec3 moment = gaps.centres().get(i).cross(n);
        for (int k = 0; k < 3; k++) {
          w[6 * k + i] = n.component(k);
          w[6 * (k + 3) + i] = moment.component(k);
        }
      }
      if (!lu.factor(w)) {
        throw new ArithmeticException("the contacts do not constrain the holder");
      }
    }

    /** Displacement of the tool point and rotation of the holder, base axes, per unit. */
    Vec3[] to(DeviationLayout.Dimension d) {
      double[] x = new double[6];
      for (int i = 0; i < 6; i++) {
        x[i] = -gaps.of(i, d);
      }
      lu.solveTransposed(x, x);
      Vec3 translation = new Vec3(x[0], x[1], x[2]);
      Vec3 rotation = new Vec3(x[3], x[4], x[5]);
      Vec3 tool = holderInBase.rotate(ownShift(d));
      if (ballsOnHolder) {
        Vec3 tip = holderInBase.apply(design.toolPoint());
        return new Vec3[] {translation.plus(rotation.cross(tip)).plus(tool), rotation};
      }
      // the twist is that of the base in the holder: seen from the base all of it is reversed
      Vec3 moved = translation.plus(rotation.cross(design.toolPoint()));
      return new Vec3[] {
        tool.minus(holderInBase.rotate(moved)), holderInBase.rotate(rotation).negated()
      };
    }

    /** Shift of the tool point in its holder, holder axes, per unit. */
    private Vec3 ownShift(DeviationLayout.Dimension d) {
      if (d.kind() == ToleranceKind.TEMPERATURE) {
        return design.toolPoint().times(design.remount().holderExpansion());
      }
      if (d.kind() == ToleranceKind.TOOL_POINT) {
        for (int k = 0; k < 3; k++) {
          if (design.axes().axis(k).name().equals(d.part())) {
            return design.axes().axis(k).direction();
          }
        }
      }
      return Vec3.ZERO;
    }
  }
}
