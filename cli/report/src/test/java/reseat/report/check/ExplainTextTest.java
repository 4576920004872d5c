package reseat.report.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.check.Depth;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.Equilibrium;
import reseat.report.form.FigureText;
import reseat.report.form.UnitSystem;
import reseat.study.CheckStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;

/** A figure told in full: the formula told is the one that was computed. */
class ExplainTextTest {

  private static final SeatedCheck POST =
      (SeatedCheck)
          CheckStudy.run(
              StatedDesign.of(DesignFile.read(Starter.TOOL_POST.text())), Depth.SIMULATED);

  @Test
  void everyFigureHasFormulaInputsSourceAndWhatIsAssumed() {
    assertThat(ExplainText.keys()).hasSizeGreaterThanOrEqualTo(12);
    for (String key : ExplainText.keys()) {
      String told = ExplainText.of(POST, key, FigureText.METRIC).orElseThrow();
      assertThat(told)
          .as(key)
          .contains("  Formula: ", "  Inputs:\n    ", "  Source: ", "  Assumed:");
      assertThat(told).as(key).doesNotContain("NaN").doesNotContain("null");
      assertThat(told.lines().mapToInt(String::length).max().orElse(0))
          .as(key)
          .isLessThanOrEqualTo(100);
    }
  }

  @Test
  void theFormulasToldGiveTheNumbersTold() {
    for (Equilibrium.Contact c : POST.standing().contacts()) {
      double f = c.force();
      double a = c.hertz().semiMajor(f);
      double b = c.hertz().semiMinor(f);
      assertThat(3 * f / (2 * Math.PI * a * b))
          .isCloseTo(c.peakPressure(), within(1e-9 * c.peakPressure()));
      assertThat(3 * f / (2 * c.approach()))
          .isCloseTo(c.normalStiffness(), within(1e-9 * c.normalStiffness()));
    }
  }

  @Test
  void unitsAreThoseAskedFor() {
    FigureText inch = new FigureText(UnitSystem.INCH);
    assertThat(ExplainText.of(POST, "contact-force", inch).orElseThrow())
        .contains("lbf")
        .doesNotContain(" N ");
    assertThat(ExplainText.of(POST, "peak-pressure", inch).orElseThrow()).contains("ksi");
  }

  @Test
  void aFigureThatIsNoneIsRefused() {
    assertThatThrownBy(() -> ExplainText.of(POST, "colour", FigureText.METRIC))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
