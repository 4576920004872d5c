package reseat.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.check.Judged;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Verdict;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.designfile.AlterableDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;

class SweepStudyTest {

  private static final String POST = Starter.TOOL_POST.text();

  /** Balls that stand rigidly, no weight, a plain force: what Hertz's laws are about. */
  private static final String BARE =
      POST.substring(0, POST.indexOf("# What each ball stands on"))
          + POST.substring(POST.indexOf("[layout.groove]"), POST.indexOf("# Disc springs"))
              .replace("at = [\"0 mm\", \"0 mm\", \"0 mm\"]", "at = [\"0 mm\", \"0 mm\", \"0 mm\"]")
          + "[holder]\nmass = \"0 kg\"\n";

  private static SweepStudy run(String text, List<String> vary, int threads, String... outputs)
      throws InterruptedException {
    AlterableDesign file = AlterableDesign.of(text);
    CouplingDesign design =
        file.unaltered().design().orElseThrow(() -> new AssertionError(file.unaltered()));
    List<SweepAxis> axes = vary.stream().map(v -> SweepAxis.of(file, v)).toList();
    List<Output> asked = new ArrayList<>();
    for (String name : outputs) {
      asked.add(OutputCatalog.named(design, name));
    }
    if (asked.isEmpty()) {
      asked.addAll(OutputCatalog.of(design).stream().filter(o -> !o.simulated()).toList());
    }
    return SweepStudy.run(new SweepPlan(file, axes, asked, 50, 1, threads), done -> {});
  }

  private static double value(SweepStudy study, int point, int output) {
    return study.points().get(point).outputs().get(output).orElseThrow().value();
  }

  private static void assertPower(double exponent, SweepStudy study, int output, double tolerance) {
    List<Double> x = study.plan().axes().get(0).numbers();
    for (int i = 1; i < x.size(); i++) {
      double seen =
          Math.log(value(study, i, output) / value(study, 0, output))
              / Math.log(x.get(i) / x.get(0));
      assertEquals(
          exponent, seen, tolerance, study.plan().outputs().get(output) + " at " + x.get(i));
    }
  }

  @Test
  void alongPreloadPressureGoesWithTheCubeRootAndSinkWithItsSquare() throws InterruptedException {
    SweepStudy study =
        run(
            BARE,
            List.of("preload.force=50 N..1.6 kN:6"),
            2,
            "peak-pressure",
            "sink",
            "stiffness",
            "largest-force");
    // Hertz: pressure as F^(1/3), approach as F^(2/3), stiffness as F^(1/3); the small rest is the
    // change of contact geometry with the sink.
    assertPower(1.0 / 3, study, 0, 2e-3);
    assertPower(2.0 / 3, study, 1, 2e-3);
    assertPower(1.0 / 3, study, 2, 2e-3);
    assertPower(1, study, 3, 2e-3);
  }

  @Test
  void aBallInAPlaneFlankPressesAsItsDiameterToTheMinusTwoThirds() throws InterruptedException {
    SweepStudy study =
        run(
            BARE.replaceAll("(mouth_width|length|root_width) = .*\n", ""),
            List.of("layout.ball.diameter=3/8 in,1/2 in,3/4 in,1 in"),
            1,
            "peak-pressure",
            "sink");
    assertPower(-2.0 / 3, study, 0, 2e-3);
    assertPower(-1.0 / 3, study, 1, 2e-3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "preload.force=200 N..1 kN:5 | force = \"600 N\"",
        "layout.ball.diameter=3/8 in,12 mm,1/2 in,5/8 in | diameter = \"1/2 in\"",
        "layout.groove.flank_angle=30 deg..60 deg:4 | flank_angle = \"45 deg\"",
        "layout.groove.material=440C,A2,6061-T6 | material = \"A2\"",
      })
  void everyRowIsTheCheckOfTheFileEditedByHand(String vary, String line)
      throws InterruptedException {
    SweepStudy study = run(POST, List.of(vary), 2);
    String key = line.substring(0, line.indexOf(" = "));
    for (SweepPoint point : study.points()) {
      String edited = POST.replace(line, key + " = \"" + point.values().get(0) + "\"");
      CouplingDesign design = DesignFile.read(edited).design().orElseThrow();
      SeatedCheck check = (SeatedCheck) CheckStudy.run(design);
      for (int i = 0; i < point.outputs().size(); i++) {
        Output output = study.plan().outputs().get(i);
        assertEquals(output.of(check, Optional.empty()), point.outputs().get(i), output.name());
      }
      assertEquals(check.holds(), point.state() == SweepPoint.State.HOLDS);
      assertEquals(
          check.findings().stream().filter(f -> f.judged() == Judged.FAILS).toList(),
          point.failing());
    }
  }

  @Test
  void anyNumberOfThreadsGivesTheSameRows() throws InterruptedException {
    List<String> vary =
        List.of("preload.force=100 N..2 kN:6", "layout.groove.flank_angle=35 deg..55 deg:3");
    String[] outputs = {"peak-pressure", "scatter.X", "lift-off[rough]"};
    SweepStudy one = run(POST, vary, 1, outputs);
    assertEquals(18, one.points().size());
    assertEquals(List.of("100 N", "45 deg"), one.points().get(1).values());
    assertEquals(one.points(), run(POST, vary, 4, outputs).points());
  }

