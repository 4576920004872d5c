package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.BondJoint;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.space.Vec3;

/**
 * What one ball stud has to bear: the load that stays, and loads that come and go on top of it.
 *
 * <p>Loads are those of the contacts without friction; friction can shift sideways load from one
 * stud to another.
 *
 * @param sustained load that stays
 * @param peaks whole loads, the one that stays included, each with its name
 */
public record StudLoads(BondJoint.Load sustained, List<Peak> peaks) {

  /**
   * A load that comes and goes.
   *
   * @param name what it is called
   * @param load the whole load on the ball while it acts
   */
  public record Peak(String name, BondJoint.Load load) {}

  /** Copies the list. */
  public StudLoads {
    peaks = List.copyOf(peaks);
  }

  /**
   * Finds the loads on a stud of a coupling.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param support index of the support
   * @return the loads on its ball
   */
  public static StudLoads of(Equilibrium standing, List<CaseResponse> cases, int support) {
    List<Peak> peaks = new ArrayList<>();
    for (CaseResponse r : cases) {
      peaks.add(new Peak(r.loadCase().name(), onBall(r.state(), support)));
    }
    return new StudLoads(onBall(standing, support), peaks);
  }

  private static BondJoint.Load onBall(Equilibrium state, int support) {
    CouplingDesign design = state.model().design();
    BallMounting mounting = design.supports().get(support).mounting();
    Vec3 axis =
        design.ballsOn() == Half.HOLDER
            ? state.holderInBase().rotate(mounting.axis())
            : mounting.axis();
    Vec3 force = Vec3.ZERO;
    for (Equilibrium.Contact c : state.contacts()) {
      if (c.line().ballIndex() == support && !c.lifted()) {
        force = force.plus(c.line().normal().times(c.force()));
      }
    }
    return new BondJoint.Load(force.dot(axis), force.rejectedFrom(axis).norm());
  }

  /**
   * Returns all loads, the one that stays first.
   *
   * @return loads; the one that stays has no name
   */
  public List<Peak> all() {
    List<Peak> all = new ArrayList<>();
    all.add(new Peak("", sustained));
    all.addAll(peaks);
    return all;
  }
}
