package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxes;
import reseat.design.MachineAxis;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/** The same mountings told in other axes, at other points and in other batches. */
class ScatterFramesTest {

  private static final CouplingDesign POST =
      DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();

  private static RemountScatter run(CouplingDesign design, int threads)
      throws InterruptedException {
    return new RemountSimulation(CouplingModel.of(design)).run(RemountPlan.of(300, 5, threads));
  }

  private static void near(double found, double expected, double part) {
    assertThat(found).isCloseTo(expected, within(part * Math.abs(expected)));
  }

  @Test
  void machineAxesAreTheCouplingsOwnInAnotherOrderAndSense() throws InterruptedException {
    MachineAxes turned =
        new MachineAxes(
            new MachineAxis("up", Vec3.Z),
            new MachineAxis("back", Vec3.X.negated()),
            new MachineAxis("side", Vec3.Y));
    RemountScatter r = run(POST.toBuilder().axes(turned).build(), 2);
    VectorScatter told = r.toolPoint();
    VectorScatter own = r.inCouplingAxes();
    assertThat(own.count()).isEqualTo(300);
    near(told.deviation().x(), own.deviation().z(), 1e-12);
    near(told.deviation().y(), own.deviation().x(), 1e-12);
    near(told.deviation().z(), own.deviation().y(), 1e-12);
    near(told.mean().y(), -own.mean().x(), 1e-12);
    near(told.greatest().y(), -own.least().x(), 1e-12);
    // batches are put together alike whatever the number of threads
    RemountScatter alone = run(POST.toBuilder().axes(turned).build(), 1);
    assertThat(alone.inCouplingAxes()).isEqualTo(own);
    assertThat(alone.rotation()).isEqualTo(r.rotation());
  }

  @Test
  void aToolFarAwayScattersByItsLeverTimesTheRotation() throws InterruptedException {
    // along z: shifts along x and y are the turns about y and x times the lever
    double lever = 50;
    CouplingDesign far = POST.toBuilder().toolPoint(new Vec3(0, 0, lever)).build();
    VectorScatter rotation = run(POST, 2).rotation();
    VectorScatter shift = run(far, 2).toolPoint();
    assertThat(rotation.count()).isEqualTo(300);
    near(shift.deviation().x(), lever * rotation.deviation().y(), 0.01);
    near(shift.deviation().y(), lever * rotation.deviation().x(), 0.01);
    // along x: a turn about z shows along y
    CouplingDesign aside = POST.toBuilder().toolPoint(new Vec3(lever, 0, 0)).build();
    near(run(aside, 2).toolPoint().deviation().y(), lever * rotation.deviation().z(), 0.01);
  }
}
