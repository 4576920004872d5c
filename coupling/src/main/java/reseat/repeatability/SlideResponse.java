package reseat.repeatability;

import java.util.Arrays;

/**
 * How the end of a long ramp answers to a change of friction or load, and to forces locked in.
 *
 * <p>The friction of a {@link SteadySlide} is what its own forces and slips make of it. It is
 * differentiated as an implicit function: {@code (I - R) df} is what a parameter does by itself, R
 * the derivative of the friction found over the friction put in. Not for use by several threads.
 */
final class SlideResponse {

  private static final int N = SeatedContacts.N;
  private static final int T = SeatedContacts.TANGENTS;

  /** The last derivative: 6 values of the motion, a twist about the origin. */
  final double[] motion = new double[N];

  private final SteadySlide slide;
  private final SeatedContacts at;
  private final SquareSystem response = new SquareSystem(T);
  private final boolean regular;
  private final double[] rightSide = new double[N];
  private final double[] column = new double[N * N];
  private final double[] approach = new double[N];
  private final double[] forces = new double[3 * N];
  private final double[] slip = new double[T];
  private final double[] rate = new double[N];

  /** Changes of the normal forces, and of their growth. */
  private final double[] change = new double[N];

  private final double[] growthChange = new double[N];

  /** Changes of the pull; in the end those of the friction. */
  private final double[] pullChange = new double[T];

  private final double[] direct = new double[T];

  /**
   * Differentiates a state.
   *
   * @param slide a settled state
   */
  SlideResponse(SteadySlide slide) {
    this.slide = slide;
    at = slide.at;
    differentiate();
    regular = response.factor();
  }

  /** Whether there are derivatives. */
  boolean regular() {
    return regular;
  }

  /** I less the derivative of the friction found over the friction put in. */
  private void differentiate() {
    for (int t = 0; t < T; t++) {
      int i = t / 2;
      Arrays.fill(rightSide, 0);
      at.wrench(i, at.axis, 3 * t, 1, column, 0);
      for (int k = 0; k < N; k++) {
        rightSide[k] = column[N * k];
        column[N * k] = 0;
      }
      slide.solveStatics(rightSide, change);
      for (int k = 0; k < N; k++) {
        growthChange[k] = change[k] * slide.growth[i];
        change[k] *= slide.force[i];
      }
      changePull(t, slide.growth[i]);
      for (int row = 0; row < T; row++) {
        response.set(row, t, (row == t ? 1 : 0) - frictionChange(row));
      }
    }
  }

  /** Change of the pull by changes of the forces, and of friction t per unit of it. */
  private void changePull(int t, double frictionForce) {
    for (int i = 0; i < N; i++) {
      approach[i] =
          (growthChange[i] - slide.growth[i] * slide.stiffening[i] * change[i] / slide.force[i])
              / slide.stiffness[i];
    }
    slide.computeForces(growthChange, forces);
    if (t >= 0) {
      addTangential(t, frictionForce);
    }
    at.move(approach, forces, rate, slip);
    for (int i = 0; i < N; i++) {
      double divisor = slide.divisor(i);
      double k = slide.stiffness[i] / divisor;
      double own = divisor == slide.growth[i] ? growthChange[i] : change[i];
      double grows = slide.stiffening[i] * change[i] / slide.force[i] - own / divisor;
      for (int c = 2 * i; c < 2 * i + 2; c++) {
        pullChange[c] = at.ratio[c] * k * slip[c] + slide.pull[c] * grows;
      }
    }
  }

  private void addTangential(int t, double along) {
    for (int k = 0; k < 3; k++) {
      forces[3 * (t / 2) + k] += along * at.axis[3 * t + k];
    }
  }

  /** Change of the friction at a place by the change of the pull; steady μ. */
  private double frictionChange(int t) {
    int i = t / 2;
    if (!slide.slips(i)) {
      return -pullChange[t];
    }
    double along =
        slide.pull[2 * i] * pullChange[2 * i] + slide.pull[2 * i + 1] * pullChange[2 * i + 1];
    return -slide.mu()
        / slide.size[i]
        * (pullChange[t] - slide.pull[t] * along / (slide.size[i] * slide.size[i]));
  }

  /** Takes into {@link #motion} the derivative over the friction coefficient of a contact. */
  void overFriction(int contact) {
    Arrays.fill(pullChange, 0);
    if (slide.slips(contact)) {
      for (int t = 2 * contact; t < 2 * contact + 2; t++) {
        pullChange[t] = -slide.pull[t] / slide.size[contact];
      }
    }
    Arrays.fill(change, 0);
    response.solve(pullChange);
    finish(true);
  }

  /**
   * Takes into {@link #motion} the derivative along a change of the full preload.
   *
   * @param wrench change of the load about the origin, 6 values
   */
  void overLoad(double[] wrench) {
    slide.solveStatics(wrench, change);
    System.arraycopy(change, 0, growthChange, 0, N);
    changePull(-1, 0);
    for (int t = 0; t < T; t++) {
      direct[t] = frictionChange(t);
    }
    System.arraycopy(direct, 0, pullChange, 0, T);
    response.solve(pullChange);
    finish(true);
  }

  /** Motion by the friction changes in pullChange and the force changes already in change. */
  private void finish(boolean giving) {
    Arrays.fill(column, 0);
    for (int t = 0; t < T; t++) {
      at.wrench(t / 2, at.axis, 3 * t, pullChange[t] * slide.force[t / 2], column, 0);
    }
    for (int k = 0; k < N; k++) {
      rightSide[k] = column[N * k];
      column[N * k] = 0;
    }
    slide.solveStatics(rightSide, rightSide);
    for (int i = 0; i < N; i++) {
      change[i] += rightSide[i];
    }
    for (int i = 0; i < N; i++) {
      approach[i] = change[i] / slide.stiffness[i];
    }
    if (!giving) {
      Arrays.fill(forces, 0);
      at.move(approach, forces, motion, slip);
      return;
    }
    slide.computeForces(change, forces);
    for (int t = 0; t < T; t++) {
      addTangential(t, pullChange[t] * slide.force[t / 2]);
    }
    at.move(approach, forces, motion, slip);
  }

  /**
   * Takes into {@link #motion} what a locked-in tangential force does, sliding contacts keeping
   * their friction per normal force.
   *
   * @param tangential forces along the axes of the patches, N
   * @param slips how the contacts move tangentially; 12 values overwritten
   * @param giving whether the ball mountings give way
   */
  void overLockedForces(double[] tangential, double[] slips, boolean giving) {
    for (int t = 0; t < T; t++) {
      pullChange[t] = tangential[t] / slide.force[t / 2];
    }
    Arrays.fill(change, 0);
    finish(giving);
    System.arraycopy(slip, 0, slips, 0, T);
  }
}
