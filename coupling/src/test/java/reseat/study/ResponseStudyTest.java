package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.interchange.Sensitivity;
import reseat.interchange.ToleranceModel;

/** The exact curve of one dimension against its slope by linear theory. */
class ResponseStudyTest {

  private static final CouplingDesign POST =
      DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();

  @Test
  void theCurveStartsAlongTheExactSensitivity() {
    for (Sensitivity.Effect effect : Sensitivity.of(ToleranceModel.of(POST)).effects()) {
      ResponseStudy study = ResponseStudy.of(POST, effect.contributor().name()).orElseThrow();
      int middle = study.deviations().size() / 2;
      double step = study.deviations().get(middle + 1);
      for (int axis = 0; axis < 3; axis++) {
        double slope = study.shifts().get(middle + 1).component(axis) / step;
        double scale = effect.shiftInMachineAxes().norm();
        assertThat(slope)
            .as(effect.contributor().name())
            .isCloseTo(effect.shiftInMachineAxes().component(axis), within(0.02 * scale + 5e-4));
      }
      assertThat(study.shifts().get(middle).norm()).isZero();
    }
  }

  @Test
  void aDimensionWithoutToleranceHasNoCurve() {
    assertThat(ResponseStudy.of(POST, "colour of the paint")).isEmpty();
    assertThat(ResponseStudy.names(POST)).contains("front ball height");
  }
}
