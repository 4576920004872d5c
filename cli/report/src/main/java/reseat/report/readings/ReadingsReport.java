package reseat.report.readings;

import java.util.List;
import java.util.Map;
import reseat.check.Verdict;
import reseat.design.InputDoubt;
import reseat.readings.ControlChart;
import reseat.readings.OffsetTable;
import reseat.readings.PoseScatter;
import reseat.readings.ReadingDoubts;
import reseat.readings.SeriesAnalysis;
import reseat.readings.SeriesDecision;
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
    return DecisionText.headline(decision());
  }

  /**
   * Returns the decision from which all outputs take their words.
   *
   * @return what is decided about each probe, and what a proof lacks
   */
  public SeriesDecision decision() {
    boolean changed =
        later.values().stream()
            .anyMatch(c -> c.signals().stream().anyMatch(s -> s.index() >= c.baseline()));
    return SeriesDecision.of(analysis, changed);
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
   * @return holds if every target stated is proven and no later check signals a change, also
   *     without any target; fails if a target is missed or a later check signals a change
   */
  public Verdict verdict() {
    SeriesDecision decision = decision();
    return switch (decision.word()) {
      case MISSED -> Verdict.FAILS;
      case NOT_PROVEN -> decision.changed() ? Verdict.FAILS : Verdict.UNDECIDED;
      case PROVEN, NO_TARGET -> decision.changed() ? Verdict.FAILS : Verdict.HOLDS;
    };
  }

  /**
   * Tells whether everything that was asked for is shown.
   *
   * @return true if the verdict is that it holds
   */
  public boolean holds() {
    return verdict() == Verdict.HOLDS;
  }
}
