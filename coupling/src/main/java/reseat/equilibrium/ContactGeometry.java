package reseat.equilibrium;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.seat.CylinderFlank;
import reseat.seat.Flank;
import reseat.seat.PlaneFlank;
import reseat.space.Vec3;

/**
 * Balls and flanks of a coupling laid out in plain arrays, so that a pose can be tried without
 * allocating.
 *
 * <p>Balls are in the axes of the half that carries them, flanks in the axes of the other half. A
 * pose is always that of the ball half in the seat half here; {@link EquilibriumSolver} turns it
 * round where the balls are on the base. Values may be overwritten, which is how toleranced copies
 * are made; not for use by several threads.
 */
public final class ContactGeometry {

  private final boolean ballsOnHolder;
  final int balls;
  final int contacts;
  final int[] ballOf;
  final double[] ballCentre;
  final double[] ballRadius;
  private final boolean[] plane;
  private final double[] sign;
  private final double[] point;
  private final double[] direction;
  private final double[] flankRadius;

  private ContactGeometry(boolean ballsOnHolder, int balls, int contacts) {
    this.ballsOnHolder = ballsOnHolder;
    this.balls = balls;
    this.contacts = contacts;
    ballOf = new int[contacts];
    ballCentre = new double[3 * balls];
    ballRadius = new double[balls];
    plane = new boolean[contacts];
    sign = new double[contacts];
    point = new double[3 * contacts];
    direction = new double[3 * contacts];
    flankRadius = new double[contacts];
  }

  /**
   * Lays out a design.
   *
   * @param design the coupling
   * @return its balls, in the order of its supports, and its flanks, support by support
   */
  public static ContactGeometry of(CouplingDesign design) {
    List<Support> supports = design.supports();
    ContactGeometry g =
        new ContactGeometry(
            design.ballsOn() == Half.HOLDER, supports.size(), design.contactCount());
    int contact = 0;
    for (int b = 0; b < supports.size(); b++) {
      Support s = supports.get(b);
      g.setBall(b, s.ball().centre(), s.ball().radius());
      for (Flank f : s.seat().flanks()) {
        g.ballOf[contact] = b;
        g.setFlank(contact, f);
        contact++;
      }
    }
    return g;
  }

  /**
   * Returns an independent copy.
   *
   * @return the same values in storage of their own
   */
  public ContactGeometry copy() {
    ContactGeometry g = new ContactGeometry(ballsOnHolder, balls, contacts);
    g.copyFrom(this);
    return g;
  }

  /**
   * Takes over the values of another layout of the same coupling.
   *
   * @param other a layout with the same number of balls and contacts
   */
  public void copyFrom(ContactGeometry other) {
    System.arraycopy(other.ballOf, 0, ballOf, 0, contacts);
    System.arraycopy(other.ballCentre, 0, ballCentre, 0, 3 * balls);
    System.arraycopy(other.ballRadius, 0, ballRadius, 0, balls);
    System.arraycopy(other.plane, 0, plane, 0, contacts);
    System.arraycopy(other.sign, 0, sign, 0, contacts);
    System.arraycopy(other.point, 0, point, 0, 3 * contacts);
    System.arraycopy(other.direction, 0, direction, 0, 3 * contacts);
    System.arraycopy(other.flankRadius, 0, flankRadius, 0, contacts);
  }

  /**
   * Says which half carries the balls.
   *
   * @return true if the holder does
   */
  public boolean ballsOnHolder() {
    return ballsOnHolder;
  }

  /**
   * Returns the number of balls.
   *
   * @return balls
   */
  public int ballCount() {
    return balls;
  }

  /**
   * Returns the number of contacts.
   *
   * @return contacts
   */
  public int contactCount() {
    return contacts;
  }

  /**
   * Returns which ball a contact belongs to.
   *
   * @param contact index of the contact
   * @return index of the ball
   */
  public int ballOf(int contact) {
    return ballOf[contact];
  }

  /**
   * Returns the radius of a ball.
   *
   * @param ball index of the ball
   * @return radius, m
   */
  public double ballRadius(int ball) {
    return ballRadius[ball];
  }

  /**
   * Replaces a ball.
   *
   * @param ball index of the ball
   * @param centre centre in the ball half, m
   * @param radius radius, m
   */
  public void setBall(int ball, Vec3 centre, double radius) {
    ballCentre[3 * ball] = centre.x();
    ballCentre[3 * ball + 1] = centre.y();
    ballCentre[3 * ball + 2] = centre.z();
    ballRadius[ball] = radius;
  }

