package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.ToleranceKind;
import reseat.equilibrium.CouplingModel;
import reseat.space.Pose;
import reseat.space.Vec3;

class SensitivityTest {

  private record Stand(Vec3 toolPoint, Pose pose) {}

  private static Stand stand(ToleranceModel model, int contributor, double deviation) {
    double[] deviations = new double[model.contributors().size()];
    deviations[contributor] = deviation;
    CouplingDesign made = model.made(deviations);
    Pose pose = CouplingModel.of(made).restPose();
    return new Stand(pose.apply(made.toolPoint()), pose);
  }

  @Test
  void derivativesAgreeWithDifferencesOfTheExactRestPose() {
    for (Map.Entry<String, CouplingDesign> entry : TolerancedCouplings.zoo().entrySet()) {
      ToleranceModel model = ToleranceModel.of(entry.getValue());
      Sensitivity sensitivity = Sensitivity.of(model);
      for (int k = 0; k < model.contributors().size(); k++) {
        Sensitivity.Effect effect = sensitivity.effects().get(k);
        boolean kelvin = effect.contributor().kind() == ToleranceKind.TEMPERATURE;
        boolean angle = effect.contributor().kind().measure() == ToleranceKind.Measure.ANGLE;
        double h = kelvin ? 0.5 : angle ? 1e-4 : 2e-7;
        double scale = kelvin ? 1e-6 : angle ? 0.01 : 1;
        Stand up = stand(model, k, h);
        Stand down = stand(model, k, -h);
        Vec3 shift = up.toolPoint().minus(down.toolPoint()).times(1 / (2 * h));
        Vec3 turn = up.pose().compose(down.pose().inverse()).rotationVector().times(1 / (2 * h));
        String name = entry.getKey() + ": " + effect.contributor().name();
        assertThat(shift.distanceTo(effect.shift())).as(name).isLessThan(1e-6 * scale);
        // rotations are told per the coupling's radius
        assertThat(0.05 * turn.distanceTo(effect.rotation())).as(name).isLessThan(1e-6 * scale);
      }
    }
  }

  @Test
  void whatRunsAlongTheGrooveOrTurnsAboutTheBallDoesNothingToFirstOrder() {
    Sensitivity s = Sensitivity.of(ToleranceModel.of(TolerancedCouplings.toolPost()));
    for (Sensitivity.Effect e : s.effects()) {
      switch (e.contributor().kind()) {
        case BALL_ALONG, SEAT_ALONG, SEAT_DIRECTION ->
            assertThat(e.shift().norm()).as(e.contributor().name()).isLessThan(1e-15);
        default -> {}
      }
    }
  }

  @Test
  void machineAxesAreTheDesignsOwn() {
    Sensitivity s = Sensitivity.of(ToleranceModel.of(TolerancedCouplings.toolPost()));
    for (Sensitivity.Effect e : s.effects()) {
      // first axis Z is the coupling's y, second axis X its x
      assertThat(e.shiftInMachineAxes().x()).isEqualTo(e.shift().y());
      assertThat(e.shiftInMachineAxes().y()).isEqualTo(e.shift().x());
      double limit = e.contributor().spread().limit();
      assertThat(e.limitShift().x()).isCloseTo(limit * e.shift().y(), within(1e-20));
    }
  }
}
