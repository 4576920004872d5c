package reseat.design;

import reseat.space.Vec3;

/**
 * How far a ball moves against the half that carries it, per unit of force at its centre.
 *
 * @param axis unit vector along the stud, in the axes of the half that carries the ball
 * @param axialCompliance along the axis, m/N; zero for a rigid mounting
 * @param lateralCompliance at right angles to the axis, m/N
 * @param description what the ball sits on, in a few words
 */
public record BallMounting(
    Vec3 axis, double axialCompliance, double lateralCompliance, String description) {

  /** Refuses negative compliances. */
  public BallMounting {
    axis = axis.unit();
    if (!(axialCompliance >= 0) || !(lateralCompliance >= 0)) {
      throw new IllegalArgumentException(
          "compliance of a ball mounting must not be negative, found "
              + axialCompliance
              + " and "
              + lateralCompliance
              + " m/N");
    }
  }

  /**
   * Returns a mounting that does not give way.
   *
   * @return zero compliance
   */
  public static BallMounting rigid() {
    return new BallMounting(Vec3.Z, 0, 0, "rigid (not described)");
  }

  /**
   * Says whether the mounting does not give way at all.
   *
   * @return true if both compliances are zero
   */
  public boolean isRigid() {
    return axialCompliance == 0 && lateralCompliance == 0;
  }

  /**
   * Returns the displacement of the ball's centre under a force on it.
   *
   * @param force force on the ball, N, in the axes of the half that carries it
   * @return displacement, m
   */
  public Vec3 displacement(Vec3 force) {
    double axial = force.dot(axis);
    return axis.times(axial * axialCompliance)
        .plus(force.minus(axis.times(axial)).times(lateralCompliance));
  }
}
