package reseat.ballmount;

import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.material.ElasticConstants;
import reseat.numerics.Bounds;
import reseat.units.FilledText;

/**
 * The stud that carries a ball: a round neck, if need be on a thicker shoulder, standing out of a
 * body.
 *
 * <p>A cantilever with shear (Timoshenko): with distance s from the ball centre,
 *
 * <pre>
 *   lateral  = Int s²/(E I) ds + Int 1/(kappa G A) ds + L² c_tilt + c_lateral
 *   coupling = Int s/(E I) ds + L c_tilt
 *   tilt     = Int 1/(E I) ds + c_tilt
 *   axial    = Int 1/(E A) ds + c_axial
 * </pre>
 *
 * <p>with kappa = 0.9 for a round section (common value; Cowper's is 0.886 at nu = 0.3) and the
 * compliances c of the foot from {@link RootFixing}. Where neck meets shoulder the neck is taken to
 * tilt in the shoulder as on a half-space, less the share that vanishes when both are equally
 * thick: {@code 1 - (d/D)³} for moments and {@code 1 - d/D} for forces, an interpolation by
 * judgement.
 *
 * @param neckDiameter diameter of the neck, m
 * @param stickOut distance from the face of the body to the ball centre, m
 * @param rigidTip length next to the ball centre that does not flex because the ball encloses it,
 *     m; zero is on the safe side
 * @param shoulderDiameter diameter of the shoulder, m; not below the neck; ignored without length
 * @param shoulderLength height of the shoulder above the body, m; zero without a shoulder
 * @param material elastic constants of the stud
 * @param root how the foot is held
 */
public record BallStud(
    double neckDiameter,
    double stickOut,
    double rigidTip,
    double shoulderDiameter,
    double shoulderLength,
    ElasticConstants material,
    RootFixing root) {

  /** Shear factor of a round section. */
  static final double SHEAR_FACTOR = 0.9;

  /** Checks that the pieces fit along the stick-out. */
  public BallStud {
    Objects.requireNonNull(material, "material of a ball stud must be given, found null");
    Objects.requireNonNull(root, "root of a ball stud must be given, found null");
    Bounds.positive("neck diameter of the stud", neckDiameter, "m");
    Bounds.positive("stick-out of the stud", stickOut, "m");
    Bounds.notNegative("stiff length inside the ball", rigidTip, "m");
    Bounds.notNegative("shoulder diameter of the stud", shoulderDiameter, "m");
    Bounds.notNegative("shoulder length of the stud", shoulderLength, "m");
    if (shoulderLength > 0 && !(shoulderDiameter >= neckDiameter)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "shoulder of the stud is %.4g mm in diameter: it must not be thinner than the neck of"
                  + " %.4g mm",
              shoulderDiameter * 1e3, neckDiameter * 1e3));
    }
    if (!(rigidTip + shoulderLength <= stickOut)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "stud sticks out %.4g mm: shoulder of %.4g mm and stiff length of %.4g mm inside the"
                  + " ball do not fit",
              stickOut * 1e3, shoulderLength * 1e3, rigidTip * 1e3));
    }
  }

  /**
   * A plain stud of one diameter.
   *
   * @param neckDiameter diameter, m
   * @param stickOut distance from the face of the body to the ball centre, m
   * @param material elastic constants of the stud
   * @param root how the foot is held
   * @return the stud
   */
  public static BallStud plain(
      double neckDiameter, double stickOut, ElasticConstants material, RootFixing root) {
    return new BallStud(neckDiameter, stickOut, 0, neckDiameter, 0, material, root);
  }

  /**
   * How far the ball gives.
   *
   * @return compliances at the ball centre
   */
  public StudCompliance compliance() {
    double neckEnd = stickOut - shoulderLength;
    StudCompliance sum = piece(rigidTip, neckEnd, neckDiameter);
    if (shoulderLength > 0) {
      double ratio = neckDiameter / shoulderDiameter;
      RootFixing step =
          RootFixing.ofHalfSpace(neckDiameter, material)
              .shared(1 - ratio, 1 - ratio * ratio * ratio);
      sum = sum.plus(foot(step, neckEnd)).plus(piece(neckEnd, stickOut, shoulderDiameter));
    }
    double depth = stickOut + root.buriedLength();
    return sum.plus(piece(stickOut, depth, root.buriedDiameter())).plus(foot(root, stickOut));
  }

  /**
   * Greatest tensile or compressive stress in the neck: axial stress plus bending stress at the
   * foot of the neck, without notch factor.
   *
   * @param axialForce force along the stud, N; the sign does not matter
   * @param lateralForce force across the stud through the ball centre, N; the sign does not matter
   * @return stress, Pa
   */
  public double neckStress(double axialForce, double lateralForce) {
    return Math.abs(axialForce) / area(neckDiameter) + bendingStress(lateralForce);
  }

  /**
   * Bending stress at the foot of the neck, {@code 32 F l/(pi d³)}.
   *
   * @param lateralForce force across the stud through the ball centre, N
   * @return stress, Pa
   */
  public double bendingStress(double lateralForce) {
    double arm = stickOut - shoulderLength;
    return 32 * Math.abs(lateralForce) * arm / (Math.PI * Elementary.pow(neckDiameter, 3));
  }

  private StudCompliance piece(double near, double far, double diameter) {
    double length = far - near;
    double inertia = Math.PI / 64 * Elementary.pow(diameter, 4);
    double bending = 1 / (material.modulus() * inertia);
    double shear = 1 / (SHEAR_FACTOR * material.shearModulus() * area(diameter));
    return new StudCompliance(
        length / (material.modulus() * area(diameter)),
        bending * (far * far * far - near * near * near) / 3 + shear * length,
        bending * (far * far - near * near) / 2,
        bending * length,
        length / (material.shearModulus() * 2 * inertia));
  }

  private static StudCompliance foot(RootFixing fixing, double arm) {
    return new StudCompliance(
        fixing.axial(),
        fixing.lateral() + arm * arm * fixing.tilt(),
        arm * fixing.tilt(),
        fixing.tilt(),
        fixing.torsion());
  }

  private static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}
