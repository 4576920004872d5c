package reseat.readings;

/**
 * Levels of an analysis.
 *
 * @param confidence confidence of bounds, verdicts and tolerance intervals
 * @param share share of future mounts that a tolerance interval holds
 * @param falseAlarm chance that a test sees something in a series that has nothing
 * @param wearIn mounts at the start to be left out; negative to look for the wear-in
 */
public record AnalysisOptions(double confidence, double share, double falseAlarm, int wearIn) {

  /** 95 % confidence, 95 % of mounts, 5 % false alarms, wear-in looked for. */
  public static final AnalysisOptions USUAL = new AnalysisOptions(0.95, 0.95, 0.05, -1);

  /** Refuses levels that are not between 0 and 1. */
  public AnalysisOptions {
    ScatterBounds.requireConfidence(confidence);
    ScatterBounds.requireConfidence(share);
    ScatterBounds.requireConfidence(falseAlarm);
  }
}
