package reseat.repeatability;

import reseat.design.Preload;
import reseat.numerics.Lu6;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The state that a long ramp of the preload ends in.
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

  /** Derivative of ln(stiffness) over ln(force). */
  final double[] stiffening = new double[N];

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
      computeForces(growth, forces);
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

  /** Finds the normal forces that balance a load, friction per normal force as it is. */
  void solveStatics(double[] onHolder, double[] out) {
    for (int k = 0; k < N; k++) {
      rightSide[k] = -onHolder[k];
    }
    statics.solve(rightSide, out);
  }

  /** Computes the contact forces of normal forces with their friction, 3 values each. */
  void computeForces(double[] normal, double[] forces) {
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
  double divisor(int i) {
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
