package reseat.remount;

import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.numerics.Lu6;
import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * Closed upper scales for what friction can do to the place of the tool, beside the simulation.
 *
 * <p>At each contact the friction force μN could hold the ball off by μN/kn along the normal (the
 * usual handbook estimate, an upper scale), and across it by the full-slip displacement of
 * Mindlin's theory, 1.5 μN/kt. The first is carried to the tool point through the exact
 * sensitivities, root sum square over the contacts taken as independent.
 *
 * @param perContact greatest of μN/kn over the contacts, m
 * @param fullSlip greatest of 1.5 μN/kt over the contacts, m
 * @param toolPoint root-sum-square effect of μN/kn at the tool point, along the machine axes, m
 */
public record FrictionBound(double perContact, double fullSlip, Vec3 toolPoint) {

  /**
   * Finds the scales for a state.
   *
   * @param state the coupling under preload and weight, all contacts closed
   * @param mu friction coefficient
   * @return the scales
   */
  public static FrictionBound of(Equilibrium state, double mu) {
    CouplingModel model = state.model();
    double[][] w = state.lines().wrenchMatrix(Vec3.ZERO, 1);
    double[] flat = new double[36];
    for (int i = 0; i < 6; i++) {
      System.arraycopy(w[i], 0, flat, 6 * i, 6);
    }
    Lu6 lu = new Lu6();
    if (!lu.factor(flat)) {
      throw new ArithmeticException("the contacts do not constrain the holder");
    }
    double most = 0;
    double slip = 0;
    double[] squares = new double[3];
    for (int i = 0; i < 6; i++) {
      Equilibrium.Contact c = state.contacts().get(i);
      double held = mu * c.force() / c.normalStiffness();
      double softest = Math.min(c.tangentialStiffnessLong(), c.tangentialStiffnessShort());
      most = Math.max(most, held);
      slip = Math.max(slip, 1.5 * mu * c.force() / softest);
      double[] e = new double[6];
      e[i] = held;
      lu.solveTransposed(e, e);
      Twist x = new Twist(new Vec3(e[0], e[1], e[2]), new Vec3(e[3], e[4], e[5]), Vec3.ZERO);
      Vec3 u = model.design().axes().of(x.displacementOf(model.design().toolPoint()));
      for (int k = 0; k < 3; k++) {
        squares[k] += u.component(k) * u.component(k);
      }
    }
    return new FrictionBound(
        most, slip, new Vec3(Math.sqrt(squares[0]), Math.sqrt(squares[1]), Math.sqrt(squares[2])));
  }
}
