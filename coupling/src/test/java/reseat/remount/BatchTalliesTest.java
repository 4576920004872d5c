package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.OneAfterAnother;

/**
 * Batches made apart, sent as bytes and joined in order: the result of one run, to the last bit.
 */
class BatchTalliesTest {

  private static double[] sent(double[] numbers) {
    ByteBuffer bytes = ByteBuffer.allocate(8 * numbers.length);
    bytes.asDoubleBuffer().put(numbers);
    double[] back = new double[numbers.length];
    ByteBuffer.wrap(bytes.array()).asDoubleBuffer().get(back);
    return back;
  }

  /** The batches in their order, though the last is made first. */
  private static List<double[]> made(long batches, LongFunction<double[]> work) {
    double[][] all = new double[(int) batches][];
    for (long number = batches - 1; number >= 0; number--) {
      all[(int) number] = sent(work.apply(number));
    }
    return new ArrayList<>(Arrays.asList(all));
  }

  /** A post of which some mountings hang up, so that failures travel too. */
  private static CouplingDesign sometimesHanging() {
    CouplingDesign post = Couplings.scatteringPost().build();
    return post.toBuilder().friction(new Friction(0.05, 0.25, 0.45, "taken for this test")).build();
  }

  @Test
  void batchesMadeApartGiveTheScatterOfOneRun() throws InterruptedException {
    CouplingDesign design = sometimesHanging();
    RemountPlan plan = RemountPlan.of(1300, 11, new OneAfterAnother());
    RemountScatter whole = new RemountSimulation(CouplingModel.of(design)).run(plan);
    assertThat(whole.failed()).isPositive();
    assertThat(RemountSimulation.batches(plan)).isEqualTo(3);
    List<double[]> tallies =
        made(
            3,
            number ->
                new RemountSimulation(CouplingModel.of(design)).tally(plan, c -> true, number));
    RemountSimulation.Sum sum = new RemountSimulation(CouplingModel.of(design)).new Sum(plan);
    tallies.forEach(sum::add);
    assertThat(sum.scatter()).isEqualTo(whole);
    RemountScatter onThreads =
        new RemountSimulation(CouplingModel.of(design)).run(RemountPlan.of(1300, 11, 2));
    assertThat(onThreads.toolPoint()).isEqualTo(whole.toolPoint());
    assertThat(onThreads.failures()).isEqualTo(whole.failures());
    assertThatThrownBy(() -> sum.add(Arrays.copyOf(tallies.get(0), 5)))
        .hasMessageContaining("ends too soon");
  }

  @Test
  void batchesMadeApartGiveTheSharesOfOneRun() throws InterruptedException {
    CouplingModel model = CouplingModel.of(sometimesHanging());
    CauseShares whole = CauseShares.of(model, 150, 4, new OneAfterAnother(), done -> {});
    CauseShares.Sum sum = new CauseShares.Sum();
    made(CauseShares.batches(150), number -> CauseShares.tally(model, 150, 4, number))
        .forEach(sum::add);
    assertThat(sum.shares()).isEqualTo(whole);
    assertThat(CauseShares.of(model, 150, 4, 2, done -> {})).isEqualTo(whole);
  }
}
