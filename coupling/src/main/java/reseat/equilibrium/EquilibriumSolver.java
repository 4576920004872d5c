package reseat.equilibrium;

import java.util.Arrays;
import reseat.numerics.Inverse6;
import reseat.space.Pose;
import reseat.space.WorkingPose;

/**
 * Finds where six contacts carry a load and how the holder stands then.
 *
 * <p>With six frictionless contacts the forces follow from statics alone, whatever the elasticity:
 * W N = -F, where column i of W is the wrench of a unit force of the seat on the ball half. Hertz's
 * law δ = (N/C)^(2/3) turns each force into an approach, and the pose is the one at which each
 * undeformed gap equals -δ. W changes with the pose by parts in a thousand, so the two steps are
 * repeated until the pose stands still.
 *
 * <p>A negative force means that the contact would have to pull: the holder lifts off there. The
 * pose is then computed with that contact just touching and does not describe a state of rest; ask
 * {@link #lifted()}.
 *
 * <p>Convergence: the largest change of the pose in a round (rotation times the size of the
 * coupling), or the next one to be expected by the rate at which changes fall, is at or under
 * {@value #STILL} m, at most {@value #ROUNDS} rounds. Allocates nothing. Not for use by several
 * threads.
 */
public final class EquilibriumSolver {

  /** Largest change of the pose at rest, m; a tenth of an atom's radius over a thousand. */
  public static final double STILL = 1e-14;

  /** Most rounds of force and pose. */
  public static final int ROUNDS = 40;

  private static final int N = 6;

  /** How a solution ended. */
  public enum Outcome {
    /** Forces and pose are in balance. */
    SOLVED,
    /** The contacts do not constrain all six motions. */
    NOT_CONSTRAINED,
    /** More contacts than six: which of them touch is not decided by the drawing. */
    OVER_CONSTRAINED,
    /** No pose was found within the rounds allowed. */
    NOT_FOUND,
    /** The only pose is one with a ball beyond its pins: the load presses it through. */
    PRESSED_THROUGH
  }

  private ContactGeometry geometry;
  private final Inverse6 inverse = new Inverse6();
  private final ContactForces carried = new ContactForces(inverse);
  private final WorkingPose pose = new WorkingPose();
  private final double[] normals = new double[3 * N];
  private final PressThroughGuard side = new PressThroughGuard();
  private final double[] centres = new double[3 * N];
  private final double[] wrenchColumns = new double[N * N];
  private final double[] gaps = new double[N];
  private final double[] load = new double[N];
  private final double[] step = new double[N];
  private final PoseConvergence steps = new PoseConvergence();
  private final double[] ballAxes = new double[3];
  private final double[] ballShift;

  /**
   * Makes storage for couplings with six contacts.
   *
   * @param balls greatest number of balls
   */
  public EquilibriumSolver(int balls) {
    ballShift = new double[3 * balls];
  }

  /**
   * Finds the pose at which all gaps are zero: rest without load.
   *
   * @param g the coupling; six contacts
   * @return how it ended
   */
  public Outcome rest(ContactGeometry g) {
    return solve(g, null, null, null);
  }

  /**
   * Finds forces and pose under a load.
   *
   * @param g the coupling; six contacts
   * @param laws how the six contacts give way along their normals
   * @param wrench load on the holder about the base's origin, base axes, N and N·m, 6 values; null
   *     to find the rest pose, with no use of the laws
   * @param mounting compliance of each ball's mounting, 9 values per ball row by row in the ball
   *     half's axes, m/N; null for rigid mountings
   * @return how it ended
   */
  public Outcome solve(ContactGeometry g, NormalLaws laws, double[] wrench, double[] mounting) {
    if (g.contacts != N) {
      throw new IllegalArgumentException("six contacts wanted, found " + g.contacts);
    }
    geometry = g;
    pose.reset();
    carried.reset();
    Arrays.fill(ballShift, 0);
    steps.reset();
    boolean inverted = false;
    for (int round = 0; round < ROUNDS; round++) {
      double size = place();
      if (round == 0) {
        side.remember(normals);
      }
      if (!inverted && !inverse.invert(wrenchColumns)) {
        return Outcome.NOT_CONSTRAINED;
      }
      if (wrench != null) {
        carry(wrench, laws);
        if (mounting != null) {
          shiftBalls(mounting);
          place();
        }
      }
      for (int i = 0; i < N; i++) {
        gaps[i] = -carried.approaches[i] - gaps[i];
      }
      inverse.solveTransposed(gaps, step);
      steps.add(step, size, inverted);
      pose.move(step);
      if (!(steps.change() < 1e3)) {
        return Outcome.NOT_FOUND;
      }
      if (steps.hasConverged(STILL)) {
        place();
        if (wrench != null) {
          carry(wrench, laws);
        }
        return side.left(geometry, normals) ? Outcome.PRESSED_THROUGH : Outcome.SOLVED;
      }
      // the inverse of a pose near by serves as well: what it misses, the next round corrects
      inverted = steps.mayReuseInverse(size);
    }
    return Outcome.NOT_FOUND;
  }

