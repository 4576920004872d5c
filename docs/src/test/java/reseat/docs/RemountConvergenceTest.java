package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.design.Preload;
import reseat.design.RemountConditions;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.Distribution;
import reseat.plots.Picture;
import reseat.plots.chart.AxisQuantity;
import reseat.plots.chart.ResponseCurve;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/**
 * The convergence study of docs/theory/remount.md: how far the tool point is from that of a very
 * fine ramp, over the number of load steps, for the same approaches.
 *
 * <p>Writes the page's picture to docs/target/remount-convergence.svg; copy it to docs/theory when
 * the study changes.
 */
class RemountConvergenceTest {

  private static final int[] STEPS = {3, 6, 12, 24, 48, 96};
  private static final int FINE = 1536;
  private static final int MOUNTS = 24;
  private static final double[] FRICTION = {0.1, 0.2, 0.3};

  private static List<Vec3> positions(double mu, int steps) {
    CouplingDesign d = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
    CouplingDesign steady =
        d.toBuilder()
            .supports(d.supports().stream().map(s -> s.withMounting(BallMounting.rigid())).toList())
            .preloads(
                d.preloads().stream()
                    .map(
                        p ->
                            new Preload(
                                p.name(),
                                p.force(),
                                p.direction(),
                                p.at(),
                                Distribution.NONE,
                                Distribution.NONE,
                                Distribution.NONE,
                                ""))
                    .toList())
            .friction(new Friction(mu, mu, mu, "study"))
            .remount(
                new RemountConditions(
                    15, steps, Distribution.NONE, Distribution.NONE, Distribution.NONE, 11.5e-6))
            .build();
    return new RemountSimulation(CouplingModel.of(steady)).positions(1, MOUNTS);
  }

  private static double meanDistance(List<Vec3> a, List<Vec3> b) {
    assertThat(a).hasSameSizeAs(b);
    double sum = 0;
    for (int i = 0; i < a.size(); i++) {
      sum += a.get(i).distanceTo(b.get(i)) / a.size();
    }
    return sum;
  }

  @Test
  void twelveStepsAreFineEnoughAndTheErrorFallsWithTheStep() throws IOException {
    List<ResponseCurve.Curve> curves = new ArrayList<>();
    for (double mu : FRICTION) {
      List<Vec3> fine = positions(mu, FINE);
      List<Double> errors = new ArrayList<>();
      for (int steps : STEPS) {
        errors.add(meanDistance(positions(mu, steps), fine));
      }
      for (int i = 1; i < STEPS.length; i++) {
        assertThat(errors.get(i)).as("mu %s, %d steps", mu, STEPS[i]).isLessThan(errors.get(i - 1));
      }
      if (mu == 0.1) {
        assertThat(errors.get(2)).isLessThan(0.5e-9);
      }
      curves.add(new ResponseCurve.Curve("friction " + mu, errors));
    }
    double none = Double.POSITIVE_INFINITY;
    List<Double> inputs = new ArrayList<>();
    for (int steps : STEPS) {
      inputs.add((double) steps);
    }
    Picture picture =
        ResponseCurve.draw(
            new AxisQuantity("number of load steps", "", 1),
            inputs,
            new AxisQuantity("distance from the fine ramp", "nm", 1e-9),
            curves,
            new ResponseCurve.Marked(none, none, 12),
            true);
    Path target = Files.createDirectories(ProjectFolder.docs().resolve("target"));
    Files.write(target.resolve("remount-convergence.svg"), picture.svg());
    assertThat(ProjectFolder.docs().resolve("theory").resolve("remount-convergence.svg")).exists();
  }
}
