package reseat.mount;

import java.util.Optional;
import reseat.contact.EllipticContact;
import reseat.numerics.Bounds;
import reseat.space.Matrix6;

/**
 * A ball in a spherical socket that fits it closely, bearing on a land between two polar angles.
 *
 * <p>The pressure is taken to fall as the cosine of the polar angle, as in a worn-in socket, which
 * is an assumption: {@code p = p1 cos theta} with
 *
 * <pre>F = 2 pi R² p1 Int cos² theta sin theta dtheta = (2 pi/3) R² p1 (cos³ inner - cos³ outer)
 * </pre>
 *
 * <p>Surfaces that conform have no Hertz stiffness; the socket is far stiffer than a point contact
 * and its rate is not modelled.
 *
 * @param ballRadius ball radius R, m
 * @param innerAngle polar angle at which the land begins, rad; zero without relief
 * @param outerAngle polar angle at which it ends, rad
 */
public record SocketPivot(double ballRadius, double innerAngle, double outerAngle)
    implements PivotSeat {

  /** Checks radius and land. */
  public SocketPivot {
    Bounds.positive("ball radius", ballRadius, "m");
    Bounds.notNegative("inner angle of the socket land", innerAngle, "rad");
    Bounds.between("outer angle of the socket land", outerAngle, "rad", innerAngle, Math.PI / 2);
  }

  @Override
  public double contactForce(double force) {
    double inner = Math.cos(innerAngle);
    double outer = Math.cos(outerAngle);
    double pressure = peakPressure(force) / inner;
    return Math.PI * ballRadius * ballRadius * pressure * (inner * inner - outer * outer);
  }

  @Override
  public double peakPressure(double force) {
    Bounds.notNegative("force on the seat", force, "N");
    double inner = Math.cos(innerAngle);
    double outer = Math.cos(outerAngle);
    double cubes = inner * inner * inner - outer * outer * outer;
    return 1.5 * force * inner / (Math.PI * ballRadius * ballRadius * cubes);
  }

  @Override
  public Optional<EllipticContact> point() {
    return Optional.empty();
  }

  @Override
  public Optional<Matrix6> slidingStiffness(double force) {
    return Optional.empty();
  }

  @Override
  public Optional<Matrix6> stickingStiffness(double force) {
    return Optional.empty();
  }

  @Override
  public GimbalFriction friction(double force, double friction) {
    return GimbalFriction.socket(ballRadius, friction, force, innerAngle, outerAngle);
  }

  @Override
  public boolean overDetermined() {
    return true;
  }

  @Override
  public boolean locates() {
    return true;
  }

  @Override
  public String words() {
    return "a spherical socket";
  }
}
