package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/** The scatter by which designs are set beside one another. */
class SeatedScatterTest {

  private static final CouplingDesign POST =
      DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();

  private static CouplingModel post(double friction) {
    return CouplingModel.of(
        POST.toBuilder().friction(new Friction(friction, friction, friction, "")).build());
  }

  @Test
  void itIsThatOfTheFirstMountsOfASimulation() throws InterruptedException {
    CouplingModel model = CouplingModel.of(POST);
    Vec3 told = SeatedScatter.of(model, 60).orElseThrow();
    Vec3 simulated =
        new RemountSimulation(model).run(RemountPlan.of(60, 1, 1)).toolPoint().deviation();
    for (int axis = 0; axis < 3; axis++) {
      assertThat(told.component(axis))
          .isPositive()
          .isCloseTo(simulated.component(axis), within(1e-6 * simulated.component(axis)));
    }
  }

  @Test
  void oneMountHasNone() {
    assertThat(SeatedScatter.of(CouplingModel.of(POST), 1)).isEmpty();
  }

  @Test
  void aCouplingThatHangsUpOnFrictionHasNone() {
    // the post slides home up to 0.31
    assertThat(SeatedScatter.of(post(0.6), 60)).isEmpty();
    assertThat(SeatedScatter.of(post(0.05), 60)).isPresent();
  }
}
