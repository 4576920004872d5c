package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RandomStream;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/** Readings drawn from the prediction agree with it; readings that scatter more do not. */
class ReadingsAgainstTest extends TypedCommand {

  @TempDir Path folder;
  private Path design;
  private static Vec3 predicted;

  @BeforeEach
  void design() throws IOException {
    design = Files.writeString(folder.resolve("post.toml"), Starter.TOOL_POST.text());
  }

  @BeforeAll
  static void predict() throws InterruptedException {
    CouplingDesign d = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
    predicted =
        new RemountSimulation(CouplingModel.of(d))
            .run(RemountPlan.of(2000, 9, 2))
            .toolPoint()
            .deviation();
  }

  private Path readings(double times) throws IOException {
    RandomStream luck = RandomStream.of(20261125, 7);
    StringBuilder csv = new StringBuilder("cycle, X [um], Z [um], height [um]\n");
    for (int i = 1; i <= 40; i++) {
      csv.append(i);
      for (int k = 0; k < 3; k++) {
        double reading = 1e6 * times * predicted.component(k) * luck.normal();
        csv.append(String.format(Locale.ROOT, ", %.5f", reading));
      }
      csv.append('\n');
    }
    return Files.writeString(folder.resolve("readings" + times + ".csv"), csv);
  }

  private int run(String... args) {
    return type(List.of(), args);
  }

  @Test
  void readingsDrawnFromThePredictionAgreeWithIt() throws IOException {
    run("readings", readings(1).toString(), "--against", design.toString(), "--json");
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains("\"verdict\": \"as_predicted\"");
    assertThat(out.toString()).doesNotContain("\"verdict\": \"more\"").contains("\"causes\"");
  }

  @Test
  void threeTimesTheScatterIsNoticedOnEveryAxisAndWhatToDoFirstIsSaid() throws IOException {
    Path page = folder.resolve("page");
    run("readings", readings(3).toString(), "--against", design.toString(), "-o", page.toString());
    assertThat(Files.readString(page.resolve("readings.json")).split("\"verdict\": \"more\"", -1))
        .hasSize(4);
    assertThat(page.resolve("readings.txt"))
        .content()
        .contains("simulated tool changes", "What to do first:");
  }

  @Test
  void probesThatAreNoMachineAxesAreRefusedInWords() throws IOException {
    Path csv = folder.resolve("other.csv");
    Files.writeString(csv, "cycle, probe A [um]\n1, 0.1\n2, 0.2\n3, 0.15\n4, 0.12\n5, 0.11\n");
    assertThat(run("readings", csv.toString(), "--against", design.toString()))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("no probe is named like a machine axis");
  }

  @Test
  void aDesignWithErrorsIsRefusedWithThem() throws IOException {
    Files.writeString(design, Starter.TOOL_POST.text().replace("600 N", "600"));
    assertThat(run("readings", readings(1).toString(), "--against", design.toString()))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("has no unit");
  }
}
