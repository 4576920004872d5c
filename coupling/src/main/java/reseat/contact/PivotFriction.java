package reseat.contact;

import reseat.numerics.Bounds;

/**
 * A ball turning in a seat that holds it at three points, as when a stud is swivelled for
 * alignment: the moments at which it slides.
 *
 * <p>Contacts stand at equal azimuths around the seat's axis, their normals at the angle phi from
 * it; axial load F gives N = F/(3 cos phi) at each. Sliding moment about the axis: mu F R tan phi.
 * About an axis at right angles: sum of mu N R sqrt(1 - (sin phi cos az)^2), az measured from that
 * axis. The friction of spinning contacts is left out: it is a fiftieth of these and less.
 *
 * @param ballRadius R, m
 * @param contactAngle phi between seat axis and contact normals, rad, above 0 and below pi/2
 * @param friction coefficient of friction, zero or more
 */
public record PivotFriction(double ballRadius, double contactAngle, double friction) {

  /** Refuses a radius that is not positive, an angle outside 0 to pi/2, a negative friction. */
  public PivotFriction {
    Bounds.positive("ball radius", ballRadius, "m");
    Bounds.between("contact angle of the seat", contactAngle, "rad", 0, Math.PI / 2);
    Bounds.notNegative("coefficient of friction", friction, "");
  }

  /**
   * Returns the force at each contact.
   *
   * @param axialLoad load along the seat's axis, N
   * @return normal force, N
   */
  public double contactForce(double axialLoad) {
    return axialLoad / (3 * Math.cos(contactAngle));
  }

  /**
   * Returns the moment that turns the ball about the seat's axis.
   *
   * @param axialLoad load along the seat's axis, N
   * @return sliding moment, N·m
   */
  public double momentAboutAxis(double axialLoad) {
    return friction * axialLoad * ballRadius * Math.tan(contactAngle);
  }

  /**
   * Returns the moment that tilts the ball about an axis across the seat.
   *
   * @param axialLoad load along the seat's axis, N
   * @param azimuth direction of the tilt axis, from one of the contacts, rad
   * @return sliding moment, N·m
   */
  public double momentAcross(double axialLoad, double azimuth) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double along = Math.sin(contactAngle) * Math.cos(2 * Math.PI * i / 3 - azimuth);
      sum += Math.sqrt(1 - along * along);
    }
    return friction * contactForce(axialLoad) * ballRadius * sum;
  }
}
