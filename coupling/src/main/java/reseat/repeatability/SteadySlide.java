package reseat.repeatability;

import reseat.design.Preload;
import reseat.numerics.Lu6;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The state that a long ramp of the preload ends in, and its derivatives.
 *
 * <p>While the preload grows, motions and forces grow alike; friction per normal force and its
 * direction stand still. A contact's friction f N then is what its spring has gathered, {@code f =
 * -k u'/N'} with k the sticking stiffness and u', N' the growth of slip and normal force, or, where
 * that is more than μ, μ along the same direction. Statics gives the forces, {@code M N = -F} with
 * column i of M the wrench of n + f; elastic laws and mountings give the motion; the motion gives
 * f. Found by repetition; differentiated as an implicit function. Not for use by several threads.
 */
final class SteadySlide {

  private static final int N = SeatedContacts.N;
  private static final int T = SeatedContacts.TANGENTS;

  private static final int ROUNDS = 200;
  private static final double STILL = 1e-7;

  final SeatedContacts at;

  /** Friction per normal force on the holder, along the axes of the patches. */
  final double[] friction = new double[T];

  /** What the springs alone would hold, per normal force and turned round: -f until it slips. */
  final double[] pull = new double[T];

  /** Normal forces under weight and preload, N. */
  final double[] force = new double[N];

  /** Growth of the normal forces over that of ln(preload), N. */
  final double[] growth = new double[N];

  /** Normal stiffness, N/m. */
  final double[] stiffness = new double[N];

  /** Size of the pull; a contact slips where it is more than μ. */
  final double[] size = new double[N];

  /** Derivative of a steady state over a parameter: 6 values of the motion. */
  final double[] motion = new double[N];

  private final double[] stiffening = new double[N];
  private final double[] load = new double[N];
  private final double[] preload = new double[N];
  private final double mu;
  private final Lu6 statics = new Lu6();
  private final double[] matrix = new double[N * N];
  private final double[] rightSide = new double[N];
  private final double[] approach = new double[N];
  private final double[] forces = new double[3 * N];
  private final double[] slip = new double[T];
  private final double[] rate = new double[N];
  private final double[] change = new double[N];
  private final double[] growthChange = new double[N];
  private final double[] pullChange = new double[T];
  private final SquareSystem response = new SquareSystem(T);
  private boolean settled;

  /**
   * Finds the state.
   *
   * @param at the contacts
   * @param mu friction coefficient of all of them
   */
  SteadySlide(SeatedContacts at, double mu) {
    this.at = at;
    this.mu = mu;
    flatten(at.design().weight(), load);
    for (Preload p : at.design().preloads()) {
      flatten(p.load(), preload);
    }
    for (int k = 0; k < N; k++) {
      load[k] += preload[k];
      if (at.design().preloads().isEmpty()) {
        preload[k] = load[k];
      }
    }
    settle();
    if (settled) {
      differentiate();
    }
  }

  static void flatten(Wrench wrench, double[] out) {
    Wrench w = wrench.movedTo(Vec3.ZERO);
    for (int k = 0; k < 3; k++) {
      out[k] += w.force().component(k);
      out[k + 3] += w.moment().component(k);
    }
  }

  /** Whether there is such a state with every contact pressed. */
  boolean settled() {
    return settled;
  }

  boolean slips(int contact) {
    return size[contact] > mu;
  }

  double mu() {
    return mu;
  }

  private void settle() {
    for (int round = 0; round < ROUNDS; round++) {
      if (!factor()) {
        return;
      }
      solveStatics(load, force);
      solveStatics(preload, growth);
      for (int i = 0; i < N; i++) {
        if (!(force[i] > 0)) {
          return;
        }
        stiffness[i] = at.stiffness(i, force[i]);
        stiffening[i] = at.stiffening(i, force[i]);
        approach[i] = growth[i] / stiffness[i];
      }
      takeForces(growth);
      at.move(approach, forces, rate, slip);
      if (renewFriction(round < 20 ? 1 : 0.5) < STILL) {
        settled = true;
        return;
      }
    }
  }

  private boolean factor() {
    at.copyNormals(matrix);
    for (int i = 0; i < N; i++) {
      for (int t = 2 * i; t < 2 * i + 2; t++) {
        at.wrench(i, at.axis, 3 * t, friction[t], matrix, i);
      }
    }
    return statics.factor(matrix);
  }

  private void solveStatics(double[] onHolder, double[] out) {
    for (int k = 0; k < N; k++) {
      rightSide[k] = -onHolder[k];
    }
    statics.solve(rightSide, out);
  }

  /** Contact forces of normal forces with their friction. */
  private void takeForces(double[] normal) {
    for (int i = 0; i < N; i++) {
      for (int k = 0; k < 3; k++) {
        forces[3 * i + k] =
            normal[i]
                * (at.push[3 * i + k]
                    + friction[2 * i] * at.axis[6 * i + k]
                    + friction[2 * i + 1] * at.axis[6 * i + 3 + k]);
      }
    }
  }

  /** A force that falls while the preload grows holds its friction: its own size is taken then. */
  private double divisor(int i) {
    return growth[i] > 0.1 * force[i] ? growth[i] : force[i];
  }

