package reseat.repeatability;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.Equilibrium;
import reseat.numerics.Distribution;
import reseat.seating.SelfSeating;

/**
 * Whether friction may keep the holder from its seats: the share of tool changes that hang up,
 * without simulation.
 *
 * <p>A way home ends badly where a contact would have to pull. With the slips of that way and one
 * friction for all contacts that happens beyond a limit; about it, a contact's own friction counts
 * with a weight, by the derivative of the force that vanishes. The friction that counts then
 * scatters about the level by the root sum square of the weights, and the share of changes beyond
 * the limit follows way by way. Ways are drawn as the simulation draws them: one, two or three
 * contacts close last, at even and at uneven rates.
 *
 * <p>Slip directions are those of the holder in its place at rest.
 */
public final class SeatingDoubt {

  /** What can be said without simulation. */
  public enum Answer {
    /** Fewer than one change in ten thousand hangs up. */
    SEATS,
    /** Too near to call: tool changes must be simulated. */
    IN_DOUBT,
    /** More than one change in a hundred hangs up. */
    HANGS_UP
  }

  /** Share of changes that hang up below which the holder surely seats. */
  public static final double FEW = 1e-4;

  /** Share of changes that hang up above which the holder surely does not seat. */
  public static final double MANY = 1e-2;

  private static final int N = SeatedContacts.N;

  /** Closing rates of two contacts, and the chance of each pair. */
  private static final double[][] PAIRS = {{1, 1, 0.5}, {1, 0.25, 0.25}, {0.25, 1, 0.25}};

  /** Closing rates of three contacts, and the chance of each triple. */
  private static final double[][] TRIPLES = {
    {1, 1, 1, 0.25}, {1, 0.4, 0.4, 0.25}, {0.4, 1, 0.4, 0.25}, {0.4, 0.4, 1, 0.25}
  };

  /**
   * Where one way home ends badly.
   *
   * @param chance chance of this way
   * @param limit friction, the same at all contacts, from which on it hangs up or tips off
   * @param weight root sum square of the weights of the contacts' own friction at the limit
   * @param kurtosis excess kurtosis of the weighted sum over that of a contact's friction
   */
  private record Way(double chance, double limit, double weight, double kurtosis) {}

  private final CouplingDesign design;
  private final List<Way> ways = new ArrayList<>();
  private final SlideLimit slide;

  private SeatingDoubt(Equilibrium standing) {
    SeatedContacts at = new SeatedContacts(standing);
    design = at.design();
    double[] hand = new double[N];
    double all = 0;
    for (Preload p : design.preloads()) {
      all += p.force();
    }
    double share = all > 0 ? Math.min(1, design.remount().seatingForce() / all) : 1;
    SteadySlide.flatten(design.weight(), hand);
    for (Preload p : design.preloads()) {
      SteadySlide.flatten(p.load().times(share), hand);
    }
    slide = new SlideLimit(at, hand);
    addAll();
  }

  /**
   * Looks at the last slide home under weight and seating force.
   *
   * @param standing the coupling at rest, six contacts
   * @return what is known of its seating
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  public static SeatingDoubt of(Equilibrium standing) {
    return new SeatingDoubt(standing);
  }

  private void addAll() {
    double[] rates = new double[N];
    // no contact's own friction is beyond, whichever level of the range is asked about
    double most = design.friction().high() * (1 + design.remount().friction().limit());
    for (int i = 0; i < N; i++) {
      rates[i] = 1;
      add(rates, 1.0 / 18, most);
      for (int j = i + 1; j < N; j++) {
        for (double[] pair : PAIRS) {
          rates[i] = pair[0];
          rates[j] = pair[1];
          add(rates, pair[2] / 45, most);
        }
        for (int k = j + 1; k < N; k++) {
          for (double[] triple : TRIPLES) {
            rates[i] = triple[0];
            rates[j] = triple[1];
            rates[k] = triple[2];
            add(rates, triple[3] / 60, most);
          }
          rates[k] = 0;
        }
        rates[j] = 0;
      }
      rates[i] = 0;
    }
  }

  private void add(double[] rates, double chance, double most) {
    slide.computeSlip(rates);
    ways.add(way(chance, slide.limit(most)));
  }

  private Way way(double chance, double limit) {
    double[] w = limit < SelfSeating.GREATEST ? slide.weights(limit) : new double[0];
    double sum = 0;
    double squares = 0;
    double fourths = 0;
    for (double one : w) {
      sum += one;
      squares += one * one;
      fourths += one * one * one * one;
    }
    return squares > 0
        ? new Way(chance, limit, Math.sqrt(squares) / Math.abs(sum), fourths / (squares * squares))
        : new Way(chance, limit, 1, 1);
  }

  /**
   * Estimates how many tool changes hang up.
   *
   * @param level friction about which the contacts' own friction scatters from change to change; no
   *     more than the greatest that the design expects
   * @return share of the changes, 0 to 1
   */
  public double shareAt(double level) {
    Distribution spread = design.remount().friction();
    double sd = level * spread.standardDeviation();
    double share = 0;
    for (Way w : ways) {
      double room = w.limit() - level;
      double reach = sd * w.weight();
      if (Math.abs(room) >= level * spread.limit() * ROOT_CONTACTS * w.weight() || reach == 0) {
        share += room <= 0 ? w.chance() : 0;
      } else {
        double kurtosis = spread.shape().excessKurtosis() * w.kurtosis();
        double outside = 1 - SymmetricBand.share(kurtosis, Math.abs(room) / reach);
        share += w.chance() * (room > 0 ? outside / 2 : 1 - outside / 2);
      }
    }
    return Math.max(0, share);
  }

  /** No weighted sum of six deviations is beyond this many times limit and root sum square. */
  private static final double ROOT_CONTACTS = Math.sqrt(N);

  /**
   * Says what is known without simulation, at the nominal friction as the simulation takes it.
   *
   * @return whether tool changes seat
   */
  public Answer answer() {
    return answerAt(design.friction().nominal());
  }

  /**
   * Says what is known without simulation.
   *
   * @param level friction about which the contacts' own friction scatters from change to change
   * @return whether tool changes seat
   */
  public Answer answerAt(double level) {
    double share = shareAt(level);
    return share < FEW ? Answer.SEATS : share > MANY ? Answer.HANGS_UP : Answer.IN_DOUBT;
  }
}
