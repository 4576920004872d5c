package reseat.interchange;

import java.util.Arrays;
import java.util.List;
import reseat.equilibrium.ContactGeometry;
import reseat.equilibrium.EquilibriumSolver;
import reseat.equilibrium.NormalLaws;
import reseat.numerics.Distribution;
import reseat.numerics.RandomStream;
import reseat.space.Vec3;

/**
 * Makes posts and holders by luck and sees how each holder stands, in storage used again and again.
 *
 * <p>Not for use by several threads.
 */
final class HolderTrial {

  private final SimulatedCoupling coupling;
  private final DeviatedGeometry road;
  private final ContactGeometry geometry;
  private final EquilibriumSolver solver;
  private final List<Contributor> contributors;
  private final boolean[] onPost;
  private final Distribution[] spread;
  private final double[] effect;
  private final double[] movementBound;

  private double postMovement;
  private double movement;
  private final double[] postState;
  private final double[] state;
  private final double[] constants = new double[6];
  private final NormalLaws laws;
  private final double[] tip = new double[3];

  /** Shift of the tool point against the coupling as drawn, base axes, m. */
  final double[] shift = new double[3];

  /** Rotation of the holder against the coupling as drawn, base axes, rad. */
  final double[] rotation = new double[3];

  /** Shift that the holder's own errors cause to first order, machine axes, m. */
  final double[] linear = new double[3];

  HolderTrial(SimulatedCoupling coupling) {
    this.coupling = coupling;
    road = new DeviatedGeometry(coupling.design, coupling.tolerances.layout());
    geometry = ContactGeometry.of(coupling.design);
    laws = coupling.model.normalLaws();
    solver = new EquilibriumSolver(geometry.ballCount());
    contributors = coupling.tolerances.contributors();
    int n = contributors.size();
    onPost = new boolean[n];
    spread = new Distribution[n];
    effect = new double[3 * n];
    movementBound = coupling.movementBounds();
    for (int k = 0; k < n; k++) {
      onPost[k] = contributors.get(k).owner() == Owner.POST;
      spread[k] = contributors.get(k).spread();
      Vec3 s = coupling.stack.sensitivity().effects().get(k).shiftInMachineAxes();
      for (int axis = 0; axis < 3; axis++) {
        effect[3 * k + axis] = s.component(axis);
      }
    }
    postState = new double[coupling.tolerances.layout().size()];
    state = new double[postState.length];
  }

  /** Makes a post. */
  void drawPost(RandomStream stream) {
    Arrays.fill(postState, 0);
    postMovement = 0;
    for (int k = 0; k < spread.length; k++) {
      if (onPost[k]) {
        double deviation = spread[k].draw(stream);
        contributors.get(k).add(deviation, postState);
        postMovement += movementBound[k] * Math.abs(deviation);
      }
    }
  }

  /** Puts a perfect holder on the post. */
  Fit perfectHolder() {
    System.arraycopy(postState, 0, state, 0, state.length);
    Arrays.fill(linear, 0);
    movement = postMovement;
    road.writeBalls(state, geometry);
    road.writeSeats(state, geometry);
    return stand();
  }

  /** Makes a holder and puts it on the post. */
  Fit drawHolder(RandomStream stream) {
    System.arraycopy(postState, 0, state, 0, state.length);
    Arrays.fill(linear, 0);
    movement = postMovement;
    for (int k = 0; k < spread.length; k++) {
      if (!onPost[k]) {
        double deviation = spread[k].draw(stream);
        contributors.get(k).add(deviation, state);
        movement += movementBound[k] * Math.abs(deviation);
        for (int axis = 0; axis < 3; axis++) {
          linear[axis] += effect[3 * k + axis] * deviation;
        }
      }
    }
    road.writeBalls(state, geometry);
    road.writeSeats(state, geometry);
    return stand();
  }

  private Fit stand() {
    road.writeConstants(state, constants);
    laws.setConstants(constants);
    road.writeToolPoint(state, tip);
    EquilibriumSolver.Outcome outcome =
        solver.solve(geometry, laws, coupling.load, coupling.mounting);
    if (outcome != EquilibriumSolver.Outcome.SOLVED) {
      return Fit.NO_POSE;
    }
    solver.displacementOf(tip[0], tip[1], tip[2], shift);
    solver.copyRotation(rotation);
    Vec3 drawn = coupling.design.toolPoint();
    for (int k = 0; k < 3; k++) {
      shift[k] += tip[k] - drawn.component(k) - coupling.nominalShift.component(k);
      rotation[k] -= coupling.nominalRotation.component(k);
    }
    if (solver.lifted()) {
      return Fit.LIFTS_OFF;
    }
    return movement > coupling.looselyWithin
        ? SimulatedCoupling.look(
            DeviatedDesign.of(coupling.design, coupling.tolerances.layout(), state),
            solver.holderInBase())
        : Fit.FITS;
  }
}