  /** Puts the balls where the pose has them; fills centres, gaps, normals and W; gives the size. */
  private double place() {
    double[] b = geometry.ballCentre;
    double largest = 0;
    double x = 0;
    double y = 0;
    double z = 0;
    for (int i = 0; i < N; i++) {
      int ball = geometry.ballOf[i];
      int c = 3 * i;
      if (i > 0 && geometry.ballOf[i - 1] == ball) {
        centres[c] = x;
        centres[c + 1] = y;
        centres[c + 2] = z;
      } else {
        int k = 3 * ball;
        pose.apply(
            b[k] + ballShift[k],
            b[k + 1] + ballShift[k + 1],
            b[k + 2] + ballShift[k + 2],
            centres,
            c);
        x = centres[c];
        y = centres[c + 1];
        z = centres[c + 2];
        largest = Math.max(largest, Math.abs(x) + Math.abs(y) + Math.abs(z));
      }
      gaps[i] = geometry.gap(i, x, y, z, normals);
      double nx = normals[c];
      double ny = normals[c + 1];
      double nz = normals[c + 2];
      wrenchColumns[i] = nx;
      wrenchColumns[N + i] = ny;
      wrenchColumns[2 * N + i] = nz;
      wrenchColumns[3 * N + i] = y * nz - z * ny;
      wrenchColumns[4 * N + i] = z * nx - x * nz;
      wrenchColumns[5 * N + i] = x * ny - y * nx;
    }
    return largest;
  }

  /** Carries the load, turned into -(load on the ball half) about the seat half's origin. */
  private void carry(double[] w, NormalLaws laws) {
    if (geometry.ballsOnHolder()) {
      for (int i = 0; i < N; i++) {
        load[i] = -w[i];
      }
    } else {
      pose.wrenchToFrame(w, load);
    }
    carried.carry(load, wrenchColumns, laws);
  }

  private void shiftBalls(double[] mounting) {
    Arrays.fill(ballShift, 0);
    for (int i = 0; i < N; i++) {
      double n = Math.max(0, carried.forces[i]);
      pose.rotateBack(n * normals[3 * i], n * normals[3 * i + 1], n * normals[3 * i + 2], ballAxes);
      int ball = geometry.ballOf[i];
      for (int j = 0; j < 3; j++) {
        ballShift[3 * ball + j] +=
            mounting[9 * ball + 3 * j] * ballAxes[0]
                + mounting[9 * ball + 3 * j + 1] * ballAxes[1]
                + mounting[9 * ball + 3 * j + 2] * ballAxes[2];
      }
    }
  }

  /**
   * Returns a contact force of the last solution.
   *
   * @param contact index of the contact
   * @return N, compression positive; negative where the contact would have to pull
   */
  public double force(int contact) {
    return carried.forces[contact];
  }

  /**
   * Returns an approach of the last solution.
   *
   * @param contact index of the contact
   * @return m, zero where the contact has lifted
   */
  public double approach(int contact) {
    return carried.approaches[contact];
  }

  /**
   * Says whether any contact, or any part of a ring, would have to pull.
   *
   * @return true if the last solution is not a state of rest
   */
  public boolean lifted() {
    return carried.lifted();
  }

  /**
   * Returns the pose of the last solution.
   *
   * @return the holder in the base
   */
  public Pose holderInBase() {
    Pose ballHalfInSeatHalf = pose.toPose();
    return geometry.ballsOnHolder() ? ballHalfInSeatHalf : ballHalfInSeatHalf.inverse();
  }

  /**
   * Writes where a point of the holder stands in the last solution, without allocating.
   *
   * @param px point in the holder, m
   * @param py its y, m
   * @param pz its z, m
   * @param out displacement of the point from its nominal place, base axes, m; 3 values overwritten
   */
  public void displacementOf(double px, double py, double pz, double[] out) {
    if (geometry.ballsOnHolder()) {
      pose.displacement(px, py, pz, out);
    } else {
      pose.inverseDisplacement(px, py, pz, out);
    }
  }

  /**
   * Writes the rotation of the holder in the last solution, without allocating.
   *
   * @param out rotation vector, base axes, rad; 3 values overwritten; for small angles, wrong by
   *     the cube of the angle
   */
  public void copyRotation(double[] out) {
    pose.smallRotation(out);
    if (!geometry.ballsOnHolder()) {
      for (int i = 0; i < 3; i++) {
        out[i] = -out[i];
      }
    }
  }

  /**
   * Copies the ball centres of the last solution.
   *
   * @param out 18 values overwritten: the ball centre of each contact, in the seat half's axes, m
   */
  public void copyCentres(double[] out) {
    System.arraycopy(centres, 0, out, 0, 3 * N);
  }
}
