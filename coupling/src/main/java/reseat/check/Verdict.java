package reseat.check;

import java.util.List;

/** What a list of findings comes to: one word for every command, picture, paper and exit code. */
public enum Verdict {
  /** A check fails. */
  FAILS,
  /** No check fails, and a person has to decide about at least one. */
  UNDECIDED,
  /** Every check holds, or what was to be decided is accepted. */
  HOLDS;

  /**
   * Takes the verdict from findings.
   *
   * @param findings all findings, in any order
   * @return the worst judgement
   */
  public static Verdict of(List<Finding> findings) {
    Verdict verdict = HOLDS;
    for (Finding f : findings) {
      if (f.judged() == Judged.FAILS) {
        return FAILS;
      }
      if (f.judged() == Judged.DECIDE) {
        verdict = UNDECIDED;
      }
    }
    return verdict;
  }
}
