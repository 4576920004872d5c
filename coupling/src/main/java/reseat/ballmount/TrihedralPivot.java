package reseat.ballmount;

import java.util.Objects;
import java.util.Optional;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.TangentialContact;
import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.numerics.Bounds;
import reseat.space.Matrix6;

/**
 * A ball in three flats a third of a turn apart: three points, exactly determined.
 *
 * <p>Each contact carries {@code N = F/(3 cos phi)}. With k along each normal and k_t across it
 *
 * <pre>
 *   sliding    Kx = (3/2) k sin² phi                         Kz = 3 k cos² phi
 *   sticking   Kx = (3/2) (k sin² phi + k_t (1 + cos² phi))  Kz = 3 (k cos² phi + k_t sin² phi)
 *              Krx = (3/2) k_t R² (1 + cos² phi)             Krz = 3 k_t R² sin² phi
 *              Kx,ry = -Ky,rx = -3 k_t R cos phi
 * </pre>
 *
 * <p>sums over three springs, derived here.
 *
 * @param ballRadius ball radius R, m
 * @param flankAngle angle phi of the contact normals from the seat's axis, rad
 * @param elasticity elastic constants of ball and seat
 */
public record TrihedralPivot(double ballRadius, double flankAngle, ElasticPair elasticity)
    implements PivotSeat {

  /** Checks radius and angle. */
  public TrihedralPivot {
    Objects.requireNonNull(elasticity, "elasticity of a trihedral pivot must be given, found null");
    Bounds.positive("ball radius", ballRadius, "m");
    PivotSeat.checkedFlank("flank angle of the trihedral seat", flankAngle);
  }

  private EllipticContact contact() {
    return EllipticContact.of(RelativeCurvature.ballOnPlane(ballRadius), elasticity);
  }

  @Override
  public double contactForce(double force) {
    return Bounds.notNegative("force on the seat", force, "N") / (3 * Elementary.cos(flankAngle));
  }

  @Override
  public double peakPressure(double force) {
    return contact().peakPressure(contactForce(force));
  }

  /**
   * With S across the axis {@code N = F/(3 cos phi) + 2 S/(3 sin phi)}: that of F + 2 S/tan phi
   * alone.
   */
  @Override
  public double peakPressure(double force, double across) {
    Bounds.notNegative("force across the seat", across, "N");
    return peakPressure(force + 2 * across / Elementary.tan(flankAngle));
  }

  @Override
  public double openingForce(double force) {
    return Bounds.notNegative("force on the seat", force, "N") * Elementary.tan(flankAngle) / 2;
  }

  @Override
  public Optional<EllipticContact> point() {
    return Optional.of(contact());
  }

  @Override
  public Optional<Matrix6> slidingStiffness(double force) {
    return Optional.of(stiffness(contact().normalStiffness(contactForce(force)), 0));
  }

  @Override
  public Optional<Matrix6> stickingStiffness(double force) {
    double n = contactForce(force);
    EllipticContact contact = contact();
    double across = TangentialContact.of(contact).stiffnessAlongMajor(n);
    return Optional.of(stiffness(contact.normalStiffness(n), across));
  }

  private Matrix6 stiffness(double normal, double across) {
    double c = Elementary.cos(flankAngle);
    double s = Elementary.sin(flankAngle);
    double r = ballRadius;
    return PivotSeat.stiffness(
        1.5 * (normal * s * s + across * (1 + c * c)),
        3 * (normal * c * c + across * s * s),
        1.5 * across * r * r * (1 + c * c),
        3 * across * r * r * s * s,
        3 * across * r * c);
  }

  @Override
  public GimbalFriction friction(double force, double friction) {
    double patch = contact().semiMajor(contactForce(force));
    return GimbalFriction.trihedral(ballRadius, friction, force, flankAngle, patch);
  }

  @Override
  public boolean overDetermined() {
    return false;
  }

  @Override
  public boolean locates() {
    return true;
  }

  @Override
  public String words() {
    return "a trihedral seat";
  }
}
