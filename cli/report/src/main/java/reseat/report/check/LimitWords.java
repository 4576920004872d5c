package reseat.report.check;

import reseat.check.LimitBasis;

/** By whose judgement a limit stands, in a few words. */
public final class LimitWords {

  private LimitWords() {}

  /**
   * Names the source of a limit.
   *
   * @param basis whose judgement it is
   * @return a few words, for instance {@code ISO 76}
   */
  public static String source(LimitBasis basis) {
    return switch (basis) {
      case MECHANICS -> "mechanics";
      case STRENGTH -> "strength of the material";
      case DERATED_STRENGTH -> "bond strength with the usual derating (common practice, no source)";
      case STATED -> "your target";
      case DEFAULT_TARGET -> "default target, not stated in the file";
      case STATED_PESSIMISTIC -> "your target, at the pessimistic bound";
      case ISO_76 -> "ISO 76, static load rating";
      case FIRST_YIELD -> "first flow under the surface: what it leaves is told";
      case BRITTLE_BOUND -> "lower bound of what cracks a brittle body";
      case COMMON_PRACTICE -> "common practice, no source";
      case THEORY -> "range of the contact theory";
      case FRICTION_RANGE -> "upper end of the expected friction";
      case SAMPLE -> "what the simulated tool changes can exclude";
      case USUAL_RANGE -> "what is usual (judgement)";
      case ASSUMED -> "a tenth of a deciding figure (--strict)";
    };
  }

  /**
   * Says whether a limit is hard or soft.
   *
   * @param basis whose judgement it is
   * @return {@code hard} or {@code soft}
   */
  public static String kind(LimitBasis basis) {
    return basis.hard() ? "hard" : "soft";
  }
}
