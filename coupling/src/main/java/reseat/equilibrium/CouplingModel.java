package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.contact.BallContact;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.RingThird;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.material.ElasticPair;
import reseat.seat.ConeSeat;
import reseat.seat.Flank;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * A design made ready for questions: its geometry in arrays and the elastic law of every contact.
 *
 * <p>Preparing takes the elliptic integrals; after that each load costs a few 6x6 solves.
 */
public final class CouplingModel {

  private final CouplingDesign design;
  private final ContactGeometry geometry;
  private final List<BallContact> contacts;
  private final double[] ratioLong;
  private final double[] ratioShort;
  private final NormalLaws laws;
  private final double[] mounting;

  private CouplingModel(
      CouplingDesign design, ContactGeometry geometry, List<BallContact> contacts) {
    this.design = design;
    this.geometry = geometry;
    this.contacts = List.copyOf(contacts);
    this.ratioLong = new double[contacts.size()];
    this.ratioShort = new double[contacts.size()];
    for (int i = 0; i < contacts.size(); i++) {
      ratioLong[i] = contacts.get(i).tangentialRatioLong();
      ratioShort[i] = contacts.get(i).tangentialRatioShort();
    }
    this.laws = NormalLaws.of(this.contacts);
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
    List<BallContact> contacts = new ArrayList<>();
    for (Support s : design.supports()) {
      ElasticPair pair = new ElasticPair(s.ballMaterial().elastic(), s.seatMaterial().elastic());
      for (Flank f : s.seat().flanks()) {
        contacts.add(
            s.seat() instanceof ConeSeat cone
                ? RingThird.of(s.ball().radius(), cone.angle(), pair)
                : EllipticContact.of(curvature(s.ball().radius(), f), pair));
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
    boolean rigid = true;
    double[] c = new double[9 * design.supports().size()];
    Vec3[] unit = {Vec3.X, Vec3.Y, Vec3.Z};
    for (int b = 0; b < design.supports().size(); b++) {
      rigid &= design.supports().get(b).mounting().isRigid();
      for (int j = 0; j < 3; j++) {
        Vec3 d = design.supports().get(b).mounting().displacement(unit[j]);
        for (int i = 0; i < 3; i++) {
          c[9 * b + 3 * i + j] = d.component(i);
        }
      }
    }
    return rigid ? null : c;
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
   * Returns the laws of the contacts along their normals.
   *
   * @return one per flank, support by support
   */
  public List<BallContact> contacts() {
    return contacts;
  }

  /**
   * Returns the no-slip stiffness of a contact along the long axis of its patch over the normal
   * one.
   *
   * @param contact index of the contact
   * @return ratio
   */
  public double tangentialRatioLong(int contact) {
    return ratioLong[contact];
  }

  /**
   * Returns the no-slip stiffness of a contact along the short axis of its patch over the normal
   * one.
   *
   * @param contact index of the contact
   * @return ratio
   */
  public double tangentialRatioShort(int contact) {
    return ratioShort[contact];
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
   * Copies the laws along the normals.
   *
   * @return how each contact gives way, in arrays
   */
  public NormalLaws normalLaws() {
    return laws.copy();
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
    EquilibriumSolver.Outcome outcome = solver.solve(geometry, laws, flat, mounting);
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
