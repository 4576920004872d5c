package reseat.report.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.readings.SeriesDecision;
import reseat.readings.SeriesDecision.Missing;
import reseat.readings.SeriesDecision.OfColumn;
import reseat.readings.SeriesDecision.Word;

/** The decision about a remount series in words. */
public final class DecisionText {

  private DecisionText() {}

  /**
   * Says what the series shows of the targets.
   *
   * @param decision the decision
   * @return a sentence or two
   */
  public static String headline(SeriesDecision decision) {
    String changed = decision.changed() ? " Later checks show a change." : "";
    return switch (decision.word()) {
      case NO_TARGET -> "No target stated (--target or --against)." + changed;
      case PROVEN -> "PROVEN: every target." + changed;
      case MISSED, NOT_PROVEN -> open(decision) + changed;
    };
  }

  private static String open(SeriesDecision decision) {
    List<String> missed = new ArrayList<>();
    Map<String, List<String>> notProven = new LinkedHashMap<>();
    for (OfColumn c : decision.columns()) {
      if (c.word() == Word.MISSED) {
        missed.add(c.column());
      } else if (c.word() == Word.NOT_PROVEN) {
        notProven.computeIfAbsent(lacks(c), w -> new ArrayList<>()).add(c.column());
      }
    }
    List<String> sentences = new ArrayList<>();
    if (!missed.isEmpty()) {
      sentences.add("MISSED: " + String.join(", ", missed) + ".");
    }
    if (!notProven.isEmpty()) {
      List<String> parts = new ArrayList<>();
      notProven.forEach((why, names) -> parts.add(String.join(", ", names) + " (" + why + ")"));
      sentences.add("NOT PROVEN: " + String.join("; ", parts) + ".");
    }
    return String.join(" ", sentences);
  }

  /**
   * Says what a proof lacks.
   *
   * @param c the decision about a probe
   * @return short words, the first to be mended first; empty if nothing is missing
   */
  public static String lacks(OfColumn c) {
    List<String> words = new ArrayList<>();
    c.missing().forEach(m -> words.add(words(m, c)));
    return String.join(", ", words);
  }

  private static String words(Missing missing, OfColumn c) {
    return switch (missing) {
      case UNIT -> "its unit is doubted";
      case TOO_FEW -> "too few mounts";
      case NOT_SETTLED -> "has not settled";
      case OUTLIER -> "a reading stands out";
      case DRIFT -> "drifts";
      case ORDER -> "neighbouring mounts hang together";
      case SKEW -> "too skewed for a bound";
      case GAUGE -> "the gauge is too coarse";
      case MOUNTS ->
          c.furtherMounts() > 0
              ? ReadingsText.counted(c.furtherMounts(), "more mount") + " wanted"
              : "more mounts wanted";
      case SCATTER -> "s is not below the target";
    };
  }

  /**
   * Names the decision about a probe.
   *
   * @param c the decision about a probe
   * @return a word or two in lower case, MISSED in capitals
   */
  public static String word(OfColumn c) {
    return switch (c.word()) {
      case PROVEN -> "proven";
      case NOT_PROVEN -> "not proven";
      case MISSED -> "MISSED";
      case NO_TARGET -> "no target stated";
    };
  }
}
