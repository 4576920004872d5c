package reseat.cli.command;

import reseat.check.Verdict;
/** How a run ends, as the calling shell sees it. */
public final class ExitCode {

  /** Every check holds, or what was to be decided is accepted. */
  public static final int HOLDS = 0;

  /** A check fails; the report is complete. */
  public static final int CHECK_FAILS = 1;

  /** The command line or an input file is wrong, or a file cannot be read or written. */
  public static final int BAD_INPUT = 2;

  /** The question is well put but has no solution. */
  public static final int NO_SOLUTION = 3;

  /** No check fails, and a person has to decide about at least one. */
  public static final int NEEDS_DECISION = 4;

  /** A fault of the program itself. */
  public static final int OUR_FAULT = 70;

  /** The user stopped the run (Ctrl-C); nothing was written. */
  public static final int INTERRUPTED = 130;

  private ExitCode() {}

  /**
   * How a run ends that gave a verdict.
   *
   * @param verdict the verdict
   * @return its exit code
   */
  public static int of(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> HOLDS;
      case UNDECIDED -> NEEDS_DECISION;
      case FAILS -> CHECK_FAILS;
    };
  }
}
