package reseat.remount;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;
import reseat.equilibrium.ContactLines;
import reseat.numerics.Lu6;
import reseat.space.Twist;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The friction coefficient at which a slide home stalls.
 *
 * <p>While some contacts are still open the others slide. The sliding motion follows from the
 * layout (the engaged contacts neither open nor dig in); friction at each engaged contact opposes
 * its slip. Put as statics: let every contact carry a force, the engaged ones with sliding friction
 * μN added; the forces that would be needed at the open contacts to stop the motion, times the
 * rates at which they close, are the power left to go on. The slide stalls at the μ where that
 * power comes to nothing.
 *
 * <p>With one contact open the motion is unique. With two or three open it depends on the rates at
 * which they close; the least μ over all rates is told, which is that of the worst way home.
 *
 * <p>Frictional analysis of the last slide in the manner of the published friction-based design of
 * kinematic couplings (Hale 1998, abstract seen; formulas derived here and checked by an
 * independent computation).
 */
public final class SelfSeating {

  /** Largest friction coefficient looked at; a slide that goes on even then is called free. */
  public static final double GREATEST = 3;

  private static final int N = 6;

  /** Friction up to which surfaces in use may go, looked at in fine steps; beyond it in coarse. */
  private static final double COMMON = 1;

  private static final double FINE_STEP = 0.01;
  private static final double COARSE_STEP = 0.05;

  private final ContactLines lines;
  private final double[] load;
  private final Lu6 normal = new Lu6();

  /**
   * Prepares the question.
   *
   * @param lines where the contacts push, holder in its nominal place
   * @param load load on the holder while it slides: weight with hand force or preload
   * @throws ArithmeticException if the contacts are not six or do not constrain the holder
   */
  public SelfSeating(ContactLines lines, Wrench load) {
    this.lines = lines;
    Wrench w = load.movedTo(Vec3.ZERO);
    this.load =
        new double[] {
          w.force().x(), w.force().y(), w.force().z(),
          w.moment().x(), w.moment().y(), w.moment().z()
        };
    if (lines.lines().size() != N || !normal.factor(columns(0, new Vec3[N]))) {
      throw new ArithmeticException("the contacts do not constrain the holder");
    }
  }

  /**
   * One way home.
   *
   * @param open names of the contacts that close last
   * @param lastSeat name of the support that is last to close
   * @param limitFriction friction at which the slide stalls; {@value #GREATEST} if it never does
   * @param tipFriction friction from which an engaged contact would have to pull, so that the
   *     holder leaves this way for another; {@value #GREATEST} if never
   */
  public record Path(List<String> open, String lastSeat, double limitFriction, double tipFriction) {

    /** Copies the list. */
    public Path {
      open = List.copyOf(open);
    }
  }

  /**
   * Finds the limit for every state with one contact open.
   *
   * @return six paths, the worst first
   */
  public List<Path> oneOpen() {
    return sorted(new ArrayList<>(oneOpenByContact()));
  }

  /**
   * Finds the limit for every state with one contact open, in the order of the contacts.
   *
   * @return six paths
   */
  public List<Path> oneOpenByContact() {
    List<Path> paths = new ArrayList<>();
    for (int i = 0; i < N; i++) {
      double[] rates = new double[N];
      rates[i] = 1;
      paths.add(path(rates));
    }
    return List.copyOf(paths);
  }

  /**
   * Finds the worst limit for every state with two contacts open.
   *
   * @return fifteen paths, the worst first
   */
  public List<Path> twoOpen() {
    List<Path> paths = new ArrayList<>();
    for (int i = 0; i < N; i++) {
      for (int j = i + 1; j < N; j++) {
        Path worst = null;
        for (int k = 1; k < 20; k++) {
          double[] rates = new double[N];
          rates[i] = k / 20.0;
          rates[j] = 1 - rates[i];
          worst = worse(worst, path(rates));
        }
        paths.add(worst);
      }
    }
    return sorted(paths);
  }

  /**
   * Finds the worst limit for every state with three contacts open.
   *
   * @return twenty paths, the worst first
   */
  public List<Path> threeOpen() {
    List<Path> paths = new ArrayList<>();
    for (int i = 0; i < N; i++) {
      for (int j = i + 1; j < N; j++) {
        for (int k = j + 1; k < N; k++) {
          Path worst = null;
          for (int a = 1; a < 8; a++) {
            for (int b = 1; a + b < 8; b++) {
              double[] rates = new double[N];
              rates[i] = a / 8.0;
              rates[j] = b / 8.0;
              rates[k] = 1 - rates[i] - rates[j];
              worst = worse(worst, path(rates));
            }
          }
          paths.add(worst);
        }
      }
    }
    return sorted(paths);
  }

