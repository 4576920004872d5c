package reseat.remount;

import java.util.Arrays;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.Lu6;
import reseat.space.WorkingPose;

/**
 * Quasi-static mechanics of one holder with friction: seats it, then follows it from load to load.
 *
 * <p>Rigid bodies; six contacts with their elastic laws; friction by {@link FrictionState}; balls
 * on rigid or elastic mountings ({@link ElasticBallSupport}). The unknown is the pose of the ball
 * half in the seat half. At each load Newton's method drives the sum of load, normal forces and
 * friction forces to zero; the residual is at most {@value #RESIDUAL} of the load (moments over the
 * size of the coupling), and each ball's shift is met to {@value #RESIDUAL} of the greatest
 * approach. Contact points are carried with the motion: normals, lever arms and friction forces are
 * taken at the current pose.
 *
 * <p>Allocates nothing after construction. Not for use by several threads.
 */
final class FrictionEquilibrium {

  private static final int N = ToolChangeState.N;

  /** Greatest residual accepted, over the size of the load. */
  static final double RESIDUAL = 1e-9;

  /** Most Newton rounds at one load. */
  static final int ROUNDS = 60;

  /**
   * The tangent is kept from round to round as long as the residual falls to this part in each and
   * no contact changes between sticking, slipping and lifting.
   */
  private static final double FALL = 0.02;

  /** Largest step believed, m: contacts that gave way so far have lost each other. */
  private static final double LONGEST_STEP = 1e-3;

