package reseat.ballmount;

import java.util.Objects;
import java.util.Optional;
import reseat.contact.EllipticContact;
import reseat.contact.RingContact;
import reseat.contact.RingThird;
import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.numerics.Bounds;
import reseat.space.Matrix6;
import reseat.space.Vec3;

/**
 * A ball in a cone: a ring of contact, over-determined. See {@link RingContact} for what its
 * stiffness assumes.
 *
 * @param ballRadius ball radius, m
 * @param flankAngle angle of the contact normals from the seat's axis, rad; the cone's included
 *     angle is pi less twice this
 * @param elasticity elastic constants of ball and seat
 */
public record ConePivot(double ballRadius, double flankAngle, ElasticPair elasticity)
    implements PivotSeat {

  /** Checks radius and angle. */
  public ConePivot {
    Objects.requireNonNull(elasticity, "elasticity of a cone pivot must be given, found null");
    Bounds.positive("ball radius", ballRadius, "m");
    PivotSeat.checkedFlank("angle of the conical seat", flankAngle);
  }

  /**
   * Returns the ring.
   *
   * @return the contact of ball and cone
   */
  public RingContact ring() {
    return RingContact.of(ballRadius, flankAngle, elasticity);
  }

  @Override
  public double contactForce(double force) {
    return Bounds.notNegative("force on the seat", force, "N") / Elementary.cos(flankAngle);
  }

  @Override
  public double peakPressure(double force) {
    return ring().peakPressure(force);
  }

  /**
   * With S across the axis the line load {@code w = F/(2 pi r0 cos phi) + S/(pi r0 sin phi)}: that
   * of F + 2 S/tan phi alone.
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
    return Optional.empty();
  }

  @Override
  public Optional<Matrix6> slidingStiffness(double force) {
    return Optional.of(ring().stiffness(force, Vec3.ZERO));
  }

  @Override
  public Optional<Matrix6> stickingStiffness(double force) {
    RingThird third = RingThird.of(ballRadius, flankAngle, elasticity);
    double c = Elementary.cos(flankAngle);
    double s = Elementary.sin(flankAngle);
    double r = ballRadius;
    double normal = third.normalStiffness(force / (3 * c));
    double along = normal * third.tangentialRatioLong();
    double up = normal * third.tangentialRatioShort();
    return Optional.of(
        PivotSeat.stiffness(
            1.5 * (normal * s * s + up * c * c + along),
            3 * (normal * c * c + up * s * s),
            1.5 * r * r * (along * c * c + up),
            3 * r * r * along * s * s,
            1.5 * r * c * (along + up)));
  }

  @Override
  public GimbalFriction friction(double force, double friction) {
    return GimbalFriction.cone(ballRadius, friction, force, flankAngle);
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
    return "a cone";
  }
}
