package reseat.remount;

import java.util.Arrays;
import reseat.equilibrium.ContactGeometry;
import reseat.equilibrium.EquilibriumSolver;
import reseat.numerics.Lu6;
import reseat.space.WorkingPose;

/**
 * Quasi-static mechanics of one holder with friction: seats it, then follows it from load to load.
 *
 * <p>Rigid bodies; six Hertz contacts N = C δ^(3/2); friction by {@link FrictionState}. The unknown
 * is the pose of the ball half in the seat half. At each load Newton's method drives the sum of
 * load, normal forces and friction forces to zero; the residual is at most {@value #RESIDUAL} of
 * the load (moments over the size of the coupling). Contact points are carried with the motion:
 * normals, lever arms and friction forces are taken at the current pose.
 *
 * <p>Allocates nothing after construction. Not for use by several threads.
 */
final class MountMechanics {

  static final int N = 6;

  /** Greatest residual accepted, over the size of the load. */
  static final double RESIDUAL = 1e-9;

  /** Most Newton rounds at one load. */
  static final int ROUNDS = 60;

  /** How a load step or a seating ended. */
  enum Outcome {
    /** At rest under the load. */
    HELD,
    /** While seating, a contact that should close is held off by friction. */
    HANGS,
    /** While seating, a contact that should slide would have to pull: the holder tips. */
    TIPS,
    /** The contacts do not constrain the holder. */
    NOT_CONSTRAINED,
    /** Newton's method found no state of rest: contacts opened and the holder ran away. */
    RUNS_AWAY
  }

  final ContactGeometry geometry;
  final FrictionState friction = new FrictionState();

  /** Hertz constant of each contact, N/m^1.5. */
  final double[] hertz = new double[N];

  /** Thickness of what lies in each contact (film, particle), m. */
  final double[] film = new double[N];

  /** Contact that ended the last seating badly; -1 if none did. */
  int failedContact = -1;

  final WorkingPose pose = new WorkingPose();
  private final WorkingPose before = new WorkingPose();
  private final Lu6 lu = new Lu6();
  private final Placement at = new Placement();
  private final ContactTangent tangent = new ContactTangent();
  private final double[] leverBefore = new double[3 * N];
  private final double[] force = new double[N];
  private final double[] approach = new double[N];
  private final double[] stiffness = new double[N];
  private final double[] columns = new double[N * N];
  private final double[] seating = new double[N * N];
  private final double[] load = new double[N];
  private final double[] residual = new double[N];
  private final double[] step = new double[N];
  private final double[] total = new double[N];
  private final double[] slide = new double[3 * N];

  MountMechanics(ContactGeometry geometry) {
    this.geometry = geometry;
  }

  /** Normal force of a contact in the present state, N. */
  double force(int contact) {
    return force[contact];
  }

  /** Friction force on the ball in the present state, N, component 0 to 2. */
  double friction(int contact, int component) {
    return friction.held[3 * contact + component];
  }

  /** Whether a contact slipped in the last load step. */
  boolean slipped(int contact) {
    return friction.slips[contact];
  }

