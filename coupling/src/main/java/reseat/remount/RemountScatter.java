package reseat.remount;

import java.util.List;
import reseat.numerics.VectorScatter;

/**
 * What many simulated mountings came to.
 *
 * <p>Shifts of the tool point in machine axes, against the frictionless state of rest under nominal
 * preload and weight. Failed mountings have no position: they are counted and explained, and are
 * not in the statistics.
 *
 * @param plan what was simulated
 * @param seated number of mountings that seated
 * @param toolPoint shift of the tool point, m
 * @param inCouplingAxes the same shift along x, y, z of the coupling frame, m
 * @param rotation rotation of the holder about the machine axes, rad
 * @param afterCut further shift once a cutting load has come and gone; no count if not simulated
 * @param afterReclamp further shift once the preload was let go and applied again; likewise
 * @param failures failed mountings by kind and contact, most frequent first
 */
public record RemountScatter(
    RemountPlan plan,
    long seated,
    VectorScatter toolPoint,
    VectorScatter inCouplingAxes,
    VectorScatter rotation,
    VectorScatter afterCut,
    VectorScatter afterReclamp,
    List<Failure> failures) {

  /** Copies the list. */
  public RemountScatter {
    failures = List.copyOf(failures);
  }

  /**
   * Returns the number of mountings that did not seat.
   *
   * @return count over all kinds of failure
   */
  public long failed() {
    return failures.stream().mapToLong(Failure::count).sum();
  }

  /**
   * One way in which mountings failed.
   *
   * @param kind which way
   * @param contact name of the contact that hung or tipped; empty if none is to blame
   * @param count how many mountings
   */
  public record Failure(Kind kind, String contact, long count) {

    /** Ways in which a mounting fails. */
    public enum Kind {
      /** Friction holds the slide before the contact has closed. */
      HANGS,
      /** While the others slide, the contact would have to pull: the holder tips there. */
      TIPS,
      /** Contacts opened under the load and the holder did not come to rest. */
      NO_REST,
      /** The cutting load took the holder off its seats. */
      LOST_IN_CUT,
      /** The holder did not come to rest while the preload was let go and applied again. */
      LOST_IN_RECLAMP
    }

    /**
     * Returns the failure in words.
     *
     * @return one sentence
     */
    public String words() {
      return switch (kind) {
        case HANGS -> "hangs up before " + contact + " closes";
        case TIPS -> "tips off " + contact + " while sliding home";
        case NO_REST -> "finds no rest while the preload grows";
        case LOST_IN_CUT -> "comes off its seats under the cutting load";
        case LOST_IN_RECLAMP -> "finds no rest while it is let go and clamped again";
      };
    }
  }
}