  @Test
  void pointsAtWhichNothingStandsAreKeptWithTheReason() throws InterruptedException {
    String far = "preload.at[x]=0 mm..60 mm:4";
    SweepStudy study = run(POST, List.of(far), 1, "peak-pressure");
    assertEquals(4, study.points().size());
    SweepPoint last = study.points().get(3);
    assertEquals(SweepPoint.State.DOES_NOT_STAND, last.state());
    assertEquals(Said.NOT_PRESSED, last.reason().key());
    assertEquals(List.of(Optional.empty()), last.outputs());
    assertEquals(Verdict.HOLDS, study.best());
    SweepStudy strong = run(POST, List.of("preload.force=600 N,60 kN"), 1, "sink");
    assertEquals(SweepPoint.State.CANNOT_BE_MADE, strong.points().get(1).state());
    Statement reason = strong.points().get(1).reason();
    assertEquals(Said.REFUSED, reason.key());
    assertTrue(reason.arguments().get(0).toString().contains("preload[1].device"), "names the key");
  }

  @Test
  void aRangeIsWrittenAsItWouldBeTyped() {
    AlterableDesign file = AlterableDesign.of(POST);
    assertEquals(
        List.of("1/4 in", "0.375 in", "0.5 in", "0.625 in", "3/4 in"),
        SweepAxis.of(file, "layout.ball.diameter=1/4 in..3/4 in:5").values());
    assertEquals(
        List.of("10 mm", "12.7 mm", "15.4 mm"),
        SweepAxis.of(file, "layout.ball.diameter = 10 mm .. 15.4 mm : 3").values());
    assertEquals(
        List.of("4", "5", "6", "7"), SweepAxis.of(file, "preload.device.series=4..7").values());
    assertEquals(11, SweepAxis.of(file, "targets.pressure_share=0.5..1").values().size());
    assertEquals(
        List.of("[0, 0, -1]", "[0, 0.1, -1]"),
        SweepAxis.of(file, "preload.direction=[0, 0, -1],[0, 0.1, -1]").values());
    assertEquals(
        "1/8 in", SweepAxis.of(file, "layout.ball.diameter=stock:ball-inch").values().get(0));
    assertTrue(
        SweepAxis.of(file, "layout.mounting.thread.designation=stock:thread")
            .values()
            .contains("1/4-28"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "preload.force | write KEY=FROM..TO:N, KEY=A,B,C or KEY=stock:LIST",
        "preload.force=100..200 N | preload.force: \"100\" has no unit: write \"100 N\"",
        "preload.force=100 mm..200 mm | preload.force: ",
        "preload.force=100 N..100 N | has no width",
        "preload.force=100 N..200 N:1 | allowed is 2 to 10000",
        "preload.force=100 N..200 N:many | write how many values",
        "preload.force=100 N,,200 N | empty value",
        "layout.groove.material=A2..440C | so it has no range",
        "layout.ball.diameter=stock:balls | there is no stock list \"balls\"",
        "layout.ball_diameter=10 mm,12 mm | did you mean layout.ball.diameter?",
      })
  void aWrongChoiceOfValuesSaysWhatToWrite(String text, String message) {
    AlterableDesign file = AlterableDesign.of(POST);
    String told =
        assertThrows(IllegalArgumentException.class, () -> SweepAxis.of(file, text)).getMessage();
    assertTrue(told.contains(message), told);
  }

  @Test
  void aValueThatItsKeyRefusesStopsTheSweep() {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> run(POST, List.of("layout.ball.material=52100,5210"), 1, "sink"))
            .getMessage();
    assertTrue(message.startsWith("layout.ball.material: found \"5210\""), message);
    assertThrows(
        IllegalArgumentException.class,
        () -> run(POST, List.of("preload.force=1 N,2 N", "preload[1].force=1 N,2 N"), 1, "sink"));
  }

  @Test
  void outputsHaveThePlainNamesOfTheCasesAndAxesOfTheFile() {
    CouplingDesign design = DesignFile.read(POST).design().orElseThrow();
    List<String> names = OutputCatalog.of(design).stream().map(Output::name).toList();
    assertTrue(
        names.containsAll(
            List.of("peak-pressure", "stiffness.height", "lift-off[crash]", "motion[finish].Z")));
    assertEquals(names.size(), names.stream().distinct().count());
    String message =
        assertThrows(
                IllegalArgumentException.class, () -> OutputCatalog.named(design, "peak-presure"))
            .getMessage();
    assertTrue(message.contains("did you mean peak-pressure?"), message);
  }

  @Test
  void anOutputOutsideItsLimitMeansThatACheckFailsOrWarnsThere() throws InterruptedException {
    SweepStudy study =
        run(
            POST,
            List.of("preload.force=100 N..4 kN:12"),
            2,
            "peak-pressure",
            "lift-off",
            "friction-limit");
    for (SweepPoint p : study.points()) {
      boolean outside = p.outputs().stream().anyMatch(v -> v.isPresent() && !v.get().holds());
      String edited = POST.replace("force = \"600 N\"", "force = \"" + p.values().get(0) + "\"");
      if (p.state() == SweepPoint.State.CANNOT_BE_MADE) {
        continue;
      }
      boolean judged =
          CheckStudy.run(DesignFile.read(edited).design().orElseThrow()).findings().stream()
              .filter(
                  f -> f.check() == CheckKind.CONTACT_PRESSURE || f.check() == CheckKind.LIFT_OFF)
              .anyMatch(f -> f.judged().compareTo(Judged.DECIDE) <= 0 && f.margin() < 0);
      assertEquals(judged, outside, p.toString());
    }
  }
}
