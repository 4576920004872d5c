package reseat.ballmount;

import java.util.Objects;
import java.util.Optional;
import reseat.contact.EllipticContact;
import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
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
 * <p>Surfaces that conform have no Hertz stiffness. The land is taken for a bed of springs, alike
 * everywhere, whose stiffness for each area is that of a rigid disc of the land's outer radius on a
 * half-space, {@code 2 E* a/(pi a²)} with {@code a = R sin outer}; where it sticks, across it in
 * the proportion 4 G* to E* of a circular contact. It does not depend on the force, as long as all
 * of the land is pressed. An estimate, good to perhaps half of itself (judgement); a socket that
 * does not fit so closely is softer.
 *
 * @param ballRadius ball radius R, m
 * @param innerAngle polar angle at which the land begins, rad; zero without relief
 * @param outerAngle polar angle at which it ends, rad
 * @param elasticity elastic constants of ball and socket
 */
public record SocketPivot(
    double ballRadius, double innerAngle, double outerAngle, ElasticPair elasticity)
    implements PivotSeat {

  /** Checks radius and land. */
  public SocketPivot {
    Objects.requireNonNull(elasticity, "elasticity of a socket pivot must be given, found null");
    Bounds.positive("ball radius", ballRadius, "m");
    Bounds.notNegative("inner angle of the socket land", innerAngle, "rad");
    Bounds.between("outer angle of the socket land", outerAngle, "rad", innerAngle, Math.PI / 2);
  }

  @Override
  public double contactForce(double force) {
    double inner = Elementary.cos(innerAngle);
    double outer = Elementary.cos(outerAngle);
    double pressure = peakPressure(force) / inner;
    return Math.PI * ballRadius * ballRadius * pressure * (inner * inner - outer * outer);
  }

  @Override
  public double peakPressure(double force) {
    Bounds.notNegative("force on the seat", force, "N");
    double inner = Elementary.cos(innerAngle);
    double outer = Elementary.cos(outerAngle);
    double cubes = inner * inner * inner - outer * outer * outer;
    return 1.5 * force * inner / (Math.PI * ballRadius * ballRadius * cubes);
  }

  /**
   * The pressure p = a n has the vector a = (S/Ixx, F/Izz), with the land's sums of n_x² and n_z².
   */
  @Override
  public double peakPressure(double force, double across) {
    Bounds.notNegative("force on the seat", force, "N");
    Bounds.notNegative("force across the seat", across, "N");
    double along = force / axialArea();
    double sideways = across / lateralArea();
    double steepest = Elementary.atan2(sideways, along);
    double at = Math.max(innerAngle, Math.min(outerAngle, steepest));
    return along * Elementary.cos(at) + sideways * Elementary.sin(at);
  }

  @Override
  public double openingForce(double force) {
    Bounds.notNegative("force on the seat", force, "N");
    return force / axialArea() * lateralArea() / Elementary.tan(outerAngle);
  }

  /** Sum of n_z² over the land, m². */
  private double axialArea() {
    double inner = Elementary.cos(innerAngle);
    double outer = Elementary.cos(outerAngle);
    return 2
        * Math.PI
        * ballRadius
        * ballRadius
        * (inner * inner * inner - outer * outer * outer)
        / 3;
  }

  /** Sum of n_x² over the land, m². */
  private double lateralArea() {
    double area =
        2
            * Math.PI
            * ballRadius
            * ballRadius
            * (Elementary.cos(innerAngle) - Elementary.cos(outerAngle));
    return (area - axialArea()) / 2;
  }

  @Override
  public Optional<EllipticContact> point() {
    return Optional.empty();
  }

  @Override
  public Optional<Matrix6> slidingStiffness(double force) {
    return Optional.of(bed(0));
  }

  @Override
  public Optional<Matrix6> stickingStiffness(double force) {
    return Optional.of(bed(4 * elasticity.reducedShearModulus() / elasticity.reducedModulus()));
  }

  /** Stiffness of the bed of springs, across it a part of that along its normals. */
  private Matrix6 bed(double part) {
    double inner = Elementary.cos(innerAngle);
    double outer = Elementary.cos(outerAngle);
    double r = ballRadius;
    double normal = 2 * elasticity.reducedModulus() / (Math.PI * r * Elementary.sin(outerAngle));
    double across = part * normal;
    // area of the land, and the sums over it of n_z, n_z^2 and n_x^2
    double area = 2 * Math.PI * r * r * (inner - outer);
    double z = Math.PI * r * r * (inner * inner - outer * outer);
    double zz = axialArea();
    double xx = lateralArea();
    return PivotSeat.stiffness(
        normal * xx + across * (area - xx),
        normal * zz + across * (area - zz),
        across * r * r * (area - xx),
        across * r * r * (area - zz),
        across * r * z);
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
