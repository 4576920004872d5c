package reseat.repeatability;
import reseat.elementary.Elementary;

import java.util.Arrays;

/**
 * What is left, at the end of the ramp, of the order in which the contacts closed.
 *
 * <p>The last slide leaves friction that differs from that of the steady slide by forces τ along
 * the patches. As the load grows by a factor r, the spring of each contact gathers more force and
 * friction cuts it back; to first order, with K the tangential stiffness times the slips that unit
 * forces τ cause,
 *
 * <pre>(diag(d) + K) τ' = (1 + r^(1/3) K) τ</pre>
 *
 * <p>where d is 1 for a contact that sticks, and {@code (1 + η)/r} with {@code η = 1.5 (r -
 * r^(1/3)) size/μ} across the slip of one that slides; along its slip a sliding contact forgets at
 * once. The steps are those of the simulated ramp; many steps give the continuous law.
 */
final class ApproachMemory {

  private static final int N = SeatedContacts.N;
  private static final int T = SeatedContacts.TANGENTS;

  /** Ways home that are looked at: one, two or three of six contacts close last. */
  static final int WAYS = 41;

  /** Steps beyond which the ramp counts as continuous. */
  private static final int MOST_STEPS = 48;

  private final SteadySlide slide;
  private final SlideResponse response;

  /** Directions that remember: two values along the axes of the patch, and the contact. */
  private final double[] direction = new double[2 * T];

  private final int[] contact = new int[T];
  private int count;
  private double[] kept;
  private double[] next;

  /** Normal forces at the start of the ramp, N. */
  private final double[] first;

  /** Load at the start of the ramp over that at its end. */
  private final double start;

  private final boolean settled;
  private final double[] tangential = new double[T];
  private final double[] slips = new double[T];

  ApproachMemory(SteadySlide slide, SlideResponse response, double share, int steps) {
    this.slide = slide;
    this.response = response;
    for (int i = 0; i < N; i++) {
      double a = slide.pull[2 * i];
      double b = slide.pull[2 * i + 1];
      if (slide.slips(i)) {
        add(i, -b / slide.size[i], a / slide.size[i]);
      } else if (slide.mu() > 0) {
        add(i, 1, 0);
        add(i, 0, 1);
      }
    }
    first = slide.forcesAt(share);
    double sum = 0;
    double last = 0;
    for (int i = 0; i < N; i++) {
      sum += first[i];
      last += slide.force[i];
    }
    start = sum / last;
    kept = new double[count * count];
    next = new double[count * count];
    settled = remember(Math.min(steps, MOST_STEPS));
  }

  private void add(int i, double a, double b) {
    direction[2 * count] = a;
    direction[2 * count + 1] = b;
    contact[count++] = i;
  }

  /** Takes the tangential stiffness times the slips by unit forces, row by row. */
  private double[] stiffened(boolean giving) {
    double[] k = new double[count * count];
    for (int j = 0; j < count; j++) {
      Arrays.fill(tangential, 0);
      tangential[2 * contact[j]] = direction[2 * j];
      tangential[2 * contact[j] + 1] = direction[2 * j + 1];
      response.overLockedForces(tangential, slips, giving);
      for (int i = 0; i < count; i++) {
        int c = contact[i];
        k[count * i + j] =
            slide.stiffness[c]
                * (direction[2 * i] * slide.at.ratio[2 * c] * slips[2 * c]
                    + direction[2 * i + 1] * slide.at.ratio[2 * c + 1] * slips[2 * c + 1]);
      }
    }
    return k;
  }

