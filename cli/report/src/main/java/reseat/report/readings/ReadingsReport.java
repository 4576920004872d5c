package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.check.Verdict;
import reseat.design.InputDoubt;
import reseat.readings.ColumnAnalysis;
import reseat.readings.ControlChart;
import reseat.readings.OffsetTable;
import reseat.readings.PoseScatter;
import reseat.readings.ProofOfTarget;
import reseat.readings.ReadingDoubts;
import reseat.readings.SeriesAnalysis;
import reseat.report.form.FigureText;
import reseat.report.form.UnitSystem;
import reseat.space.Vec3;
import reseat.study.PredictionStudy;

/**
 * All that is reported of a remount series.
 *
 * @param analysis the series analysed
 * @param offsets offset tables: one with several holders, else none
 * @param laterFile name of the file of later checks, empty if there is none
 * @param later charts of the later checks by the name of the column, the baseline first
 * @param poses motions of the holder as a whole: one if the layout of the probes was given
 * @param points points whose shift is told from the pose, m
 * @param predictions the series beside the simulated one; none if no design was given
 */
public record ReadingsReport(
    SeriesAnalysis analysis,
    List<OffsetTable> offsets,
    String laterFile,
    Map<String, ControlChart> later,
    List<PoseScatter> poses,
    List<Vec3> points,
    List<PredictionStudy> predictions) {

  /** Copies lists and map. */
  public ReadingsReport {
    offsets = List.copyOf(offsets);
    later = Map.copyOf(later);
    poses = List.copyOf(poses);
    points = List.copyOf(points);
    predictions = List.copyOf(predictions);
  }

  /**
   * Returns how numbers beside those of the probes are written.
   *
   * @return in the unit system of the columns
   */
  public FigureText figures() {
    return new FigureText(analysis.series().inInches() ? UnitSystem.INCH : UnitSystem.METRIC);
  }

  /**
   * Says what the series shows of the targets.
   *
   * @return a sentence or two
   */
  public String headline() {
    List<String> missed = new ArrayList<>();
    List<String> open = new ArrayList<>();
    boolean targets = false;
    for (ColumnAnalysis c : analysis.columns()) {
      if (c.hasTarget()) {
        targets = true;
        Optional<ProofOfTarget.Verdict> proof = c.proof().map(ProofOfTarget::verdict);
        if (!proof.equals(Optional.of(ProofOfTarget.Verdict.PROVEN))) {
          (proof.equals(Optional.of(ProofOfTarget.Verdict.REFUTED)) ? missed : open)
              .add(c.column().name());
        }
      }
    }
    boolean changed =
        later.values().stream()
            .anyMatch(c -> c.signals().stream().anyMatch(s -> s.index() >= c.baseline()));
    String told =
        !targets
            ? "No target was given (--target or --against)."
            : open.isEmpty() && missed.isEmpty()
                ? "PROVEN: every target."
                : missed.isEmpty()
                    ? "NOT PROVEN: " + String.join(", ", open) + "."
                    : "MISSED: "
                        + String.join(", ", missed)
                        + (open.isEmpty() ? "." : "; not proven: " + String.join(", ", open) + ".");
    return told + (changed ? " Later checks show a change." : "");
  }

  /**
   * Returns what is doubted about the readings themselves.
   *
   * @return columns whose head most likely names the wrong unit; a target held against such a
   *     column proves nothing
   */
  public List<InputDoubt> doubts() {
    return ReadingDoubts.of(analysis.series());
  }

  /**
   * Returns the verdict on the series.
   *
   * @return holds if every target given is proven and no later check signals a change; undecided
   *     where a target is held against readings that are doubted, which prove and refute nothing
   */
  public Verdict verdict() {
    boolean targets = analysis.columns().stream().anyMatch(ColumnAnalysis::hasTarget);
    if (targets && !doubts().isEmpty()) {
      return Verdict.UNDECIDED;
    }
    return shown() ? Verdict.HOLDS : Verdict.FAILS;
  }

  /**
   * Tells whether everything that was asked for is shown.
   *
   * @return true if the verdict is that it holds
   */
  public boolean holds() {
    return verdict() == Verdict.HOLDS;
  }

  private boolean shown() {
    boolean proven =
        analysis.columns().stream()
            .filter(ColumnAnalysis::hasTarget)
            .allMatch(
                c ->
                    c.proof().filter(p -> p.verdict() == ProofOfTarget.Verdict.PROVEN).isPresent());
    return proven
        && later.values().stream()
            .allMatch(c -> c.signals().stream().noneMatch(s -> s.index() >= c.baseline()));
  }
}
