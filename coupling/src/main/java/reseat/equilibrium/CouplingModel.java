package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.TangentialContact;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.material.ElasticPair;
import reseat.seat.Flank;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * A design made ready for questions: its geometry in arrays and the Hertz law of every contact.
 *
 * <p>Preparing takes the elliptic integrals; after that each load costs a few 6x6 solves.
 */
public final class CouplingModel {

  private final CouplingDesign design;
  private final ContactGeometry geometry;
  private final List<EllipticContact> contacts;
  private final List<TangentialContact> tangential;
  private final double[] hertz;
  private final double[] mounting;

  private CouplingModel(
      CouplingDesign design, ContactGeometry geometry, List<EllipticContact> contacts) {
    this.design = design;
    this.geometry = geometry;
    this.contacts = List.copyOf(contacts);
    List<TangentialContact> across = new ArrayList<>();
    this.hertz = new double[contacts.size()];
    for (int i = 0; i < hertz.length; i++) {
      across.add(TangentialContact.of(contacts.get(i)));
      hertz[i] = contacts.get(i).hertzConstant();
    }
    this.tangential = List.copyOf(across);
    this.mounting = mountingOf(design);
  }

  /**
   * Prepares a design.
   *
   * @param design the coupling; any number of contacts
   * @return the model
   * @throws IllegalArgumentException if a ball is too close a fit in a hollow flank for contact at
   *     one point
   */
  public static CouplingModel of(CouplingDesign design) {
    List<EllipticContact> contacts = new ArrayList<>();
    for (Support s : design.supports()) {
      ElasticPair pair = new ElasticPair(s.ballMaterial().elastic(), s.seatMaterial().elastic());
      for (Flank f : s.seat().flanks()) {
        contacts.add(EllipticContact.of(curvature(s.ball().radius(), f), pair));
      }
    }
    return new CouplingModel(design, ContactGeometry.of(design), contacts);
  }

  private static RelativeCurvature curvature(double ballRadius, Flank flank) {
    return Double.isInfinite(flank.signedRadius())
        ? RelativeCurvature.ballOnPlane(ballRadius)
        : RelativeCurvature.ballOnCylinder(ballRadius, flank.signedRadius());
  }

  private static double[] mountingOf(CouplingDesign design) {
    if (design.supports().stream().allMatch(s -> s.mounting().isRigid())) {
      return null;
    }
    double[] c = new double[9 * design.supports().size()];
    Vec3[] unit = {Vec3.X, Vec3.Y, Vec3.Z};
    for (int b = 0; b < design.supports().size(); b++) {
      for (int j = 0; j < 3; j++) {
        Vec3 d = design.supports().get(b).mounting().displacement(unit[j]);
        for (int i = 0; i < 3; i++) {
          c[9 * b + 3 * i + j] = d.component(i);
        }
      }
    }
    return c;
  }

  /**
   * Returns the design.
   *
   * @return the design that the model was made from
   */
  public CouplingDesign design() {
    return design;
  }

  /**
   * Returns the Hertz contacts.
   *
   * @return one per flank, support by support
   */
  public List<EllipticContact> contacts() {
    return contacts;
  }

  /**
   * Returns the tangential laws of the contacts.
   *
   * @return one per flank, support by support
   */
  public List<TangentialContact> tangential() {
    return tangential;
  }

  /**
   * Copies the geometry for use in a solver.
   *
   * @return balls and flanks in arrays
   */
  public ContactGeometry geometry() {
    return geometry.copy();
  }

  /**
   * Copies the Hertz constants.
   *
   * @return C of N = C δ^(3/2) for each contact, N/m^1.5
   */
  public double[] hertzConstants() {
    return hertz.clone();
  }

  /**
   * Copies the compliances of the ball mountings.
   *
   * @return 9 values per ball, row by row, in the ball half's axes, m/N; empty if all are rigid
   */
  public double[] mountingCompliances() {
    return mounting == null ? new double[0] : mounting.clone();
  }

  /**
   * Finds how the holder stands without load.
   *
   * @return pose at which every undeformed ball just touches every flank
   * @throws NoEquilibriumException if the contacts do not constrain the holder, or no pose fits
   */
  public Pose restPose() {
    EquilibriumSolver solver = solver();
    EquilibriumSolver.Outcome outcome = solver.rest(geometry);
    if (outcome != EquilibriumSolver.Outcome.SOLVED) {
      throw new NoEquilibriumException(outcome, "rest without load");
    }
    return solver.holderInBase();
  }

  /**
   * Finds forces and pose under a load.
   *
   * @param load all of the load on the holder, with preload and weight if they are to count
   * @return the state
   * @throws NoEquilibriumException if the contacts do not constrain the holder, or no pose fits
   */
  public Equilibrium under(Wrench load) {
    EquilibriumSolver solver = solver();
    Wrench w = load.movedTo(Vec3.ZERO);
    double[] flat = {
      w.force().x(), w.force().y(), w.force().z(), w.moment().x(), w.moment().y(), w.moment().z()
    };
    EquilibriumSolver.Outcome outcome = solver.solve(geometry, hertz, flat, mounting);
    if (outcome != EquilibriumSolver.Outcome.SOLVED) {
      throw new NoEquilibriumException(outcome, "equilibrium under load");
    }
    return Equilibrium.of(this, w, solver);
  }

  /**
   * Finds forces and pose under preload and weight alone.
   *
   * @return the state in which the coupling stands idle
   * @throws NoEquilibriumException if the contacts do not constrain the holder, or no pose fits
   */
  public Equilibrium standing() {
    return under(design.standingLoad());
  }

  private EquilibriumSolver solver() {
    if (geometry.contactCount() != 6) {
      throw new NoEquilibriumException(
          EquilibriumSolver.Outcome.NOT_CONSTRAINED,
          "a coupling with " + geometry.contactCount() + " contacts (six are wanted)");
    }
    return new EquilibriumSolver(geometry.ballCount());
  }
}
