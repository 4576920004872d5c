package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.contact.BallContact;
import reseat.contact.Dent;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.RingThird;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.material.ElasticPair;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderFlank;
import reseat.seat.Flank;
import reseat.seat.PlaneFlank;
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
  private final List<Flank> flanks;
  private final List<BallContact> contacts;
  private final double[] ratioLong;
  private final double[] ratioShort;
  private final NormalLaws laws;
  private final double[] mounting;
  private final List<Optional<Dent>> dents;
  private final NormalLaws elastic;

  private CouplingModel(
      CouplingDesign design,
      ContactGeometry geometry,
      List<Flank> flanks,
      List<BallContact> contacts,
      double[] ratioLong,
      double[] ratioShort,
      NormalLaws elastic,
      double[] mounting,
      List<Optional<Dent>> dents) {
    this.design = design;
    this.geometry = geometry;
    this.flanks = flanks;
    this.contacts = contacts;
    this.ratioLong = ratioLong;
    this.ratioShort = ratioShort;
    this.elastic = elastic;
    this.laws = dents.isEmpty() ? elastic : elastic.workedIn(dents);
    this.dents = dents;
    this.mounting = mounting;
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
    List<Flank> flanks = ContactLines.flanks(design);
    List<BallContact> contacts = new ArrayList<>();
    for (Support s : design.supports()) {
      ElasticPair pair = new ElasticPair(s.ballMaterial().elastic(), s.seatMaterial().elastic());
      for (int k = 0; k < s.seat().contacts(); k++) {
        Flank f = flanks.get(contacts.size());
        contacts.add(
            s.seat() instanceof ConeSeat cone
                ? RingThird.of(s.ball().radius(), cone.angle(), pair)
                : EllipticContact.of(f.accept(new BallOn(s.ball().radius())), pair));
      }
    }
    double[] ratioLong = new double[contacts.size()];
    double[] ratioShort = new double[contacts.size()];
    for (int i = 0; i < contacts.size(); i++) {
      ratioLong[i] = contacts.get(i).tangentialRatioLong();
      ratioShort[i] = contacts.get(i).tangentialRatioShort();
    }
    return new CouplingModel(
        design,
        ContactGeometry.of(design),
        flanks,
        List.copyOf(contacts),
        ratioLong,
        ratioShort,
        NormalLaws.of(contacts),
        mountingOf(design),
        List.of());
  }

  /** How a ball and a flank bend away from each other. */
  private record BallOn(double ballRadius) implements Flank.Visitor<RelativeCurvature> {

    @Override
    public RelativeCurvature plane(PlaneFlank flank) {
      return RelativeCurvature.ballOnPlane(ballRadius);
    }

    @Override
    public RelativeCurvature cylinder(CylinderFlank flank) {
      return RelativeCurvature.ballOnCylinder(ballRadius, flank.signedRadius());
    }
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
   * Prepares a design that differs from this one's in its loads only, without preparing geometry
   * and laws anew.
   *
   * @param other a design with the very supports of this one
   * @return the model, the same as {@link #of} would give
   * @throws IllegalArgumentException if its supports are others
   */
  public CouplingModel withLoadsOf(CouplingDesign other) {
    if (other.ballsOn() != design.ballsOn() || !sameSupports(other)) {
      throw new IllegalArgumentException("a design with other supports needs a model of its own");
    }
    return new CouplingModel(
        other, geometry, flanks, contacts, ratioLong, ratioShort, elastic, mounting, List.of());
  }

  /**
   * Returns the coupling after work-in: with the dents that its loads leave.
   *
   * @return this model if all contacts stay elastic
   * @throws NoEquilibriumException if the contacts do not constrain the holder, or no pose fits
   */
  public CouplingModel workedIn() {
    return standing().model();
  }

  /** What the greatest force ever has left in a contact. */
  Optional<Dent> dent(int contact) {
    return dents.isEmpty() ? Optional.empty() : dents.get(contact);
  }

  @SuppressWarnings("ReferenceEquality") // comparing all parts of a support would take long
  private boolean sameSupports(CouplingDesign other) {
    List<Support> supports = design.supports();
    boolean same = other.supports().size() == supports.size();
    for (int i = 0; same && i < supports.size(); i++) {
      same = other.supports().get(i) == supports.get(i);
    }
    return same;
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
   * Returns the surfaces that touch the balls.
   *
   * @return one per contact, support by support, in the seat half
   */
  public List<Flank> flanks() {
    return flanks;
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
  public Equilibrium equilibriumUnder(Wrench load) {
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
   * Finds forces and pose under preload and weight alone, the coupling worked in: where its loads
   * leave dents, the model of the state has them, and its pose is counted from them.
   *
   * @return the state in which the coupling stands idle
   * @throws NoEquilibriumException if the contacts do not constrain the holder, or no pose fits
   */
  public Equilibrium standing() {
    Equilibrium standing = equilibriumUnder(design.standingLoad());
    List<Optional<Dent>> left = dents.isEmpty() ? WorkedIn.dents(standing) : List.of();
    return left.isEmpty()
        ? standing
        : new CouplingModel(
                design, geometry, flanks, contacts, ratioLong, ratioShort, elastic, mounting, left)
            .equilibriumUnder(design.standingLoad());
  }

  private EquilibriumSolver solver() {
    int contacts = geometry.contactCount();
    if (contacts != 6) {
      throw NoEquilibriumException.ofContacts("a coupling", contacts);
    }
    return new EquilibriumSolver(geometry.ballCount());
  }
}
