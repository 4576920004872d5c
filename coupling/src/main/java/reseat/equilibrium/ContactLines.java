package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.numerics.Lu6;
import reseat.seat.Flank;
import reseat.seat.FlatSeat;
import reseat.space.Pose;
import reseat.space.Twist;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The lines along which the seats push on the holder, for one pose of the holder.
 *
 * <p>All in base axes. Column i of W is the wrench, about the base's origin, of a unit force along
 * line i; contact forces N balance a load F when W N = -F.
 */
public final class ContactLines {

  /**
   * One line of action.
   *
   * @param support name of the support
   * @param flank name of the flank in its seat
   * @param ballIndex index of the support in the design
   * @param ballCentre centre of the ball, m; the line passes through it
   * @param push unit vector of the force on the holder
   * @param normal unit vector out of the seat into the ball; equals push, or its opposite where the
   *     base carries the balls
   * @param point where ball and flank touch, m
   * @param longAxis unit vector along the long axis of the contact patch
   * @param ring whether the contact stands for a third of a ring
   */
  public record Line(
      String support,
      String flank,
      int ballIndex,
      Vec3 ballCentre,
      Vec3 push,
      Vec3 normal,
      Vec3 point,
      Vec3 longAxis,
      boolean ring) {

    /**
     * Returns the name of the contact.
     *
     * @return support and flank, for instance {@code front (left flank)}; the support alone where
     *     it has one contact only
     */
    public String name() {
      return flank.equals(FlatSeat.FLANK)
          ? support
          : support + " (" + flank + (ring ? ")" : " flank)");
    }
  }

  private final List<Line> lines;

  private ContactLines(List<Line> lines) {
    this.lines = List.copyOf(lines);
  }

  /**
   * Finds the lines for the holder in its nominal place.
   *
   * @param design the coupling
   * @return one line per flank, support by support
   */
  public static ContactLines nominal(CouplingDesign design) {
    return at(design, Pose.identity());
  }

  /**
   * Finds the lines for a pose of the holder, the balls standing rigidly on their half.
   *
   * @param design the coupling
   * @param holderInBase where the holder stands
   * @return one line per flank, support by support
   */
  public static ContactLines at(CouplingDesign design, Pose holderInBase) {
    Pose ballHalfInSeatHalf = onHolder(design) ? holderInBase : holderInBase.inverse();
    List<Vec3> centres = new ArrayList<>();
    for (Support s : design.supports()) {
      centres.add(ballHalfInSeatHalf.apply(s.ball().centre()));
    }
    return of(design, holderInBase, centres, flanks(design));
  }

  /**
   * Finds the lines for balls that have given way on their mountings.
   *
   * @param design the coupling
   * @param holderInBase where the holder stands
   * @param centres where each ball's centre is, in the seat half, m
   * @param flanks the flanks of the design
   * @return one line per flank, support by support
   */
  static ContactLines of(
      CouplingDesign design, Pose holderInBase, List<Vec3> centres, List<Flank> flanks) {
    boolean onHolder = onHolder(design);
    Pose seatHalfInBase = onHolder ? Pose.identity() : holderInBase;
    List<Line> lines = new ArrayList<>();
    List<Support> supports = design.supports();
    for (int b = 0; b < supports.size(); b++) {
      Support s = supports.get(b);
      Vec3 centre = centres.get(b);
      for (int k = 0; k < s.seat().contacts(); k++) {
        Flank f = flanks.get(lines.size());
        Vec3 normal = seatHalfInBase.rotate(f.normal(centre));
        lines.add(
            new Line(
                s.name(),
                f.name(),
                b,
                seatHalfInBase.apply(centre),
                onHolder ? normal : normal.negated(),
                normal,
                seatHalfInBase.apply(f.contactPoint(centre, s.ball().radius())),
                seatHalfInBase.rotate(f.longAxis(centre)),
                s.seat().isRing()));
      }
    }
    return new ContactLines(lines);
  }

  /** The flanks of a design, support by support. */
  static List<Flank> flanks(CouplingDesign design) {
    List<Flank> flanks = new ArrayList<>();
    for (Support s : design.supports()) {
      flanks.addAll(s.seat().flanks());
    }
    return List.copyOf(flanks);
  }

  private static boolean onHolder(CouplingDesign design) {
    return design.ballsOn() == Half.HOLDER;
  }

  /**
   * Returns the lines.
   *
   * @return one per contact
   */
  public List<Line> lines() {
    return lines;
  }

  /**
   * Returns W about a point with lengths divided by a scale.
   *
   * @param about point, m
   * @param length scale for the moments, m; 1 for plain SI
   * @return 6 rows (x, y, z, rx, ry, rz), one column per contact
   */
  public double[][] wrenchMatrix(Vec3 about, double length) {
    double[][] w = new double[6][lines.size()];
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      Vec3 moment = line.ballCentre().minus(about).cross(line.push()).times(1 / length);
      for (int k = 0; k < 3; k++) {
        w[k][i] = line.push().component(k);
        w[k + 3][i] = moment.component(k);
      }
    }
    return w;
  }

  /**
   * Finds the contact forces that balance a load without friction.
   *
   * @param load load on the holder
   * @return force per contact, N, compression positive; negative where a contact would have to pull
   * @throws ArithmeticException if the contacts are not six or do not constrain the holder
   */
  public double[] forces(Wrench load) {
    return new ForceBalance(this).forces(load);
  }

  /**
   * Finds how each contact force answers to a force at a point.
   *
   * @param point where the force acts, m
   * @return one vector per contact, dimensionless: its product with a force is the change of that
   *     contact's force
   * @throws ArithmeticException if the contacts are not six or do not constrain the holder
   */
  public List<Vec3> influenceOfForceAt(Vec3 point) {
    ForceBalance balance = new ForceBalance(this);
    double[][] columns = new double[3][];
    Vec3[] unit = {Vec3.X, Vec3.Y, Vec3.Z};
    for (int k = 0; k < 3; k++) {
      columns[k] = balance.forces(Wrench.ofForce(unit[k], point));
    }
    List<Vec3> influence = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      influence.add(new Vec3(columns[0][i], columns[1][i], columns[2][i]));
    }
    return influence;
  }

  /**
   * Finds the small motion of the holder as its seats give way.
   *
   * @param depths how far each of six contacts sinks along its normal, m
   * @return twist about the base's origin
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  public Twist settled(double[] depths) {
    double[] rows = new double[36];
    double[] x = new double[6];
    for (int i = 0; i < 6; i++) {
      Vec3 push = lines.get(i).push();
      Vec3 moment = lines.get(i).ballCentre().cross(push);
      for (int k = 0; k < 3; k++) {
        rows[6 * i + k] = push.component(k);
        rows[6 * i + k + 3] = moment.component(k);
      }
      x[i] = -depths[i];
    }
    Lu6 lu = new Lu6();
    if (!lu.factor(rows)) {
      throw new ArithmeticException("the contacts do not hold the holder against every motion");
    }
    lu.solve(x, x);
    return new Twist(new Vec3(x[0], x[1], x[2]), new Vec3(x[3], x[4], x[5]), Vec3.ZERO);
  }
}
