package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.readings.AcceptancePlan;

/** A test planned before the coupling is made. */
class AcceptanceStudyTest {

  private static CouplingDesign post(String repeatability) {
    String text = Starter.TOOL_POST.text();
    String wanted = "X = \"0.5 um\", Z = \"0.5 um\", height = \"2.5 um\"";
    assertThat(text).contains(wanted);
    return DesignFile.read(text.replace(wanted, repeatability)).design().orElseThrow();
  }

  @Test
  void expectsTwoThirdsOfTheTargetWhereTheSimulationIsKinder() throws InterruptedException {
    List<AcceptancePlan> plans = AcceptanceStudy.of(post("X = \"0.5 um\", Z = \"0.5 um\"")).plans();
    assertThat(plans).hasSize(2);
    for (AcceptancePlan p : plans) {
      assertThat(p.target()).isCloseTo(0.5e-6 / 1.96, within(1e-12));
      assertThat(p.expected()).isCloseTo(p.target() * 2 / 3, within(1e-12));
      // least n with P(chi2(n-1) <= chi2_0.05(n-1) * 9/4) >= 0.8: computed by scipy.stats.chi2
      assertThat(p.mounts()).isEqualTo(23);
    }
  }

  @Test
  void plansALongerTestWhereMoreScatterIsSimulated() throws InterruptedException {
    // X scatters by about 0.07 um, so a target of 0.17 um (s of 0.087 um) is kept by little
    AcceptancePlan plan = AcceptanceStudy.of(post("X = \"0.17 um\"")).plans().get(0);
    assertThat(plan.expected()).isGreaterThan(0.7 * plan.target());
    assertThat(plan.mounts()).isGreaterThan(30);
  }

  @Test
  void plansNoTestThatTheSimulationExpectsToFail() throws InterruptedException {
    AcceptanceStudy study = AcceptanceStudy.of(post("X = \"0.05 um\", Z = \"0.5 um\""));
    assertThat(study.plans()).extracting(AcceptancePlan::axis).containsExactly("Z");
    assertThat(study.hopeless())
        .singleElement()
        .asString()
        .startsWith("axis X: s is expected to be 0.0")
        .contains("not clearly below the target of 0.026");
    assertThatThrownBy(() -> study.plan("X", 0.05e-6 / 1.96, 0, 0.95, 0.8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no test of reasonable length");
    assertThatThrownBy(() -> study.plan("Y", 1e-6, 0, 0.95, 0.8))
        .hasMessageContaining("no machine axis named Y; it has X, Z, height");
  }
}
