package reseat.report.check;

import java.util.List;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Verdict;

/** The verdict in a line, and each judgement in a word. */
public final class VerdictWords {

  private VerdictWords() {}

  /**
   * Says how findings stand together.
   *
   * @param findings all findings
   * @return one line, for instance {@code HOLDS: all 21 checks.}
   */
  public static String line(List<Finding> findings) {
    int fails = count(findings, Judged.FAILS);
    int decide = count(findings, Judged.DECIDE);
    int accepted = count(findings, Judged.ACCEPTED);
    int all = fails + decide + accepted + count(findings, Judged.HOLDS);
    return switch (Verdict.of(findings)) {
      case HOLDS ->
          accepted == 0
              ? "HOLDS: " + all(all) + "."
              : "HOLDS: " + all(all) + ", " + accepted + " of them by accepted decision.";
      case UNDECIDED ->
          "NEEDS A DECISION: "
              + decide
              + " of "
              + checks(all)
              + (decide == 1 ? " is over a soft limit" : " are over a soft limit")
              + ", none fails.";
      case FAILS ->
          "FAILS: "
              + fails
              + " of "
              + checks(all)
              + (decide == 0
                  ? "."
                  : decide == 1
                      ? ", 1 more needs a decision."
                      : ", " + decide + " more need a decision.");
    };
  }

  private static String all(int count) {
    return count == 1 ? "the only check" : "all " + count + " checks";
  }

  private static String checks(int count) {
    return count == 1 ? "1 check" : count + " checks";
  }

  /**
   * The verdict in a word.
   *
   * @param verdict the verdict
   * @return in small letters
   */
  public static String word(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "holds";
      case UNDECIDED -> "needs a decision";
      case FAILS -> "fails";
    };
  }

  /**
   * The verdict as programs read it.
   *
   * @param verdict the verdict
   * @return {@code holds}, {@code undecided} or {@code fails}
   */
  public static String key(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "holds";
      case UNDECIDED -> "undecided";
      case FAILS -> "fails";
    };
  }

  /**
   * A judgement in a word.
   *
   * @param judged the judgement
   * @return in small letters
   */
  public static String word(Judged judged) {
    return switch (judged) {
      case FAILS -> "fails";
      case DECIDE -> "decide";
      case ACCEPTED -> "accepted";
      case HOLDS -> "holds";
      case ADVICE -> "advice";
    };
  }

  private static int count(List<Finding> findings, Judged judged) {
    int n = 0;
    for (Finding f : findings) {
      n += f.judged() == judged ? 1 : 0;
    }
    return n;
  }
}
