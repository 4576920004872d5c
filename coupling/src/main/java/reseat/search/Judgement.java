package reseat.search;

import java.util.Optional;
import reseat.check.Verdict;
import reseat.designfile.SizeTargets.RankBy;

/**
 * How a candidate stands against the limits.
 *
 * @param check words of the check whose limit is nearest; of a design that fails, the one that was
 *     found to fail first
 * @param used part of that limit that the design uses; infinite if no such part can be told
 * @param decide words of the check that a person has to decide about, the first that was met; empty
 *     if there is none, or the design fails
 * @param merits qualities of a design of which no check fails; empty if it fails
 */
public record Judgement(String check, double used, String decide, Optional<Merits> merits) {

  /** What stands for the check where the design is larger than wanted. */
  public static final String SIZE = "size";

  /** What stands for the check where the design has no state of rest. */
  public static final String DOES_NOT_STAND = "does not stand";

  /**
   * A design that keeps every limit, or fails.
   *
   * @param check words of the check whose limit is nearest, or that fails
   * @param used part of that limit that the design uses
   * @param merits qualities of a design that keeps every limit; empty if it fails
   */
  public Judgement(String check, double used, Optional<Merits> merits) {
    this(check, used, "", merits);
  }

  /**
   * A design that fails.
   *
   * @param check the check that fails
   * @param used part of its limit that the design uses
   * @return the judgement
   */
  public static Judgement fails(String check, double used) {
    return new Judgement(check, used, Optional.empty());
  }

  /**
   * Says whether every check holds, as one verdict says it.
   *
   * @return true if no check fails and none is left to be decided
   */
  public boolean holds() {
    return verdict() == Verdict.HOLDS;
  }

  /**
   * Returns the verdict.
   *
   * @return what the checks come to
   */
  public Verdict verdict() {
    if (merits.isEmpty()) {
      return Verdict.FAILS;
    }
    return decide.isEmpty() ? Verdict.HOLDS : Verdict.UNDECIDED;
  }

  /**
   * Returns where the design stands in an order.
   *
   * @param rule the order
   * @return a number, the smaller the better; meaningless for a design that fails
   */
  public double score(RankBy rule) {
    return merits.map(m -> m.score(rule, used)).orElse(Double.POSITIVE_INFINITY);
  }
}
