package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.space.Vec3;

/**
 * Holds the simulated scatter of the starters where it is: a change here is a change in what users
 * see, and wants a line in the change log. Recorded from this program, no outside value.
 */
class RemountGoldenTest {

  private static void expect(Starter starter, double x, double y, double z)
      throws InterruptedException {
    CouplingDesign design = DesignFile.read(starter.text()).design().orElseThrow();
    Vec3 sd =
        new RemountSimulation(CouplingModel.of(design))
            .run(RemountPlan.of(2000, 1, 2))
            .toolPoint()
            .deviation();
    assertThat(new double[] {sd.x() * 1e9, sd.y() * 1e9, sd.z() * 1e9})
        .as("standard deviation of the tool point along x, y, z, nm")
        .containsExactly(new double[] {x, y, z}, within(1e-3));
  }

  @Test
  void toolPost() throws InterruptedException {
    expect(Starter.TOOL_POST, 70.80624, 36.20893, 90.25608);
  }

  @Test
  void pallet() throws InterruptedException {
    expect(Starter.PALLET, 956.41805, 847.21536, 934.96442);
  }

  @Test
  void sensorMount() throws InterruptedException {
    expect(Starter.SENSOR_MOUNT, 136.28224, 68.50862, 129.99437);
  }
}
