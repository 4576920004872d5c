package reseat.ballmount;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.space.Vec3;

/**
 * The moment that friction holds when a ball turns in its seat like a pivot.
 *
 * <p>The seat touches the ball at elements with unit normal n (out of the seat into the ball) and
 * normal force N. Turning about a unit axis u through the ball centre makes an element slide at
 * {@code R |u x n|} and, over a patch of radius a, spin about its normal:
 *
 * <pre>
 *   M(u) = Sum mu N [ R sqrt(1 - (n.u)²) + (3 pi/16) a |n.u| ]
 * </pre>
 *
 * <p>Sliding dominates: spin of a Hertz patch alone is 50 to 100 times smaller and must never stand
 * for the friction of a gimballing seat. Adding the two terms is on the safe side where both act.
 * Coulomb friction, gross sliding; before it sets in the contacts give elastically. On a flat the
 * ball rolls instead, see {@link #flat}.
 *
 * <p>Frame: seat axis +z out of the seat; the pressing force acts along -z.
 */
public final class GimbalFriction {

  private static final int AZIMUTHS = 720;
  private static final int POLAR_POINTS = 32;
  private static final double SPIN = 3 * Math.PI / 16;

  private final double ballRadius;
  private final double friction;

  /** Whether the ball rolls instead of sliding when it tilts. */
  private final boolean rolls;

  private final List<Element> elements;

  /**
   * A place where the seat bears on the ball.
   *
   * @param normal unit normal out of the seat into the ball
   * @param force normal force, N
   * @param patchRadius radius of the contact patch, m; zero leaves the spin out
   */
  public record Element(Vec3 normal, double force, double patchRadius) {

    /** Checks the force and makes the normal a unit vector. */
    public Element {
      Objects.requireNonNull(normal, "normal of an element must be given, found null");
      normal = normal.unit();
      Bounds.notNegative("contact force in the pivot", force, "N");
      Bounds.notNegative("patch radius in the pivot", patchRadius, "m");
    }
  }

  private GimbalFriction(
      double ballRadius, double friction, boolean rolls, List<Element> elements) {
    this.ballRadius = Bounds.positive("ball radius of the pivot", ballRadius, "m");
    this.friction = Bounds.notNegative("friction of the pivot", friction, "");
    this.rolls = rolls;
    this.elements = List.copyOf(elements);
  }

  /**
   * Friction of any set of contacts on one ball.
   *
   * @param ballRadius ball radius, m
   * @param friction coefficient of friction
   * @param elements the contacts
   * @return the friction
   */
  public static GimbalFriction of(double ballRadius, double friction, List<Element> elements) {
    return new GimbalFriction(ballRadius, friction, false, elements);
  }

