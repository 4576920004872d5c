package reseat.ballmount;

import java.util.Objects;
import java.util.Optional;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.TangentialContact;
import reseat.material.ElasticPair;
import reseat.numerics.Bounds;
import reseat.space.Matrix6;
import reseat.space.Vec3;

/**
 * A ball on a flat: one point. It rolls instead of sliding when the part tilts, and nothing holds
 * it sideways.
 *
 * @param ballRadius ball radius, m
 * @param elasticity elastic constants of ball and flat
 */
public record FlatPivot(double ballRadius, ElasticPair elasticity) implements PivotSeat {

  /** Checks the radius. */
  public FlatPivot {
    Objects.requireNonNull(elasticity, "elasticity of a flat pivot must be given, found null");
    Bounds.positive("ball radius", ballRadius, "m");
  }

  private EllipticContact contact() {
    return EllipticContact.of(RelativeCurvature.ballOnPlane(ballRadius), elasticity);
  }

  @Override
  public double contactForce(double force) {
    return Bounds.notNegative("force on the seat", force, "N");
  }

  @Override
  public double peakPressure(double force) {
    return contact().peakPressure(force);
  }

  @Override
  public double peakPressure(double force, double across) {
    Bounds.notNegative("force across the seat", across, "N");
    return peakPressure(force);
  }

  @Override
  public double openingForce(double force) {
    Bounds.notNegative("force on the seat", force, "N");
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public Optional<EllipticContact> point() {
    return Optional.of(contact());
  }

  @Override
  public Optional<Matrix6> slidingStiffness(double force) {
    double[] k = new double[36];
    k[14] = contact().normalStiffness(force);
    return Optional.of(Matrix6.of(k, Vec3.ZERO));
  }

  @Override
  public Optional<Matrix6> stickingStiffness(double force) {
    EllipticContact contact = contact();
    TangentialContact tangential = TangentialContact.of(contact);
    double across = tangential.stiffnessAlongMajor(force);
    double r = ballRadius;
    double[] k = new double[36];
    k[0] = across;
    k[7] = across;
    k[14] = contact.normalStiffness(force);
    k[21] = across * r * r;
    k[28] = across * r * r;
    k[35] = tangential.spinStiffness(force);
    k[4] = -across * r;
    k[24] = -across * r;
    k[9] = across * r;
    k[19] = across * r;
    return Optional.of(Matrix6.of(k, Vec3.ZERO));
  }

  @Override
  public GimbalFriction friction(double force, double friction) {
    return GimbalFriction.flat(ballRadius, friction, force, contact().semiMajor(force));
  }

  @Override
  public boolean overDetermined() {
    return false;
  }

  @Override
  public boolean locates() {
    return false;
  }

  @Override
  public String words() {
    return "a flat";
  }
}
