package reseat.check;

import reseat.equilibrium.Equilibrium;
import reseat.repeatability.ToolChangeOutlook;

/** How far tool changes are looked at. */
public enum Depth {
  /** Not at all: statics alone. */
  STATICS,
  /** By the closed form: microseconds, for searches. */
  CLOSED_FORM,
  /** By the closed form, and by simulated changes where that does not decide. */
  SIMULATED;

  /** Seed of the tool changes that a verdict rests on: always the same ones. */
  private static final long SEED = 1;

  /**
   * Looks at tool changes.
   *
   * @param standing the coupling at rest, all contacts pressed
   * @return what is known of them
   */
  public ToolChangeOutlook of(Equilibrium standing) {
    return of(standing, SEED);
  }

  /**
   * Looks at other tool changes than those that verdicts rest on.
   *
   * @param standing the coupling at rest, all contacts pressed
   * @param seed their seed
   * @return what is known of them
   */
  public ToolChangeOutlook of(Equilibrium standing, long seed) {
    return switch (this) {
      case STATICS -> ToolChangeOutlook.NOT_ASKED;
      case CLOSED_FORM -> ToolChangeOutlook.closedForm(standing);
      case SIMULATED -> ToolChangeOutlook.of(standing, seed);
    };
  }
}