  /**
   * Replaces a flank.
   *
   * @param contact index of the contact
   * @param flank the new flank, in the seat half
   */
  public void setFlank(int contact, Flank flank) {
    Laid laid = flank.accept(Laid.OUT);
    plane[contact] = laid.plane();
    sign[contact] = laid.sign();
    flankRadius[contact] = laid.radius();
    int i = 3 * contact;
    point[i] = laid.at().x();
    point[i + 1] = laid.at().y();
    point[i + 2] = laid.at().z();
    direction[i] = laid.along().x();
    direction[i + 1] = laid.along().y();
    direction[i + 2] = laid.along().z();
  }

  /** What the arrays hold of one flank: of a plane its normal, of a cylinder its axis. */
  private record Laid(boolean plane, double sign, double radius, Vec3 at, Vec3 along) {

    private static final Flank.Visitor<Laid> OUT =
        new Flank.Visitor<>() {
          @Override
          public Laid plane(PlaneFlank flank) {
            return new Laid(true, 1, 0, flank.point(), flank.normal());
          }

          @Override
          public Laid cylinder(CylinderFlank flank) {
            double sign = flank.hollow() ? -1 : 1;
            return new Laid(false, sign, flank.radius(), flank.axisPoint(), flank.generator());
          }
        };
  }

  /**
   * Replaces a ball without allocating.
   *
   * @param ball index of the ball
   * @param centre centre in the ball half, m; 3 values
   * @param radius radius, m
   */
  public void placeBall(int ball, double[] centre, double radius) {
    System.arraycopy(centre, 0, ballCentre, 3 * ball, 3);
    ballRadius[ball] = radius;
  }

  /**
   * Moves a flank without allocating; its kind stays.
   *
   * @param contact index of the contact
   * @param at point of the plane, or of the cylinder's axis, in the seat half, m; 3 values
   * @param along unit normal of the plane out of the seat, or direction of the cylinder's axis; 3
   *     values
   * @param radius radius of the cylinder, m; not used for a plane
   */
  public void placeFlank(int contact, double[] at, double[] along, double radius) {
    int i = 3 * contact;
    for (int k = 0; k < 3; k++) {
      point[i + k] = at[k];
      direction[i + k] = along[k];
    }
    flankRadius[contact] = plane[contact] ? 0 : radius;
  }

  /**
   * Writes where the centre of a ball is in the half that carries it.
   *
   * @param ball index of the ball
   * @param out centre, m; 3 values overwritten
   */
  public void copyBallCentre(int ball, double[] out) {
    System.arraycopy(ballCentre, 3 * ball, out, 0, 3);
  }

  /**
   * Lets the holder grow about its origin, as a warmer holder does: its balls and pins grow each by
   * its own part, everything else of it evenly. Planes and hollows are cut in the holder.
   *
   * @param holderGrowth relative growth of every length of the holder
   * @param ownGrowth relative growth across of each support's ball if the holder carries the balls,
   *     of its pins otherwise; one value per support
   */
  public void growHolder(double holderGrowth, double[] ownGrowth) {
    if (ballsOnHolder) {
      for (int i = 0; i < ballCentre.length; i++) {
        ballCentre[i] *= 1 + holderGrowth;
      }
      for (int i = 0; i < ballRadius.length; i++) {
        ballRadius[i] *= 1 + ownGrowth[i];
      }
    } else {
      for (int i = 0; i < point.length; i++) {
        point[i] *= 1 + holderGrowth;
      }
      for (int i = 0; i < flankRadius.length; i++) {
        boolean pin = !plane[i] && sign[i] > 0;
        flankRadius[i] *= 1 + (pin ? ownGrowth[ballOf[i]] : holderGrowth);
      }
    }
  }

  /**
   * Finds gap and normal of a contact for a ball centre.
   *
   * @param contact index of the contact
   * @param x centre of the ball in the seat half, m
   * @param y its y, m
   * @param z its z, m
   * @param normals unit normals out of the seat, 3 per contact; this contact's are overwritten
   * @return gap of the undeformed shapes, m
   */
  public double gap(int contact, double x, double y, double z, double[] normals) {
    int i = 3 * contact;
    double ex = x - point[i];
    double ey = y - point[i + 1];
    double ez = z - point[i + 2];
    double dx = direction[i];
    double dy = direction[i + 1];
    double dz = direction[i + 2];
    double along = ex * dx + ey * dy + ez * dz;
    double radius = ballRadius[ballOf[contact]];
    if (plane[contact]) {
      normals[i] = dx;
      normals[i + 1] = dy;
      normals[i + 2] = dz;
      return along - radius;
    }
    ex -= along * dx;
    ey -= along * dy;
    ez -= along * dz;
    double distance = Math.sqrt(ex * ex + ey * ey + ez * ez);
    double s = sign[contact];
    double scale = s / distance;
    normals[i] = scale * ex;
    normals[i + 1] = scale * ey;
    normals[i + 2] = scale * ez;
    return s * (distance - flankRadius[contact]) - radius;
  }
}