  /** How a mounting ended, or a part of it. */
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
    RUNS_AWAY,
    /** Mounted, but ran away under the cutting load. */
    LOST_IN_CUT,
    /** Mounted, but ran away while it was let go and clamped again. */
    LOST_IN_RECLAMP
  }

  final ToolChangeState state;
  private final SlideHome slideHome;
  private final WorkingPose before = new WorkingPose();
  private final Lu6 lu = new Lu6();
  private final ContactTangent tangent = new ContactTangent();
  private final double[] leverBefore = new double[3 * N];
  private final double[] loadBefore = new double[N];
  private final double[] forceBefore = new double[N];
  private final double[] approachBefore = new double[N];
  private final double[] stiffnessBefore = new double[N];
  private final double[] residual = new double[N];
  private final double[] step = new double[N];
  private final double[] total = new double[N];
  private final double[] ballsBefore;
  private final double[] ownMotion = new double[3];

  FrictionEquilibrium(CouplingModel model) {
    state = new ToolChangeState(model);
    slideHome = new SlideHome(state);
    ballsBefore = new double[motionSize() - N];
  }

  /** Normal force of a contact in the present state, N. */
  double force(int contact) {
    return state.force[contact];
  }

  /** Contact that ended the last seating badly; -1 if none did. */
  int failedContact() {
    return slideHome.failedContact;
  }

  /**
   * Slides the holder home.
   *
   * @param closing rate at which each contact closes, 0 for those already touching; not all 0
   * @param holderLoad load on the holder while it seats, base axes, about the base's origin
   * @return HELD, or why it does not get home
   */
  Outcome seat(double[] closing, double[] holderLoad) {
    return slideHome.run(closing, holderLoad);
  }

  /** Number of values that tell a motion: six of the pose, and six of each ball that gives way. */
  int motionSize() {
    return state.supports == null ? N : N + state.supports.size();
  }

  /**
   * Goes to another load and finds the state of rest there.
   *
   * @param holderLoad load on the holder, base axes, about the base's origin
   * @param guess first guess of the motion to the new state, as {@link #copyMotion} gives it; null
   *     for none
   * @return HELD or RUNS_AWAY; in the latter case the state is as before
   */
  Outcome follow(double[] holderLoad, double[] guess) {
    begin(guess);
    double last = Double.POSITIVE_INFINITY;
    int slipped = 0;
    for (int round = 0; round < ROUNDS; round++) {
      state.place();
      state.turnLoad(holderLoad);
      contactForces();
      double out = sumForces();
      if (out <= RESIDUAL) {
        accept();
        return Outcome.HELD;
      }
      int slips = state.friction.slipMask();
      if (round == 0 || slips != slipped || out > FALL * last) {
        if (!renewTangent()) {
          break;
        }
        slipped = slips;
      }
      // a slip that switches on and off can make full steps cycle; shorter ones settle it
      double part = round > 12 && out > 0.5 * last ? 0.5 : 1;
      if (!newtonStep(part)) {
        break;
      }
      last = out;
    }
    restore();
    return Outcome.RUNS_AWAY;
  }

  /** Goes back to the state before the last load step, what the contacts carry included. */
  private void restore() {
    state.pose.copyFrom(before);
    if (state.supports != null) {
      state.supports.restore();
    }
    state.place();
    state.friction.restore();
    System.arraycopy(loadBefore, 0, state.load, 0, N);
    System.arraycopy(forceBefore, 0, state.force, 0, N);
    System.arraycopy(approachBefore, 0, state.approach, 0, N);
    System.arraycopy(stiffnessBefore, 0, state.stiffness, 0, N);
    Arrays.fill(total, 0);
  }

  private void begin(double[] guess) {
    before.copyFrom(state.pose);
    System.arraycopy(state.load, 0, loadBefore, 0, N);
    System.arraycopy(state.force, 0, forceBefore, 0, N);
    System.arraycopy(state.approach, 0, approachBefore, 0, N);
    System.arraycopy(state.stiffness, 0, stiffnessBefore, 0, N);
    System.arraycopy(state.at.lever, 0, leverBefore, 0, 3 * N);
    Arrays.fill(total, 0);
    if (state.supports != null) {
      state.supports.copyTo(ballsBefore);
    }
    if (guess != null) {
      move(guess);
      if (state.supports != null) {
        state.supports.add(guess, N);
      }
    }
  }

  private void accept() {
    state.friction.accept(state.stiffness);
    if (state.supports != null) {
      state.supports.accept();
    }
  }

  private boolean renewTangent() {
    ElasticBallSupports supports = state.supports;
    tangent.computePoints(state);
    if (supports == null) {
      tangent.assemble(state.at);
    } else if (!supports.assemble(state, tangent.perPoint, tangent.matrix)) {
      return false;
    }
    return lu.factor(tangent.matrix);
  }

  private boolean newtonStep(double part) {
    ElasticBallSupports supports = state.supports;
    if (supports != null) {
      supports.addMisfit(state, residual);
    }
    lu.solve(residual, step);
    if (!(state.at.largest(step) < LONGEST_STEP)) {
      return false;
    }
    if (supports != null) {
      supports.advance(state, step, part);
    }
    if (part < 1) {
      for (int i = 0; i < N; i++) {
        step[i] *= part;
      }
    }
    move(step);
    return true;
  }

  private void move(double[] by) {
    state.pose.move(by);
    for (int i = 0; i < N; i++) {
      total[i] += by[i];
    }
  }

  /** Motion from the state before the last load step. */
  void copyMotion(double[] out) {
    System.arraycopy(total, 0, out, 0, N);
    if (state.supports != null) {
      state.supports.copyMotion(ballsBefore, out, N);
    }
  }

  private void contactForces() {
    ToolChangeState s = state;
    if (s.supports != null) {
      s.supports.computeMotions(s);
    }
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double d = s.film[i] - s.at.gap[i];
      if (d > 0) {
        s.force[i] = s.laws.force(i, d);
        s.stiffness[i] = s.laws.stiffness(i, s.force[i], d);
      } else {
        s.force[i] = 0;
        s.stiffness[i] = 0;
      }
      s.approach[i] = d;
      double px = leverBefore[v];
      double py = leverBefore[v + 1];
      double pz = leverBefore[v + 2];
      double ux = total[0] + total[4] * pz - total[5] * py;
      double uy = total[1] + total[5] * px - total[3] * pz;
      double uz = total[2] + total[3] * py - total[4] * px;
      if (s.supports != null) {
        s.supports.copyDisplacement(i, s, ownMotion);
        ux += ownMotion[0];
        uy += ownMotion[1];
        uz += ownMotion[2];
      }
      s.friction.attempt(
          i,
          s.at.normal[v],
          s.at.normal[v + 1],
          s.at.normal[v + 2],
          s.force[i],
          s.stiffness[i],
          ux,
          uy,
          uz);
    }
  }

  /** Sums load and contact forces into the residual; returns its size over that of the load. */
  private double sumForces() {
    ToolChangeState s = state;
    System.arraycopy(s.load, 0, residual, 0, N);
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double fx = s.force[i] * s.at.normal[v] + s.friction.trial[v];
      double fy = s.force[i] * s.at.normal[v + 1] + s.friction.trial[v + 1];
      double fz = s.force[i] * s.at.normal[v + 2] + s.friction.trial[v + 2];
      residual[0] += fx;
      residual[1] += fy;
      residual[2] += fz;
      residual[3] += s.at.lever[v + 1] * fz - s.at.lever[v + 2] * fy;
      residual[4] += s.at.lever[v + 2] * fx - s.at.lever[v] * fz;
      residual[5] += s.at.lever[v] * fy - s.at.lever[v + 1] * fx;
    }
    double f = Math.abs(residual[0]) + Math.abs(residual[1]) + Math.abs(residual[2]);
    double m = Math.abs(residual[3]) + Math.abs(residual[4]) + Math.abs(residual[5]);
    double scale = Math.abs(s.load[0]) + Math.abs(s.load[1]) + Math.abs(s.load[2]);
    double out = Math.max(f, m / s.at.size) / scale;
    if (s.supports != null) {
      double deepest = 0;
      for (int i = 0; i < N; i++) {
        deepest = Math.max(deepest, s.approach[i]);
      }
      out = Math.max(out, s.supports.computeMisfit(s) / deepest);
    }
    return out;
  }
}
