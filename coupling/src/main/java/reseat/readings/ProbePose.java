package reseat.readings;

import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * The change of a holder's pose told by a set of probes, with its uncertainty.
 *
 * <p>The uncertainty is that of the probe noises alone; motions that were not solved for are taken
 * as exactly zero and add nothing.
 */
public final class ProbePose {

  private final Twist motion;
  private final double[] covariance;
  private final double misfit;
  private final int spare;

  /**
   * Keeps a solved pose.
   *
   * @param motion displacement and rotation
   * @param covariance 36 values, row by row, in the order of a twist; owned by this object
   * @param misfit sum of squared residuals over noise
   * @param spare readings more than motions solved for
   */
  ProbePose(Twist motion, double[] covariance, double misfit, int spare) {
    this.motion = motion;
    this.covariance = covariance;
    this.misfit = misfit;
    this.spare = spare;
  }

  /**
   * Returns the motion.
   *
   * @return displacement and rotation, told at the point of the layout
   */
  public Twist motion() {
    return motion;
  }

  /**
   * Returns the standard uncertainty of one motion.
   *
   * @param freedom which motion
   * @return standard deviation, m or rad; 0 if it was not solved for
   */
  public double uncertainty(RigidMotion freedom) {
    return Math.sqrt(Math.max(0, covariance[7 * freedom.place()]));
  }

  /**
   * Returns the shift of a point that moves with the holder, for instance the tool point.
   *
   * @param point the point, m
   * @return displacement, m
   */
  public Vec3 shiftOf(Vec3 point) {
    return motion.displacementOf(point);
  }

  /**
   * Returns the standard uncertainty of the shift of a point along a direction.
   *
   * @param point the point, m
   * @param direction unit vector
   * @return standard deviation, m
   */
  public double uncertaintyOf(Vec3 point, Vec3 direction) {
    // d . (t + r x q) = d . t + r . (q x d)
    Vec3 lever = point.minus(motion.at()).cross(direction);
    double[] g = {direction.x(), direction.y(), direction.z(), lever.x(), lever.y(), lever.z()};
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        sum += g[i] * covariance[6 * i + j] * g[j];
      }
    }
    return Math.sqrt(Math.max(0, sum));
  }

  /**
   * Returns how badly the readings agree with any motion of a rigid body.
   *
   * @return sum of squared residuals over noise; about the number of spare readings if they agree
   */
  public double misfit() {
    return misfit;
  }

  /**
   * Returns the number of spare readings.
   *
   * @return readings more than motions solved for
   */
  public int spare() {
    return spare;
  }
}
