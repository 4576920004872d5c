package reseat.interchange;

import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.ToleranceKind;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.Lu6;
import reseat.space.Pose;
import reseat.space.Vec3;

/** The motion of the holder that closes the gaps which a deviation opens, to first order. */
final class PoseResponse {

  /**
   * What a deviation does.
   *
   * @param shift displacement of the tool point, base axes, per unit of deviation
   * @param rotation rotation of the holder, base axes, per unit of deviation
   */
  record Motion(Vec3 shift, Vec3 rotation) {}

  private final CouplingDesign design;
  private final boolean ballsOnHolder;
  private final Pose holderInBase;
  private final GapDerivative gaps;
  private final Lu6 lu = new Lu6();

  /**
   * Finds the rest pose without load and the lines of action there.
   *
   * @param design the coupling as drawn
   * @throws reseat.equilibrium.NoEquilibriumException if the contacts do not constrain the holder
   */
  PoseResponse(CouplingDesign design) {
    this.design = design;
    ballsOnHolder = design.ballsOn() == Half.HOLDER;
    holderInBase = CouplingModel.of(design).restPose();
    gaps = new GapDerivative(design, ballHalfInSeatHalf());
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

  /** Where the half with the balls rests in the half with the seats, without load. */
  Pose ballHalfInSeatHalf() {
    return ballsOnHolder ? holderInBase : holderInBase.inverse();
  }

  Motion to(DeviationLayout.Dimension d) {
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
      return new Motion(translation.plus(rotation.cross(tip)).plus(tool), rotation);
    }
    // the twist is that of the base in the holder: seen from the base all of it is reversed
    Vec3 moved = translation.plus(rotation.cross(design.toolPoint()));
    return new Motion(
        tool.minus(holderInBase.rotate(moved)), holderInBase.rotate(rotation).negated());
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
