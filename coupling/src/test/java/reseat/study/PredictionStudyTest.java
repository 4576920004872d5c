package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.csv.UnreadableCsv;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.readings.AnalysisOptions;
import reseat.readings.PredictionTest;
import reseat.readings.ReadingsReader;
import reseat.readings.ScatterCause;
import reseat.readings.SeriesAnalysis;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/** Readings drawn from the simulation with known amounts of each cause give these amounts back. */
class PredictionStudyTest {

  private static final long SEED = 20261125;

  @TempDir Path folder;
  private CouplingDesign design;

  @BeforeEach
  void read() {
    design = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
  }

  /** Readings of the design with other amounts, with luck of their own; one mount may be upset. */
  private SeriesAnalysis readings(Map<ScatterCause, Double> factors, int mounts, int upset)
      throws IOException, UnreadableCsv {
    List<Vec3> places =
        new RemountSimulation(CouplingModel.of(CauseAmounts.scaled(design, factors)))
            .positions(SEED, mounts);
    StringBuilder csv = new StringBuilder("cycle, X [um], Z [um], height [um]\n");
    for (int i = 0; i < places.size(); i++) {
      Vec3 p = places.get(i).times(1e6);
      double off = i == upset ? 2 : 0;
      csv.append(
          String.format(Locale.ROOT, "%d, %.6f, %.6f, %.6f%n", i + 1, p.x() + off, p.y(), p.z()));
    }
    Path file = Files.writeString(folder.resolve("readings.csv"), csv);
    AnalysisOptions usual = AnalysisOptions.USUAL;
    return SeriesAnalysis.of(
        ReadingsReader.read(file),
        Map.of(),
        new AnalysisOptions(usual.confidence(), usual.share(), usual.falseAlarm(), 0));
  }

  private PredictionStudy against(SeriesAnalysis readings, long simulated)
      throws InterruptedException {
    return PredictionStudy.of(readings, design, RemountPlan.of(simulated, 3, 2));
  }

  private static CauseCalibration.Amount amount(PredictionStudy study, ScatterCause cause) {
    return study.fit().orElseThrow().amounts().stream()
        .filter(a -> a.cause() == cause)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void frictionAndPreloadScatterThatMadeTheReadingsAreFound() throws Exception {
    PredictionStudy study =
        against(
            readings(Map.of(ScatterCause.FRICTION, 3.0, ScatterCause.PRELOAD, 4.0), 3000, -1),
            4000);
    CauseCalibration.Amount preload = amount(study, ScatterCause.PRELOAD);
    CauseCalibration.Amount friction = amount(study, ScatterCause.FRICTION);
    assertThat(preload.assumed()).isEqualTo(0.02);
    assertThat(preload.fitted()).isCloseTo(0.08, within(0.012));
    assertThat(friction.assumed()).isEqualTo(0.2);
    assertThat(friction.fitted()).isCloseTo(0.6, within(0.15));
    for (CauseCalibration.Amount a : study.fit().orElseThrow().amounts()) {
      double truth =
          a.assumed()
              * (a.cause() == ScatterCause.FRICTION
                  ? 3
                  : a.cause() == ScatterCause.PRELOAD ? 4 : 1);
      assertThat(truth).as(a.cause().words()).isBetween(0.9 * a.low(), 1.1 * a.high());
    }
  }

  @Test
  void theAmountsFoundScatterAsWasMeasured() throws Exception {
    PredictionStudy study =
        against(readings(Map.of(ScatterCause.TEMPERATURE, 5.0), 2000, -1), 4000);
    for (int i = 0; i < 3; i++) {
      assertThat(study.fit().orElseThrow().simulated().get(i))
          .isCloseTo(
              study.tests().get(i).measured(), within(0.06 * study.tests().get(i).measured()));
    }
    assertThat(amount(study, ScatterCause.TEMPERATURE).fitted()).isCloseTo(1.0, within(0.1));
    assertThat(study.exceeds()).isTrue();
  }

  @Test
  void readingsMadeWithTheAssumedAmountsShowNoExcess() throws Exception {
    PredictionStudy study = against(readings(Map.of(), 200, -1), 1000);
    assertThat(study.tests())
        .allMatch(t -> t.verdict() == PredictionTest.Verdict.AS_PREDICTED || t.p() > 0.01);
    assertThat(study.flagged()).isEmpty();
    assertThat(study.typical()).isEmpty();
  }

  @Test
  void aMountThatStandsOutIsToldApartFromTheScatterOfTheRest() throws Exception {
    PredictionStudy study = against(readings(Map.of(), 60, 40), 1000);
    assertThat(study.flagged()).contains(40);
    assertThat(study.tests().get(0).verdict()).isEqualTo(PredictionTest.Verdict.MORE);
    assertThat(study.typical().get(0).ratio()).isBetween(0.7, 1.4);
    assertThat(study.exceeds()).isFalse();
  }
}
