package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * What the coupling does under one load case, preload and weight acting too.
 *
 * <p>The tool moves between two bounds. Contacts that slide freely let it move by {@code motion},
 * found from exact equilibria. Contacts that all stick let it move by {@code stickingMotion}, to
 * first order from the state at rest.
 *
 * @param loadCase the case
 * @param state forces and pose under all loads, frictionless
 * @param liftOff the contact that opens first as the case's load grows, and when
 * @param motion motion of the tool point and the holder from rest, frictionless; not a state of
 *     rest if {@link #liftsOff()}
 * @param stickingMotion the same if no contact slides
 */
public record CaseResponse(
    LoadCase loadCase,
    Equilibrium state,
    LiftOff.First liftOff,
    ErrorMotion motion,
    ErrorMotion stickingMotion) {

  /**
   * Finds the responses to all load cases of a design.
   *
   * @param standing the coupling at rest under preload and weight
   * @param sticking its stiffness with contacts that stick
   * @return one response per load case, in order
   * @throws NoEquilibriumException if no pose fits a load
   */
  public static List<CaseResponse> all(Equilibrium standing, CouplingStiffness sticking) {
    return all(standing, sticking, new LiftOff(standing.lines(), standing.load()));
  }

  /**
   * Finds the responses to all load cases of a design whose lift-off is prepared already.
   *
   * @param standing the coupling at rest under preload and weight
   * @param sticking its stiffness with contacts that stick
   * @param lift its lift-off from that state
   * @return one response per load case, in order
   * @throws NoEquilibriumException if no pose fits a load
   */
  public static List<CaseResponse> all(
      Equilibrium standing, CouplingStiffness sticking, LiftOff lift) {
    CouplingDesign design = standing.model().design();
    Vec3 tool = design.toolPoint();
    List<CaseResponse> all = new ArrayList<>();
    for (LoadCase c : design.cases()) {
      Equilibrium state = standing.model().equilibriumUnder(standing.load().plus(c.load()));
      Twist stuck = sticking.motionUnder(c.load());
      all.add(
          new CaseResponse(
              c,
              state,
              lift.factor(c.load()),
              ErrorMotion.between(standing, state, tool),
              new ErrorMotion(stuck.displacementOf(standing.placeOf(tool)), stuck.rotation())));
    }
    return List.copyOf(all);
  }

  /**
   * Says whether a contact opens under the case.
   *
   * @return true if the load exceeds what lifts the first contact
   */
  public boolean liftsOff() {
    return state.lifted();
  }

  /**
   * Returns how many times the load must be bearable.
   *
   * @param wanted factor the design asks of cuts
   * @return that factor, or the lesser one of a load that need only be survived
   */
  public double wantedFactor(double wanted) {
    return loadCase.wantedFactor(wanted);
  }
}