  /**
   * Ball in a trihedral seat: three contacts a third of a turn apart, the first at azimuth zero,
   * each with {@code N = F/(3 cos phi)}.
   *
   * @param ballRadius ball radius, m
   * @param friction coefficient of friction
   * @param axialForce force that presses the ball into the seat, N
   * @param flankAngle angle phi of the contact normals from the seat axis, rad
   * @param patchRadius radius of each contact patch, m; zero leaves the spin out
   * @return the friction
   */
  public static GimbalFriction trihedral(
      double ballRadius,
      double friction,
      double axialForce,
      double flankAngle,
      double patchRadius) {
    checkAngle(flankAngle);
    double force = axialForce / (3 * Elementary.cos(flankAngle));
    List<Element> contacts = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      contacts.add(new Element(normal(flankAngle, i * 2 * Math.PI / 3), force, patchRadius));
    }
    return of(ballRadius, friction, contacts);
  }

  /**
   * Ball in a cone: a ring of contact, which turns about the seat axis as hard as a trihedral seat
   * of the same angle.
   *
   * @param ballRadius ball radius, m
   * @param friction coefficient of friction
   * @param axialForce force that presses the ball into the cone, N
   * @param flankAngle angle phi of the contact normals from the seat axis, rad
   * @return the friction; the ring being a line, there is no spin
   */
  public static GimbalFriction cone(
      double ballRadius, double friction, double axialForce, double flankAngle) {
    checkAngle(flankAngle);
    List<Element> ring = new ArrayList<>();
    addRing(ring, flankAngle, axialForce / Elementary.cos(flankAngle));
    return of(ballRadius, friction, ring);
  }

  /**
   * Ball in a closely fitting spherical socket that bears on a land between two polar angles. The
   * pressure is taken to fall as the cosine of the angle from the axis, as in a worn-in socket;
   * this is an assumption.
   *
   * @param ballRadius ball radius, m
   * @param friction coefficient of friction
   * @param axialForce force that presses the ball into the socket, N
   * @param innerAngle polar angle at which the land begins, rad; zero without relief
   * @param outerAngle polar angle at which it ends, rad
   * @return the friction
   */
  public static GimbalFriction socket(
      double ballRadius, double friction, double axialForce, double innerAngle, double outerAngle) {
    Bounds.notNegative("inner angle of the socket land", innerAngle, "rad");
    Bounds.between("outer angle of the socket land", outerAngle, "rad", innerAngle, Math.PI / 2);
    Bounds.notNegative("force on the pivot", axialForce, "N");
    double cubes =
        Elementary.pow(Elementary.cos(innerAngle), 3)
            - Elementary.pow(Elementary.cos(outerAngle), 3);
    GaussIntegrator gauss =
        new GaussIntegratorFactory().legendre(POLAR_POINTS, innerAngle, outerAngle);
    List<Element> land = new ArrayList<>();
    for (int i = 0; i < POLAR_POINTS; i++) {
      double angle = gauss.getPoint(i);
      double share = 3 * Elementary.cos(angle) * Elementary.sin(angle) / cubes;
      addRing(land, angle, axialForce * share * gauss.getWeight(i));
    }
    return of(ballRadius, friction, land);
  }

  /**
   * Ball on a flat: it spins about the normal and rolls about any axis in the flat. No sliding
   * friction holds the tilt then, the ball centre moves sideways by radius times angle against the
   * seat, and nothing locates it there.
   *
   * @param ballRadius ball radius, m
   * @param friction coefficient of friction
   * @param axialForce force that presses the ball on the flat, N
   * @param patchRadius radius of the contact patch, m
   * @return the friction
   */
  public static GimbalFriction flat(
      double ballRadius, double friction, double axialForce, double patchRadius) {
    return new GimbalFriction(
        ballRadius, friction, true, List.of(new Element(Vec3.Z, axialForce, patchRadius)));
  }

  /**
   * Friction moment about the seat axis.
   *
   * @return moment, N m
   */
  public double momentAboutSeatAxis() {
    return momentAbout(Vec3.Z);
  }

  /**
   * Friction moment about an axis through the ball centre. On a flat the share of the axis that
   * lies in the flat is rolled off, and only spin about the normal is left.
   *
   * @param axis direction of the axis; any length
   * @return moment, N m, not negative
   */
  public double momentAbout(Vec3 axis) {
    Vec3 u = axis.unit();
    double moment = 0;
    for (Element e : elements) {
      double along = Math.abs(e.normal().dot(u));
      double slide = rolls ? 0 : ballRadius * e.normal().cross(u).norm();
      moment += friction * e.force() * (slide + SPIN * e.patchRadius() * along);
    }
    return moment;
  }

  /**
   * Greatest friction moment about any axis across the seat axis, found on a grid of half a degree.
   *
   * @return moment, N m
   */
  public double greatestTransverseMoment() {
    double greatest = 0;
    for (int i = 0; i < AZIMUTHS / 2; i++) {
      Vec3 axis = Vec3.atAzimuth(i * 2 * Math.PI / AZIMUTHS);
      greatest = Math.max(greatest, momentAbout(axis));
    }
    return greatest;
  }

  private static void addRing(List<Element> to, double angle, double force) {
    for (int i = 0; i < AZIMUTHS; i++) {
      to.add(new Element(normal(angle, i * 2 * Math.PI / AZIMUTHS), force / AZIMUTHS, 0));
    }
  }

  private static Vec3 normal(double angle, double azimuth) {
    return Vec3.atAzimuth(azimuth)
        .times(-Elementary.sin(angle))
        .plus(Vec3.Z.times(Elementary.cos(angle)));
  }

  private static void checkAngle(double flankAngle) {
    Bounds.between("angle of the seat's contact normals from its axis", flankAngle, "rad", 0, 1.5);
  }
}