  private boolean remember(int steps) {
    int n = count;
    double[] ofContacts = stiffened(false);
    double[] ofMountings = slide.at.rigid() ? new double[n * n] : stiffened(true);
    for (int k = 0; k < n * n && !slide.at.rigid(); k++) {
      ofMountings[k] -= ofContacts[k];
    }
    for (int i = 0; i < n; i++) {
      kept[n * i + i] = 1;
    }
    if (!(start < 1)) {
      return true;
    }
    double r = Elementary.exp(-Elementary.log(start) / steps);
    double third = Elementary.cbrt(r);
    double loaded = Elementary.cbrt(start);
    double[] right = new double[n * n];
    double[] column = new double[n];
    SquareSystem left = new SquareSystem(n);
    for (int step = 0; step < steps; step++) {
      loaded *= third;
      for (int i = 0; i < n; i++) {
        int c = contact[i];
        double share = slide.growth[c] / slide.force[c];
        double d =
            slide.slips(c) ? (1 + 1.5 * (r - third) * slide.size[c] / slide.mu() * share) / r : 1;
        for (int j = 0; j < n; j++) {
          double giving = ofMountings[n * i + j] * loaded;
          double one = i == j ? 1 : 0;
          left.set(i, j, ofContacts[n * i + j] + giving + one * d);
          right[n * i + j] = third * ofContacts[n * i + j] + giving + one;
        }
      }
      if (!left.factor()) {
        return false;
      }
      for (int j = 0; j < n; j++) {
        for (int i = 0; i < n; i++) {
          column[i] = 0;
          for (int k = 0; k < n; k++) {
            column[i] += right[n * i + k] * kept[n * k + j];
          }
        }
        left.solve(column);
        for (int i = 0; i < n; i++) {
          next[n * i + j] = column[i];
        }
      }
      double[] t = kept;
      kept = next;
      next = t;
    }
    return true;
  }

  /** Motion that each way home leaves: one row of 6 for each of 41 ways; null if singular. */
  double[][] motions() {
    double[][] out = new double[WAYS][];
    double[] unit = new double[N];
    double[][] slipOf = new double[N][T];
    double[] twist = new double[N];
    double[] none = new double[3 * N];
    for (int i = 0; i < N; i++) {
      Arrays.fill(unit, 0);
      unit[i] = 1;
      slide.at.move(unit, none, twist, slipOf[i]);
    }
    int way = 0;
    for (int i = 0; i < N; i++) {
      out[way++] = motion(slipOf, i, -1, -1);
    }
    for (int i = 0; i < N; i++) {
      for (int j = i + 1; j < N; j++) {
        out[way++] = motion(slipOf, i, j, -1);
      }
    }
    for (int i = 0; i < N; i++) {
      for (int j = i + 1; j < N; j++) {
        for (int k = j + 1; k < N; k++) {
          out[way++] = motion(slipOf, i, j, k);
        }
      }
    }
    return out;
  }

  /** Chance of a way home: one, two or three contacts close last, each a third. */
  static double chance(int way) {
    return way < 6 ? 1.0 / 18 : way < 21 ? 1.0 / 45 : 1.0 / 60;
  }

  private double[] motion(double[][] slipOf, int first, int second, int third) {
    double[] x = new double[count];
    for (int d = 0; d < count; d++) {
      int c = contact[d];
      double a = 0;
      double b = 0;
      if (c != first && c != second && c != third) {
        a = slipOf[first][2 * c];
        b = slipOf[first][2 * c + 1];
        if (second >= 0) {
          a += slipOf[second][2 * c];
          b += slipOf[second][2 * c + 1];
        }
        if (third >= 0) {
          a += slipOf[third][2 * c];
          b += slipOf[third][2 * c + 1];
        }
        double speed = Math.sqrt(a * a + b * b);
        // the slip closes the gaps: with approach as here, the contacts move this way
        a = speed > 0 ? -slide.mu() * a / speed : 0;
        b = speed > 0 ? -slide.mu() * b / speed : 0;
      }
      double off =
          direction[2 * d] * (a - slide.friction[2 * c])
              + direction[2 * d + 1] * (b - slide.friction[2 * c + 1]);
      x[d] = off * this.first[c];
    }
    Arrays.fill(tangential, 0);
    for (int i = 0; i < count && settled; i++) {
      double sum = 0;
      for (int j = 0; j < count; j++) {
        sum += kept[count * i + j] * x[j];
      }
      tangential[2 * contact[i]] += sum * direction[2 * i];
      tangential[2 * contact[i] + 1] += sum * direction[2 * i + 1];
    }
    response.overLockedForces(tangential, slips, true);
    return response.motion.clone();
  }
}