  /**
   * Slides the holder home: the contacts with a closing rate close last, the others slide with
   * friction fully against the slide.
   *
   * @param closing rate at which each contact closes, 0 for those already touching; not all 0
   * @param holderLoad load on the holder while it seats, base axes, about the base's origin
   * @return HELD, or why it does not get home
   */
  Outcome seat(double[] closing, double[] holderLoad) {
    failedContact = -1;
    friction.clear();
    pose.reset();
    Arrays.fill(approach, 0);
    at.take(geometry, pose);
    at.copyWrenchColumns(columns);
    if (!lu.factor(columns)) {
      return Outcome.NOT_CONSTRAINED;
    }
    for (int i = 0; i < N; i++) {
      residual[i] = -closing[i];
    }
    lu.solveTransposed(residual, step);
    slideDirections(closing);
    for (int round = 0; round < EquilibriumSolver.ROUNDS; round++) {
      at.take(geometry, pose);
      at.copyWrenchColumns(columns);
      if (!lu.factor(columns)) {
        return Outcome.NOT_CONSTRAINED;
      }
      turnLoad(holderLoad);
      frictionColumns();
      if (!forcesFromStatics()) {
        return Outcome.NOT_CONSTRAINED;
      }
      for (int i = 0; i < N; i++) {
        if (!(force[i] > 0)) {
          failedContact = i;
          return closing[i] > 0 ? Outcome.HANGS : Outcome.TIPS;
        }
        double root = Math.cbrt(force[i] / hertz[i]);
        approach[i] = root * root;
      }
      for (int i = 0; i < N; i++) {
        residual[i] = film[i] - approach[i] - at.gap[i];
      }
      lu.solveTransposed(residual, step);
      pose.move(step);
      if (at.largest(step) <= EquilibriumSolver.STILL) {
        at.take(geometry, pose);
        settleFriction();
        return Outcome.HELD;
      }
    }
    return Outcome.RUNS_AWAY;
  }

