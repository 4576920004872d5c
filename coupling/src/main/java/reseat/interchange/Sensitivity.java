package reseat.interchange;

import java.util.ArrayList;
import java.util.List;
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
    PoseResponse response = new PoseResponse(model.design());
    List<Effect> effects = new ArrayList<>();
    for (Contributor c : model.contributors()) {
      Vec3 shift = Vec3.ZERO;
      Vec3 rotation = Vec3.ZERO;
      for (int i = 0; i < c.count(); i++) {
        PoseResponse.Motion motion = response.to(model.layout().at(c.place(i)));
        shift = shift.plus(motion.shift());
        rotation = rotation.plus(motion.rotation());
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
}
