package reseat.remount;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;

/** Simulated tool changes of the tool post, twelve load steps each, on one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RemountBenchmark {

  private static final int MOUNTS = 2000;

  /** Whether the balls stand on rigid mountings or on studs that give way. */
  @Param({"rigid", "studs"})
  public String mounting;

  private RemountSimulation simulation;
  private long seed;

  /** Prepares the coupling. */
  @Setup
  public void prepare() {
    CouplingDesign d = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
    if (mounting.equals("rigid")) {
      d =
          d.toBuilder()
              .supports(
                  d.supports().stream().map(s -> s.withMounting(BallMounting.rigid())).toList())
              .build();
    }
    simulation = new RemountSimulation(CouplingModel.of(d));
  }

  /**
   * Mounts the holder {@value #MOUNTS} times.
   *
   * @return number of positions
   */
  @Benchmark
  @OperationsPerInvocation(MOUNTS)
  public int mounts() {
    return simulation.positions(seed++, MOUNTS).size();
  }
}