  private static Path worse(Path a, Path b) {
    return a == null || b.limitFriction() < a.limitFriction() ? b : a;
  }

  private static List<Path> sorted(List<Path> paths) {
    paths.sort(SelfSeating::byLimit);
    return List.copyOf(paths);
  }

  private static int byLimit(Path a, Path b) {
    // rounded, so that ways alike by symmetry stay in the order of their contacts
    return Double.compare(Math.rint(1e9 * a.limitFriction), Math.rint(1e9 * b.limitFriction));
  }

  /**
   * Finds the limit for given closing rates.
   *
   * @param rates rate at which each contact closes, zero for those engaged, not all zero
   * @return the path
   */
  Path path(double[] rates) {
    Vec3[] slip = slips(rates);
    List<String> open = new ArrayList<>();
    String lastSeat = "";
    for (int i = 0; i < N; i++) {
      if (rates[i] > 0) {
        open.add(lines.lines().get(i).name());
        lastSeat = lines.lines().get(i).support();
      }
    }
    return new Path(
        open,
        lastSeat,
        firstAbove(mu -> goesOn(mu, slip, rates)),
        firstAbove(mu -> staysEngaged(mu, slip, rates)));
  }

  /** Finds the smallest friction at which a state no longer holds. */
  private static double firstAbove(DoublePredicate holds) {
    if (!holds.test(0)) {
      return 0;
    }
    double good = 0;
    while (good < GREATEST) {
      double bad = Math.min(GREATEST, good + (good < COMMON ? FINE_STEP : COARSE_STEP));
      if (!holds.test(bad)) {
        for (int k = 0; k < 60; k++) {
          double middle = (good + bad) / 2;
          if (holds.test(middle)) {
            good = middle;
          } else {
            bad = middle;
          }
        }
        return good;
      }
      good = bad;
    }
    return GREATEST;
  }

  /** Whether power is left at the open contacts to go on closing. */
  private boolean goesOn(double mu, Vec3[] slip, double[] rates) {
    double[] n = forces(mu, slip);
    if (n.length == 0) {
      return false; // the contact forces grow without bound: the holder wedges
    }
    double power = 0;
    for (int i = 0; i < N; i++) {
      power += rates[i] * n[i];
    }
    return power > 0;
  }

  /** Whether every engaged contact is pressed. */
  private boolean staysEngaged(double mu, Vec3[] slip, double[] rates) {
    double[] n = forces(mu, slip);
    double largest = 0;
    for (double force : n) {
      largest = Math.max(largest, Math.abs(force));
    }
    for (int i = 0; i < n.length; i++) {
      if (rates[i] == 0 && n[i] < -1e-9 * largest) {
        return false;
      }
    }
    return true;
  }

  /** Forces that would stop the slide; empty if no finite ones do. */
  private double[] forces(double mu, Vec3[] slip) {
    Lu6 lu = new Lu6();
    if (!lu.factor(columns(mu, slip))) {
      return new double[0];
    }
    double[] n = new double[N];
    for (int i = 0; i < N; i++) {
      n[i] = -load[i];
    }
    lu.solve(n, n);
    return n;
  }

  /** Unit slip of the holder at each engaged contact; null at those open or standing still. */
  private Vec3[] slips(double[] rates) {
    double[] x = Arrays.copyOf(rates, N);
    for (int i = 0; i < N; i++) {
      x[i] = -x[i];
    }
    normal.solveTransposed(x, x);
    Twist t = new Twist(new Vec3(x[0], x[1], x[2]), new Vec3(x[3], x[4], x[5]), Vec3.ZERO);
    Vec3[] slip = new Vec3[N];
    for (int i = 0; i < N; i++) {
      ContactLines.Line line = lines.lines().get(i);
      Vec3 v = t.displacementOf(line.point()).rejectedFrom(line.push());
      slip[i] = rates[i] > 0 || v.norm() == 0 ? null : v.unit();
    }
    return slip;
  }

  private double[] columns(double mu, Vec3[] slip) {
    double[] w = new double[N * N];
    for (int i = 0; i < N; i++) {
      ContactLines.Line line = lines.lines().get(i);
      Vec3 f = slip[i] == null ? line.push() : line.push().minus(slip[i].times(mu));
      Vec3 m = line.point().cross(f);
      for (int k = 0; k < 3; k++) {
        w[N * k + i] = f.component(k);
        w[N * (k + 3) + i] = m.component(k);
      }
    }
    return w;
  }
}
