package reseat.ballmount;

import reseat.numerics.Bounds;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * How far the ball at the end of a stud gives, at the ball centre. The stud has an axis of
 * revolution, so five numbers say everything.
 *
 * @param axial move along the axis for an axial force, m/N
 * @param lateral move across the axis for a lateral force through the ball centre, m/N
 * @param coupling tilt for a lateral force, and by reciprocity move for a moment, rad/N = m/(N m)
 * @param tilt tilt for a moment across the axis, rad/(N m)
 * @param torsion turn for a moment about the axis, rad/(N m)
 */
public record StudCompliance(
    double axial, double lateral, double coupling, double tilt, double torsion) {

  /** Checks that nothing is negative and that the lateral block is one of a passive body. */
  public StudCompliance {
    Bounds.notNegative("axial compliance of the stud", axial, "m/N");
    Bounds.notNegative("lateral compliance of the stud", lateral, "m/N");
    Bounds.notNegative("coupling compliance of the stud", coupling, "rad/N");
    Bounds.notNegative("tilt compliance of the stud", tilt, "rad/(N m)");
    Bounds.notNegative("torsion compliance of the stud", torsion, "rad/(N m)");
    if (!(coupling * coupling <= lateral * tilt * (1 + 1e-9))) {
      throw new IllegalArgumentException(
          "coupling compliance of the stud "
              + PrintedNumber.shortest(coupling)
              + " rad/N is more than lateral and tilt compliance allow");
    }
  }

  /**
   * Stiffness along the axis.
   *
   * @return 1/axial, N/m
   */
  public double axialStiffness() {
    return 1 / axial;
  }

  /**
   * Stiffness across the axis, the ball free to tilt.
   *
   * @return 1/lateral, N/m
   */
  public double lateralStiffness() {
    return 1 / lateral;
  }

  /**
   * Sum of two compliances acting on the same ball centre, such as stud and bond.
   *
   * @param other the other
   * @return the compliance in series
   */
  public StudCompliance plus(StudCompliance other) {
    return new StudCompliance(
        axial + other.axial,
        lateral + other.lateral,
        coupling + other.coupling,
        tilt + other.tilt,
        torsion + other.torsion);
  }

  /**
   * The compliance as a matrix: takes a wrench at the ball centre, on the ball, to the twist of the
   * ball against the body.
   *
   * @param axis direction from the foot of the stud to the ball; any length
   * @param ballCentre reference point, m
   * @return 6x6 compliance in the axes of {@code axis}
   */
  public Matrix6 toMatrix(Vec3 axis, Vec3 ballCentre) {
    double[] c = new double[36];
    c[0] = lateral;
    c[7] = lateral;
    c[14] = axial;
    c[21] = tilt;
    c[28] = tilt;
    c[35] = torsion;
    // A moment about +y carries the tip toward +x, one about +x toward -y.
    c[4] = coupling;
    c[24] = coupling;
    c[9] = -coupling;
    c[19] = -coupling;
    Vec3 z = axis.unit();
    Vec3 x = z.anyPerpendicular();
    Vec3 y = z.cross(x);
    return Matrix6.of(c, ballCentre)
        .inAxes(
            new Vec3(x.x(), y.x(), z.x()),
            new Vec3(x.y(), y.y(), z.y()),
            new Vec3(x.z(), y.z(), z.z()));
  }
}
