package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.MachineAxes;
import reseat.numerics.SymmetricEigen;
import reseat.space.Vec3;

/**
 * How stiff a point of the holder is against forces on it, the holder free to tilt.
 *
 * @param point the point, m
 * @param alongAxes force over displacement along each machine axis in turn, N/m
 * @param principal the three directions at right angles in which displacement follows the force,
 *     softest first
 */
public record PointStiffness(Vec3 point, Vec3 alongAxes, List<Principal> principal) {

  /** Copies the list. */
  public PointStiffness {
    principal = List.copyOf(principal);
  }

  /**
   * One principal direction.
   *
   * @param stiffness N/m
   * @param direction unit vector, coupling frame
   */
  public record Principal(double stiffness, Vec3 direction) {}

  /**
   * Finds the stiffness of a point.
   *
   * @param stiffness stiffness of the coupling
   * @param point the point, m
   * @param axes machine axes
   * @return its stiffness
   * @throws ArithmeticException if the springs do not hold the holder
   */
  public static PointStiffness of(CouplingStiffness stiffness, Vec3 point, MachineAxes axes) {
    double[] c = stiffness.pointCompliance(point);
    SymmetricEigen eigen = SymmetricEigen.of(c, 3);
    List<Principal> principal = new ArrayList<>();
    for (int i = 2; i >= 0; i--) {
      double[] v = eigen.vector(i);
      principal.add(new Principal(1 / eigen.value(i), new Vec3(v[0], v[1], v[2])));
    }
    return new PointStiffness(point, along(c, axes), principal);
  }

  /**
   * Finds the stiffness of a point along the machine axes alone.
   *
   * @param stiffness stiffness of the coupling
   * @param point the point, m
   * @param axes machine axes
   * @return force over displacement along each machine axis in turn, N/m
   * @throws ArithmeticException if the springs do not hold the holder
   */
  public static Vec3 alongAxes(CouplingStiffness stiffness, Vec3 point, MachineAxes axes) {
    return along(stiffness.pointCompliance(point), axes);
  }

  private static Vec3 along(double[] compliance, MachineAxes axes) {
    double[] along = new double[3];
    for (int i = 0; i < 3; i++) {
      Vec3 d = axes.axis(i).direction();
      double[] u = {d.x(), d.y(), d.z()};
      along[i] = 1 / Matrix3.dot(u, Matrix3.multiply(compliance, u));
    }
    return new Vec3(along[0], along[1], along[2]);
  }
}