  private double renewFriction(double part) {
    double most = 0;
    for (int i = 0; i < N; i++) {
      double k = stiffness[i] / divisor(i);
      double a = at.ratio[2 * i] * k * slip[2 * i];
      double b = at.ratio[2 * i + 1] * k * slip[2 * i + 1];
      pull[2 * i] = a;
      pull[2 * i + 1] = b;
      size[i] = Math.sqrt(a * a + b * b);
      double held = size[i] > mu ? mu / size[i] : 1;
      for (int t = 2 * i; t < 2 * i + 2; t++) {
        double next = -held * pull[t];
        most = Math.max(most, Math.abs(next - friction[t]));
        friction[t] += part * (next - friction[t]);
      }
    }
    return most;
  }

  /** I less the derivative of the friction found over the friction put in. */
  private void differentiate() {
    for (int t = 0; t < T; t++) {
      int i = t / 2;
      java.util.Arrays.fill(rightSide, 0);
      at.wrench(i, at.axis, 3 * t, -1, column, 0);
      for (int k = 0; k < N; k++) {
        rightSide[k] = column[N * k];
        column[N * k] = 0;
      }
      statics.solve(rightSide, change);
      for (int k = 0; k < N; k++) {
        growthChange[k] = change[k] * growth[i];
        change[k] *= force[i];
      }
      changePull(t, growth[i]);
      for (int row = 0; row < T; row++) {
        response.set(row, t, (row == t ? 1 : 0) - frictionChange(row));
      }
    }
    settled = response.factor();
  }

  private final double[] column = new double[N * N];

  /** Change of the pull by changes of the forces, and of friction t per unit of it. */
  private void changePull(int t, double frictionForce) {
    for (int i = 0; i < N; i++) {
      approach[i] =
          (growthChange[i] - growth[i] * stiffening[i] * change[i] / force[i]) / stiffness[i];
    }
    takeForces(growthChange);
    if (t >= 0) {
      addTangential(t, frictionForce);
    }
    at.move(approach, forces, rate, slip);
    for (int i = 0; i < N; i++) {
      double divisor = divisor(i);
      double k = stiffness[i] / divisor;
      double own = divisor == growth[i] ? growthChange[i] : change[i];
      double grows = stiffening[i] * change[i] / force[i] - own / divisor;
      for (int c = 2 * i; c < 2 * i + 2; c++) {
        pullChange[c] = at.ratio[c] * k * slip[c] + pull[c] * grows;
      }
    }
  }

  private void addTangential(int t, double size) {
    for (int k = 0; k < 3; k++) {
      forces[3 * (t / 2) + k] += size * at.axis[3 * t + k];
    }
  }

  /** Change of the friction at a place by the change of the pull; steady μ. */
  private double frictionChange(int t) {
    int i = t / 2;
    if (!slips(i)) {
      return -pullChange[t];
    }
    double along = pull[2 * i] * pullChange[2 * i] + pull[2 * i + 1] * pullChange[2 * i + 1];
    return -mu / size[i] * (pullChange[t] - pull[t] * along / (size[i] * size[i]));
  }

  /** Takes into {@link #motion} the derivative over the friction coefficient of a contact. */
  void overFriction(int contact) {
    java.util.Arrays.fill(pullChange, 0);
    if (slips(contact)) {
      for (int t = 2 * contact; t < 2 * contact + 2; t++) {
        pullChange[t] = -pull[t] / size[contact];
      }
    }
    java.util.Arrays.fill(change, 0);
    response.solve(pullChange);
    finish(true);
  }

  /**
   * Takes into {@link #motion} the derivative along a change of the full preload.
   *
   * @param wrench change of the load about the origin, 6 values
   */
  void overLoad(double[] wrench) {
    solveStatics(wrench, change);
    System.arraycopy(change, 0, growthChange, 0, N);
    changePull(-1, 0);
    double[] first = direct;
    for (int t = 0; t < T; t++) {
      first[t] = frictionChange(t);
    }
    System.arraycopy(first, 0, pullChange, 0, T);
    response.solve(pullChange);
    finish(true);
  }

  private final double[] direct = new double[T];

  /** Motion by the friction changes in pullChange and the force changes already in change. */
  private void finish(boolean giving) {
    java.util.Arrays.fill(column, 0);
    for (int t = 0; t < T; t++) {
      at.wrench(t / 2, at.axis, 3 * t, -pullChange[t] * force[t / 2], column, 0);
    }
    for (int k = 0; k < N; k++) {
      rightSide[k] = column[N * k];
      column[N * k] = 0;
    }
    statics.solve(rightSide, rightSide);
    for (int i = 0; i < N; i++) {
      change[i] += rightSide[i];
    }
    for (int i = 0; i < N; i++) {
      approach[i] = change[i] / stiffness[i];
    }
    if (!giving) {
      java.util.Arrays.fill(forces, 0);
      at.move(approach, forces, motion, slip);
      return;
    }
    takeForces(change);
    for (int t = 0; t < T; t++) {
      addTangential(t, pullChange[t] * force[t / 2]);
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
      pullChange[t] = tangential[t] / force[t / 2];
    }
    java.util.Arrays.fill(change, 0);
    finish(giving);
    System.arraycopy(slip, 0, slips, 0, T);
  }

  /** Normal forces at the start of the ramp, from a share of the preload, N; 0 where they pull. */
  double[] forcesAt(double share) {
    double[] start = new double[N];
    double[] hand = new double[N];
    for (int k = 0; k < N; k++) {
      hand[k] = load[k] - (1 - share) * preload[k];
    }
    solveStatics(hand, start);
    for (int i = 0; i < N; i++) {
      start[i] = Math.max(0, start[i]);
    }
    return start;
  }
}
