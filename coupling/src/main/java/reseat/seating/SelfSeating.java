package reseat.seating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import reseat.elementary.Elementary;
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

  /** How closely a limit is found. */
  private static final double RESOLUTION = 1e-14;

  private final ContactLines lines;
  private final Lu6 normal = new Lu6();
  private final Wrench load;
  private final StoppedSlide slide;
  private final HalfSeatedRest rest;

  /**
   * Prepares the question.
   *
   * @param lines where the contacts push, holder in its nominal place
   * @param load load on the holder while it slides: weight with hand force or preload
   * @throws ArithmeticException if the contacts are not six or do not constrain the holder
   */
  public SelfSeating(ContactLines lines, Wrench load) {
    this.lines = lines;
    slide = new StoppedSlide(lines, load);
    if (lines.lines().size() != N || !normal.factor(slide.normalColumns())) {
      throw new ArithmeticException("the contacts do not constrain the holder");
    }
    this.load = load;
    rest = new HalfSeatedRest(lines, slide.normalColumns());
  }

  /**
   * One way home.
   *
   * @param open names of the contacts that close last
   * @param lastSeat name of the support that is last to close
   * @param limitFriction friction at which the slide stalls; {@value #GREATEST} if it never does
   * @param tipFriction friction from which an engaged contact would have to pull, so that the
   *     holder leaves this way for another; {@value #GREATEST} if never
   * @param restFriction friction up to which the holder cannot stand still on this way, if it is
   *     set down there rather than slides; never above {@code limitFriction}
   */
  public record Path(
      List<String> open,
      String lastSeat,
      double limitFriction,
      double tipFriction,
      double restFriction)
      implements Comparable<Path> {

    /** Copies the list. */
    public Path {
      open = List.copyOf(open);
    }

    /** Orders ways by where they stall, the worst first; unequal ways may compare as equal. */
    @Override
    public int compareTo(Path other) {
      // rounded, so that ways alike by symmetry stay in the order of their contacts
      return Double.compare(
          Elementary.rint(1e9 * limitFriction), Elementary.rint(1e9 * other.limitFriction));
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

  /**
   * Finds the way on which a holder that was set down stands still at the least friction.
   *
   * @param paths ways home, at least one
   * @return the first of those with the least {@code restFriction}
   */
  public static Path worstAtRest(List<Path> paths) {
    Path worst = paths.get(0);
    for (Path p : paths) {
      // ways alike by symmetry stay in their order
      if (p.restFriction() < worst.restFriction() - 1e-9) {
        worst = p;
      }
    }
    return worst;
  }

  public static Path worse(Path a, Path b) {
    return a == null || b.limitFriction() < a.limitFriction() ? b : a;
  }

  public static List<Path> sorted(List<Path> paths) {
    Collections.sort(paths);
    return List.copyOf(paths);
  }

  /**
   * Finds the limit for given closing rates.
   *
   * @param rates rate at which each contact closes, zero for those engaged, not all zero
   * @return the path
   */
  public Path path(double[] rates) {
    slide.setSlips(slips(rates));
    List<String> open = new ArrayList<>();
    String lastSeat = "";
    for (int i = 0; i < N; i++) {
      if (rates[i] > 0) {
        open.add(lines.lines().get(i).name());
        lastSeat = lines.lines().get(i).support();
      }
    }
    return limits(rates, open, lastSeat);
  }

  /**
   * Finds the smallest frictions at which the slide stalls and at which an engaged contact pulls.
   */
  private Path limits(double[] rates, List<String> open, String lastSeat) {
    double stalls = Double.NaN;
    double tips = Double.NaN;
    double last = 0;
    double mu = 0;
    while (Double.isNaN(stalls) || Double.isNaN(tips)) {
      slide.stop(mu);
      if (Double.isNaN(stalls) && !slide.goesOn(rates)) {
        stalls = between(last, mu, rates, End.STALLS);
        slide.stop(mu);
      }
      if (Double.isNaN(tips) && !slide.staysEngaged(rates)) {
        tips = between(last, mu, rates, End.TIPS);
      }
      if (mu >= GREATEST) {
        stalls = Double.isNaN(stalls) ? GREATEST : stalls;
        tips = Double.isNaN(tips) ? GREATEST : tips;
      }
      last = mu;
      mu = next(mu);
    }
    return new Path(open, lastSeat, stalls, tips, rest.limit(load, rates, stalls));
  }

  /**
   * Finds where a slide stalls, if that is below a friction.
   *
   * @param rates rate at which each contact closes, zero for those engaged, not all zero
   * @param bound friction from which on nothing is looked at; may be infinite
   * @return limit friction of {@link #path} if it is below the bound, else infinite
   */
  double stallBelow(double[] rates, double bound) {
    slide.setSlips(slips(rates));
    double last = 0;
    double mu = 0;
    while (last < bound) {
      slide.stop(mu);
      if (!slide.goesOn(rates)) {
        double limit = between(last, mu, rates, End.STALLS);
        return limit < bound ? limit : Double.POSITIVE_INFINITY;
      }
      if (mu >= GREATEST) {
        return GREATEST < bound ? GREATEST : Double.POSITIVE_INFINITY;
      }
      last = mu;
      mu = next(mu);
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The friction looked at after one. */
  public static double next(double mu) {
    return Math.min(GREATEST, mu + (mu < COMMON ? FINE_STEP : COARSE_STEP));
  }

  /** What ends a way home as friction rises. */
  private enum End {
    STALLS,
    TIPS
  }

  private double between(double good, double bad, double[] rates, End end) {
    double low = good;
    double high = bad;
    while (high - low > RESOLUTION) {
      double middle = (low + high) / 2;
      if (middle == low || middle == high) {
        break;
      }
      slide.stop(middle);
      if (end == End.STALLS ? slide.goesOn(rates) : slide.staysEngaged(rates)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Unit slip of the holder at each engaged contact; null at those open or standing still. */
  public Vec3[] slips(double[] rates) {
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
}
