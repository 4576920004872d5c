package reseat.design;

import java.util.Objects;
import java.util.Optional;
import reseat.ballmount.StudCompliance;
import reseat.space.Vec3;

/**
 * How far a ball moves and turns against the half that carries it, for loads at its centre.
 *
 * <p>The normal forces of all contacts of a ball pass through its centre, so without friction only
 * the shift of the centre counts. Where contacts stick, their tangential forces act beside the
 * centre and the tilt of the ball counts as well.
 *
 * @param axis unit vector along the stud from its foot to the ball, in the axes of the half that
 *     carries the ball
 * @param compliance shift and turn of the ball per unit of load at its centre; all zero for a rigid
 *     mounting
 * @param stud what the ball stands on, with its strength; empty if only the compliance is known
 * @param description what the ball sits on, in a few words; left to the stud where there is one
 */
public record BallMounting(
    Vec3 axis, StudCompliance compliance, Optional<StudMount> stud, String description) {

  private static final StudCompliance NONE = new StudCompliance(0, 0, 0, 0, 0);

  /** Makes the axis a unit vector. */
  public BallMounting {
    Objects.requireNonNull(axis, "axis of a ball mounting must be given, found null");
    Objects.requireNonNull(compliance, "compliance of a ball mounting must be given, found null");
    Objects.requireNonNull(stud, "stud of a ball mounting must be given, found null");
    Objects.requireNonNull(description, "description of a ball mounting must be given, found null");
    axis = axis.unit();
  }

  /**
   * A mounting of which only the give of the ball's centre is known.
   *
   * @param axis direction along the stud from its foot to the ball
   * @param axialCompliance along the axis, m/N; zero for a rigid mounting
   * @param lateralCompliance at right angles to the axis, m/N
   * @param description what the ball sits on, in a few words
   */
  public BallMounting(
      Vec3 axis, double axialCompliance, double lateralCompliance, String description) {
    this(
        axis,
        new StudCompliance(axialCompliance, lateralCompliance, 0, 0, 0),
        Optional.empty(),
        description);
  }

  /**
   * Returns what the ball sits on, made up only when it is asked for.
   *
   * @return a few words
   */
  @Override
  public String description() {
    return stud.map(StudMount::description).orElse(description);
  }

  /**
   * A ball on a stud.
   *
   * @param axis direction along the stud from its foot to the ball
   * @param stud the stud, with bond and thread
   * @return the mounting
   */
  public static BallMounting on(Vec3 axis, StudMount stud) {
    return new BallMounting(axis, stud.compliance(), Optional.of(stud), "");
  }

  /**
   * Returns a mounting that does not give way.
   *
   * @return zero compliance
   */
  public static BallMounting rigid() {
    return new BallMounting(Vec3.Z, NONE, Optional.empty(), "rigid (not described)");
  }

  /**
   * Says whether the mounting does not give way at all.
   *
   * @return true if all compliances are zero
   */
  public boolean isRigid() {
    // field by field: what Java makes of equals() in a record takes its time at a program's start;
    // a mounting without lateral give and without tilt has no coupling of the two
    return compliance.axial() == 0
        && compliance.lateral() == 0
        && compliance.tilt() == 0
        && compliance.torsion() == 0;
  }

  /**
   * Returns the give along the axis.
   *
   * @return m/N
   */
  public double axialCompliance() {
    return compliance.axial();
  }

  /**
   * Returns the give across the axis.
   *
   * @return m/N
   */
  public double lateralCompliance() {
    return compliance.lateral();
  }

  /**
   * Returns the displacement of the ball's centre under a force through it.
   *
   * @param force force on the ball, N, in the axes of the half that carries it
   * @return displacement, m
   */
  public Vec3 displacement(Vec3 force) {
    double axial = force.dot(axis);
    return axis.times(axial * compliance.axial())
        .plus(force.minus(axis.times(axial)).times(compliance.lateral()));
  }
}