  /** Unit vectors of the ball's sliding at each touching contact; zero at those still open. */
  private void slideDirections(double[] closing) {
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double ux = step[0] + step[4] * at.lever[v + 2] - step[5] * at.lever[v + 1];
      double uy = step[1] + step[5] * at.lever[v] - step[3] * at.lever[v + 2];
      double uz = step[2] + step[3] * at.lever[v + 1] - step[4] * at.lever[v];
      double un = ux * at.normal[v] + uy * at.normal[v + 1] + uz * at.normal[v + 2];
      ux -= un * at.normal[v];
      uy -= un * at.normal[v + 1];
      uz -= un * at.normal[v + 2];
      double speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
      boolean still = closing[i] > 0 || !(speed > 0);
      slide[v] = still ? 0 : ux / speed;
      slide[v + 1] = still ? 0 : uy / speed;
      slide[v + 2] = still ? 0 : uz / speed;
    }
  }

  /** Adds the sliding friction of each contact to its column of W. */
  private void frictionColumns() {
    System.arraycopy(columns, 0, seating, 0, N * N);
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double fx = -friction.mu[i] * slide[v];
      double fy = -friction.mu[i] * slide[v + 1];
      double fz = -friction.mu[i] * slide[v + 2];
      seating[i] += fx;
      seating[N + i] += fy;
      seating[2 * N + i] += fz;
      seating[3 * N + i] += at.lever[v + 1] * fz - at.lever[v + 2] * fy;
      seating[4 * N + i] += at.lever[v + 2] * fx - at.lever[v] * fz;
      seating[5 * N + i] += at.lever[v] * fy - at.lever[v + 1] * fx;
    }
  }

  private final Lu6 statics = new Lu6();

  private boolean forcesFromStatics() {
    if (!statics.factor(seating)) {
      return false;
    }
    for (int i = 0; i < N; i++) {
      residual[i] = -load[i];
    }
    statics.solve(residual, force);
    return true;
  }

  private void settleFriction() {
    for (int i = 0; i < N; i++) {
      stiffness[i] = 1.5 * force[i] / approach[i];
      for (int k = 0; k < 3; k++) {
        friction.trial[3 * i + k] = -friction.mu[i] * force[i] * slide[3 * i + k];
      }
    }
    friction.accept(stiffness);
  }

  /**
   * Goes to another load and finds the state of rest there.
   *
   * @param holderLoad load on the holder, base axes, about the base's origin
   * @param guess first guess of the motion to the new state, x y z rx ry rz; null for none
   * @return HELD or RUNS_AWAY; in the latter case the state is as before
   */
  Outcome follow(double[] holderLoad, double[] guess) {
    before.copyFrom(pose);
    System.arraycopy(at.lever, 0, leverBefore, 0, 3 * N);
    Arrays.fill(total, 0);
    if (guess != null) {
      advance(guess);
    }
    double last = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      at.take(geometry, pose);
      turnLoad(holderLoad);
      contactForces();
      double out = sumForces();
      if (out <= RESIDUAL) {
        friction.accept(stiffness);
        return Outcome.HELD;
      }
      tangent.assemble(at, force, stiffness, friction);
      if (!lu.factor(tangent.matrix)) {
        break;
      }
      lu.solve(residual, step);
      double longest = at.largest(step);
      if (!(longest < 1e-3)) {
        break;
      }
      // a slip that switches on and off can make full steps cycle; shorter ones settle it
      double shorten = round > 12 && out > 0.5 * last ? 0.5 : 1;
      if (shorten < 1) {
        for (int i = 0; i < N; i++) {
          step[i] *= shorten;
        }
      }
      last = out;
      advance(step);
    }
    pose.copyFrom(before);
    return Outcome.RUNS_AWAY;
  }

  /** How far a point of the holder stands from its nominal place, base axes, m. */
  void displacement(double x, double y, double z, double[] out) {
    if (geometry.ballsOnHolder()) {
      pose.displacement(x, y, z, out);
    } else {
      pose.inverseDisplacement(x, y, z, out);
    }
  }

  /** Rotation of the holder against its nominal attitude, to first order, rad. */
  void rotation(double[] out) {
    pose.smallRotation(out);
    if (!geometry.ballsOnHolder()) {
      for (int k = 0; k < 3; k++) {
        out[k] = -out[k];
      }
    }
  }

  /** Motion from the state before the last load step, x y z rx ry rz. */
  void copyMotion(double[] out) {
    System.arraycopy(total, 0, out, 0, N);
  }

  private void advance(double[] by) {
    pose.move(by);
    for (int i = 0; i < N; i++) {
      total[i] += by[i];
    }
  }

  private void turnLoad(double[] holderLoad) {
    if (geometry.ballsOnHolder()) {
      System.arraycopy(holderLoad, 0, load, 0, N);
    } else {
      pose.wrenchToFrame(holderLoad, load);
      for (int i = 0; i < N; i++) {
        load[i] = -load[i];
      }
    }
  }

  private void contactForces() {
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double d = film[i] - at.gap[i];
      if (d > 0) {
        double root = Math.sqrt(d);
        force[i] = hertz[i] * d * root;
        stiffness[i] = 1.5 * hertz[i] * root;
      } else {
        force[i] = 0;
        stiffness[i] = 0;
      }
      approach[i] = d;
      double px = leverBefore[v];
      double py = leverBefore[v + 1];
      double pz = leverBefore[v + 2];
      friction.attempt(
          i,
          at.normal[v],
          at.normal[v + 1],
          at.normal[v + 2],
          force[i],
          stiffness[i],
          d,
          total[0] + total[4] * pz - total[5] * py,
          total[1] + total[5] * px - total[3] * pz,
          total[2] + total[3] * py - total[4] * px);
    }
  }

  /** Sums load and contact forces into the residual; returns its size over that of the load. */
  private double sumForces() {
    System.arraycopy(load, 0, residual, 0, N);
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double fx = force[i] * at.normal[v] + friction.trial[v];
      double fy = force[i] * at.normal[v + 1] + friction.trial[v + 1];
      double fz = force[i] * at.normal[v + 2] + friction.trial[v + 2];
      residual[0] += fx;
      residual[1] += fy;
      residual[2] += fz;
      residual[3] += at.lever[v + 1] * fz - at.lever[v + 2] * fy;
      residual[4] += at.lever[v + 2] * fx - at.lever[v] * fz;
      residual[5] += at.lever[v] * fy - at.lever[v + 1] * fx;
    }
    double f = Math.abs(residual[0]) + Math.abs(residual[1]) + Math.abs(residual[2]);
    double m = Math.abs(residual[3]) + Math.abs(residual[4]) + Math.abs(residual[5]);
    double scale = Math.abs(load[0]) + Math.abs(load[1]) + Math.abs(load[2]);
    return Math.max(f, m / at.size) / scale;
  }
}
