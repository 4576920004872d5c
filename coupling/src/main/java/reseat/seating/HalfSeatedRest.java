package reseat.seating;

import reseat.equilibrium.ContactLines;
import reseat.numerics.Lu6;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Whether a holder that was set down half seated can stand still there.
 *
 * <p>It can if forces within the friction cones of the closed contacts balance the load. By the
 * duality of linear programmes it cannot if there is a motion t, with the load doing work on it, in
 * which every closed contact moves away from its seat at μ times its slip or faster: no force in a
 * cone of friction μ works against such a motion. Looked at is the one in which each closed contact
 * moves away at μ times its slip exactly and the open ones close at given rates; the slips follow
 * from the motion, so it is found by repetition.
 *
 * <p>Where the work comes to nothing at some μ, forces at the edges of the cones balance the load
 * with nothing at the open contact. If these press at all five contacts, that μ is the limit
 * itself; if one pulls, the holder tips off there and the limit lies higher: the μ told is on the
 * safe side. A holder that moves has the same limit but for the slips, which are those of contacts
 * that stay closed; it goes on at frictions at which one at rest stays where it is.
 *
 * <p>Not for use by several threads.
 */
public final class HalfSeatedRest {

  private static final int N = 6;

  /** Most rounds for a motion; more are needed only where the cones lock it altogether. */
  private static final int ROUNDS = 400;

  /** Change of slip over its size at which it counts as found. */
  private static final double STILL = 1e-12;

  /** Slip, over that without friction, beyond which the cones lock the motion. */
  private static final double LOCKED = 1e4;

  /** How closely a limit is found. */
  private static final double RESOLUTION = 1e-10;

  private final double[] push = new double[3 * N];
  private final double[] point = new double[3 * N];
  private final Lu6 normal = new Lu6();
  private final double[] motion = new double[N];
  private final double[] slip = new double[N];

  /**
   * Prepares lines.
   *
   * @param lines where the six contacts push, holder in its nominal place
   * @param normalColumns their wrenches, 6x6 row by row, a contact to a column
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  public HalfSeatedRest(ContactLines lines, double[] normalColumns) {
    if (!normal.factor(normalColumns)) {
      throw new ArithmeticException("the contacts do not constrain the holder");
    }
    for (int i = 0; i < N; i++) {
      ContactLines.Line line = lines.lines().get(i);
      put(line.push(), push, i);
      put(line.point(), point, i);
    }
  }

  private static void put(Vec3 v, double[] out, int i) {
    for (int k = 0; k < 3; k++) {
      out[3 * i + k] = v.component(k);
    }
  }

  /**
   * Finds the friction from which the holder may stand still.
   *
   * @param load load on the holder
   * @param rates rate at which each contact would close, zero for those closed
   * @param most friction beyond which is not looked
   * @return the limit, or {@code most} if it lies beyond
   */
  public double limit(Wrench load, double[] rates, double most) {
    double[] opposite = StoppedSlide.opposite(load);
    if (cannotStand(opposite, rates, most)) {
      return most;
    }
    double low = 0;
    double high = most;
    while (high - low > RESOLUTION) {
      double middle = (low + high) / 2;
      if (cannotStand(opposite, rates, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * Says whether a load surely moves the holder on.
   *
   * @param opposite what balances the load, about the origin
   * @param rates rate at which each contact would close, zero for those closed
   * @param mu friction
   * @return true if there is a motion on which the load works and no friction can stop
   */
  public boolean cannotStand(double[] opposite, double[] rates, double mu) {
    if (!loosens(rates, mu)) {
      return false;
    }
    double work = 0;
    for (int k = 0; k < N; k++) {
      work -= opposite[k] * motion[k];
    }
    return work > 0;
  }

  /** Finds the motion that leaves every cone; false if the cones lock it. */
  private boolean loosens(double[] rates, double mu) {
    double free = 0;
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < N; i++) {
        motion[i] = rates[i] > 0 ? -rates[i] : round == 0 ? 0 : mu * slip[i];
      }
      normal.solveTransposed(motion, motion);
      double change = 0;
      double largest = 0;
      for (int i = 0; i < N; i++) {
        if (rates[i] == 0) {
          double now = slipOf(i);
          change = Math.max(change, Math.abs(now - slip[i]));
          largest = Math.max(largest, now);
          slip[i] = now;
        }
      }
      if (round == 0) {
        free = largest;
      } else if (change <= STILL * largest) {
        return true;
      } else if (largest > LOCKED * free) {
        return false;
      }
    }
    return false;
  }

  private double slipOf(int i) {
    int v = 3 * i;
    double x = motion[0] + motion[4] * point[v + 2] - motion[5] * point[v + 1];
    double y = motion[1] + motion[5] * point[v] - motion[3] * point[v + 2];
    double z = motion[2] + motion[3] * point[v + 1] - motion[4] * point[v];
    double away = x * push[v] + y * push[v + 1] + z * push[v + 2];
    x -= away * push[v];
    y -= away * push[v + 1];
    z -= away * push[v + 2];
    return Math.sqrt(x * x + y * y + z * z);
  }
}
