package reseat.readings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The one decision about a series, from which screen, page, paper, JSON and exit code take their
 * words.
 *
 * <p>A target is proven by a series that has settled, is steady, long enough, without a reading
 * that stands out and not skewed, whose upper bound is at or below it. It is missed if the lower
 * bound is above it in every way to count the series. Between the two it is not proven, and what is
 * missing is named.
 *
 * @param columns one per probe, in the order of the file
 * @param changed whether later checks show a change
 */
public record SeriesDecision(List<OfColumn> columns, boolean changed) {

  /** Fewest settled mounts from which anything is proven. */
  public static final int LEAST_SETTLED = Settling.LEAST_TAIL;

  /** Copies the list. */
  public SeriesDecision {
    columns = List.copyOf(columns);
  }

  /** What is decided. */
  public enum Word {
    /** The true scatter is within the target. */
    PROVEN,
    /** Neither is shown. */
    NOT_PROVEN,
    /** The true scatter is above the target. */
    MISSED,
    /** No target was stated. */
    NO_TARGET
  }

  /** What a proof lacks. */
  public enum Missing {
    /** The head most likely names the wrong unit. */
    UNIT,
    /** Too few mounts to tell whether they have settled. */
    TOO_FEW,
    /** The readings were still running in. */
    NOT_SETTLED,
    /** A reading stands out and is not explained. */
    OUTLIER,
    /** The readings rise or fall. */
    DRIFT,
    /** Neighbours are too alike or too unlike. */
    ORDER,
    /** The readings are too skewed for a bound. */
    SKEW,
    /** The gauge does not resolve the mount, or its step is too coarse for the target. */
    GAUGE,
    /** More mounts would tell. */
    MOUNTS,
    /** The scatter is not below the target. */
    SCATTER
  }

  /**
   * The decision about one probe.
   *
   * @param column its name
   * @param word what is decided
   * @param missing what a proof lacks; empty unless not proven
   * @param furtherMounts mounts that a proof takes if s stays what it is; 0 unless they are all
   *     that is missing
   */
  public record OfColumn(String column, Word word, Set<Missing> missing, int furtherMounts) {

    /** Copies the set, in the order in which the user is to act. */
    public OfColumn {
      EnumSet<Missing> kept = EnumSet.noneOf(Missing.class);
      kept.addAll(missing);
      missing = java.util.Collections.unmodifiableSet(kept);
    }
  }

  /**
   * Decides.
   *
   * @param analysis the series analysed
   * @param changed whether later checks show a change
   * @return the decision
   */
  public static SeriesDecision of(SeriesAnalysis analysis, boolean changed) {
    Set<String> doubted = new java.util.HashSet<>();
    ReadingDoubts.of(analysis.series()).forEach(d -> doubted.add(d.key()));
    List<OfColumn> columns = new ArrayList<>();
    for (ColumnAnalysis c : analysis.columns()) {
      columns.add(of(c, analysis, doubted.contains(c.column().name())));
    }
    return new SeriesDecision(columns, changed);
  }

  private static OfColumn of(ColumnAnalysis c, SeriesAnalysis analysis, boolean doubted) {
    String name = c.column().name();
    if (!c.hasTarget()) {
      return new OfColumn(name, Word.NO_TARGET, Set.of(), 0);
    }
    Set<Missing> missing = EnumSet.noneOf(Missing.class);
    if (doubted) {
      missing.add(Missing.UNIT);
    }
    int settled = c.scatter().readings();
    int made = c.all().map(Repeatability::n).orElse(1);
    if (settled < LEAST_SETTLED
        || (analysis.options().wearIn() < 0 && made < Settling.LEAST_MOUNTS)) {
      missing.add(Missing.TOO_FEW);
    }
    if (!analysis.hasSettled()) {
      missing.add(Missing.NOT_SETTLED);
    }
    if (!c.flagged().isEmpty()) {
      missing.add(Missing.OUTLIER);
    }
    Drift.Verdict trend = c.trend();
    if (trend == Drift.Verdict.RISING || trend == Drift.Verdict.FALLING) {
      missing.add(Missing.DRIFT);
    } else if (trend != Drift.Verdict.STEADY) {
      missing.add(Missing.ORDER);
    }
    if (c.isSkewed()) {
      missing.add(Missing.SKEW);
    }
    boolean missed =
        !doubted
            && analysis.hasSettled()
            && !c.isSkewed()
            && c.versions().stream()
                .allMatch(
                    v ->
                        v.proof()
                            .filter(p -> p.verdict() == ProofOfTarget.Verdict.REFUTED)
                            .isPresent());
    if (missed) {
      return new OfColumn(name, Word.MISSED, Set.of(), 0);
    }
    boolean clean = missing.isEmpty();
    if (c.proof().isEmpty()) {
      if (!c.isSkewed()) {
        missing.add(Missing.GAUGE);
      }
    } else {
      lacks(c, c.proof().get(), clean, missing);
    }
    int further =
        missing.equals(EnumSet.of(Missing.MOUNTS)) ? c.proof().orElseThrow().furtherMounts() : 0;
    return new OfColumn(name, missing.isEmpty() ? Word.PROVEN : Word.NOT_PROVEN, missing, further);
  }

  /** What the best way to count the series still lacks of a proof. */
  private static void lacks(
      ColumnAnalysis c, ProofOfTarget asRead, boolean clean, Set<Missing> missing) {
    List<SeriesVersion> versions = c.versions();
    ProofOfTarget best = clean ? asRead : versions.get(versions.size() - 1).proof().orElse(asRead);
    if (best.verdict() == ProofOfTarget.Verdict.PROVEN) {
      return;
    }
    if (best.bounds().s() >= best.target()) {
      missing.add(Missing.SCATTER);
    } else if (c.leastBound() > best.target() || best.furtherMounts() == 0) {
      missing.add(Missing.GAUGE);
    } else {
      missing.add(Missing.MOUNTS);
    }
  }

  /**
   * Says what is decided of the series.
   *
   * @return missed if any target is, else not proven if any is not, proven if all are
   */
  public Word word() {
    Word word = Word.NO_TARGET;
    for (OfColumn c : columns) {
      switch (c.word()) {
        case MISSED -> {
          return Word.MISSED;
        }
        case NOT_PROVEN -> word = Word.NOT_PROVEN;
        case PROVEN -> word = word == Word.NO_TARGET ? Word.PROVEN : word;
        case NO_TARGET -> {}
      }
    }
    return word;
  }

  /**
   * Returns the decision about a probe.
   *
   * @param column its name
   * @return the decision
   */
  public OfColumn of(String column) {
    return columns.stream().filter(c -> c.column().equals(column)).findFirst().orElseThrow();
  }
}
