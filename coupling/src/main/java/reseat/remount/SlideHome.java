package reseat.remount;

import java.util.Arrays;
import reseat.equilibrium.EquilibriumSolver;
import reseat.numerics.Lu6;

/**
 * The last slide: some contacts close last, the others slide with friction fully against the slide.
 *
 * <p>The forces follow from statics, whatever the elasticity: each sliding contact's friction is
 * -μN along its slip, so it joins the normal in the contact's column of W. Their elastic laws turn
 * the forces into approaches, and the pose is the one at which each gap equals film less approach.
 * The two steps are repeated until the pose stands still, as in {@link EquilibriumSolver}.
 *
 * <p>A contact that would have to pull ends it: one that was to close is held off by friction, one
 * that was sliding tips off. Allocates nothing after construction.
 */
final class SlideHome {

  private static final int N = ToolChangeState.N;

  /** Contact that ended the last slide badly; -1 if none did. */
  int failedContact = -1;

  private final ToolChangeState state;
  private final Lu6 normals = new Lu6();
  private final Lu6 statics = new Lu6();
  private final double[] columns = new double[N * N];
  private final double[] withFriction = new double[N * N];
  private final double[] right = new double[N];
  private final double[] step = new double[N];
  private final double[] slide = new double[3 * N];

  SlideHome(ToolChangeState state) {
    this.state = state;
  }

  /**
   * Slides the holder home.
   *
   * @param closing rate at which each contact closes, 0 for those already touching; not all 0
   * @param holderLoad load on the holder while it seats, base axes, about the base's origin
   * @return HELD, or why it does not get home
   */
  FrictionEquilibrium.Outcome run(double[] closing, double[] holderLoad) {
    failedContact = -1;
    state.reset();
    Arrays.fill(state.approach, 0);
    if (!placed()) {
      return FrictionEquilibrium.Outcome.NOT_CONSTRAINED;
    }
    for (int i = 0; i < N; i++) {
      right[i] = -closing[i];
    }
    normals.solveTransposed(right, step);
    slideDirections(closing);
    for (int round = 0; round < EquilibriumSolver.ROUNDS; round++) {
      if (!placed()) {
        return FrictionEquilibrium.Outcome.NOT_CONSTRAINED;
      }
      state.turnLoad(holderLoad);
      frictionColumns();
      if (!statics.factor(withFriction)) {
        return FrictionEquilibrium.Outcome.NOT_CONSTRAINED;
      }
      FrictionEquilibrium.Outcome outcome = forces(closing);
      if (outcome != FrictionEquilibrium.Outcome.HELD) {
        return outcome;
      }
      if (state.supports != null) {
        setFriction();
        state.supports.follow(state);
        state.place();
      }
      for (int i = 0; i < N; i++) {
        right[i] = state.film[i] - state.approach[i] - state.at.gap[i];
      }
      normals.solveTransposed(right, step);
      state.pose.move(step);
      if (state.at.largest(step) <= EquilibriumSolver.STILL) {
        state.place();
        settle();
        return FrictionEquilibrium.Outcome.HELD;
      }
    }
    return FrictionEquilibrium.Outcome.RUNS_AWAY;
  }

  private boolean placed() {
    state.place();
    state.at.copyWrenchColumns(columns);
    return normals.factor(columns);
  }

  /** Forces and approaches from statics. */
  private FrictionEquilibrium.Outcome forces(double[] closing) {
    for (int i = 0; i < N; i++) {
      right[i] = -state.load[i];
    }
    statics.solve(right, state.force);
    for (int i = 0; i < N; i++) {
      if (!(state.force[i] > 0)) {
        failedContact = i;
        return closing[i] > 0
            ? FrictionEquilibrium.Outcome.HANGS
            : FrictionEquilibrium.Outcome.TIPS;
      }
      state.approach[i] = state.laws.approach(i, state.force[i]);
    }
    return FrictionEquilibrium.Outcome.HELD;
  }

  /** Unit vectors of the ball's sliding at each touching contact; zero at those still open. */
  private void slideDirections(double[] closing) {
    ContactFrames at = state.at;
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
    System.arraycopy(columns, 0, withFriction, 0, N * N);
    ContactFrames at = state.at;
    for (int i = 0; i < N; i++) {
      int v = 3 * i;
      double fx = -state.friction.mu[i] * slide[v];
      double fy = -state.friction.mu[i] * slide[v + 1];
      double fz = -state.friction.mu[i] * slide[v + 2];
      withFriction[i] += fx;
      withFriction[N + i] += fy;
      withFriction[2 * N + i] += fz;
      withFriction[3 * N + i] += at.lever[v + 1] * fz - at.lever[v + 2] * fy;
      withFriction[4 * N + i] += at.lever[v + 2] * fx - at.lever[v] * fz;
      withFriction[5 * N + i] += at.lever[v] * fy - at.lever[v + 1] * fx;
    }
  }

  private void setFriction() {
    for (int i = 0; i < N; i++) {
      for (int k = 0; k < 3; k++) {
        state.friction.trial[3 * i + k] = -state.friction.mu[i] * state.force[i] * slide[3 * i + k];
      }
    }
  }

  private void settle() {
    for (int i = 0; i < N; i++) {
      state.stiffness[i] = state.laws.stiffness(i, state.force[i], state.approach[i]);
    }
    setFriction();
    state.friction.accept(state.stiffness);
    if (state.supports != null) {
      state.supports.accept();
    }
  }
}
